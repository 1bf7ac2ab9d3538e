import type { Job } from './job.ts';

/** 50 % ethylene glycol: about 108 °C in the open; under 1.4 bar 136 °C, water having 126.6 there (IAPWS-IF97) and half and half 9 more. */
const car = { cap: '1.4 bar', strength: '50 %', altitude: '0 m' };

export const jobs: readonly Job[] = [
  { job: 'running warm', typed: { ...car, now: '90' }, master: 'fine', says: /not safe to open/ },
  {
    job: 'fan just came in',
    typed: { ...car, now: '104' },
    master: 'fine',
    near: true,
    says: /Leave the cap on/,
  },
  {
    job: 'a degree under boiling in the open',
    typed: { ...car, now: '107.5' },
    master: 'look',
    near: true,
    says: /flash/,
  },
  {
    job: 'over boiling in the open',
    typed: { ...car, now: '110' },
    master: 'look',
    near: true,
    says: /flash/,
  },
  { job: 'in a jam', typed: { ...car, now: '118' }, master: 'look', says: /flash/ },
  {
    job: 'nine below boiling',
    typed: { ...car, now: '127' },
    master: 'look',
    near: true,
    says: /Take the load off|let it cool/,
  },
  {
    job: 'four below boiling',
    typed: { ...car, now: '130' },
    master: 'look',
    near: true,
    says: /Take the load off|let it cool/,
  },
  { job: 'at boiling', typed: { ...car, now: '136' }, master: 'stop', near: true, says: /boils/ },
  { job: 'past boiling', typed: { ...car, now: '140' }, master: 'stop', says: /boils/ },
  { job: 'a Fahrenheit figure in the Celsius field', typed: { ...car, now: '195' }, master: 'asks' },
  {
    job: 'scale end of a shorted sensor',
    typed: { ...car, now: '215' },
    master: 'asks',
    says: /short|°F|sensor/,
  },
  { job: '160 °C: no coolant is that far over', typed: { ...car, now: '160' }, master: 'asks', near: true },
  { job: 'undiluted, 150 °C', typed: { ...car, strength: '100 %', now: '150' }, master: 'look' },
  { job: '80 %, 120 °C', typed: { ...car, strength: '80 %', now: '120' }, master: 'look' },
  { job: 'cap does not hold, 100 °C', typed: { ...car, cap: '0', now: '100' }, master: 'look', near: true },
  { job: 'cap does not hold, 95 °C', typed: { ...car, cap: '0', now: '95' }, master: 'fine', near: true },
  { job: 'cap does not hold, 108 °C', typed: { ...car, cap: '0', now: '108' }, master: 'stop', near: true },
  {
    job: 'water in it, open, 99.5 °C',
    typed: { ...car, strength: '0 %', cap: '0', now: '99.5' },
    master: 'stop',
    near: true,
  },
  {
    job: 'water in it, 1 bar cap, 100 °C',
    typed: { ...car, strength: '0 %', cap: '1.0', now: '100' },
    master: 'look',
    near: true,
    says: /flash/,
  },
  {
    job: 'cap dead at 2,500 m, 95 °C',
    typed: { ...car, cap: '0', altitude: '2500 m', now: '95' },
    master: 'look',
    near: true,
  },
  { job: 'stood for two hours', typed: { ...car, now: '45' }, master: 'fine', says: /slowly/ },
  {
    job: 'stood for one hour',
    typed: { ...car, now: '55' },
    master: 'fine',
    near: true,
    says: /Leave the cap on/,
  },
  { job: 'American: 203 °F', typed: { ...car, now: '203 °F' }, master: 'fine' },
  { job: 'nobody read a temperature', typed: { cap: '1.1 bar' }, master: 'asks' },
  { job: '1.4 psi', typed: { ...car, cap: '1.4 psi', now: '100' }, master: 'asks' },
];
