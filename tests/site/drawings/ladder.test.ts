import { gzipSync } from 'node:zlib';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { drawLadder, type LadderInput, planLadder, type Rung } from '../../../src/site/drawings/ladder.ts';
import { ladderScale, TEMPERATURE_STEPS, temperatureStep } from '../../../src/site/drawings/ladder-scale.ts';
import { overlapsOf } from './overlaps.ts';
import { faultsOf } from './well-formed.ts';

function rung(id: string, low: number, high = low, kind: Rung['kind'] = 'vehicle'): Rung {
  return { id, label: `What happens at ${id}`, low, high, kind };
}

const FULL: Rung[] = [
  { ...rung('freeze', -36, -36, 'computed'), note: '50 % concentrate' },
  rung('ambient', 12),
  rung('opens', 88),
  rung('fully-open', 102),
  rung('cruise', 86, 96),
  rung('fan-on', 97),
  rung('fan-off', 92),
  rung('fan-fast', 101, 110, 'general'),
  rung('warning', 112, 120, 'general'),
  rung('flash', 105, 105, 'computed'),
  rung('boil', 129, 129, 'computed'),
];

const MARKER = {
  celsius: 107,
  label: 'You are here',
  to: { rung: 'boil', below: 'left before it boils', above: 'past boiling' },
};

function input(over: Partial<LadderInput> = {}): LadderInput {
  return { id: 'ladder', title: 'Temperature ladder', rungs: FULL, ...over };
}

const temperature = fc.integer({ min: -60, max: 160 });
const anyRungs = fc
  .array(fc.tuple(temperature, fc.integer({ min: 0, max: 20 }), fc.constantFrom('vehicle', 'general')), {
    maxLength: 13,
  })
  .map((all) => all.map(([low, more, kind], index) => rung(`r${index}`, low, low + more, kind)));

describe('temperature ladder', () => {
  test.each([
    ['wide', {}],
    ['narrow', { narrow: true }],
    ['in Fahrenheit', { unit: '°F' }],
    ['with a reading', { marker: MARKER, narrow: true }],
    ['with a reading past the rung', { marker: { ...MARKER, celsius: 134 } }],
    ['with nothing known', { rungs: [] }],
  ] as [string, Partial<LadderInput>][])('%s it is well formed', (_, over) => {
    expect(faultsOf(drawLadder(input(over)))).toEqual([]);
  });

  test('labels never overlap, whatever the figures, and stay in the picture', () => {
    fc.assert(
      fc.property(anyRungs, fc.boolean(), fc.option(temperature), (rungs, narrow, reading) => {
        const marker = reading === null ? {} : { marker: { celsius: reading, label: 'You are here' } };
        const plan = planLadder(input({ rungs, narrow, ...marker }));
        expect(plan.labels).toHaveLength(rungs.length + (reading === null ? 0 : 1));
        expect(overlapsOf(plan.labels.map((label) => ({ ...label.box, name: label.id })))).toEqual([]);
        for (const { box } of plan.labels) {
          expect(box.y).toBeGreaterThanOrEqual(0);
          expect(box.y + box.height).toBeLessThanOrEqual(plan.height);
        }
      }),
      { numRuns: 200 },
    );
  });

  test('labels stand in the order of their temperatures', () => {
    const labels = planLadder(input({ marker: MARKER })).labels;
    const order = labels.map((label) => label.celsius);
    expect(order).toEqual([...order].sort((a, b) => b - a));
  });

  test('overlapping bands stand side by side', () => {
    const bands = planLadder(input({ rungs: FULL.map((each) => ({ ...each, high: each.low + 8 })) })).bands;
    const boxes = bands.map(({ rung: { id, low, high }, x }) => ({
      name: id,
      x,
      y: low,
      width: 7,
      height: high - low,
    }));
    expect(boxes.length).toBe(FULL.length);
    expect(overlapsOf(boxes)).toEqual([]);
  });

  test('a general range is worded so, and a figure of the vehicle is not', () => {
    const svg = drawLadder(input({ rungs: [rung('a', 88), rung('b', 95, 102, 'general')] }));
    expect(svg.match(/general range</g)).toHaveLength(1);
    expect(svg).toContain('ladder-band general');
    expect(svg).toContain('ladder-rung vehicle');
  });

  // 88 °C = 190.4 °F; 18 kelvin = 32.4 Fahrenheit degrees.
  test('the reader’s unit holds for figures and for the margin', () => {
    const svg = drawLadder(
      input({
        unit: '°F',
        rungs: [rung('opens', 88), rung('boil', 125)],
        marker: { ...MARKER, celsius: 107 },
      }),
    );
    expect(svg).toContain('>190<');
    expect(svg).toContain('>32<');
    expect(svg).toContain('°F');
    expect(svg).not.toContain('°C');
  });

  test('a reading past the rung says so', () => {
    const words = (celsius: number) =>
      planLadder(input({ marker: { ...MARKER, celsius } })).labels.find((label) => label.id === 'margin');
    expect(words(120)).toMatchObject({ number: '9', words: ['left before it boils'] });
    expect(words(134)).toMatchObject({ number: '5', words: ['past boiling'] });
  });

  test('the description tells every figure with its origin', () => {
    const svg = drawLadder(input());
    const description = /<desc[^>]*>([^<]*)/.exec(svg)?.[1] ?? '';
    expect(description).toContain('What happens at boil 129 °C (computed)');
    expect(description).toContain('What happens at freeze \u221236 °C (computed, 50 % concentrate)');
    for (const { id } of FULL) expect(description).toContain(`at ${id} `);
  });

  test('the scale always rises, and takes in what lies outside it', () => {
    const scale = ladderScale([-60, 150]);
    expect(scale.bottom).toBeLessThan(-60);
    expect(scale.top).toBeGreaterThan(150);
    for (let celsius = -60; celsius < 150; celsius += 1)
      expect(scale.down(celsius + 1)).toBeLessThan(scale.down(celsius));
  });

  test('colour steps rise without a gap', () => {
    for (const [name, from] of TEMPERATURE_STEPS.slice(1)) {
      expect(temperatureStep(from)).toBe(name);
      expect(temperatureStep(from - 0.01)).not.toBe(name);
    }
  });

  test('figures that cannot be drawn are refused with the reason', () => {
    expect(() => drawLadder(input({ rungs: [rung('opens', 92, 88)] }))).toThrow(
      'Rung "opens" is upside down: low 92 °C is above high 88 °C.',
    );
    expect(() => drawLadder(input({ rungs: [rung('opens', Number.NaN)] }))).toThrow(
      'Rung "opens" has no temperature',
    );
    expect(() => drawLadder(input({ rungs: [rung('opens', 88)], marker: MARKER }))).toThrow(
      'held against "boil", which is not on the ladder: opens',
    );
  });

  test('a full ladder is under 2.5 kB as sent', () => {
    expect(gzipSync(drawLadder(input({ narrow: true, marker: MARKER }))).length).toBeLessThan(2500);
  });
});
