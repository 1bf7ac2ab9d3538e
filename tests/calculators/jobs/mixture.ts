import type { Job } from './job.ts';

/** A refractometer's reading is the protection; the strength behind it depends on the handbook. 40 to 60 % is what is filled. */
const read = { known: 'freezing', scale: 'ethylene', glycol: 'ethylene' };
const strong = { known: 'strength', by: 'volume', glycol: 'ethylene' };

export const jobs: readonly Job[] = [
  { job: 'reads −18', typed: { ...read, freezes: '-18' }, master: 'look', says: /−18 °C/, never: /−17 °C/ },
  { job: 'reads −22', typed: { ...read, freezes: '-22' }, master: 'look', near: true, says: /−22 °C/ },
  {
    job: 'reads −25, 40 % by one handbook',
    typed: { ...read, freezes: '-25' },
    master: 'fine',
    near: true,
    says: /−25 °C/,
  },
  { job: 'reads −26', typed: { ...read, freezes: '-26' }, master: 'fine', near: true, says: /−26 °C/ },
  { job: 'reads −30', typed: { ...read, freezes: '-30' }, master: 'fine', says: /−30 °C/ },
  { job: 'reads −36', typed: { ...read, freezes: '-36' }, master: 'fine', says: /−36 °C/, never: /−33 °C/ },
  {
    job: 'reads −45',
    typed: { ...read, freezes: '-45' },
    master: 'fine',
    near: true,
    says: /−45 °C/,
    never: /−42 °C/,
  },
  { job: 'reads 0', typed: { ...read, freezes: '0' }, master: 'stop', says: /water/ },
  {
    job: 'reads −55, which two strengths give',
    typed: { ...read, freezes: '-55' },
    master: 'asks',
    says: /two strengths/,
  },
  {
    job: 'propylene reads −20 on its own scale',
    typed: { known: 'freezing', scale: 'propylene', glycol: 'propylene', freezes: '-20' },
    master: 'look',
    near: true,
    says: /−20 °C/,
  },
  { job: 'label says 40', typed: { ...strong, strength: '40' }, master: 'fine', near: true },
  { job: 'label says 39', typed: { ...strong, strength: '39' }, master: 'look', near: true, says: /Weak/ },
  { job: '30', typed: { ...strong, strength: '30' }, master: 'look', says: /Weak/ },
  { job: 'half and half', typed: { ...strong, strength: '50' }, master: 'fine' },
  { job: '60', typed: { ...strong, strength: '60' }, master: 'fine', near: true },
  { job: '62', typed: { ...strong, strength: '62' }, master: 'look', near: true, says: /Strong/ },
  { job: '70', typed: { ...strong, strength: '70' }, master: 'look', near: true, says: /Strong/ },
  { job: '75', typed: { ...strong, strength: '75' }, master: 'look', near: true, says: /Too strong/ },
  {
    job: 'undiluted',
    typed: { ...strong, strength: '100' },
    master: 'stop',
    says: /never fill it undiluted/,
  },
  { job: 'water', typed: { ...strong, strength: '0' }, master: 'stop', says: /water/ },
  { job: '4 %', typed: { ...strong, strength: '4' }, master: 'stop', near: true, says: /water/ },
  { job: '0.5 typed for a half', typed: { ...strong, strength: '0.5' }, master: 'asks', says: /50/ },
  { job: '1:1 on the can', typed: { ...strong, strength: '1:1' }, master: 'fine' },
  { job: '50/50', typed: { ...strong, strength: '50/50' }, master: 'fine' },
  // A hydrometer: 1.065 kg/l is 47 % by Melinder at 20 °C and 44 by ASHRAE's inhibited fluid; both tables in °C.
  {
    job: 'floats at 1.070, 20 °C',
    typed: { known: 'density', glycol: 'ethylene', density: '1.070', sample: '20' },
    master: 'fine',
    says: /4[6-8] to 5[0-3] %/,
  },
  {
    job: 'floats at 1.040, 20 °C',
    typed: { known: 'density', glycol: 'ethylene', density: '1.040', sample: '20' },
    master: 'look',
    says: /Weak/,
  },
  {
    job: 'floats at 1.057, 20 °C',
    typed: { known: 'density', glycol: 'ethylene', density: '1.057', sample: '20' },
    master: 'fine',
    near: true,
  },
  {
    job: 'floats at 1.052, 20 °C',
    typed: { known: 'density', glycol: 'ethylene', density: '1.052', sample: '20' },
    master: 'look',
    near: true,
    says: /Weak/,
  },
  {
    job: 'the same drawn at 40 °C is half and half',
    typed: { known: 'density', glycol: 'ethylene', density: '1.055', sample: '40' },
    master: 'fine',
    near: true,
  },
  {
    job: 'floats at 1.000: water',
    typed: { known: 'density', glycol: 'ethylene', density: '1.000', sample: '20' },
    master: 'stop',
    near: true,
    says: /water/,
  },
  {
    job: 'floats at 1.10: beyond the tables',
    typed: { known: 'density', glycol: 'ethylene', density: '1.10', sample: '20' },
    master: 'asks',
  },
  // Half and half by volume bends light as 1.3855 (CRC, 52 to 53 % by mass): 32.3 degrees of a sugar scale.
  {
    job: 'sugar scale 32, half and half',
    typed: { known: 'brix', brix: '32' },
    master: 'fine',
    says: /4[6-9] to 5[0-3] %/,
  },
  {
    job: 'sugar scale 25',
    typed: { known: 'brix', brix: '25' },
    master: 'look',
    near: true,
    says: /3[4-7] to (3[89]|4[01]) %/,
  },
  { job: 'sugar scale 26.5', typed: { known: 'brix', brix: '26.5' }, master: 'fine', near: true },
  { job: 'sugar scale 0: water', typed: { known: 'brix', brix: '0' }, master: 'stop', says: /water/ },
  { job: 'sugar scale 42: off the end', typed: { known: 'brix', brix: '42' }, master: 'asks', says: /Thin/ },
  // Warm, everything bends light less: uncorrected it looks weaker than it is.
  {
    job: 'reads −24 at 40 °C on one that does not correct',
    typed: { known: 'freezing', freezes: '-24', corrects: 'no', 'read-at': '40 °C' },
    master: 'fine',
    near: true,
    says: /4[2-8]/,
  },
  {
    job: 'the same at 20 °C',
    typed: { known: 'freezing', freezes: '-24', corrects: 'no', 'read-at': '20 °C' },
    master: 'look',
    near: true,
  },
  {
    job: 'reads −50 at 45 °C on one that does not correct',
    typed: { known: 'freezing', freezes: '-50', corrects: 'no', 'read-at': '45 °C' },
    master: 'asks',
    says: /Thin|thin/,
  },
  {
    job: 'does not correct, and nobody took the temperature',
    typed: { known: 'freezing', freezes: '-30', corrects: 'no' },
    master: 'asks',
  },
];
