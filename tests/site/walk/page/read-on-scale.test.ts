import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { METRIC, US } from '../../../../src/model/habit.ts';
import { readQuantity } from '../../../../src/model/quantity.ts';
import { readOnScale, unitShown, type VehicleFigures } from '../../../../src/site/walk/page/read-on-scale.ts';
import { type ReadingScale, readingScaleOf } from '../../../../src/site/walk/reading-scale.ts';
import { shelf } from '../../../shelf/shelf.ts';

const HOSE: ReadingScale = {
  test: 'hose',
  measures: 'Scan figure when the hose warms',
  unit: '°C',
  bands: {
    early: { to: '{thermostat.opens} - 15 K' },
    'a-little-early': { from: '{thermostat.opens} - 15 K', to: '{thermostat.opens} - 5 K' },
    'on-time': { from: '{thermostat.opens} - 5 K' },
  },
};

function vehicle(opens: string): VehicleFigures {
  const read = readQuantity(opens, 'temperature');
  if (!read.ok) throw new Error(read.fault.found);
  return { figures: { 'thermostat.opens': { quantity: read.quantity } }, layout: {} };
}

const take = (typed: string, of = vehicle('88 °C'), habit = METRIC) =>
  readOnScale(HOSE, typed, habit, of, (outcome) => outcome);
const takeUnknown = (typed: string) => readOnScale(HOSE, typed, METRIC, undefined, (outcome) => outcome);

describe('a typed reading', () => {
  test('chooses the answer by this vehicle’s figure; a limit belongs to the band it starts', () => {
    expect(take('61')).toMatchObject({ ok: true, outcome: 'early', reading: '61 °C' });
    expect(take('73')).toMatchObject({ outcome: 'a-little-early' });
    expect(take('82,9')).toMatchObject({ outcome: 'a-little-early' });
    expect(take('83')).toMatchObject({ outcome: 'on-time' });
    expect(take('73', vehicle('92 °C'))).toMatchObject({ outcome: 'early' });
  });

  test('is read in the reader’s unit, and in any other that is written', () => {
    expect(unitShown(HOSE, US)).toBe('°F');
    // 142 °F is 61.1 °C.
    expect(take('142', vehicle('88 °C'), US)).toMatchObject({ outcome: 'early', reading: '142 °F' });
    expect(take('142 °F')).toMatchObject({ outcome: 'early' });
  });

  test('without this vehicle’s figure it says which one decides, and takes what every such vehicle would show', () => {
    expect(takeUnknown('20')).toMatchObject({ ok: true, outcome: 'early' });
    const near = takeUnknown('78');
    expect(near.ok).toBe(false);
    expect(!near.ok && near.says).toContain('not known here');
  });

  test('what is no reading is asked back', () => {
    for (const typed of ['', 'warm', '12 bar', '60 to 70'])
      expect(take(typed)).toMatchObject({ ok: false, says: expect.stringMatching(/^.{10,}[.]$/) });
  });
});

test('every reading of every scale on the shelf has one answer for a vehicle of the shelf', () => {
  const cars = [...shelf.records.vehicle.values()].map(({ data }) => ({
    layout: data.layout,
    figures: Object.fromEntries(
      Object.entries(data.figures).flatMap(([path, figure]) =>
        figure ? [[path, { quantity: figure.is }]] : [],
      ),
    ),
  }));
  const scales = [...shelf.records.test.values()].flatMap(({ id, data }) => readingScaleOf(id, data) ?? []);
  expect(scales.length).toBeGreaterThan(20);
  fc.assert(
    fc.property(
      fc.constantFrom(...scales),
      fc.constantFrom(...cars),
      fc.double({ min: 0, max: 400, noNaN: true }),
      (scale, car, value) => {
        const read = readOnScale(scale, value.toFixed(2), METRIC, car, (outcome) => outcome);
        if (read.ok) expect(Object.keys(scale.bands)).toContain(read.outcome);
        // The only reason not to answer is a figure that this vehicle lacks.
        else expect(read.says).toContain('not known here');
      },
    ),
    { numRuns: 500 },
  );
});
