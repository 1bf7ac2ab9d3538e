/** The simulated car of a case: the same for the same code, nothing where it does not know the fault. */
import { expect, test } from 'vitest';
import { type ForCar, simulatedAnswers, simulatedCar } from '../../../src/site/practice/simulated.ts';

const vehicle: ForCar = {
  layout: {
    power: 'combustion',
    thermostat: 'outlet side',
    'thermostat-kind': 'by-pass closing',
    heater: 'always flowing',
    fan: 'electric, two stages',
    'fan-switched-by': 'engine controller',
    pump: 'timing belt',
  },
  stamp: 361.15,
  diesel: false,
};
const open = { code: 'abcdef', faults: ['thermostat-stuck-open'] };

test('the same code reads the same on every device, another code is another car', () => {
  const [one, again] = [simulatedAnswers(open, vehicle), simulatedAnswers(open, vehicle)];
  for (const asked of ['warm-up-timing', 'cruise-trace', 'thermostat-bench-test', 'sensor-resistance'])
    expect(again(asked)).toEqual(one(asked));
  const others = ['bcdefg', 'cdefgh', 'defghj'].map(
    (code) => simulatedAnswers({ ...open, code }, vehicle)('sensor-resistance')?.reading,
  );
  expect(new Set(others).size).toBe(3);
});

test('it has the stamp of the vehicle, and its fault', () => {
  const car = simulatedCar(open.code, open.faults, vehicle);
  expect(car?.values.stamp).toBe(361.15);
  expect(car?.condition.liftFloor).toBeGreaterThan(0.05);
  expect(simulatedAnswers(open, vehicle)('thermostat-bench-test')?.outcome).toBe('open-when-cold');
});

test('two faults, an unknown one, another layout, another test: it says nothing', () => {
  expect(simulatedCar('a', ['thermostat-stuck-open', 'coolant-low'], vehicle)).toBeUndefined();
  expect(simulatedCar('a', ['egr-cooler-leak'], vehicle)).toBeUndefined();
  expect(
    simulatedCar('a', open.faults, { ...vehicle, layout: { ...vehicle.layout, thermostat: 'valve block' } }),
  ).toBeUndefined();
  expect(simulatedCar('a', ['map-thermostat-heater-fault'], vehicle)).toBeUndefined();
  expect(simulatedAnswers(open, vehicle)('strip-test')).toBeUndefined();
  expect(simulatedAnswers(open, vehicle)('viscous-spin-down')).toBeUndefined();
});
