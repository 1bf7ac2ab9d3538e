import type { Job } from './job.ts';

/** Four cylinders in bar. Under 15 % below the best is even, from 25 % on one is low. */
const four = (one: string, two: string, three: string, four: string) => ({ one, two, three, four });
const loss = (one: string, two: string, three: string, four: string) => ({
  measured: 'loss',
  'loss-one': one,
  'loss-two': two,
  'loss-three': three,
  'loss-four': four,
});

export const jobs: readonly Job[] = [
  { job: 'four alike', typed: four('12', '12.2', '11.9', '12.1'), master: 'fine', says: /even/i },
  { job: 'one 14 % down', typed: four('12', '12', '10.4', '12'), master: 'fine', near: true },
  { job: 'one 16 % down', typed: four('12', '12', '10.1', '12'), master: 'look', near: true, says: /oil/ },
  { job: 'one 24 % down', typed: four('12', '12', '9.2', '12'), master: 'look', near: true },
  {
    job: 'one 27 % down',
    typed: four('12', '12', '8.8', '12'),
    master: 'stop',
    near: true,
    says: /cylinder 3/i,
  },
  { job: 'one at half', typed: four('12', '12', '6', '12'), master: 'stop', says: /cylinder 3/i },
  {
    job: 'two and three low: between them the gasket',
    typed: four('12', '7', '7.2', '12'),
    master: 'stop',
    says: /cylinders 2 and 3.*between/is,
  },
  {
    job: 'one and four low: no neighbours',
    typed: four('7', '12', '12', '7.2'),
    master: 'stop',
    never: /between/,
  },
  {
    job: 'all alike and all low: slow cranking or shut throttle',
    typed: four('6', '6.1', '6', '6.2'),
    master: 'look',
    says: /throttle|crank/,
  },
  { job: 'diesel, alike', typed: { fuel: 'diesel', ...four('28', '27', '28', '28') }, master: 'fine' },
  {
    job: 'diesel of 14 bar: worn, or cranked slowly',
    typed: { fuel: 'diesel', ...four('14', '14', '14', '14') },
    master: 'look',
    near: true,
  },
  {
    job: 'one far above the others: coolant or oil in it',
    typed: four('12', '12', '15', '12'),
    master: 'look',
    says: /cylinder 3.*above|coolant/is,
    near: true,
  },
  { job: 'three cylinders, even', typed: { one: '11', two: '11.5', three: '11.2' }, master: 'fine' },
  { job: 'only one measured', typed: { one: '11' }, master: 'asks', says: /two/ },
  {
    job: 'psi: 170, 172, 168, 120',
    typed: four('170 psi', '172 psi', '168 psi', '120 psi'),
    master: 'stop',
    says: /cylinder 4/i,
  },
  {
    job: 'six cylinders, five and six low',
    typed: { ...four('12', '12', '12', '12'), five: '8', six: '8.2' },
    master: 'stop',
    says: /5 and 6.*between/is,
  },
  { job: 'loss: all under 10 %', typed: loss('8', '6', '9', '7'), master: 'fine' },
  { job: 'loss: worst 14 %', typed: loss('8', '6', '14', '7'), master: 'fine', near: true },
  {
    job: 'loss: worst 18 %',
    typed: loss('8', '6', '18', '7'),
    master: 'look',
    near: true,
    says: /top dead centre/i,
  },
  { job: 'loss: worst 24 %', typed: loss('8', '6', '24', '7'), master: 'look', near: true },
  {
    job: 'loss: worst 28 %',
    typed: loss('8', '6', '28', '7'),
    master: 'stop',
    near: true,
    says: /cylinder 3/i,
  },
  {
    job: 'loss: two neighbours of 40 and 45 %',
    typed: loss('8', '40', '45', '7'),
    master: 'stop',
    says: /between/,
  },
  {
    job: 'loss: bubbles in the coolant, and only 8 %',
    typed: { ...loss('8', '8', '6', '7'), bubbles: 'yes' },
    master: 'stop',
    says: /gasket|head/,
  },
  { job: 'nobody measured', typed: { one: '', two: '' }, master: 'asks' },
];
