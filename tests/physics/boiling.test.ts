import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { atmosphericPressure } from '../../src/physics/atmosphere.ts';
import {
  boilingPoint,
  boilingPointUnderCap,
  boilingUncertainty,
  boilMargin,
  flashTemperature,
  mixtureVapourPressure,
} from '../../src/physics/boiling.ts';
import type { Glycol, Mixture } from '../../src/physics/glycol.ts';
import { toMassFraction } from '../../src/physics/strength.ts';
import {
  absolutePascal,
  fromCelsius,
  gaugePascal,
  massFraction,
  metre,
  toCelsius,
  volumeFraction,
} from '../../src/physics/units.ts';
import { waterBoilingPoint } from '../../src/physics/water-saturation.ts';
import { spread } from './spread.ts';

const HALF: Mixture = { glycol: 'ethylene', fraction: toMassFraction('ethylene', volumeFraction(0.5)) };
const mixtures = fc.record({
  glycol: fc.constantFrom<Glycol>('ethylene', 'propylene'),
  fraction: spread(0, 0.95).map(massFraction),
});
const pressures = spread(40e3, 400e3).map(absolutePascal);

describe('boilingPoint', () => {
  test('turns round with the vapour pressure', () => {
    fc.assert(
      fc.property(mixtures, pressures, (mixture, pressure) => {
        expect(mixtureVapourPressure(mixture, boilingPoint(mixture, pressure)) / pressure).toBeCloseTo(1, 9);
      }),
    );
  });

  test('rises with pressure and with glycol', () => {
    fc.assert(
      fc.property(mixtures, pressures, (mixture, pressure) => {
        const stronger = { ...mixture, fraction: massFraction(mixture.fraction + 0.01) };
        expect(boilingPoint(mixture, absolutePascal(pressure + 1000))).toBeGreaterThan(
          boilingPoint(mixture, pressure),
        );
        expect(boilingPoint(stronger, pressure)).toBeGreaterThan(boilingPoint(mixture, pressure));
      }),
    );
  });

  test('is that of water with no glycol in it', () => {
    fc.assert(
      fc.property(pressures, (pressure) => {
        const water: Mixture = { glycol: 'propylene', fraction: massFraction(0) };
        expect(boilingPoint(water, pressure)).toBeCloseTo(waterBoilingPoint(pressure), 6);
      }),
    );
  });

  // ASTM D3306 (from memory): 50 % by volume boils at not below 108 °C, 226 °F; the limit is rounded.
  test('reaches the 108 °C that the coolant standard asks of half and half, within half a degree', () => {
    expect(toCelsius(boilingPoint(HALF, absolutePascal(101325)))).toBeCloseTo(108, 0);
  });

  // Trade figure: half and half boils at 265 °F under a 15 psi cap.
  test('is 265 to 266 °F for half and half under 15 psi', () => {
    const boils = toCelsius(boilingPointUnderCap(HALF, gaugePascal(15 * 6894.757), metre(0)));
    expect(boils * 1.8 + 32).toBeGreaterThan(264.5);
    expect(boils * 1.8 + 32).toBeLessThan(266.5);
  });

  test('rises less than the 3 °F per psi of the rule once the cap is strong', () => {
    const rise = (psi: number) =>
      (boilingPointUnderCap(HALF, gaugePascal(psi * 6894.757), metre(0)) - flashTemperature(HALF, metre(0))) *
      1.8;
    expect(rise(7) / 7).toBeCloseTo(3, 0);
    expect(rise(29)).toBeLessThan(29 * 3 - 20);
  });

  test('refuses a cap that no car has and a pressure below the thinnest air', () => {
    expect(() => boilingPointUnderCap(HALF, gaugePascal(15e5), metre(0))).toThrow('cap pressure');
    expect(() => boilingPoint(HALF, absolutePascal(1.4))).toThrow('absolute pressure');
  });
});

describe('boilMargin', () => {
  test('says how far it is from boiling and that opening the cap would flash it', () => {
    const answer = boilMargin(fromCelsius(112), HALF, gaugePascal(140e3), metre(500));
    expect(toCelsius(answer.boilsAt)).toBeCloseTo(134.66, 1);
    expect(answer.margin).toBeCloseTo(22.66, 1);
    expect(toCelsius(answer.flashesAt)).toBeCloseTo(106.25, 1);
    expect(answer.aboveFlash).toBeCloseTo(5.75, 1);
  });

  test('has no margin left once it boils', () => {
    expect(boilMargin(fromCelsius(140), HALF, gaugePascal(140e3), metre(0)).margin).toBeLessThan(0);
  });
});

describe('boilingUncertainty', () => {
  test('is larger for a real coolant than for the model, and for propylene than for ethylene', () => {
    fc.assert(
      fc.property(mixtures, ({ fraction }) => {
        const ethylene = boilingUncertainty({ glycol: 'ethylene', fraction });
        const propylene = boilingUncertainty({ glycol: 'propylene', fraction });
        expect(ethylene.realCoolant).toBeGreaterThan(ethylene.model);
        expect(propylene.model).toBeGreaterThan(ethylene.model);
      }),
    );
  });
});

// ASHRAE's table of propylene (from memory) ends at 0.6 by mass; past that nothing holds the model.
test('boilingUncertainty of propylene is larger where no table reaches', () => {
  const at = (fraction: number) =>
    boilingUncertainty({ glycol: 'propylene', fraction: massFraction(fraction) });
  expect(at(0.61).model).toBeGreaterThan(at(0.6).model);
  expect(at(0.61).realCoolant).toBeGreaterThan(at(0.6).realCoolant);
});

describe('boilingUncertainty of a coolant as bought', () => {
  // Common practice, no source: a concentrate holds some three hundredths of water that its label does not count.
  test('covers the water in the concentrate, which weighs more the stronger the mixture is', () => {
    fc.assert(
      fc.property(spread(0, 1), (fraction) => {
        const boils = (share: number) =>
          boilingPoint({ glycol: 'ethylene', fraction: massFraction(share) }, absolutePascal(101325));
        const { realCoolant } = boilingUncertainty({ glycol: 'ethylene', fraction: massFraction(fraction) });
        expect(boils(fraction) - boils(0.97 * fraction)).toBeLessThanOrEqual(realCoolant);
      }),
    );
  });
});

describe('atmosphericPressure', () => {
  test('falls with altitude', () => {
    fc.assert(
      fc.property(spread(-500, 5990), (altitude) => {
        expect(atmosphericPressure(metre(altitude + 10))).toBeLessThan(atmosphericPressure(metre(altitude)));
      }),
    );
  });

  test('refuses an altitude that no road has', () => {
    expect(() => atmosphericPressure(metre(8848))).toThrow('altitude 8848 m is outside -500 to 6000 m');
  });
});
