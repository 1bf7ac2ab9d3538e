/** The 68 walks of the review through today's trees: none proves a wrong cause, and what was missed is found. */
import { describe, expect, test } from 'vitest';
import { walkCase } from '../../src/library/case-walk.ts';
import { REVIEW_WALKS, type ReviewWalk } from './review-walks.ts';
import { isDemonstration, shelf } from './shelf.ts';

/** The aim of proven means proven. */
const LEAST_LED = 64;

const answersOf = ({ answers, besides = '' }: ReviewWalk) =>
  `${answers} ${besides}`
    .split(' ')
    .filter((each) => each !== '')
    .map((each) => each.split('='));

const walked = (isDemonstration ? REVIEW_WALKS : []).map((car) => ({
  car,
  walk: walkCase(shelf, {
    title: `${car.n}`,
    symptom: car.symptom,
    vehicle: car.vehicle,
    faults: car.cause === 'normal-behaviour' ? [] : [car.cause],
    said: '',
    mechanism: '',
    shows: Object.fromEntries(
      answersOf(car).map(([asked = '', sees = '']) => [asked, { sees, why: 'the review' }]),
    ),
    sources: [],
    reviewed: '2026-11-30',
  }),
}));
const said = walked
  .map(({ car, walk }) => `${car.n} ${car.symptom}, ${car.cause}: ${walk.ending} ${walk.proven ?? ''}`)
  .join('\n');

describe.skipIf(!isDemonstration)('the review', () => {
  test('the review is whole, and its answers are outcomes of today', () => {
    expect(REVIEW_WALKS.map(({ n }) => n)).toEqual(Array.from({ length: 68 }, (_, at) => at + 1));
    expect(REVIEW_WALKS.filter(({ missed }) => missed !== undefined)).toHaveLength(9);
    const strange = REVIEW_WALKS.flatMap((car) =>
      answersOf(car).filter(
        ([asked = '', sees = '']) => shelf.records.test.get(asked)?.data.outcomes[sees] === undefined,
      ),
    );
    expect(strange).toEqual([]);
  });

  test('no walk proves a wrong cause', () => {
    expect(
      walked.filter(({ walk }) => walk.ending === 'wrongly proven').map(({ car }) => car.n),
      said,
    ).toEqual([]);
  });

  test('the cause is proven or first in nearly all, and named in all', () => {
    const led = walked.filter(({ walk }) => walk.ending === 'proven' || walk.ending === 'first');
    expect(led.length, said).toBeGreaterThanOrEqual(LEAST_LED);
    expect(
      walked.filter(({ walk }) => walk.ending === 'missed').map(({ car }) => car.n),
      said,
    ).toEqual([]);
  });
});
