/**
 * Every case of the bank walked through its tree. The cases were written from the mechanism by another hand than the trees, so
 * this judges evidence and trees together. Cases that a person has settled as hard do not count.
 */
import { describe, expect, test } from 'vitest';
import { figuresBySymptom, figuresOf, isHard, shareOf, walkBank } from '../../src/library/case-bank.ts';
import { isDemonstration, shelf } from './shelf.ts';

/** Shares of the whole bank, the aims of the bank that judges. */
const MOST_WRONG = 0.005;
const LEAST_LED = 0.92;
const LEAST_NAMED = 0.98;

const walked = walkBank(shelf).filter((each) => !isHard(each));
const all = figuresOf(walked);

/** Said on failure: the bank by complaint, and the walks that ended wrong. */
function table(): string {
  const lines = [...figuresBySymptom(walked), ['all', all] as const].map(
    ([symptom, { cases, endings, medianMinutes }]) =>
      `${symptom}: ${cases} cases; ${Object.entries(endings)
        .map(([ending, count]) => `${count} ${ending}`)
        .join(', ')}; median ${medianMinutes} min`,
  );
  const wrong = walked.flatMap(({ entry, walk }) =>
    walk.ending === 'wrongly proven' || walk.ending === 'missed'
      ? [`${walk.ending}: ${entry.id}${walk.proven === undefined ? '' : ` (${walk.proven})`}`]
      : [],
  );
  return [...lines, ...wrong].join('\n');
}

describe.skipIf(!isDemonstration)('the bank', () => {
  test('the bank has cases, and each walk of one ends in one way', () => {
    expect(all.cases).toBeGreaterThan(200);
    expect(shareOf(all, 'proven', 'first', 'named', 'missed', 'wrongly proven')).toBeCloseTo(1, 9);
  });

  test('a wrong cause is seldom called proven', () => {
    expect(shareOf(all, 'wrongly proven'), table()).toBeLessThanOrEqual(MOST_WRONG);
  });

  test('the fault is mostly proven or first', () => {
    expect(shareOf(all, 'proven', 'first'), table()).toBeGreaterThanOrEqual(LEAST_LED);
  });

  test('the fault is nearly always named', () => {
    expect(shareOf(all, 'proven', 'first', 'named'), table()).toBeGreaterThanOrEqual(LEAST_NAMED);
  });
});
