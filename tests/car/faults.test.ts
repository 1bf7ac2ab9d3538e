/** The simulated car reads nothing of the shelf; here its names are held against it. */
import { readdirSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { drawCar } from '../../src/car/car.ts';
import { FAULT_IDS, FAULTS, layoutFor, severityAt, withFault } from '../../src/car/faults.ts';
import { PARAMETERS, type Parameter } from '../../src/car/parameters.ts';

const causes = readdirSync('content/causes').map((name) => name.replace('.yaml', ''));

test('names faults as the shelf names its causes', () => {
  expect(FAULT_IDS.filter((id) => !causes.includes(id))).toEqual([]);
  expect(FAULT_IDS.length).toBeGreaterThanOrEqual(40);
});

test('every fault changes something, and stays inside its range', () => {
  for (const id of FAULT_IDS) {
    const { range } = FAULTS[id];
    expect(severityAt(id, 0), id).toBeCloseTo(range[0], 9);
    expect(severityAt(id, 1), id).toBeCloseTo(range[1], 9);
    if (id === 'normal-behaviour') continue;
    const car = drawCar(1, { layout: layoutFor(id) });
    expect(withFault(car, id, severityAt(id, 0.5)).condition, id).not.toEqual(car.condition);
  }
});

describe('a range taken wider or narrower', () => {
  test('keeps its middle', () => {
    for (const id of FAULT_IDS) expect(severityAt(id, 0.5, 0.5)).toBeCloseTo(severityAt(id, 0.5), 9);
  });

  test('keeps shares between 0 and 1', () => {
    expect(severityAt('pump-impeller-failed', 0, 2)).toBe(0);
    expect(severityAt('thermostat-stuck-open', 1, 2)).toBe(1);
    expect(severityAt('hose-leak', 0, 2)).toBeGreaterThan(0);
  });
});

test('every parameter has an ordered range and a source', () => {
  for (const [id, parameter] of Object.entries(PARAMETERS)) {
    const { range, diesel = range, from }: Parameter = parameter;
    for (const [low, usual, high] of [range, diesel]) {
      expect(low, id).toBeLessThan(usual);
      expect(usual, id).toBeLessThan(high);
    }
    expect(from.length, id).toBeGreaterThan(2);
  }
});

test('the same seed draws the same car, inside the table', () => {
  expect(drawCar(7)).toEqual(drawCar(7));
  expect(drawCar(7)).not.toEqual(drawCar(8));
  for (let seed = 0; seed < 200; seed++) {
    const { values, displacement } = drawCar(seed);
    expect(displacement).toBeGreaterThan(0.9e-3);
    expect(values.waxLag).toBeGreaterThanOrEqual(5);
    expect(values.waxLag).toBeLessThanOrEqual(15);
  }
});
