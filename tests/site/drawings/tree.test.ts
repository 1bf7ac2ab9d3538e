import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Tree } from '../../../src/model/tree.ts';
import { drawTree } from '../../../src/site/drawings/tree.ts';
import {
  answersText,
  marksOf,
  NOT_THAT,
  type TreeNode,
  treeNodes,
} from '../../../src/site/drawings/tree-nodes.ts';
import {
  type Arrangement,
  leastLength,
  planTree,
  type TreePlan,
} from '../../../src/site/drawings/tree-plan.ts';
import { drawTreeOutline, planSheet, sheetTextBoxes } from '../../../src/site/drawings/tree-sheet.ts';
import { overlapsOf, overlapsWith } from './overlaps.ts';
import { faultsOf } from './well-formed.ts';

const COMMON = { sources: ['common practice'], reviewed: '2026-11-25' } as unknown as Pick<
  Tree,
  'sources' | 'reviewed'
>;

/** A tree with every kind of step. */
const TREE: Tree = {
  ...COMMON,
  title: 'A tree',
  symptom: 'reads-low-at-cruise',
  start: 'level',
  steps: {
    level: { test: 'level-cold', on: { low: 'top-up', right: 'side', empty: 'top-up' } },
    'top-up': { prove: 'coolant-low', otherwise: 'side' },
    side: { layout: 'thermostat', on: { 'outlet side': 'hose', 'inlet side': 'hose', none: 'elsewhere' } },
    hose: { test: 'hose-warm-up', on: { early: 'thermostat', late: 'nothing' } },
    elsewhere: { tree: 'no-cabin-heat' },
  },
  ends: {
    thermostat: { causes: ['thermostat-stuck-open', 'thermostat-missing'], says: 'It runs cool.' },
    nothing: { causes: ['something-else'], says: 'Pass it on.' },
  },
};

const WORDS = {
  test: (id: string) => ({
    asks: `What does ${id} show?`,
    outcomes: { low: 'Low', right: 'At the mark', empty: 'Empty', early: 'Warm early', late: 'Warm late' },
  }),
  cause: (id: string) => id.replaceAll('-', ' '),
  repair: (id: string) => `Put right ${id.replaceAll('-', ' ')} (20 min)`,
  tree: (id: string) => id.replaceAll('-', ' '),
};

const words = fc
  .array(
    fc.constantFrom('hose', 'thermostat', 'from', 'the', 'radiator', 'gets', 'warm', 'at', '88\u00a0°C'),
    {
      minLength: 1,
      maxLength: 14,
    },
  )
  .map((all) => all.join(' '));

/** Trees of any shape without a loop: each step leads to later ones or to ends. */
function anyTree(mostSteps: number): fc.Arbitrary<TreeNode[]> {
  const way = fc.record({ answers: fc.array(words, { minLength: 1, maxLength: 2 }), aim: fc.nat() });
  const step = fc.record({
    kind: fc.constantFrom('test' as const, 'layout' as const, 'prove' as const),
    text: words,
    ways: fc.array(way, { minLength: 1, maxLength: 4 }),
  });
  const end = fc.record({ causes: fc.array(words, { minLength: 1, maxLength: 4 }) });
  return fc
    .tuple(
      fc.array(step, { minLength: 1, maxLength: mostSteps }),
      fc.array(end, { minLength: 1, maxLength: 6 }),
    )
    .map(([steps, ends]) => {
      const ids = [...steps.map((_, index) => `s${index}`), ...ends.map((_, index) => `e${index}`)];
      const nodes = steps.map((each, index): TreeNode => {
        const ahead = ids.slice(index + 1);
        const aims = each.kind === 'prove' ? each.ways.slice(0, 1) : each.ways;
        const ways = aims.map(({ answers, aim }) => ({
          answers: each.kind === 'prove' ? [NOT_THAT] : answers,
          to: ahead[aim % ahead.length] ?? '',
        }));
        const unlike = ways.filter((one, at) => ways.findIndex(({ to }) => to === one.to) === at);
        return { id: `s${index}`, kind: each.kind, text: each.text, proven: each.text, ways: unlike };
      });
      return [
        ...nodes,
        ...ends.map((each, index): TreeNode => ({ id: `e${index}`, kind: 'end', ...each, ways: [] })),
      ];
    });
}

const ARRANGEMENTS: Arrangement[] = [
  { direction: 'down', textWidth: 120 },
  { direction: 'across', textWidth: 148 },
];

