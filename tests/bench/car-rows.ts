/**
 * The shelf's evidence against what simulated cars show, row by row, the furthest apart first. Prints and never fails:
 * npx node tests/bench/car-rows.ts [--cars 30] [--seed 5000] [--only <test,test>] [--kept] [--all] [--write]
 * `--write` keeps what was seen for `npm run check -- --quality`; `--kept` judges by what was kept; `--all` prints settled rows too.
 */
import { writeFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { FAULT_IDS } from '../../src/car/faults.ts';
import { partedRows } from '../../src/library/against-physics/compare.ts';
import { isSettled, KEPT_FILE, keptRows, settledRows } from '../../src/library/against-physics/kept.ts';
import { readShelf } from '../../src/library/read-shelf.ts';
import { rowsOf } from '../car/trials/rows.ts';

const { values } = parseArgs({
  options: {
    cars: { type: 'string', default: '30' },
    seed: { type: 'string', default: '5000' },
    only: { type: 'string' },
    kept: { type: 'boolean', default: false },
    all: { type: 'boolean', default: false },
    write: { type: 'boolean', default: false },
  },
});
const [cars, first] = [Number(values.cars), Number(values.seed)];
const { shelf } = await readShelf('content');
const only = values.only?.split(',');
const made = values.kept ? [] : FAULT_IDS.flatMap((fault) => rowsOf(shelf, fault, cars, first, only));
const rows =
  values.kept || only ? [...keptRows().rows.filter(({ test }) => !only?.includes(test)), ...made] : made;
const settled = settledRows();
const parted = partedRows(shelf.records, rows);
const open = parted.filter((row) => !isSettled(settled, row));
console.log('steps  record  simulated | test, cause, outcome');
for (const { test, cause, outcome, written, isNamed, seen, cars: of, steps } of values.all ? parted : open)
  console.log(
    `${steps.toFixed(1)}  ${written.toFixed(3)}${isNamed ? '' : '*'}  ${seen} of ${of} | ${test}, ${cause}, ${outcome}`,
  );
console.log(
  `${rows.length} rows, ${parted.length} part by more than one word of the scale, ${open.length} of them not settled. * the row of all others`,
);
if (values.write) {
  const day = new Date().toISOString().slice(0, 10);
  const by = `npx node tests/bench/car-rows.ts --cars ${cars} --seed ${first} --write`;
  const lines = rows.map((row) => JSON.stringify(row)).join(',\n');
  writeFileSync(KEPT_FILE, `{"made": "${day}", "by": "${by}", "rows": [\n${lines}\n]}\n`);
}
