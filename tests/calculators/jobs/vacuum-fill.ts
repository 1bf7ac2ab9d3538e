import type { Job } from './job.ts';

/** Four litres out, 0.6 l of air above the mark: 4.6 l empty. By Boyle, 0.85 bar at the sea leaves about a seventh of it. */
const car = { out: '4.0 l', air: '0.6 l' };

export const jobs: readonly Job[] = [
  {
    job: 'drawn to −0.9 at the sea',
    typed: { ...car, vacuum: '-0.9 bar' },
    master: 'fine',
    says: /five minutes/,
  },
  { job: 'the same without its minus', typed: { ...car, vacuum: '0.9 bar' }, master: 'fine' },
  {
    job: '−0.85, stood at −0.84',
    typed: { ...car, vacuum: '0.85', after: '0.84' },
    master: 'fine',
    says: /holds/,
  },
  {
    job: '−0.85, fell by 0.02',
    typed: { ...car, vacuum: '0.85', after: '0.83' },
    master: 'fine',
    near: true,
  },
  {
    job: '−0.85, fell by 0.04',
    typed: { ...car, vacuum: '0.85', after: '0.81' },
    master: 'look',
    near: true,
    says: /boils off/,
  },
  {
    job: '−0.85, fell by 0.05',
    typed: { ...car, vacuum: '0.85', after: '0.80' },
    master: 'stop',
    near: true,
    says: /lets air in/,
  },
  { job: '−0.85, fell to half', typed: { ...car, vacuum: '0.85', after: '0.4' }, master: 'stop' },
  {
    job: '−0.8 on a car: a bit more air, topped up by hand',
    typed: { ...car, vacuum: '0.8' },
    master: 'fine',
    near: true,
  },
  {
    job: '−0.75 on the same car',
    typed: { ...car, vacuum: '0.75' },
    master: 'look',
    near: true,
    says: /second time/,
  },
  { job: '−0.5: the ejector starves', typed: { ...car, vacuum: '0.5' }, master: 'look', says: /shallow/i },
  {
    job: '−0.7 at 1,500 m, all that most ejectors reach',
    typed: { ...car, vacuum: '0.7', altitude: '1500' },
    master: 'fine',
    near: true,
  },
  {
    job: '−0.9 at 1,500 m cannot be',
    typed: { ...car, vacuum: '0.9', altitude: '1500' },
    master: 'asks',
    says: /0\.8\d bar/,
  },
  { job: '−1.05 nowhere', typed: { ...car, vacuum: '1.05' }, master: 'asks' },
  {
    job: 'hand-hot engine of 70 °C, −0.85: it would boil',
    typed: { ...car, vacuum: '0.85', temperature: '70 °C' },
    master: 'asks',
    says: /boils/,
  },
  {
    job: '60 °C, −0.83: just before it',
    typed: { ...car, vacuum: '0.83', temperature: '60 °C' },
    master: 'look',
    near: true,
  },
  {
    job: 'van of 12 l out, −0.8',
    typed: { out: '12 l', air: '1 l', vacuum: '0.8' },
    master: 'look',
    says: /1\.\d l more/,
  },
  {
    job: 'van of 12 l out, −0.92',
    typed: { out: '12 l', air: '1 l', vacuum: '0.92' },
    master: 'fine',
    near: true,
  },
  {
    job: 'drew what it should',
    typed: { ...car, vacuum: '0.9', after: '0.9', drew: '4.0 l' },
    master: 'fine',
  },
  {
    job: 'drew 0.6 l less',
    typed: { ...car, vacuum: '0.9', after: '0.9', drew: '3.5 l' },
    master: 'look',
    near: true,
    says: /less went in/,
  },
  {
    job: 'drew 2 l of 4: the pick-up hose had air',
    typed: { ...car, vacuum: '0.9', after: '0.9', drew: '2 l' },
    master: 'stop',
    says: /pick-up hose/,
  },
  {
    job: 'drew 5 l where 4 came out',
    typed: { ...car, vacuum: '0.9', drew: '5.0 l' },
    master: 'look',
    says: /low before/,
  },
  { job: '27 inHg on the gauge', typed: { ...car, vacuum: '27 inHg' }, master: 'fine' },
  { job: '20 inHg', typed: { ...car, vacuum: '20 inHg' }, master: 'look', near: true },
  {
    job: 'second figure deeper than the first',
    typed: { ...car, vacuum: '0.7', after: '0.85' },
    master: 'asks',
    says: /grown/,
  },
  { job: 'nobody read the gauge', typed: { out: '4 l' }, master: 'asks' },
  {
    job: 'at 80 °C, as far as the field goes',
    typed: { ...car, vacuum: '0.4', temperature: '80 °C' },
    master: 'look',
    near: true,
    never: /outside|range/,
  },
];