function boxesOf(plan: TreePlan) {
  return [
    ...plan.blocks.map(({ block, box }) => ({ ...box, name: block.node.id })),
    ...plan.ways.map(({ answer }, index) => ({ ...answer.box, name: `answer ${index}` })),
  ];
}

describe('nodes of a tree', () => {
  const nodes = treeNodes(TREE, WORDS);

  test('every step stands before all it leads to', () => {
    const order = nodes.map(({ id }) => id);
    for (const node of nodes)
      for (const way of node.ways) expect(order.indexOf(way.to)).toBeGreaterThan(order.indexOf(node.id));
    expect(order[0]).toBe('level');
    expect(order).toHaveLength(7);
  });

  test('answers that lead to the same place share a way', () => {
    expect(nodes[0]?.ways).toEqual([
      { answers: ['Low', 'Empty'], to: 'top-up' },
      { answers: ['At the mark'], to: 'side' },
    ]);
    expect(answersText({ answers: ['Both hot', 'One hot', 'A/C on', 'EGR hot'], to: 'x' })).toBe(
      'Both hot or one hot or A/C on or EGR hot',
    );
  });

  test('steps are numbered, ends lettered as they are led to', () => {
    expect([...marksOf(nodes)]).toEqual([
      ['level', '1'],
      ['top-up', '2'],
      ['side', '3'],
      ['hose', '4'],
      ['elsewhere', 'A'],
      ['thermostat', 'B'],
      ['nothing', 'C'],
    ]);
  });

  test('a way to nothing is refused by name', () => {
    const broken = { ...TREE, ends: { thermostat: TREE.ends.thermostat ?? { causes: [], says: '' } } };
    expect(() => treeNodes(broken, WORDS)).toThrow('"hose" leads to "nothing", which is no step and no end');
  });

  test('something else is told in words', () => {
    expect(nodes.find(({ id }) => id === 'nothing')).toMatchObject({
      causes: ['Something else: pass it on'],
    });
  });
});

