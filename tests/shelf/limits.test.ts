/** One limit, one source: what a record, the card and a guide say is what the calculator judges by. */
import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { CALCULATOR_LIMITS } from '../../src/library/calculator-limits.ts';
import { FIGURES } from '../../src/model/figures.ts';
import { COOL_ENOUGH } from '../../src/physics/cooling-time.ts';
import { EVEN_BELOW, LOW_FROM } from '../../src/physics/cylinder-spread.ts';
import { CURRENT_RIGHT_WITHIN, CURRENT_WRONG_FROM, STARVED_FROM } from '../../src/physics/fan-stage.ts';
import { EVEN_WITHIN, NEVER_NOTHING, NOT_STARTED_ABOVE_EVEN } from '../../src/physics/fill-account.ts';
import { USUAL_DIFFERENCE } from '../../src/physics/heat-balance.ts';
import { DROP_LIMITS } from '../../src/physics/joint.ts';
import { LOSS_FROM, NO_LOSS_BELOW, WATCHED } from '../../src/physics/loss-rate.ts';
import { HOLDS_WITHIN, LEAKS_FROM, NO_CAP_HOLDS } from '../../src/physics/pressure-decay.ts';
import { CAP_EARLY } from '../../src/physics/pressure-rise.ts';
import { SENSOR_AGREES } from '../../src/physics/thermistor.ts';
import { toCelsius } from '../../src/physics/units.ts';
import { litresForCustomer } from '../../src/site/job/page/litres.ts';

const record = (path: string) => readFileSync(`content/${path}.yaml`, 'utf8');

/** Record, what it says before the figure, the figure. */
test.each([
  ['tests/pressure-test-cold', 'fall under', `${HOLDS_WITHIN / 1e5} bar`],
  ['tests/pressure-test-cold', 'Falls', `${LEAKS_FROM / 1e5} bar or more`],
  ['tests/compression-test', 'All less than', `${EVEN_BELOW * 100} % under`],
  ['tests/compression-test', 'One alone is', `${LOW_FROM * 100} % or more`],
  ['tests/leak-down', 'Under', `${EVEN_BELOW * 100} % on every cylinder`],
  ['tests/leak-down', 'reading:', `${LOW_FROM * 100} % or more on one cylinder`],
  ['tests/cold-soak-comparison', 'from:', `-${SENSOR_AGREES} K`],
  ['tests/cold-soak-comparison', 'more than', `${SENSOR_AGREES} K below`],
  ['tests/fan-current', 'to:', `"${1 + CURRENT_RIGHT_WITHIN} × {fan.current}"`],
  ['tests/fan-current', 'from:', `"${1 + CURRENT_WRONG_FROM} × {fan.current}"`],
  ['tests/fan-current', 'more than', `${STARVED_FROM} V missing at its plug`],
  ['procedures/cool-down-and-open', 'coolant below', `${toCelsius(COOL_ENOUGH)} °C`],
  ['tests/cap-test', 'Vents from', `${CAP_EARLY / 1e5} bar under`],
  ['tests/level-log', 'Less than', `${NO_LOSS_BELOW * 1e3} l missing`],
  ['tests/level-log', 'reading:', `${LOSS_FROM * 1e3} l or more missing`],
  ['tests/level-log', 'Missing from the line after', `${WATCHED.distance / 1e3} to 500 km`],
  ['tests/vacuum-hold', 'Loses less than', `${HOLDS_WITHIN / 1e5} bar`],
  ['tests/vacuum-hold', 'Loses', `${LEAKS_FROM / 1e5} bar or more`],
  ['procedures/vacuum-fill', 'Falling by more than', `${LEAKS_FROM / 1e5} bar`],
  ['procedures/vacuum-fill', 'Took at least', NEVER_NOTHING === 0.1 ? 'nine tenths' : 'another share'],
  ['tests/fill-account-test', 'Within', `${EVEN_WITHIN.usual * 1e3} l`],
  ['procedures/gravity-fill-and-bleed', 'Within', `${EVEN_WITHIN.usual * 1e3} l`],
  ['procedures/gravity-fill-and-bleed', 'agree within', `${EVEN_WITHIN.usual * 1e3} l`],
  ['procedures/gravity-fill-and-bleed', 'With', `${(EVEN_WITHIN.usual + NOT_STARTED_ABOVE_EVEN) * 1e3} l`],
  ['tests/fan-voltage-drop', 'reading:', `${DROP_LIMITS['supply side']} V or less on the supply`],
  ['tests/heater-hose-pair', 'drops', USUAL_DIFFERENCE.heater.join(' to ')],
  ['tests/heater-hose-pair', 'no more than', `${USUAL_DIFFERENCE.heater[1]} K below`],
  ['procedures/heater-core-flush', 'no more than', `${USUAL_DIFFERENCE.heater[1]} K below`],
])('%s: %s %s', (path, before, figure) => {
  expect(record(path)).toContain(`${before} ${figure}`);
});

test('the card calls a refill even where the calculator does', () => {
  const poured = (drained: number, filled: number) =>
    litresForCustomer([
      { id: 'a', way: 'drained', litres: drained, at: '' },
      { id: 'b', way: 'filled', litres: filled, at: '' },
    ]);
  const even = EVEN_WITHIN.usual * 1e3;
  expect(poured(4.4, 4.4 - even)).toMatch(/^Refilled/);
  expect(poured(4.4, 4.4 - even - 0.05)).not.toMatch(/^Refilled/);
  // A tenth is never nothing.
  expect(poured(1.0, 0.85)).not.toMatch(/^Refilled/);
});

test('no pressure is asked back that a vehicle may state', () => {
  expect(FIGURES['cap.opens'].plausible[1]).toBe(`${NO_CAP_HOLDS / 1e5} bar`);
});

test('the limits a rule holds records against are those of the arithmetic', () => {
  expect(CALCULATOR_LIMITS['pressure-decay']?.values).toEqual([0.03, 0.05]);
  expect(CALCULATOR_LIMITS.sensor?.values).toEqual([3, 5, 14, 23]);
});

/** Names that several files use for themselves, and no reading is judged by: what they are. */
const NO_LIMITS: Readonly<Record<string, string>> = {
  SLACK: 'bits of a decimal, in the unit of each file',
  LAST_BITS: 'bits of a decimal',
  DROP: 'bits of a litre',
  ROUNDING: 'bits of a decimal',
  MEGAPASCAL: 'a unit',
  DAY: 'a unit',
  STEP: 'step of a search or a grid',
  LONGEST_STEP: 'step of an integration',
};

test('a figure that readings are judged by is declared in one file, under a name of its own', () => {
  const declared = new Map<string, string[]>();
  for (const folder of ['src/physics', 'src/calculators', 'src/trace'])
    for (const file of readdirSync(folder, { recursive: true, encoding: 'utf8' })) {
      if (!file.endsWith('.ts')) continue;
      for (const [, name = '', value = ''] of readFileSync(`${folder}/${file}`, 'utf8').matchAll(
        /^(?:export )?const ([A-Z][A-Z0-9_]*) = ([-\d._e]+);/gm,
      ))
        declared.set(name, [...(declared.get(name) ?? []), `${folder}/${file}: ${value}`]);
    }
  expect(declared.size).toBeGreaterThan(100);
  const twice = [...declared].filter(([name, places]) => places.length > 1 && !(name in NO_LIMITS));
  expect(twice).toEqual([]);
});
