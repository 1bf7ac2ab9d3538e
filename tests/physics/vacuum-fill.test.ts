import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { atmosphericPressure } from '../../src/physics/atmosphere.ts';
import { fromCelsius, fromLitres, gaugePascal, massFraction, metre } from '../../src/physics/units.ts';
import { vacuumDraw } from '../../src/physics/vacuum-fill.ts';
import { spread } from './spread.ts';

const draw = (litres: number, bar: number, { celsius = 20, altitude = 0, lift = 0 } = {}) =>
  vacuumDraw({
    empty: fromLitres(litres),
    vacuum: gaugePascal(bar * 1e5),
    outside: atmosphericPressure(metre(altitude)),
    temperature: fromCelsius(celsius),
    mixture: { glycol: 'ethylene', fraction: massFraction(0) },
    lift: metre(lift),
  });

describe('vacuumDraw', () => {
  // Boyle by hand with published water vapour (IAPWS-IF97: 2.339 kPa at 20 °C, 7.384 at 40, 19.946 at 60) and ISO 2533 air (101.325 kPa at
  // the sea, 84.556 at 1,500 m): share = (air + gauge − vapour)/(air − vapour).
  test.each([
    [-0.85, 20, 0, (101.325 - 85 - 2.339) / (101.325 - 2.339)],
    [-0.9, 40, 0, (101.325 - 90 - 7.384) / (101.325 - 7.384)],
    [-0.7, 20, 1500, (84.556 - 70 - 2.339) / (84.556 - 2.339)],
    [-0.6, 60, 0, (101.325 - 60 - 19.946) / (101.325 - 19.946)],
  ])('%d bar at %d °C and %d m leaves a share of %d as air', (bar, celsius, altitude, share) => {
    const { airLeft, draws } = draw(5, bar, { celsius, altitude });
    expect(airLeft * 1e3).toBeCloseTo(5 * share, 2);
    expect((airLeft + draws) * 1e3).toBeCloseTo(5, 9);
  });

  // By hand: a column of water of 1 m is 9.79 kPa, so the last of the air is pressed together less.
  test('draws in less from a container that stands lower', () => {
    const { draws } = draw(5, -0.85, { lift: 1 });
    const share = (101.325 - 85 - 2.339) / (101.325 - 9.79 - 2.339);
    expect(draws * 1e3).toBeCloseTo(5 * (1 - share), 2);
  });

  // IAPWS-IF97: water of 60 °C boils under 19.946 kPa, so a gauge ends 81.4 kPa below the air at the sea.
  test('ends where the water left inside boils', () => {
    expect(draw(5, 0, { celsius: 60 }).deepest / 1e3).toBeCloseTo(-(101.325 - 19.946), 1);
    expect(() => draw(5, -0.82, { celsius: 60 })).toThrow('vacuum');
  });

  test('draws in no less for a deeper vacuum, and never more than is empty', () => {
    fc.assert(
      fc.property(
        spread(0.6, 50),
        spread(-0.9, 0),
        spread(0, 0.05),
        spread(0, 1),
        (litres, bar, more, lift) => {
          const [shallow, deep] = [draw(litres, bar, { lift }), draw(litres, bar - more, { lift })];
          expect(deep.draws).toBeGreaterThanOrEqual(shallow.draws - 1e-12);
          expect(deep.draws).toBeLessThanOrEqual(litres / 1e3);
        },
      ),
    );
  });
});
