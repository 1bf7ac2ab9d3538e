/** What a page carries of a model is the model. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type Model, USUAL_CHANGE_OVER } from '../../../src/diagnosis/model.ts';
import { packModel, unpackModel } from '../../../src/site/walk/packed-model.ts';

const model = fc
  .record({ causes: fc.integer({ min: 1, max: 12 }), tests: fc.integer({ min: 0, max: 6 }) })
  .chain(({ causes, tests }) =>
    fc
      .array(
        fc.integer({ min: 2, max: 4 }).chain((outcomes) =>
          // A column's chances sum to one, as those of a shelf do.
          fc
            .array(
              fc.array(fc.integer({ min: 0, max: 2500 }), { minLength: causes + 1, maxLength: causes + 1 }),
              { minLength: outcomes - 1, maxLength: outcomes - 1 },
            )
            .map((others) => [
              Array.from({ length: causes + 1 }, (_, column) =>
                others.reduce((rest, row) => rest - (row[column] ?? 0), 10_000),
              ),
              ...others,
            ]),
        ),
        { minLength: tests, maxLength: tests },
      )
      .map(
        (tables): Model => ({
          causes: Array.from({ length: causes }, (_, at) => ({
            id: `cause-${at}`,
            weight: at + 1,
            proveMinutes: 5,
          })),
          somethingElse: 0.03,
          passOnMinutes: 90,
          changeOver: USUAL_CHANGE_OVER,
          tests: tables.map((table, at) => ({
            id: `test-${at}`,
            minutes: 4,
            outcomes: table.map((_, outcome) => `outcome-${outcome}`),
            likelihood: table.map((row) => row.map((value) => value / 10_000)),
          })),
        }),
      ),
  );

test('packed, written as JSON and unpacked it is the same', () => {
  fc.assert(
    fc.property(model, (given) => {
      expect(unpackModel(JSON.parse(JSON.stringify(packModel(given))))).toEqual(given);
    }),
  );
});

test('a test that tells one cause from all others writes two columns', () => {
  const packed = packModel({
    causes: ['a', 'b', 'c'].map((id) => ({ id, weight: 1, proveMinutes: 5 })),
    somethingElse: 0.03,
    passOnMinutes: 90,
    changeOver: USUAL_CHANGE_OVER,
    tests: [
      {
        id: 't',
        minutes: 4,
        outcomes: ['yes', 'no'],
        likelihood: [
          [0.1, 0.9, 0.1, 0.1],
          [0.9, 0.1, 0.9, 0.9],
        ],
      },
    ],
  });
  expect(packed.tests[0]).toMatchObject({ usual: [9000], apart: [[1, 1000]] });
});
