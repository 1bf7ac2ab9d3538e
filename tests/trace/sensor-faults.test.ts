import { describe, expect, test } from 'vitest';
import { checkSensor } from '../../src/trace/sensor-faults.ts';

/** One reading a second, °C. */
function channel(values: readonly number[], every = 1) {
  return {
    time: Float64Array.from(values, (_, at) => at * every),
    value: Float64Array.from(values, (each) => each + 273.15),
  };
}
const warm = (count: number) => Array.from({ length: count }, (_, at) => 60 + at * 0.1);
const kinds = (values: readonly number[], every?: number) =>
  checkSensor(channel(values, every)).faults.map(({ kind }) => kind);

describe('a reading that cannot be the coolant', () => {
  test('open all along, shorted from some time on', () => {
    expect(kinds(Array(100).fill(-40))).toEqual(['open']);
    expect(kinds([...warm(50), ...Array(50).fill(215)])).toEqual(['short']);
  });

  test('out and back again is a contact, not a cut wire', () => {
    expect(kinds([...warm(20), -40, -40, -40, ...warm(20)])).toEqual(['jump']);
  });

  test('off the top of the scale without a leap is no heat and no frost', () => {
    expect(kinds(Array.from({ length: 200 }, (_, at) => 110 + at * 0.5))).toEqual(['short']);
  });

  test('a jump and its size', () => {
    const { faults } = checkSensor(channel([...warm(20), ...warm(20).map((each) => each - 25)]));
    expect(faults).toHaveLength(1);
    expect(faults[0]).toMatchObject({ kind: 'jump', at: 20, times: 1 });
    expect(faults[0]?.to).toBeCloseTo(35 + 273.15, 6);
  });

  test('one or two lone readings are slips of the log: taken out, nobody blamed', () => {
    const { faults, slips, clean } = checkSensor(
      channel([...warm(20), 99, ...warm(20).map((each) => each + 2)]),
    );
    expect(faults).toEqual([]);
    expect(slips).toBe(1);
    expect(clean.value.length).toBe(40);
    expect(checkSensor(channel([...warm(20), -40, ...warm(20)])).faults).toEqual([]);
  });

  test('three spikes are a fault', () => {
    const spiked = warm(60).map((each, at) => (at === 10 || at === 30 || at === 50 ? each + 30 : each));
    expect(kinds(spiked)).toEqual(['jump']);
  });
});

describe('what only looks like it', () => {
  test('a hard frost start reads the bottom of the scale and rises out of it', () => {
    expect(kinds(Array.from({ length: 200 }, (_, at) => -40 + at * 0.2))).toEqual([]);
  });

  test('frost that hovers about the bottom of the scale leaps nowhere', () => {
    const hovers = Array.from({ length: 200 }, (_, at) => -41 + at * 0.05 + (at % 3));
    expect(kinds(hovers)).toEqual([]);
  });

  test('cold water past the sensor as the thermostat snaps open: 15 K in ten seconds', () => {
    const snap = [
      ...warm(20),
      ...Array.from({ length: 10 }, (_, at) => 61 - 1.5 * at),
      ...warm(10).map((each) => each - 14),
    ];
    expect(kinds(snap)).toEqual([]);
  });

  test('readings a minute apart may differ by anything a minute can do', () => {
    expect(kinds([15, 27, 38, 50, 61, 72, 83], 60)).toEqual([]);
  });
});
