/** The drawings of a complaint's tree: for the wall, and as an outline for a phone. */
import type { Entry } from '../../../library/shelf.ts';
import { generalRange } from '../../../model/figure-lookup.ts';
import { FIGURE_REFERENCE } from '../../../model/figure-reference.ts';
import { drawTree } from '../../drawings/tree.ts';
import { marksOf, treeNodes } from '../../drawings/tree-nodes.ts';
import { drawTreeOutline } from '../../drawings/tree-sheet.ts';
import { entryOf, titleOf } from '../../shelf/record-pages.ts';
import { plainText } from '../../text/render-text.ts';

export interface TreeDrawing {
  wide: string;
  narrow: string;
  /** How the sheet of A4 is held. */
  page: 'portrait' | 'landscape';
  /** Cautions of the tests on it, with the numbers of their steps. */
  cautions: { id: string; steps: string[] }[];
  /** Steps that the chosen vehicle answers by how it is laid out, and where each answer leads. */
  forks: { step: string; ways: { layout: Record<string, string[]>; to: string }[] }[];
  /** Figures that stand in the drawing as general ranges. */
  figures: string[];
}

/** A tree of the shelf drawn in the records’ own words. */
export function treeDrawingOf({ data }: Entry<'tree'>): TreeDrawing {
  const nodes = treeNodes(data, {
    test: (id) => {
      const { question, outcomes, minutes } = entryOf('test', id).data;
      return {
        asks: `${plainText(question)} ${inMinutes(minutes)}`,
        outcomes: Object.fromEntries(
          Object.entries(outcomes).map(([key, { label }]) => [key, plainText(label)]),
        ),
      };
    },
    cause: (id) => titleOf('cause', id),
    repair: (id) => {
      const { repair } = entryOf('cause', id).data;
      if (!repair) return 'Nothing to repair';
      const { title, minutes } = entryOf('procedure', repair).data;
      return `${title} ${inMinutes(minutes)}`;
    },
    tree: (id) => titleOf('symptom', entryOf('tree', id).data.symptom),
  });
  const title = `${titleOf('symptom', data.symptom)}: the tree`;
  const { svg, page } = drawTree({ id: 'tree', title, nodes });
  const marks = marksOf(nodes);
  const tests = nodes.flatMap(({ id }) => data.steps[id]?.test ?? []);
  return {
    forks: nodes.flatMap(({ id, kind, ways }) => {
      const feature = kind === 'layout' && data.steps[id]?.layout;
      if (!feature) return [];
      const leads = ways.map(({ answers, to }) => ({
        layout: { [feature]: answers },
        to: marks.get(to) ?? '',
      }));
      return [{ step: marks.get(id) ?? '', ways: leads }];
    }),
    figures: [...new Set(tests.flatMap((test) => figuresIn(entryOf('test', test).data)))],
    wide: svg,
    narrow: drawTreeOutline({ id: 'tree-outline', title, nodes }),
    page,
    cautions: cautionsOf(
      nodes.flatMap(({ id }) => {
        const step = data.steps[id];
        const test = step?.test ?? (step?.prove && entryOf('cause', step.prove).data.confirm?.test);
        return test ? [{ mark: marks.get(id) ?? '', test }] : [];
      }),
    ),
  };
}

/** What a test quotes of the vehicle in its question and in the names of its outcomes. */
function figuresIn({ question, outcomes }: Entry<'test'>['data']): string[] {
  const texts = [question, ...Object.values(outcomes).map(({ label }) => label)];
  const paths = texts.flatMap((text) =>
    [...text.matchAll(FIGURE_REFERENCE)].flatMap(([, path]) => path ?? []),
  );
  return paths.filter((path) => generalRange(path));
}

/** "(15 min)", never broken over two lines. */
function inMinutes(minutes: number): string {
  return `(${minutes}\u00a0min)`;
}

function cautionsOf(steps: readonly { mark: string; test: string }[]): TreeDrawing['cautions'] {
  const found = new Map<string, string[]>();
  for (const { mark, test } of steps)
    for (const id of entryOf('test', test).data.cautions) found.set(id, [...(found.get(id) ?? []), mark]);
  return [...found].map(([id, marks]) => ({ id, steps: marks }));
}
