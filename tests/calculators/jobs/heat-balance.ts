import type { Job } from './job.ts';

/** Usual between the hoses: heater 5 to 20 K, radiator 4 to 15 K; each thermometer is good to a degree, so a limit is two degrees wide. */
const heater = { place: 'heater', known: 'flow', heat: '5 kW', strength: '50 %' };
const radiator = { place: 'radiator', known: 'flow', heat: '30 kW', strength: '50 %' };

export const jobs: readonly Job[] = [
  { job: 'heater 85/75', typed: { ...heater, hot: '85', cold: '75' }, master: 'fine' },
  { job: 'heater 85/65', typed: { ...heater, hot: '85', cold: '65' }, master: 'fine', near: true },
  {
    job: 'heater 85/64.9',
    typed: { ...heater, hot: '85', cold: '64.9' },
    master: 'look',
    near: true,
    never: /^Too little flow/,
  },
  {
    job: 'heater 85/64',
    typed: { ...heater, hot: '85', cold: '64' },
    master: 'look',
    near: true,
    never: /^Too little flow/,
  },
  {
    job: 'heater 85/62',
    typed: { ...heater, hot: '85', cold: '62' },
    master: 'look',
    near: true,
    says: /Too little flow/,
  },
  {
    job: 'heater 85/50',
    typed: { ...heater, hot: '85', cold: '50' },
    master: 'look',
    says: /Too little flow/,
  },
  { job: 'heater 85/80', typed: { ...heater, hot: '85', cold: '80' }, master: 'fine', near: true },
  {
    job: 'heater 85/80.5',
    typed: { ...heater, hot: '85', cold: '80.5' },
    master: 'look',
    near: true,
    says: /again/,
  },
  {
    job: 'heater 85/82.5',
    typed: { ...heater, hot: '85', cold: '82.5' },
    master: 'look',
    near: true,
    says: /air side/,
  },
  { job: 'heater 85/84.5', typed: { ...heater, hot: '85', cold: '84.5' }, master: 'asks' },
  { job: 'radiator 90/80', typed: { ...radiator, hot: '90', cold: '80' }, master: 'fine' },
  { job: 'radiator 90/75', typed: { ...radiator, hot: '90', cold: '75' }, master: 'fine', near: true },
  {
    job: 'radiator 90/74',
    typed: { ...radiator, hot: '90', cold: '74' },
    master: 'look',
    near: true,
    never: /^Too little flow/,
  },
  {
    job: 'radiator 90/68',
    typed: { ...radiator, hot: '90', cold: '68' },
    master: 'look',
    says: /Too little flow/,
  },
  {
    job: 'radiator 90/86.5',
    typed: { ...radiator, hot: '90', cold: '86.5' },
    master: 'look',
    near: true,
    says: /again/,
  },
  {
    job: 'radiator 90/88.5',
    typed: { ...radiator, hot: '90', cold: '88.5' },
    master: 'look',
    says: /air side/,
  },
  {
    job: 'engine cold: 30/28',
    typed: { ...heater, hot: '30', cold: '28' },
    master: 'asks',
    says: /Warm it up/,
  },
  { job: 'just warm: 70/60', typed: { ...heater, hot: '70', cold: '60' }, master: 'fine', near: true },
  { job: 'not quite warm: 68/60', typed: { ...heater, hot: '68', cold: '60' }, master: 'asks', near: true },
  { job: 'hoses mixed up', typed: { ...heater, hot: '75', cold: '85' }, master: 'asks' },
  { job: 'only the hot hose was read', typed: { hot: '97' }, master: 'asks' },
  { job: 'hotter than the tables', typed: { ...radiator, hot: '112', cold: '102' }, master: 'asks' },
  { job: 'American: 185 and 167 °F', typed: { ...heater, hot: '185 °F', cold: '167 °F' }, master: 'fine' },
];
