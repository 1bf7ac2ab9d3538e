import type { Job } from './job.ts';

/** Fan of 20 A at 13 V, 0.3 Ω before it on the slow stage: about 11.7 A, 9.5 V at the motor, three quarters of the air. */
const fan = { full: '20 A', rated: '13 V', supply: '13 V' };
const stage = { ...fan, ask: 'stage', resistor: '0.3 Ω' };
const wire = { ...fan, ask: 'volts' };
const pulsed = { ...fan, ask: 'duty' };

export const jobs: readonly Job[] = [
  { job: 'slow stage draws 11.5 A', typed: { ...stage, measured: '11.5 A' }, master: 'fine', says: /right/ },
  {
    job: 'slow stage, nothing measured: what belongs there',
    typed: { ...stage },
    master: 'fine',
    says: /1[01](\.\d)? A/,
  },
  {
    job: 'slow stage draws 9.4 A, a fifth less',
    typed: { ...stage, measured: '9.4 A' },
    master: 'fine',
    near: true,
  },
  { job: 'slow stage draws 8.3 A', typed: { ...stage, measured: '8.3 A' }, master: 'look', near: true },
  {
    job: 'slow stage draws 5 A: more ohms in it than the resistor',
    typed: { ...stage, measured: '5 A' },
    master: 'stop',
    says: /ohms|resistance/i,
  },
  { job: 'slow stage draws 15 A', typed: { ...stage, measured: '15 A' }, master: 'look', near: true },
  {
    job: 'slow stage draws 17 A: resistor bridged, or the motor drags',
    typed: { ...stage, measured: '17 A' },
    master: 'stop',
    says: /drag|bridged/,
  },
  { job: 'slow stage draws nothing', typed: { ...stage, measured: '0 A' }, master: 'stop', says: /open/ },
  {
    job: 'resistor so large that the fan hardly turns',
    typed: { ...stage, resistor: '3 Ω' },
    master: 'look',
    near: true,
    says: /hardly/,
  },
  { job: '12.9 V at the motor', typed: { ...wire, motor: '12.9 V' }, master: 'fine', says: /hardly any/ },
  { job: '12.5 V at the motor', typed: { ...wire, motor: '12.5 V' }, master: 'fine', near: true },
  {
    job: '12.4 V at the motor',
    typed: { ...wire, motor: '12.4 V' },
    master: 'look',
    near: true,
    says: /0\.6/,
  },
  { job: '12.05 V at the motor', typed: { ...wire, motor: '12.05 V' }, master: 'look', near: true },
  {
    job: '11.9 V at the motor: starved',
    typed: { ...wire, motor: '11.9 V' },
    master: 'stop',
    near: true,
    says: /1\.1 V/,
  },
  {
    job: '9 V at the motor',
    typed: { ...wire, motor: '9 V' },
    master: 'stop',
    says: /7\d %|8\d %|two thirds|three quarters/,
  },
  { job: 'more at the motor than at the battery', typed: { ...wire, motor: '13.5 V' }, master: 'asks' },
  {
    job: 'battery at 12.2 V: a fifth less current, and no fault',
    typed: { ...fan, ask: 'volts', supply: '12.2 V', motor: '12.1 V' },
    master: 'fine',
    near: true,
    says: /1[78](\.\d)? A/,
  },
  { job: 'ordered 60 %', typed: { ...pulsed, duty: '60 %' }, master: 'fine', says: /7\.8 V/ },
  {
    job: 'ordered 60 %, clamp on the battery wire shows 5 A',
    typed: { ...pulsed, duty: '60 %', measured: '5 A' },
    master: 'fine',
    near: true,
  },
  {
    job: 'ordered 60 %, the clamp shows 20 A: it runs full',
    typed: { ...pulsed, duty: '60 %', measured: '20 A' },
    master: 'stop',
    says: /full/,
  },
  {
    job: 'ordered 60 %, the clamp shows nothing',
    typed: { ...pulsed, duty: '60 %', measured: '0 A' },
    master: 'stop',
  },
  {
    job: 'ordered 5 %: next to rest',
    typed: { ...pulsed, duty: '5 %' },
    master: 'look',
    near: true,
    says: /rest|stand/,
  },
  { job: 'ordered 100 %, 19 A', typed: { ...pulsed, duty: '100 %', measured: '19 A' }, master: 'fine' },
  { job: 'nobody measured the volts', typed: { ...wire }, master: 'asks' },
  // A battery that holds 11.5 V with the fan on is in order; under that it is charged first. Common practice, no source.
  {
    job: 'slow stage on a battery of 9 V',
    typed: { ...stage, supply: '9 V' },
    master: 'look',
    says: /Battery first/,
  },
  {
    job: 'slow stage on a battery of 11.6 V',
    typed: { ...stage, supply: '11.6 V' },
    master: 'fine',
    near: true,
  },
  {
    job: 'slow stage on a battery of 11.4 V',
    typed: { ...stage, supply: '11.4 V' },
    master: 'look',
    near: true,
    says: /Battery first/,
  },
  {
    job: 'a lorry of 24 V with 22 V at its battery',
    typed: { ...stage, rated: '26 V', supply: '22 V', resistor: '0.6 Ω' },
    master: 'look',
    says: /Battery first/,
  },
];
