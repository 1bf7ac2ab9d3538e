/**
 * The case bank walked through the trees and through the planner: how walks of cars with a known fault end, by symptom.
 * `--symptom <id>` for one, `--failing` for the walks that ended wrong, `--case <id>` for one walk read aloud.
 */
import { parseArgs } from 'node:util';
import { type CaseEnding, type CaseWalk, walkCase } from '../../src/library/case-walk.ts';
import { readShelf } from '../../src/library/read-shelf.ts';
import type { Entry } from '../../src/library/shelf.ts';

const { values } = parseArgs({
  options: {
    symptom: { type: 'string' },
    failing: { type: 'boolean', default: false },
    case: { type: 'string' },
    planner: { type: 'boolean', default: false },
  },
});
const { shelf } = await readShelf('content');
const ENDINGS: CaseEnding[] = ['proven', 'first', 'named', 'missed', 'wrongly proven'];
const GOOD: CaseEnding[] = ['proven', 'first'];

const walked = [...shelf.records.case.values()]
  .filter(({ id }) => values.case === undefined || id === values.case)
  .filter(({ data }) => values.symptom === undefined || data.symptom === values.symptom)
  .map((entry) => ({ entry, walk: walkCase(shelf, entry.data, values.planner ? 'planner' : 'tree') }));

const bySymptom = new Map<string, typeof walked>();
for (const each of walked) {
  const { symptom } = each.entry.data;
  bySymptom.set(symptom, [...(bySymptom.get(symptom) ?? []), each]);
}
console.log('cases proven first named missed wrong | median min | symptom');
for (const [symptom, all] of [...bySymptom].sort()) line(symptom, all);
if (bySymptom.size > 1) line('all', walked);

function line(name: string, all: typeof walked): void {
  const count = (ending: CaseEnding) => all.filter(({ walk }) => walk.ending === ending).length;
  const minutes = all.map(({ walk }) => walk.minutes).sort((a, b) => a - b);
  console.log(
    String(all.length).padStart(5),
    ...ENDINGS.map((ending) => String(count(ending)).padStart(5)),
    '|',
    String(minutes[Math.floor(minutes.length / 2)] ?? 0).padStart(4),
    '|',
    name,
  );
}

for (const { entry, walk } of walked)
  if (values.case !== undefined || (values.failing && !GOOD.includes(walk.ending))) tell(entry, walk);

function tell({ id, data }: Entry<'case'>, walk: CaseWalk): void {
  console.log(
    `\n${id}: ${data.symptom} on ${data.vehicle}, ${data.faults.join(' and ') || 'nothing wrong'}. ${walk.ending}${walk.proven ? `, ${walk.proven} proven` : ''}, ${walk.minutes} min`,
  );
  for (const { test, outcome } of walk.asked)
    console.log(`  ${test}: ${outcome}  (${data.shows[test]?.why ?? 'recheck'})`);
  if (walk.unanswered.length > 0) console.log(`  the case does not say: ${walk.unanswered.join(', ')}`);
  for (const { cause, share } of walk.ranked.slice(0, 6))
    console.log(`    ${(share * 100).toFixed(0).padStart(3)} % ${cause}`);
}
