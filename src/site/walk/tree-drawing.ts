/** The drawings of a complaint's tree: for the wall, and as an outline for a phone. */
import type { Entry } from '../../library/shelf.ts';
import { drawTree } from '../drawings/tree.ts';
import { treeNodes } from '../drawings/tree-nodes.ts';
import { drawTreeOutline } from '../drawings/tree-sheet.ts';
import { entryOf, titleOf } from '../record-pages.ts';
import { plainText } from '../text/render-text.ts';

export interface TreeDrawing {
  wide: string;
  narrow: string;
  /** How the sheet of A4 is held. */
  page: 'portrait' | 'landscape';
}

export function treeDrawingOf({ data }: Entry<'tree'>): TreeDrawing {
  const nodes = treeNodes(data, {
    test: (id) => {
      const { question, outcomes } = entryOf('test', id).data;
      return {
        asks: plainText(question),
        outcomes: Object.fromEntries(
          Object.entries(outcomes).map(([key, { label }]) => [key, plainText(label)]),
        ),
      };
    },
    cause: (id) => titleOf('cause', id),
    tree: (id) => titleOf('symptom', entryOf('tree', id).data.symptom),
  });
  const title = `${titleOf('symptom', data.symptom)}: the tree`;
  const { svg, page } = drawTree({ id: 'tree', title, nodes });
  return { wide: svg, narrow: drawTreeOutline({ id: 'tree-outline', title, nodes }), page };
}
