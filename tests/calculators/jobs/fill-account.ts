import type { Job } from './job.ts';

/** Within 0.3 l the jug cannot tell (0.5 in a van's system); half a litre short and it is not started; a tenth missing is never nothing. */
const stands = { capacity: '6.0 l', level: 'stands', before: 'mark' };

export const jobs: readonly Job[] = [
  { job: 'a cup less than came out', typed: { ...stands, drained: '4.4', refilled: '4.3' }, master: 'fine' },
  {
    job: 'a quarter litre less',
    typed: { ...stands, drained: '4.4', refilled: '4.15' },
    master: 'fine',
    near: true,
  },
  { job: '0.4 l less', typed: { ...stands, drained: '4.4', refilled: '4.0' }, master: 'look', near: true },
  { job: '0.45 l less', typed: { ...stands, drained: '4.4', refilled: '3.95' }, master: 'look', near: true },
  {
    job: '0.6 l less and it takes no more',
    typed: { ...stands, drained: '4.4', refilled: '3.8' },
    master: 'stop',
    near: true,
    says: /0\.6 l/,
  },
  {
    job: 'five out, two in',
    typed: { ...stands, drained: '5.0', refilled: '2.0' },
    master: 'stop',
    says: /3\.0 l/,
  },
  {
    job: 'came in 1.5 l low; as much in as out',
    typed: { ...stands, before: 'low', short: '1.5 l', drained: '3.5', refilled: '3.5' },
    master: 'stop',
    says: /1\.5 l/,
  },
  {
    job: 'came in low, nobody knows how much',
    typed: { ...stands, before: 'low', drained: '3.5', refilled: '3.5' },
    master: 'look',
    says: /low/,
  },
  {
    job: 'nobody looked at the level before',
    typed: { ...stands, before: 'unknown', drained: '3.5', refilled: '3.5' },
    master: 'look',
    says: /before/,
  },
  {
    job: 'low by 0.6, took 0.6 more',
    typed: { ...stands, before: 'low', short: '0.6 l', drained: '5.0', refilled: '5.6' },
    master: 'fine',
    never: /look under/,
  },
  {
    job: 'low by 0.6, as much in as out',
    typed: { ...stands, before: 'low', short: '0.6 l', drained: '5.0', refilled: '5.0' },
    master: 'stop',
    near: true,
    says: /0\.6 l/,
  },
  {
    job: 'van of 28 l, 1.35 l missing',
    typed: { ...stands, capacity: '28 l', drained: '10', refilled: '8.65' },
    master: 'stop',
  },
  {
    job: 'van of 30 l, 1.4 l missing',
    typed: { ...stands, capacity: '30 l', drained: '12', refilled: '10.6' },
    master: 'stop',
  },
  {
    job: '12 l, half a litre missing',
    typed: { ...stands, capacity: '12 l', drained: '6', refilled: '5.5' },
    master: 'stop',
    near: true,
  },
  {
    job: '20 l, 0.45 l missing of nine',
    typed: { ...stands, capacity: '20 l', drained: '9', refilled: '8.55' },
    master: 'fine',
    near: true,
  },
  {
    job: '20 l, 0.6 l missing of nine',
    typed: { ...stands, capacity: '20 l', drained: '9', refilled: '8.4' },
    master: 'look',
    near: true,
  },
  {
    job: 'capacity typed 52 for 5.2',
    typed: { ...stands, capacity: '52 l', drained: '4.4', refilled: '2.0' },
    master: 'stop',
  },
  {
    job: 'small system, a tenth missing',
    typed: { ...stands, capacity: '4.0 l', drained: '2.5', refilled: '2.25' },
    master: 'look',
    near: true,
  },
  {
    job: 'one litre out for a thermostat, 0.15 short',
    typed: { ...stands, drained: '1.0', refilled: '0.85' },
    master: 'look',
    near: true,
  },
  {
    job: 'one litre out for a thermostat, back to the drop',
    typed: { ...stands, drained: '1.0', refilled: '0.95' },
    master: 'fine',
  },
  {
    job: 'took more than came out',
    typed: { ...stands, drained: '5', refilled: '5.6' },
    master: 'look',
    says: /0\.6 l/,
  },
  {
    job: 'still sinking, half to go',
    typed: { ...stands, level: 'takes', drained: '4.4', refilled: '2.0' },
    master: 'look',
    says: /still to go in/,
  },
  {
    job: 'more out than it holds',
    typed: { ...stands, capacity: '5 l', drained: '7', refilled: '5' },
    master: 'stop',
    says: /wrong/,
  },
  { job: 'only the pan was measured', typed: { drained: '5.0' }, master: 'asks' },
  { job: 'nothing poured yet', typed: { ...stands, drained: '4', refilled: '0' }, master: 'asks' },
  {
    job: '12 l, 0.49 l missing',
    typed: { ...stands, capacity: '12 l', drained: '6', refilled: '5.51' },
    master: 'look',
    near: true,
    says: /from 0\.5 l on/,
  },
  {
    job: 'all back in, and still sinking',
    typed: { ...stands, level: 'takes', drained: '4.4', refilled: '4.4' },
    master: 'look',
    says: /still goes down/,
  },
  {
    job: 'all but a cup in, and still sinking',
    typed: { ...stands, level: 'takes', drained: '4.4', refilled: '4.3' },
    master: 'look',
    near: true,
    says: /still goes down/,
  },
];
