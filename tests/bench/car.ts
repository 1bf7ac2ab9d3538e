/**
 * The simulated car beside the outside figures, and how long it takes. Prints and never fails:
 * npx node tests/bench/car.ts [--write]
 * `--write` keeps the count and the misses for the page that says how far to trust the site.
 */
import { writeFileSync } from 'node:fs';
import { cpus } from 'node:os';
import { parseArgs } from 'node:util';
import { usualCar } from '../../src/car/car.ts';
import { driveOf } from '../../src/car/drive.ts';
import { runCar } from '../../src/car/run.ts';
import { CARS, compareAll } from '../car/outside/compare.ts';
import { figuresText, summarise } from '../car/outside/kept.ts';
import { NOT_HELD } from '../car/outside/not-held.ts';

const show = (value: number) =>
  !Number.isFinite(value) ? '–' : Math.abs(value) >= 100 ? value.toFixed(0) : value.toPrecision(3);

console.log(`${CARS} drawn cars; middle car, 5 to 95 %, share inside the source's range\n`);
console.log(
  '| figure | unit | source says | middle | 5–95 % | inside | kind | source |\n|---|---|---|---|---|---|---|---|',
);
const compared = compareAll();
const { values } = parseArgs({ options: { write: { type: 'boolean', default: false } } });
if (values.write)
  writeFileSync(
    new URL('../../src/site/about/car-figures.json', import.meta.url),
    figuresText(summarise(compared)),
  );
for (const { row, middle, low, high, inRange } of compared) {
  const missed = middle < row.range[0] || middle > row.range[1] ? ' (missed)' : '';
  console.log(
    `| ${row.id}${row.fitted ? ' (set by it)' : ''} | ${row.unit} | ${row.range.map(show).join('–')} | ${show(middle)}${missed} | ${show(low)}–${show(high)} | ${Math.round(100 * inRange)} % | ${row.kind} | ${row.source} |`,
  );
}
console.log('\nNot held against the car:');
for (const [id, why] of Object.entries(NOT_HELD)) console.log(`- ${id}: ${why}`);

const car = usualCar();
const drive = driveOf(300.15, [{ seconds: 600 }, { seconds: 600, speed: 25 }, { seconds: 600 }]);
for (let round = 0; round < 20; round++) runCar(car, drive);
const times = Array.from({ length: 40 }, () => {
  const start = performance.now();
  runCar(car, drive);
  return performance.now() - start;
}).toSorted((a, b) => a - b);
console.log(
  `\n30 simulated minutes: ${times[0]?.toFixed(1)} ms at best, ${times[20]?.toFixed(1)} ms in the middle; ` +
    `${cpus()[0]?.model ?? 'unknown processor'}, node ${process.version}`,
);
