import { gzipSync } from 'node:zlib';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { LAYOUT, LAYOUT_FEATURES, type Layout } from '../../../src/model/layout.ts';
import { circuitStates, drawCircuit } from '../../../src/site/drawings/circuit.ts';
import {
  type CircuitPlan,
  hoseBoxes,
  labelBox,
  planCircuit,
  WIDTH,
} from '../../../src/site/drawings/circuit-plan.ts';
import { overlapsOf, overlapsWith } from './overlaps.ts';
import { faultsOf } from './well-formed.ts';

const PLAIN: Layout = {
  power: 'combustion',
  thermostat: 'outlet side',
  'thermostat-kind': 'plain wax',
  heater: 'always flowing',
  'heater-pump': 'none',
  reservoir: 'header tank',
  fan: 'electric, one stage',
  'fan-switched-by': 'switch in the radiator',
  pump: 'timing belt',
  radiator: 'cross-flow',
  turbo: 'none',
  'egr-cooler': 'none',
  'oil-cooler': 'none',
  'transmission-cooler': 'none',
};

function layout(over: Partial<Layout>): Layout {
  return { ...PLAIN, ...over };
}

/** Features that move parts about, each with each other; the rest are cycled through rather than multiplied. */
const MOVING = [
  'power',
  'thermostat',
  'heater',
  'heater-pump',
  'reservoir',
  'radiator',
  'turbo',
  'egr-cooler',
  'oil-cooler',
  'transmission-cooler',
] as const;

/** Every layout a record can hold in the features that move parts about. */
function everyLayout(): Layout[] {
  let all: Partial<Layout>[] = [{}];
  for (const feature of MOVING)
    all = all.flatMap((partial) => LAYOUT[feature].map((value) => ({ ...partial, [feature]: value })));
  const cycled = LAYOUT_FEATURES.filter((feature) => !MOVING.some((each) => each === feature));
  return all.map((partial, index) => {
    const rest = cycled.map((feature, turn) => [
      feature,
      LAYOUT[feature][(index * (turn + 1)) % LAYOUT[feature].length],
    ]);
    return { ...PLAIN, ...partial, ...Object.fromEntries(rest) };
  });
}

const anyLayout = fc
  .record(
    Object.fromEntries(LAYOUT_FEATURES.map((feature) => [feature, fc.constantFrom(...LAYOUT[feature])])),
  )
  .map((over): Layout => ({ ...PLAIN, ...over }));

/** Where marks belong on a part. */
const MARKS_ON = ['radiator', 'engine', 'header tank', 'recovery bottle'];

function collisions(plan: CircuitPlan): string[] {
  const labels = plan.labels.map((label) => ({
    name: label.lines.join(' '),
    on: label.on,
    ...labelBox(label),
  }));
  const marks = plan.marks.map(({ mark, x, y }) => ({
    name: mark,
    x: x - 11,
    y: y - 11,
    width: 22,
    height: 22,
  }));
  const hoses = plan.hoses.flatMap(hoseBoxes);
  const ofLabels = labels.flatMap((label) =>
    overlapsWith(label, [...hoses, ...plan.parts.filter(({ name }) => name !== label.on)]),
  );
  const offMarks = plan.parts.filter(({ name }) => !MARKS_ON.includes(name));
  const ofMarks = marks.flatMap((mark) => overlapsWith(mark, offMarks));
  const outside = labels
    .filter(({ x, width, y, height }) => x < 0 || x + width > WIDTH || y < 0 || y + height > plan.height)
    .map(({ name }) => `${name} off the sheet`);
  return [...overlapsOf([...labels, ...marks]), ...ofLabels, ...ofMarks, ...outside];
}

