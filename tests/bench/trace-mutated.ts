/** 10,000 spoilt files through the trace reader. Prints figures and never fails: npx node tests/bench/trace-mutated.ts [count] */
import { STAMP_87 } from '../trace/known-cars.ts';
import { isWellSaid, saidAbout } from '../trace/read-mutated.ts';

const count = Number(process.argv[2] ?? 10_000);
const kinds = new Map<string, number>();
const bad: string[] = [];
let longest = { seed: 0, ms: 0 };
for (let seed = 0; seed < count; seed++) {
  const start = performance.now();
  try {
    const said = saidAbout(seed, seed % 3 === 0 ? undefined : STAMP_87);
    kinds.set(said.kind, (kinds.get(said.kind) ?? 0) + 1);
    if (!isWellSaid(said))
      bad.push(`${seed}: ${said.words.find((each) => /NaN|undefined|Infinity/.test(each))}`);
  } catch (error) {
    bad.push(`${seed}: threw ${error instanceof Error ? error.message : String(error)}`);
  }
  const ms = performance.now() - start;
  if (ms > longest.ms) longest = { seed, ms };
}
console.log(
  `${count} files: ${[...kinds].map(([kind, times]) => `${kind} ${times}`).join(', ')}; longest ${longest.ms.toFixed(0)} ms (${longest.seed})`,
);
console.log(
  bad.length === 0 ? 'none threw, none without words' : `${bad.length} bad\n${bad.slice(0, 20).join('\n')}`,
);