describe('drawn tree', () => {
  const nodes = treeNodes(TREE, WORDS);

  test('blocks and answers never overlap, and all are on the sheet', () => {
    fc.assert(
      fc.property(anyTree(8), fc.constantFrom(...ARRANGEMENTS), (tree, arrangement) => {
        const plan = planTree(tree, arrangement);
        const boxes = boxesOf(plan);
        expect(overlapsOf(boxes)).toEqual([]);
        const length = arrangement.direction === 'down' ? plan.height : plan.width;
        expect(leastLength(tree, arrangement)).toBeLessThanOrEqual(length + 1e-6);
        for (const box of boxes) {
          expect(Math.min(box.x, box.y)).toBeGreaterThanOrEqual(0);
          expect(box.x + box.width).toBeLessThanOrEqual(plan.width + 0.01);
          expect(box.y + box.height).toBeLessThanOrEqual(plan.height + 0.01);
        }
      }),
      { numRuns: 40 },
    );
  }, 60_000);

  test('straight runs of the lines pass no block that is not theirs', () => {
    fc.assert(
      fc.property(anyTree(7), (tree) => {
        const plan = planTree(tree, { direction: 'down', textWidth: 120 });
        const blocks = plan.blocks.map(({ block, box }) => ({ ...box, name: block.node.id }));
        for (const { points } of plan.ways) {
          points.slice(1).forEach((to, index) => {
            const from = points[index];
            if (!from || from.x !== to.x) return;
            const run = {
              name: 'line',
              x: to.x - 0.1,
              y: Math.min(from.y, to.y) + 0.1,
              width: 0.2,
              height: Math.max(0, Math.abs(to.y - from.y) - 0.2),
            };
            expect(overlapsWith(run, blocks)).toEqual([]);
          });
        }
      }),
      { numRuns: 40 },
    );
  }, 60_000);

  test('answers stand in the order they are given where that costs nothing', () => {
    const ends = ['a', 'b', 'c', 'd'];
    const fan: TreeNode[] = [
      { id: 'q', kind: 'test', text: 'Which?', ways: ends.map((to) => ({ answers: [to], to })) },
      ...ends.map((id): TreeNode => ({ id, kind: 'end', causes: [`Cause ${id}`], ways: [] })),
    ];
    for (const arrangement of ARRANGEMENTS) {
      const places = planTree(fan, arrangement).ways.map(({ answer: { box } }) =>
        arrangement.direction === 'down' ? box.x : box.y,
      );
      expect(places).toEqual([...places].sort((a, b) => a - b));
    }
  });

  test('every step, cause and answer is text in the picture', () => {
    for (const svg of [
      drawTree({ id: 'tree', title: 'Tree', nodes }).svg,
      drawTreeOutline({ id: 'o', title: 'O', nodes }),
    ]) {
      expect(faultsOf(svg)).toEqual([]);
      const text = svg
        .replace(/<desc.*<\/desc>/, '')
        .replace(/<[^>]*>/g, ' ')
        .replace(/\s+/g, '');
      // Where lines break is no matter of this test.
      for (const words of [
        'What does level-cold show?',
        'Low or: empty',
        'Prove: coolant low',
        'Proven',
        'Put right coolant low (20 min)',
        'outlet side or: inlet side',
        'thermostat stuck open',
        'or: thermostat missing',
        'no cabin heat',
      ])
        expect(text).toContain(words.replaceAll(' ', ''));
    }
  });

  test('a small tree is drawn whole, with text to read on a wall', () => {
    const drawn = drawTree({ id: 'tree', title: 'Tree', nodes });
    expect(drawn.svg).toContain('class="way"');
    expect(drawn.smallestText).toBeGreaterThanOrEqual(11);
    expect(drawn.svg).toContain(`viewBox="0 0 ${Math.round(drawn.width * 10) / 10} `);
  });

  // Fourteen steps as in the longest hand-drawn trees of the demo shelf: three answers each, every third an end.
  test('a tree of fourteen steps goes on one page of A4 or Letter with text of 11 px or more', () => {
    const long = Array.from(
      { length: 14 },
      (_, index): TreeNode => ({
        id: `s${index}`,
        kind: 'test',
        text: 'From cold, when does the hose to the radiator get warm?',
        ways: [
          { answers: ['Warm well before 88\u00a0°C'], to: index < 12 ? `s${index + 2}` : 'e0' },
          { answers: ['Cool, then hot close to it'], to: index < 13 ? `s${index + 1}` : 'e1' },
          { answers: ['Still cool well past it'], to: `e${index % 6}` },
        ],
      }),
    );
    const ends = Array.from(
      { length: 6 },
      (_, index): TreeNode => ({
        id: `e${index}`,
        kind: 'end',
        causes: [`Thermostat stuck open ${index}`, 'Thermostat of the wrong rating fitted'],
        ways: [],
      }),
    );
    const drawn = drawTree({ id: 'tree', title: 'Tree', nodes: [...long, ...ends] });
    expect(faultsOf(drawn.svg)).toEqual([]);
    expect(drawn.smallestText).toBeGreaterThanOrEqual(11);
  });

  test('texts of the sheet in columns never overlap, and it keeps to its columns', () => {
    fc.assert(
      fc.property(anyTree(14), fc.constantFrom(1, 2, 3), (tree, columns) => {
        const sheet = planSheet(tree, columns);
        const boxes = sheetTextBoxes(sheet);
        expect(overlapsOf(boxes)).toEqual([]);
        const used = new Set(sheet.entries.map(({ x }) => x));
        expect(used.size).toBeLessThanOrEqual(columns);
        for (const box of boxes) {
          expect(box.x + box.width).toBeLessThanOrEqual(sheet.width + 0.01);
          expect(box.y + box.height).toBeLessThanOrEqual(sheet.height + 0.01);
        }
      }),
      { numRuns: 100 },
    );
  });

  test('an end is told in full once, and by its leading cause after that', () => {
    const svg = drawTreeOutline({
      id: 'o',
      title: 'O',
      nodes: [
        {
          id: 'a',
          kind: 'test',
          text: 'Is it?',
          ways: [
            { answers: ['yes'], to: 'b' },
            { answers: ['no'], to: 'end' },
          ],
        },
        { id: 'b', kind: 'test', text: 'Is that?', ways: [{ answers: ['yes'], to: 'end' }] },
        { id: 'end', kind: 'end', causes: ['Sensor', 'Gauge'], ways: [] },
      ],
    }).replace(/<desc.*<\/desc>/, '');
    expect(svg.match(/>Sensor</g)).toHaveLength(2);
    expect(svg.match(/>or: Gauge</g)).toHaveLength(1);
  });

  test('the same tree gives the same drawing, and none is refused', () => {
    expect(drawTree({ id: 'a', title: 'T', nodes }).svg).toBe(drawTree({ id: 'a', title: 'T', nodes }).svg);
    expect(() => drawTree({ id: 'a', title: 'T', nodes: [] })).toThrow(
      'A tree without a step cannot be drawn.',
    );
    expect(() => drawTreeOutline({ id: 'a', title: 'T', nodes: [] })).toThrow('A tree without a step');
  });
});
