import type { Job } from './job.ts';

/**
 * The common sensor: 2500 Ω at 20, 323 at 80, about 243 at 90, 187 at 100 °C. Rubber of a hose loses 9 K in still air at 90 °C, up
 * to 20 with the fan on it, and is never hotter than what is in it; infrared is good to 2 K.
 */
const rubber = { curve: 'usual', surface: 'hose', air: 'still' };

export const jobs: readonly Job[] = [
  {
    job: 'all near 90',
    typed: { ...rubber, resistance: '243', scan: '90', infrared: '86' },
    master: 'fine',
    says: /agree/,
  },
  {
    job: 'hose 9 below',
    typed: { ...rubber, resistance: '243', scan: '90', infrared: '81' },
    master: 'fine',
    near: true,
    says: /agree/,
  },
  {
    job: 'hose 11 below',
    typed: { ...rubber, resistance: '243', scan: '90', infrared: '79' },
    master: 'fine',
    near: true,
    never: /lies/,
  },
  {
    job: '100 and the hose 88',
    typed: { ...rubber, resistance: '187', scan: '100', infrared: '88' },
    master: 'fine',
    near: true,
    never: /lies/,
  },
  {
    job: 'plastic housing 12 below',
    typed: { ...rubber, surface: 'plastic', resistance: '243', scan: '90', infrared: '78' },
    master: 'fine',
    near: true,
  },
  {
    job: 'hose 20 below in still air',
    typed: { ...rubber, resistance: '243', scan: '90', infrared: '70' },
    master: 'look',
    near: true,
    says: /flow|high/,
  },
  {
    job: 'hose 19 below, fan blowing at it',
    typed: { ...rubber, air: 'fan', resistance: '243', scan: '90', infrared: '71' },
    master: 'fine',
    near: true,
  },
  {
    job: 'hose 30 below with the fan on',
    typed: { ...rubber, air: 'fan', resistance: '243', scan: '90', infrared: '60' },
    master: 'look',
  },
  {
    job: 'hose a degree above',
    typed: { ...rubber, resistance: '243', scan: '90', infrared: '91' },
    master: 'fine',
    near: true,
  },
  {
    job: 'hose 4 above: it cannot be',
    typed: { ...rubber, resistance: '243', scan: '90', infrared: '94' },
    master: 'look',
    near: true,
    says: /low/,
  },
  {
    job: 'hose 8 above 82',
    typed: { ...rubber, resistance: '303', scan: '82', infrared: '90' },
    master: 'look',
    says: /low/,
    never: /agree/,
  },
  {
    job: 'scan 90, hose 94, no resistance',
    typed: { ...rubber, scan: '90', infrared: '94' },
    master: 'look',
    near: true,
    says: /low/,
  },
  {
    job: 'scan 6 below the resistance, which was read plug off',
    typed: { ...rubber, resistance: '243', scan: '84', infrared: '82' },
    master: 'look',
    near: true,
    says: /moment|again/i,
    never: /fiction/,
  },
  {
    job: 'scan 20 above the other two',
    typed: { ...rubber, resistance: '243', scan: '110', infrared: '84' },
    master: 'look',
    says: /[Ss]can tool/,
  },
  {
    job: 'resistance of 47 °C, the others 90',
    typed: { ...rubber, resistance: '900', scan: '90', infrared: '84' },
    master: 'look',
    says: /resistance/,
  },
  {
    job: 'resistance and scan, 1 apart',
    typed: { ...rubber, resistance: '243', scan: '89' },
    master: 'fine',
  },
  {
    job: 'resistance and scan, 4 apart',
    typed: { ...rubber, resistance: '243', scan: '86.5' },
    master: 'fine',
    near: true,
  },
  {
    job: 'resistance and scan, 6 apart',
    typed: { ...rubber, resistance: '243', scan: '84' },
    master: 'look',
    near: true,
    says: /again/i,
  },
  {
    job: 'scan −40',
    typed: { ...rubber, resistance: '2500', scan: '-40', infrared: '19' },
    master: 'look',
    says: /open wire/,
  },
  { job: 'scan 215', typed: { ...rubber, resistance: '243', scan: '215' }, master: 'look', says: /short/ },
  {
    job: 'only 300 Ω was measured',
    typed: { resistance: '300 Ω' },
    master: 'fine',
    says: /means 8[1-4]/,
    never: /agree|scan tool and infrared/,
  },
  { job: 'only a hose of 40 was measured', typed: { infrared: '40' }, master: 'fine', never: /lies/ },
  { job: 'nothing was measured, only the table typed', typed: { 'r-80': '323 Ω' }, master: 'asks' },
  {
    job: 'bare metal',
    typed: { ...rubber, surface: 'metal', resistance: '243', scan: '90', infrared: '45' },
    master: 'look',
    says: /proves nothing/,
  },
  {
    job: 'over night, all 20',
    typed: { ...rubber, resistance: '2500', scan: '20', infrared: '20' },
    master: 'fine',
    says: /agree/,
  },
  {
    job: 'over night, infrared 5 above',
    typed: { ...rubber, resistance: '2500', scan: '20', infrared: '25' },
    master: 'look',
    near: true,
  },
  { job: '2k5 typed', typed: { ...rubber, resistance: '2k5', scan: '20' }, master: 'fine', says: /agree/ },
];
