/** Places of the circuit: which layouts have them, where the drawing marks them, what they are called. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  CIRCUIT_PLACE_NAMES,
  type CircuitPlace,
  hasPlace,
  isDrawn,
  placeName,
} from '../../../src/model/circuit-places.ts';
import {
  LAYOUT,
  LAYOUT_FEATURES,
  type Layout,
  layoutIsPossible,
  withImplied,
} from '../../../src/model/layout.ts';
import { BADGE, drawPlaces } from '../../../src/site/drawings/circuit-places.ts';
import { planCircuit, WIDTH } from '../../../src/site/drawings/circuit-plan.ts';
import { faultsOf } from './well-formed.ts';

/** Layouts that a car can have, the same in every run. */
const LAYOUTS = fc
  .sample(
    fc.record(
      Object.fromEntries(LAYOUT_FEATURES.map((feature) => [feature, fc.constantFrom(...LAYOUT[feature])])),
    ),
    { numRuns: 250, seed: 22 },
  )
  .map((each) => withImplied(each as Layout))
  .filter(layoutIsPossible);
function badgesIn(svg: string): { x: number; y: number }[] {
  return [...svg.matchAll(/class="here" cx="([\d.]+)" cy="([\d.]+)"/g)].map(([, x, y]) => ({
    x: Number(x),
    y: Number(y),
  }));
}

describe('places of the circuit', () => {
  test('each is drawn on every layout that has it, inside the sheet, and none on a layout that has it not', () => {
    const seen = new Set<string>();
    for (const layout of LAYOUTS)
      for (const place of CIRCUIT_PLACE_NAMES) {
        const drawn = drawPlaces('a', 'Tarn', layout, [place]);
        // A cap that is neither on the tank nor on the radiator is said in words.
        const sits = layout.reservoir === 'header tank' ? 'on the tank' : 'on the radiator';
        const isElsewhere = place === 'cap' && layout['cap-place'] !== sits;
        const isShown = hasPlace(layout, place) && isDrawn(place) && !isElsewhere;
        expect(drawn?.svg !== undefined, `${place} on ${JSON.stringify(layout)}`).toBe(isShown);
        if (drawn?.svg === undefined) continue;
        seen.add(place);
        expect(faultsOf(drawn.svg)).toEqual([]);
        const [badge, ...more] = badgesIn(drawn.svg);
        expect(more).toEqual([]);
        const { x = -1, y = -1 } = badge ?? {};
        expect(Math.min(x, y), place).toBeGreaterThanOrEqual(BADGE);
        expect(x, place).toBeLessThanOrEqual(WIDTH - BADGE);
        expect(y, place).toBeLessThanOrEqual(planCircuit(layout, 'hot').height - BADGE);
      }
    expect(CIRCUIT_PLACE_NAMES.filter((place) => !seen.has(place))).toEqual(
      CIRCUIT_PLACE_NAMES.filter((place) => !isDrawn(place)),
    );
  });

  test('a hose is marked on the hose that is meant', () => {
    const hoses: Partial<Record<CircuitPlace, string>> = {
      'hose-to-radiator': 'hose to radiator',
      'hose-from-radiator': 'hose from radiator',
      'engine-outlet-hose': 'hose to radiator',
      'by-pass': 'by-pass',
      'heater-feed': 'heater supply',
      'heater-return': 'heater return',
      'vent-line': 'vent line',
      'engine-vent-line': 'engine vent',
    };
    for (const layout of LAYOUTS) {
      const { hoses: drawn } = planCircuit(layout, 'hot');
      for (const [place, name] of Object.entries(hoses) as [CircuitPlace, string][]) {
        const svg = drawPlaces('a', 'Tarn', layout, [place])?.svg;
        if (!svg) continue;
        const [{ x, y } = { x: 0, y: 0 }] = badgesIn(svg);
        const points = drawn.find((hose) => hose.name === name)?.points ?? [];
        const isOn = points.some((to, index) => {
          const from = points[index - 1];
          if (!from) return false;
          const within = (low: number, high: number, value: number) =>
            value >= Math.min(low, high) - 1 && value <= Math.max(low, high) + 1;
          return within(from.x, to.x, x) && within(from.y, to.y, y);
        });
        expect(isOn, `${place} on ${JSON.stringify(layout)}`).toBe(true);
      }
    }
  });

  test('what is not known of a vehicle is not marked, and without the whole layout nothing is drawn', () => {
    const [layout] = LAYOUTS;
    if (!layout) throw new Error('no layout');
    expect(hasPlace({ power: 'combustion' }, 'heater-pump')).toBe(false);
    expect(hasPlace({ ...layout, power: 'battery electric' }, 'hose-to-radiator')).toBe(false);
    const { fan: _, ...rest } = layout;
    expect(drawPlaces('a', 'Tarn', rest, ['radiator-core'])).toBeUndefined();
  });

  test('the same thing is said where it sits on each vehicle', () => {
    const names = (over: Partial<Layout>, place: CircuitPlace) =>
      placeName({ power: 'combustion', ...over }, place);
    expect(names({ thermostat: 'inlet side' }, 'thermostat')).toBe(
      'Thermostat, where the coolant comes back from the radiator',
    );
    expect(names({ 'cap-place': 'on the engine' }, 'cap')).toBe('Pressure cap, on the engine');
    expect(names({}, 'cap')).toBe('Pressure cap');
  });
});
