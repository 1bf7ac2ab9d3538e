import type { Job } from './job.ts';

/** Six litres at 20 °C outside. With the bonnet open one to two hours from 95 to 50 °C; a blower halves it. */
const bay = { outside: '20 °C', capacity: '6 l' };
const cools = { ...bay, ask: 'cool' };
/** Nine minutes to 88 °C at 20 °C in mixed driving. */
const warms = { ask: 'warm', opens: '88 °C', usual: '9 min' };

export const jobs: readonly Job[] = [
  {
    job: 'just off the road, 95 °C',
    typed: { ...cools, now: '95 °C' },
    master: 'look',
    says: /1 h \d+ min to 2 h|[67]\d min to|1 h (\d+ min )?to 2 h/,
  },
  { job: 'boiled over, 118 °C', typed: { ...cools, now: '118 °C' }, master: 'stop', says: /steam/ },
  { job: '106 °C: at the edge of flashing', typed: { ...cools, now: '106 °C' }, master: 'look', near: true },
  {
    job: '110 °C: it flashes',
    typed: { ...cools, now: '110 °C' },
    master: 'stop',
    near: true,
    says: /steam/,
  },
  { job: '51 °C', typed: { ...cools, now: '51 °C' }, master: 'look', near: true },
  {
    job: '49 °C',
    typed: { ...cools, now: '49 °C' },
    master: 'fine',
    near: true,
    says: /hose/,
    never: /safe/,
  },
  { job: '35 °C', typed: { ...cools, now: '35 °C' }, master: 'fine', says: /hose/ },
  {
    job: '95 °C with a blower before it',
    typed: { ...cools, now: '95 °C', standing: 'blower' },
    master: 'look',
    says: /3\d min to/,
  },
  {
    job: 'in August at 38 °C outside',
    typed: { ...cools, outside: '38 °C', now: '95 °C' },
    master: 'look',
    near: true,
    says: /h/,
  },
  {
    job: '49 °C outside: it does not come to 50 today',
    typed: { ...cools, outside: '49 °C', now: '95 °C' },
    master: 'asks',
    near: true,
    says: /outside/,
  },
  {
    job: '92 °C half an hour ago, 76 now: an hour and a bit more',
    typed: { ...cools, now: '76 °C', first: '92 °C', between: '30 min' },
    master: 'look',
    says: /min|h/,
  },
  {
    job: 'hotter than half an hour ago: heat soak',
    typed: { ...cools, now: '96 °C', first: '92 °C', between: '10 min' },
    master: 'look',
    near: true,
    says: /soak|rises/,
  },
  {
    job: 'first reading without its time',
    typed: { ...cools, now: '76 °C', first: '92 °C' },
    master: 'asks',
  },
  {
    job: 'at 3,000 m, 99 °C flashes',
    typed: { ...cools, now: '101 °C', altitude: '3000 m' },
    master: 'stop',
    near: true,
  },
  { job: 'nobody read a temperature', typed: { ask: 'cool', capacity: '6 l' }, master: 'asks' },
  {
    job: 'summer, driven: about its nine minutes',
    typed: { ...warms, outside: '20 °C', start: '20 °C', how: 'town' },
    master: 'fine',
    says: /min/,
  },
  {
    job: 'frost of −10, standing at fast idle',
    typed: { ...warms, outside: '-10 °C', start: '-10 °C', how: 'standing' },
    master: 'fine',
    near: true,
    says: /min|levels out/,
  },
  {
    job: 'took ten minutes in town',
    typed: { ...warms, outside: '20 °C', start: '20 °C', how: 'town', took: '10 min' },
    master: 'fine',
  },
  {
    job: 'took half an hour in town',
    typed: { ...warms, outside: '20 °C', start: '20 °C', how: 'town', took: '30 min' },
    master: 'look',
    says: /thermostat/,
  },
  {
    job: 'took three minutes in town',
    typed: { ...warms, outside: '20 °C', start: '20 °C', how: 'town', took: '3 min' },
    master: 'look',
    says: /flow|level/,
  },
  {
    job: 'half warm at the start, 60 °C',
    typed: { ...warms, outside: '20 °C', start: '60 °C', how: 'town', took: '4 min' },
    master: 'fine',
    near: true,
  },
  { job: 'warm already', typed: { ...warms, outside: '20 °C', start: '90 °C', how: 'town' }, master: 'asks' },
  {
    job: 'open road in frost, heater full',
    typed: { ...warms, outside: '-15 °C', start: '-15 °C', how: 'road', heater: 'full' },
    master: 'fine',
    says: /min|levels out/,
  },
  {
    job: 'took 23 min in town: longer than reckoned, and passes',
    typed: { ...warms, outside: '20 °C', start: '20 °C', how: 'town', took: '23 min' },
    master: 'fine',
    near: true,
    says: /anything from \d+ min to 2[3-9] min/,
    never: /belongs there/,
  },
  {
    job: 'hard frost, standing, heater on full',
    typed: { ...warms, outside: '-30 °C', start: '-30 °C', how: 'standing', heater: 'full' },
    master: 'fine',
    says: /levels out/,
    never: /Longer is/,
  },
];
