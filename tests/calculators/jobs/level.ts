import type { Job } from './job.ts';

/** Six litres of half and half, bottle of 100 cm²: 27 mm from 20 to 90 °C by Melinder's densities. A centimetre at the mark is no fault. */
const car = { capacity: '6 l', area: '100 cm²', room: '0.6 l', cold: '20 °C', strength: '50 %' };

export const jobs: readonly Job[] = [
  { job: 'cold', typed: { ...car, now: '20' }, master: 'fine', says: /At the cold mark/ },
  { job: 'hand-warm', typed: { ...car, now: '34' }, master: 'fine', near: true, says: /At the cold mark/ },
  { job: 'warm', typed: { ...car, now: '60' }, master: 'fine', says: /1[2-5] mm above/ },
  { job: 'hot', typed: { ...car, now: '90' }, master: 'fine', says: /2[5-9] mm above/ },
  {
    job: 'hotter than the tables go: 104 °C',
    typed: { ...car, now: '104' },
    master: 'fine',
    near: true,
    says: /3[1-6] mm above/,
  },
  { job: '120 °C', typed: { ...car, now: '120' }, master: 'fine', near: true, says: /[34]\d mm above/ },
  { job: '140 °C is no level to look at', typed: { ...car, now: '140' }, master: 'asks' },
  { job: 'frost', typed: { ...car, now: '-35' }, master: 'fine', says: /no loss/ },
  {
    job: 'freezing point of water',
    typed: { ...car, now: '0' },
    master: 'fine',
    near: true,
    says: /At the cold mark/,
  },
  { job: 'water in frost', typed: { ...car, strength: '0 %', now: '-5' }, master: 'asks', says: /freeze/ },
  { job: 'bottle too small', typed: { ...car, room: '0.1 l', now: '60' }, master: 'look', says: /no room/ },
  {
    job: 'hot and at the cold mark',
    typed: { ...car, now: '90', seen: '0 mm' },
    master: 'look',
    says: /0\.2[5-9] l/,
  },
  {
    job: 'hot and where it belongs',
    typed: { ...car, now: '90', seen: '27 mm' },
    master: 'fine',
    near: true,
    says: /where it belongs|right/,
  },
  { job: 'hot and 7 mm under', typed: { ...car, now: '90', seen: '20 mm' }, master: 'fine', near: true },
  {
    job: 'hot and 17 mm under',
    typed: { ...car, now: '90', seen: '10 mm' },
    master: 'look',
    near: true,
    says: /0\.1[5-9] l/,
  },
  {
    job: 'hot and far down',
    typed: { ...car, now: '90', seen: '-40 mm' },
    master: 'stop',
    says: /0\.6[0-9] l/,
  },
  { job: 'hot and overfilled', typed: { ...car, now: '90', seen: '60 mm' }, master: 'look', says: /over/ },
  { job: 'cold and 9 mm under', typed: { ...car, now: '20', seen: '-9 mm' }, master: 'fine', near: true },
  {
    job: 'cold and 12 mm under',
    typed: { ...car, now: '20', seen: '-12 mm' },
    master: 'look',
    near: true,
    says: /0\.12 l/,
  },
  { job: 'frost and 15 mm under', typed: { ...car, now: '-20', seen: '-15 mm' }, master: 'fine', near: true },
  {
    job: 'bottle never measured: litres only',
    typed: { capacity: '6 l', now: '80', strength: '50 %' },
    master: 'fine',
    says: /0\.2\d l/,
    never: /mm/,
  },
  { job: 'nobody read a temperature', typed: { capacity: '9 l' }, master: 'asks' },
  // As after a refill: half a litre short and it is not started. Common practice, no source.
  { job: 'hot, 0.48 l short', typed: { ...car, now: '20', seen: '-48 mm' }, master: 'look', near: true },
  {
    job: 'cold, half a litre short',
    typed: { ...car, now: '20', seen: '-50 mm' },
    master: 'stop',
    near: true,
    says: /do not drive/,
  },
  {
    job: 'a third of the filling missing',
    typed: { ...car, now: '20', seen: '-200 mm' },
    master: 'stop',
    says: /2\.00 l/,
  },
  {
    job: 'van of 20 l, 0.6 l short',
    typed: { ...car, capacity: '20 l', room: '2 l', area: '200 cm²', now: '20', seen: '-30 mm' },
    master: 'look',
    near: true,
  },
  {
    job: 'wide bottle, a hair under the mark',
    typed: { ...car, room: '5 l', area: '1000 cm²', now: '20', seen: '-11 mm' },
    master: 'look',
    near: true,
  },
  {
    job: 'all of three litres missing',
    typed: { ...car, capacity: '3 l', now: '20', seen: '-300 mm' },
    master: 'asks',
    says: /holds 3\.0 l/,
  },
  {
    job: '300 mm above the mark with 0.6 l of room',
    typed: { ...car, now: '60', seen: '300 mm' },
    master: 'asks',
    says: /0\.60 l/,
  },
];
