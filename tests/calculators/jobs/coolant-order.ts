import type { Job } from './job.ts';

/** Seven litres of half and half: 3.5 l of concentrate. Cans of 1.5 l and of 5 l. */
const car = { filling: '7 l', wanted: '50 %' };
const prices = { 'small-price': '12', 'large-price': '30', currency: 'EUR' };

export const jobs: readonly Job[] = [
  {
    job: 'seven litres of half and half',
    typed: { ...car },
    master: 'fine',
    says: /3\.5 l of concentrate.*3\.5 l of water/s,
  },
  { job: 'the same by price', typed: { ...car, ...prices }, master: 'fine', says: /1 of 5(\.0)? l.*30/s },
  {
    job: 'two small ones do',
    typed: { ...prices, filling: '6 l', wanted: '50 %' },
    master: 'fine',
    near: true,
    says: /2 of 1\.5 l.*24/s,
  },
  {
    job: 'a glass more than two small ones',
    typed: { ...prices, filling: '6.2 l', wanted: '50 %' },
    master: 'fine',
    near: true,
    says: /1 of 5(\.0)? l/,
  },
  { job: 'only small cans', typed: { ...car, large: '' }, master: 'fine', says: /3 of 1\.5 l/ },
  {
    job: 'ready mix of 50 %, half wanted',
    typed: { ...car, kind: 'ready' },
    master: 'fine',
    near: true,
    says: /7\.0 l of ready mix/,
    never: /water/,
  },
  {
    job: 'ready mix of 50 %, 40 wanted',
    typed: { ...car, wanted: '40 %', kind: 'ready' },
    master: 'fine',
    says: /5\.6 l of ready mix.*1\.4 l of water/s,
  },
  {
    job: 'ready mix of 50 %, 55 wanted',
    typed: { ...car, wanted: '55 %', kind: 'ready' },
    master: 'asks',
    near: true,
    says: /concentrate/,
  },
  {
    job: 'ready mix of 40 % for half and half',
    typed: { ...car, kind: 'ready', ready: '40 %' },
    master: 'asks',
    says: /concentrate/,
  },
  {
    job: 'strength of 70 %: no car wants that',
    typed: { ...car, wanted: '70 %' },
    master: 'look',
    near: true,
    says: /strong/,
  },
  { job: '60 %', typed: { ...car, wanted: '60 %' }, master: 'fine', near: true },
  { job: '61 %', typed: { ...car, wanted: '61 %' }, master: 'look', near: true },
  {
    job: '30 %: thin on inhibitor',
    typed: { ...car, wanted: '30 %' },
    master: 'look',
    near: true,
    says: /inhibitor|thin/,
  },
  { job: '40 %', typed: { ...car, wanted: '40 %' }, master: 'fine', near: true },
  {
    job: 'flushed twice with five litres',
    typed: { ...car, rinses: '2', drained: '5 l' },
    master: 'fine',
    says: /15 l|15\.0 l/,
  },
  {
    job: 'a change, five litres out: that goes into the drum',
    typed: { ...car, drained: '5 l' },
    master: 'fine',
    says: /5\.0 l/,
  },
  {
    job: 'cleaner, 0.3 l for each 8 l',
    typed: { ...car, cleaner: '40 ml' },
    master: 'fine',
    says: /280 ml|0\.28 l/,
  },
  {
    job: 'truck of 45 l',
    typed: { filling: '45 l', wanted: '50 %', small: '5 l', large: '20 l' },
    master: 'fine',
    says: /22\.5 l/,
  },
  { job: 'a can of 0', typed: { ...car, small: '0 l' }, master: 'asks' },
  {
    job: 'price of one size only',
    typed: { ...car, 'small-price': '12' },
    master: 'fine',
    near: true,
    never: /EUR|12/,
  },
  {
    job: 'as many dollars',
    typed: { ...car, 'small-price': '12', 'large-price': '30', currency: 'US$ and more' },
    master: 'asks',
  },
  { job: 'nobody said how much', typed: { wanted: '50 %' }, master: 'asks' },
];
