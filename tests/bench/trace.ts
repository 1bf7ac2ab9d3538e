/**
 * How often the trace reader is right, and how long it takes. Prints figures and never fails:
 * npx node tests/bench/trace.ts [runs] [first seed]
 */
import { cpus } from 'node:os';
import { judgeTrace } from '../../src/trace/judge-trace.ts';
import { readLog } from '../../src/trace/read/read-log.ts';
import { traceVehicleOf } from '../../src/trace/vehicle.ts';
import { FAULTS } from '../trace/car.ts';
import { longLog } from '../trace/long-log.ts';
import { countBy, type Run, runOne } from '../trace/run-simulation.ts';

const [count = 2000, first = 30_000] = process.argv.slice(2).map(Number);
console.log(
  `${cpus()[0]?.model ?? 'unknown processor'} × ${cpus().length}, node ${process.version}, ${process.platform}`,
);

const runs = Array.from({ length: count }, (_, at) => runOne(first + at));
const SCORES = ['right', 'cannot tell', 'missed', 'wrong blame'] as const;

function row(name: string, part: readonly Run[]): void {
  const counts = countBy(part, ({ score }) => score);
  const cells = SCORES.map((score) => {
    const each = counts.get(score) ?? 0;
    return `${String(each).padStart(5)} ${((100 * each) / Math.max(1, part.length)).toFixed(1).padStart(5)} %`;
  });
  console.log(`${name.padEnd(26)}${String(part.length).padStart(5)} ${cells.join('  ')}`);
}

console.log(`\n${count} simulated road tests from seed ${first}`);
console.log(`${''.padEnd(26)} runs ${SCORES.map((score) => score.padStart(13)).join('  ')}`);
for (const fault of FAULTS)
  row(
    fault,
    runs.filter((run) => run.fault === fault),
  );
console.log();
for (const from of [-25, -10, 0, 10, 20, 30])
  row(
    `${from} to ${nextOf(from)} °C outside`,
    runs.filter(({ outside }) => outside >= from && outside < nextOf(from)),
  );
row('all', runs);
const asked = Array.from({ length: Math.ceil(count / 5) }, (_, at) => runOne(first + at, true));
console.log(
  `\n${asked.length} on the drive the page asks for, from cold, with road speed, engine speed and intake air`,
);
for (const fault of FAULTS)
  row(
    fault,
    asked.filter((run) => run.fault === fault),
  );
row('all', asked);
const withheld = runs
  .filter(({ score }) => score === 'cannot tell')
  .flatMap(({ open }) => open.map((reason) => ({ reason })));
console.log(
  `\nWhy not: ${[...countBy(withheld, ({ reason }) => reason)].map(([reason, times]) => `${reason} ${times}`).join(', ')}`,
);
const untold = runs.filter(({ score }) => score === 'cannot tell');
const notAsked = countBy(untold, ({ notAsked }) => notAsked ?? 'asked');
console.log(
  `Of the ${untold.length} that could not be told, ${notAsked.get('never warm') ?? 0} never came within 5 K of the opening, ` +
    `${notAsked.get('fan not reached') ?? 0} with a dead fan never came to where it starts; ${notAsked.get('asked') ?? 0} are left`,
);
const wrong = runs.filter(({ score }) => score === 'wrong blame' || score === 'missed');
console.log(`Wrong: ${wrong.map(({ seed, fault, finding }) => `${seed} ${fault} -> ${finding}`).join('; ')}`);

function nextOf(from: number): number {
  return from === -25 ? -10 : from + 10;
}

const text = longLog();
const start = performance.now();
const reading = readLog(text);
let longest = 0;
let parts = 0;
for (let last = performance.now(); ; ) {
  const step = reading.next();
  const now = performance.now();
  longest = Math.max(longest, now - last);
  last = now;
  parts++;
  if (step.done) {
    const read = performance.now();
    if (!step.value.ok) throw new Error(step.value.fault.message);
    const judged = judgeTrace(step.value.trace, traceVehicleOf(undefined));
    const end = performance.now();
    console.log(
      `\n2 h at 10 Hz × 20 columns, ${(text.length / 1e6).toFixed(1)} MB: read in ${(read - start).toFixed(0)} ms in ${parts} parts, ` +
        `the longest ${longest.toFixed(1)} ms; judged in ${(end - read).toFixed(0)} ms (${judged.verdict.finding})`,
    );
    break;
  }
}
