/**
 * Simulated cars walked through the shelf's trees, at half, once and double the fault ranges. Prints and never fails:
 * npx node tests/bench/car-trials.ts [--cars 30] [--seed 1] [--symptom <id>] [--cause <id>] [--show wrong|lost|honest] [--write]
 * `--write` keeps the table for the page that says how far to trust the site.
 */
import { writeFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { readShelf } from '../../src/library/read-shelf.ts';
import { SCALES, tableOf, trialsText } from '../car/trials/table.ts';
import { pairsOf, type Tried, trierOf } from '../car/trials/trial.ts';

const { values } = parseArgs({
  options: {
    cars: { type: 'string', default: '30' },
    seed: { type: 'string', default: '1' },
    symptom: { type: 'string' },
    cause: { type: 'string' },
    show: { type: 'string' },
    once: { type: 'boolean', default: false },
    write: { type: 'boolean', default: false },
  },
});
/** Cars after which a cause is given up that none of them shows the complaint with. */
const GIVE_UP = 8;
const TABLE_FILE = new URL('../../src/site/about/car-trials.json', import.meta.url);
const [cars, first] = [Number(values.cars), Number(values.seed)];
const { shelf } = await readShelf('content');
const tries = trierOf(shelf);
const pairs = pairsOf(shelf).filter(
  ({ complaint, fault }) =>
    (values.symptom === undefined || values.symptom === complaint) &&
    (values.cause === undefined || values.cause === fault),
);

const began = performance.now();
const all = (values.once ? [1] : SCALES).flatMap((scale) =>
  pairs.map(({ complaint, fault }) => {
    const tried: Tried[] = [];
    for (let at = 0; at < cars && (at < GIVE_UP || tried.length > 0); at++) {
      const one = tries(complaint, fault, first + at, scale);
      if (one) tried.push(one);
    }
    return { complaint, fault, scale, tried };
  }),
);

console.log('right honest lost wrong of cars | scale | complaint, cause');
for (const { complaint, fault, scale, tried } of all) {
  const count = (verdict: Tried['verdict']) =>
    String(tried.filter((one) => one.verdict === verdict).length).padStart(4);
  console.log(
    `${count('right')} ${count('honest')} ${count('lost')} ${count('wrong')} ${String(tried.length).padStart(4)} | ${scale} | ${complaint}, ${fault}`,
  );
  for (const one of tried) if (one.verdict === values.show) tell(one);
}
const table = tableOf(all, { cars, first });
for (const { complaint, scale, right, honest, lost, wrong, cars: of } of [...table.complaints, ...table.all])
  console.log(
    `${complaint ?? 'all'} × ${scale}: ${of} cars, ${right} right, ${honest} honest, ${lost} lost, ${wrong} wrong`,
  );
console.log(`${((performance.now() - began) / 1000).toFixed(0)} s`);
if (values.write) writeFileSync(TABLE_FILE, trialsText(table));

function tell({ from, walk, slipped }: Tried): void {
  const celsius = Math.round(from.outside - 273.15);
  const { thermostat, kind, fan, pump, fuel, heater } = from.car.layout;
  console.log(
    `    seed ${from.seed}, ${celsius} °C, ${[fuel, thermostat, kind, fan, pump, heater].join(', ')}; ${walk.proven ?? 'nothing'} proven, ${walk.minutes} min`,
  );
  for (const { test, outcome } of walk.asked)
    console.log(`      ${test}: ${outcome}${slipped.includes(test) ? '  (slip)' : ''}`);
  console.log(
    `      ${walk.ranked
      .slice(0, 5)
      .map(({ cause, share }) => `${cause} ${Math.round(100 * share)} %`)
      .join(', ')}; not asked: ${walk.unanswered.join(', ') || '–'}`,
  );
}
