/**
 * Published figures asked through the calculators, so that reading, units, words and rounding are held too; the
 * arithmetic itself stands beside 1,400 of them in tests/published.
 */
import { describe, expect, test } from 'vitest';
import { benchTestCalculator } from '../../src/calculators/bench-test.ts';
import { boilMarginCalculator } from '../../src/calculators/boil-margin.ts';
import { heatBalance } from '../../src/calculators/heat-balance.ts';
import { level } from '../../src/calculators/level.ts';
import { mixture } from '../../src/calculators/mixture.ts';
import { pressureDecay } from '../../src/calculators/pressure-decay.ts';
import { sensor } from '../../src/calculators/sensor.ts';
import { sensorVolts } from '../../src/calculators/sensor-volts.ts';
import { torque } from '../../src/calculators/torque.ts';
import { voltageDropCalculator } from '../../src/calculators/voltage-drop.ts';
import { answerOf, figureOf } from './ask.ts';

/** The two ends of a range as shown. */
function rangeOf(calculator: typeof mixture, typed: Record<string, string>, label: string): [number, number] {
  const value = answerOf(calculator, typed).figures.find((each) => each.label === label)?.value ?? '';
  const ends = value.replaceAll('−', '-').match(/-?\d+/g)?.map(Number) ?? [];
  return [ends[0] ?? Number.NaN, ends.at(-1) ?? Number.NaN];
}

describe('mixture', () => {
  // ASHRAE Handbook - Fundamentals (2001), ethylene glycol by volume; Melinder (2010) 50 % by volume −39.9 °C.
  test.each([
    ['18.1', -7.8],
    ['37.5', -22.3],
    ['50', -37],
    ['50', -39.9],
  ])('%s %% by volume: the range holds the published %d °C', (strength, freezes) => {
    const [low, high] = rangeOf(mixture, { strength }, 'First crystals at');
    expect(freezes).toBeGreaterThanOrEqual(low - 0.5);
    expect(freezes).toBeLessThanOrEqual(high + 0.5);
  });

  // CRC Handbook of Chemistry and Physics, 102nd ed. (2021): freezing point by mass, printed; backward.
  test.each([
    ['-7.93', 20],
    ['-16.23', 32],
  ])('%s °C read: %d %% by mass is inside the range', (freezes, mass) => {
    const [low, high] = rangeOf(mixture, { known: 'freezing', freezes }, 'Concentrate by mass');
    expect(mass).toBeGreaterThanOrEqual(low - 1);
    expect(mass).toBeLessThanOrEqual(high + 1);
  });
});

describe('boil margin', () => {
  // IAPWS-IF97: water under 1.0 bar gauge (201.325 kPa) boils at 120.4 °C; at one atmosphere at 100.0 °C.
  test.each([
    ['0 bar', 100],
    ['1.0 bar', 120],
  ])('water under %s boils at %d °C', (cap, boils) => {
    expect(
      figureOf(answerOf(boilMarginCalculator, { strength: '0', cap, now: '20' }), 'Boils under the cap at'),
    ).toBe(boils);
  });

  // Kamihama et al., J. Chem. Eng. Data 57 (2012) 339: 0.465 by mass boils at 106.3 °C under 101.3 kPa (44 % by volume).
  test('meets a measured boiling point of ethylene glycol within its stated degree', () => {
    const flash = figureOf(
      answerOf(boilMarginCalculator, { strength: '43.8', cap: '0', now: '20' }),
      'Flashes when opened above',
    );
    expect(Math.abs(flash - 106.3)).toBeLessThanOrEqual(1);
  });
});

describe('thermostat in a pot', () => {
  // ISO 2533:1975 with IAPWS-IF97: boiling of water in standard air.
  test.each([
    ['0', 100.0],
    ['1500', 95.1],
    ['2500', 91.7],
  ])('water boils at %s m', (altitude, boils) => {
    const shown = figureOf(answerOf(benchTestCalculator, { altitude }), 'Open pot of water boils at');
    expect(Math.abs(shown - boils)).toBeLessThanOrEqual(0.15);
  });
});

describe('sensor', () => {
  // Bosch Motorsport data sheet, fluid temperature sensor NTC M8, 10 kΩ at 25 °C.
  const table = {
    curve: 'points',
    't-20': '0',
    't-80': '50',
    't-100': '100',
    'own-r-20': '27936',
    'own-r-80': '4103',
    'own-r-100': '946.6',
  };
  test.each([
    ['71668', -20],
    ['12136', 20],
    ['2182', 70],
    ['578.1', 120],
  ])('%s Ω is %d °C', (resistance, celsius) => {
    const answer = answerOf(sensor, { ...table, resistance: `${resistance} Ω`, scan: '', infrared: '' });
    expect(figureOf(answer, 'By resistance')).toBe(celsius);
  });
});

