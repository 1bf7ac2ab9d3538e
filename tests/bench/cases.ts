/**
 * The case bank walked through the trees and through the planner: how walks of cars with a known fault end, by symptom.
 * `--symptom <id>` for one, `--failing` for the walks that ended wrong, `--case <id>` for one walk read aloud.
 */
import { parseArgs } from 'node:util';
import { type BankFigures, figuresBySymptom, figuresOf, walkBank } from '../../src/library/case-bank.ts';
import type { CaseEnding, CaseWalk } from '../../src/library/case-walk.ts';
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
const GOOD: CaseEnding[] = ['proven', 'first'];

const some = new Map(
  [...shelf.records.case].filter(
    ([id, { data }]) =>
      (values.case === undefined || id === values.case) &&
      (values.symptom === undefined || data.symptom === values.symptom),
  ),
);
const walked = walkBank({ records: { ...shelf.records, case: some } }, values.planner ? 'planner' : 'tree');

console.log('cases proven first named missed wrong | median min | symptom');
const bySymptom = figuresBySymptom(walked);
for (const [symptom, figures] of bySymptom) line(symptom, figures);
if (bySymptom.size > 1) line('all', figuresOf(walked));

function line(name: string, { cases, endings, medianMinutes }: BankFigures): void {
  const count = (number: number) => String(number).padStart(5);
  console.log(
    [cases, ...Object.values(endings)].map(count).join(' '),
    '|',
    String(medianMinutes).padStart(4),
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