describe('drawn circuit', () => {
  test('no label touches a label, a mark, a hose or a part, on any layout', () => {
    const found = new Map<string, string>();
    for (const each of everyLayout()) {
      // Both states have the same labels in the same places; the next test draws hot ones too.
      for (const collision of collisions(planCircuit(each, 'cold')))
        if (!found.has(collision)) found.set(collision, JSON.stringify(each));
    }
    expect(Object.fromEntries(found)).toEqual({});
  }, 60_000);

  test('any layout in any state is a well-formed picture under 5 kB as sent', () => {
    fc.assert(
      fc.property(anyLayout, fc.constantFrom('cold', 'hot'), (each, state) => {
        const { svg } = drawCircuit({ id: 'circuit', layout: each, state });
        expect(faultsOf(svg)).toEqual([]);
        expect(collisions(planCircuit(each, state))).toEqual([]);
        expect(gzipSync(svg).length).toBeLessThan(5000);
      }),
      { numRuns: 300 },
    );
  }, 60_000);

  test('every mark drawn is in the list, every point in the list is drawn', () => {
    fc.assert(
      fc.property(anyLayout, (each) => {
        const { svg, points } = drawCircuit({ id: 'circuit', layout: each, state: 'hot' });
        const drawn = [...svg.matchAll(/class="mark \w+"[^>]*>([FM]\d+)</g)].map((match) => match[1]);
        expect(drawn.sort()).toEqual(points.map(({ mark }) => mark).sort());
        expect(new Set(points.map(({ name }) => name)).size).toBe(points.length);
      }),
    );
  });

  test('the thermostat decides what stands still', () => {
    const flows = (over: Partial<Layout>, state: 'cold' | 'hot') =>
      Object.fromEntries(planCircuit(layout(over), state).hoses.map((hose) => [hose.name, hose.flow]));
    expect(flows({}, 'cold')).toMatchObject({ 'hose to radiator': 'still', 'by-pass': 'full' });
    expect(flows({}, 'hot')).toMatchObject({ 'hose to radiator': 'full', 'by-pass': 'little' });
    expect(flows({ 'thermostat-kind': 'by-pass closing' }, 'hot')).toMatchObject({ 'by-pass': 'still' });
    expect(flows({ thermostat: 'none', 'thermostat-kind': 'none' }, 'cold')).toMatchObject({
      'hose to radiator': 'full',
    });
    for (const state of ['cold', 'hot'] as const)
      expect(flows({}, state)).toMatchObject({ 'heater supply': 'full', 'pump suction': 'full' });
  });

  test('the thermostat sits where the layout says, the tank’s return on the pump’s side of it', () => {
    for (const thermostat of ['inlet side', 'outlet side'] as const) {
      const plan = planCircuit(layout({ thermostat }), 'cold');
      const onHose = thermostat === 'outlet side' ? 'hose to radiator' : 'hose from radiator';
      const hose = plan.hoses.find(({ name }) => name === onHose);
      expect(hose?.points.at(-1)?.y).toBe(plan.thermostat?.y);
    }
    const inlet = planCircuit(layout({ thermostat: 'inlet side' }), 'cold');
    const tankReturn = inlet.hoses.find(({ name }) => name === 'tank return');
    expect(tankReturn?.points[0]?.x).toBeGreaterThan(inlet.thermostat?.x ?? Number.POSITIVE_INFINITY);
  });

  test('every value of the layout changes the drawing or its words', () => {
    const described = (each: Layout) => drawCircuit({ id: 'a', layout: each, state: 'hot' }).svg;
    const alike = LAYOUT_FEATURES.flatMap((feature) => {
      // A bimetal needs no word: the drawn clutch has one unless it says otherwise.
      const values = LAYOUT[feature].filter(
        (value) => value !== 'bimetal' && !(feature === 'charge-air' && value === 'air-cooled'),
      );
      const drawn = values.map((value) => described({ ...PLAIN, [feature]: value }));
      return new Set(drawn).size === values.length ? [] : [feature];
    });
    expect(alike).toEqual([]);
  });

  test('nothing to regulate the flow leaves one state to draw', () => {
    expect(circuitStates(layout({}))).toEqual(['cold', 'hot']);
    expect(circuitStates(layout({ thermostat: 'none', 'thermostat-kind': 'none' }))).toEqual(['hot']);
    expect(circuitStates(layout({ power: 'battery electric' }))).toEqual(['hot']);
  });

  // Common practice, no source: the two sides read differently at the hose to the radiator.
  test('what a hose tells depends on the side of the thermostat', () => {
    const tells = (over: Partial<Layout>, mark: string) =>
      drawCircuit({ id: 'a', layout: layout(over), state: 'cold' }).points.find((each) => each.mark === mark)
        ?.tells;
    expect(tells({ thermostat: 'outlet side' }, 'F1')).toMatch(/^Cool while the thermostat is shut/);
    expect(tells({ thermostat: 'inlet side' }, 'F1')).toContain('proves nothing');
    expect(tells({ thermostat: 'inlet side' }, 'F2')).toMatch(/^Cold until the thermostat/);
  });

  test('points come and go with the parts they belong to', () => {
    const names = (over: Partial<Layout>) =>
      drawCircuit({ id: 'a', layout: layout(over), state: 'cold' }).points.map(({ name }) => name);
    expect(names({})).toContain('Fan switch in the radiator');
    expect(names({ 'fan-switched-by': 'engine controller' })).not.toContain('Fan switch in the radiator');
    expect(names({})).toContain('Vent line to the header tank');
    expect(names({ reservoir: 'recovery bottle' })).toContain('Level in the recovery bottle');
    expect(names({ reservoir: 'recovery bottle' })).not.toContain('Vent line to the header tank');
    expect(names({ thermostat: 'none', 'thermostat-kind': 'none' })).not.toContain('By-pass');
  });

  test('an electric drive says who may go on, and offers nothing to feel', () => {
    for (const power of ['hybrid', 'battery electric'] as const) {
      const { svg } = drawCircuit({ id: 'a', layout: layout({ power }), state: 'hot' });
      expect(svg).toContain('High voltage beside these hoses');
      expect(svg).toContain('for trained people only');
    }
    const { points } = drawCircuit({ id: 'a', layout: layout({ power: 'battery electric' }), state: 'hot' });
    expect(points.filter(({ by }) => by === 'feel')).toEqual([]);
    expect(drawCircuit({ id: 'a', layout: PLAIN, state: 'hot' }).svg).not.toContain('High voltage');
  });

  test('the description goes the way of the coolant', () => {
    const of = (state: 'cold' | 'hot') =>
      /<desc[^>]*>([^<]*)/.exec(drawCircuit({ id: 'a', layout: PLAIN, state }).svg)?.[1];
    expect(of('cold')).toContain('is shut: coolant returns to the pump by the by-pass');
    expect(of('hot')).toContain('is open: coolant goes through the radiator, and a little still takes');
    expect(of('cold')).toContain('F1 Hose from engine to radiator');
  });

  test('the same layout gives the same drawing', () => {
    const draw = () => drawCircuit({ id: 'a', layout: PLAIN, state: 'cold' }).svg;
    expect(draw()).toBe(draw());
  });
});