describe('sensor volts', () => {
  // The same sheet; its resistances behind 2.2 kΩ on 5 V by Ohm's law: 12,136, 2,182 and 946.6 Ω.
  test.each([
    ['4.233', 20],
    ['2.490', 70],
    ['1.504', 100],
  ])('%s V are %d °C', (volts, celsius) => {
    const circuit = {
      curve: 'points',
      't-20': '0',
      't-80': '50',
      't-100': '100',
      supply: '5 V',
      pull: '2.2 kΩ',
    };
    const points = { 'own-r-20': '27936', 'own-r-80': '4103', 'own-r-100': '946.6' };
    expect(figureOf(answerOf(sensorVolts, { ...circuit, ...points, volts }), 'By the volts')).toBe(celsius);
  });

  // By B from the sheet's 10 kΩ at 25 °C and 946.6 Ω at 100 °C (3,497 K): within the stated 1.6 K at 50 °C, printed 4,103 Ω.
  test('by B is within the stated error of the sheet', () => {
    const byB = { curve: 'b', 'r-25': '10 kΩ', b: '3497 K', scan: '', infrared: '' };
    const shown = figureOf(answerOf(sensor, { ...byB, resistance: '4103 Ω' }), 'By resistance');
    expect(Math.abs(shown - 50)).toBeLessThanOrEqual(1.6);
  });
});

describe('torque', () => {
  // ISO 898-1, printed stress area 20.1 mm² times 580 MPa: proof load of M6 8.8 is 11.6 to 11.7 kN.
  test('names the proof load of an M6 of class 8.8', () => {
    expect(JSON.stringify(answerOf(torque, {}).figures)).toContain('proof load 11.7 kN');
  });

  // Worked example of a torque-tool maker's handbook, from memory: lever rule M L/(L + E).
  test('sets a wrench of 450 mm with a foot of 75 mm in line to six sevenths', () => {
    const answer = answerOf(torque, {
      torque: '35',
      thread: 'M10',
      foot: 'in-line',
      wrench: '450',
      extension: '75',
    });
    expect(figureOf(answer, 'Set on the wrench')).toBeCloseTo(30, 6);
  });

  // NIST SP 811 (2008) appendix B: 1 lbf·ft = 1.355818 N·m.
  test('turns N·m into lbf·ft', () => {
    expect(figureOf(answerOf(torque, { torque: '25' }), 'In pound-force feet')).toBeCloseTo(18.4, 6);
  });
});

describe('level', () => {
  // Melinder (2010) density ratio: 6.0 l of 50 % by volume from 20 to 90 °C gain 0.273 l, 27 mm over 100 cm².
  test('rises 27 mm', () => {
    const answer = answerOf(level, { now: '90', capacity: '6', area: '100' });
    expect(figureOf(answer, 'Belongs above the cold mark')).toBe(27);
    expect(figureOf(answer, 'Coolant has grown by')).toBeCloseTo(0.27, 6);
  });
});

describe('heat balance', () => {
  // Q = m cp ΔT with Melinder's properties of 50 % by volume at 90 °C: 30 kW over 8 K is 61.6 l/min.
  test('asks 61.6 l/min for 30 kW over 8 °C', () => {
    const answer = answerOf(heatBalance, { place: 'radiator', hot: '94', cold: '86', heat: '30 kW' });
    expect(figureOf(answer, 'Flow')).toBeCloseTo(61.6, 0);
  });
});

describe('pressure test', () => {
  // Gas law, vapour over 50 % by volume and Melinder's expansion, 6.0 l: from 100 kPa with 1.0 l of air, 80 to 60 °C -> 58 kPa.
  test('falls from 1.00 to 0.58 bar by cooling alone', () => {
    const answer = answerOf(pressureDecay, {
      start: '1.0 bar',
      end: '0.58 bar',
      'start-temperature': '80',
      'end-temperature': '60',
      air: '1.0 l',
      capacity: '6 l',
    });
    expect(Math.abs(figureOf(answer, 'A tight system would show') - 0.58)).toBeLessThanOrEqual(0.05);
  });
});

describe('voltage drop', () => {
  // IEC 60028: 3.0 m of 4.0 mm² copper at 20 °C, 25 A: 0.323 V.
  test('says what a sound cable loses', () => {
    const answer = answerOf(voltageDropCalculator, {
      measured: 'cable',
      current: '25',
      length: '3',
      area: '4',
      temperature: '20',
    });
    expect(figureOf(answer, 'Drop, solid to stranded')).toBeCloseTo(0.32, 6);
  });
});
