/** The drawings of a complaint's tree: for the wall, and as an outline for a phone. */
import type { Entry } from '../../../library/shelf.ts';
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
  return {
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
