import type { Job } from './job.ts';

/** The last fill rinses too: it drains once more before the coolant goes in. */
const full = { system: 'full', capacity: '6.0 l', drained: '4.0 l', adding: 'concentrate' };
const flush = { system: 'flush', below: '10 %' };

export const jobs: readonly Job[] = [
  { job: '30 to 50 %', typed: { ...full, is: '30', wanted: '50' }, master: 'look', says: /Drain 1\.7 l/ },
  { job: '0.3 typed for 30 %', typed: { ...full, is: '0.3', wanted: '50' }, master: 'asks', says: /30/ },
  { job: '0.5 typed for a half', typed: { ...full, is: '0.5', wanted: '50' }, master: 'asks' },
  {
    job: '1 %: no instrument tells that',
    typed: { ...full, is: '1', wanted: '50' },
    master: 'asks',
    near: true,
  },
  {
    job: '3 %',
    typed: { ...full, is: '3', wanted: '50' },
    master: 'look',
    near: true,
    says: /[Dd]rain 2\.9 l/,
  },
  { job: 'water inside', typed: { ...full, is: '0', wanted: '50' }, master: 'look', says: /3\.0 l/ },
  { job: '49 for 50 %', typed: { ...full, is: '49', wanted: '50' }, master: 'fine', near: true },
  { job: '48.5 for 50 %', typed: { ...full, is: '48.5', wanted: '50' }, master: 'fine', near: true },
  { job: '46 for 50 %', typed: { ...full, is: '46', wanted: '50' }, master: 'look', near: true },
  { job: '70 for 50 %', typed: { ...full, is: '70', wanted: '50' }, master: 'look', says: /1\.7 l of water/ },
  {
    job: 'seven litres, 4.5 come out',
    typed: { ...flush, capacity: '7 l', drained: '4.5 l' },
    master: 'fine',
    near: true,
    says: /twice.*4\.6 %/,
  },
  {
    job: 'six litres, four come out',
    typed: { ...flush, capacity: '6 l', drained: '4 l' },
    master: 'fine',
    near: true,
    says: /twice.*3\.7 %/,
  },
  {
    job: 'six litres, 4.5 come out',
    typed: { ...flush, capacity: '6 l', drained: '4.5 l' },
    master: 'fine',
    near: true,
    says: /once.*6\.[23] %/,
  },
  {
    job: 'all of it comes out',
    typed: { ...flush, capacity: '6 l', drained: '6 l' },
    master: 'fine',
    says: /[Nn]o rinse/,
  },
  {
    job: 'half comes out',
    typed: { ...flush, capacity: '6 l', drained: '3 l' },
    master: 'fine',
    near: true,
    says: /3 times.*6\.[23] %/,
  },
  {
    job: 'ten litres, seven come out',
    typed: { ...flush, capacity: '10 l', drained: '7 l' },
    master: 'fine',
    near: true,
    says: /once.*9\.0 %/,
  },
  {
    job: 'ten litres, 6.8 come out',
    typed: { ...flush, capacity: '10 l', drained: '6.8 l' },
    master: 'fine',
    near: true,
    says: /twice/,
  },
  {
    job: 'a litre of six comes out',
    typed: { ...flush, capacity: '6 l', drained: '1 l' },
    master: 'look',
    says: /machine|hose/,
  },
  { job: 'a glass comes out', typed: { ...flush, capacity: '6 l', drained: '0.2 l' }, master: 'asks' },
  {
    job: 'flushed, four of six out, half and half wanted',
    typed: { ...full, system: 'drained', is: '0', wanted: '50' },
    master: 'look',
    says: /3\.0 l of concentrate first, then 1\.0 l of water/,
  },
  {
    job: 'flushed, only two of six out',
    typed: { ...full, system: 'drained', drained: '2 l', is: '0', wanted: '50' },
    master: 'look',
    says: /33 %/,
  },
  {
    job: 'more out than inside',
    typed: { ...full, system: 'drained', drained: '7 l', is: '0', wanted: '50' },
    master: 'asks',
  },
  {
    job: 'ready mix of a half for 55 %',
    typed: { ...full, adding: 'ready', ready: '50', is: '30', wanted: '55' },
    master: 'asks',
  },
  {
    job: 'ready mix would need it all',
    typed: { ...full, adding: 'ready', ready: '50', is: '30', wanted: '50' },
    master: 'look',
    says: /Take concentrate/,
  },
  // 40 to 60 % is usual: common practice, no source.
  {
    job: '50 to 70 %',
    typed: { ...full, is: '50', wanted: '70' },
    master: 'look',
    says: /carries less heat/,
  },
  {
    job: '30 to 60 %',
    typed: { ...full, is: '30', wanted: '60' },
    master: 'look',
    near: true,
    never: /carries less heat/,
  },
  {
    job: '30 to 61 %',
    typed: { ...full, is: '30', wanted: '61' },
    master: 'look',
    near: true,
    says: /carries less heat/,
  },
  { job: '50 to 20 %', typed: { ...full, is: '50', wanted: '20' }, master: 'look', says: /freezes sooner/ },
  { job: '50 to 2 %', typed: { ...full, is: '50', wanted: '2' }, master: 'look', says: /freezes sooner/ },
  {
    job: '50 to 40 %',
    typed: { ...full, is: '50', wanted: '40' },
    master: 'look',
    near: true,
    never: /freezes sooner/,
  },
  {
    job: '20 % found and wanted',
    typed: { ...full, is: '20', wanted: '20' },
    master: 'look',
    says: /freezes sooner/,
  },
];
