import type { Job } from './job.ts';

/** A ribbed or V belt slips by up to 3 %, and from 6 % it is a fault; a toothed one does not. Common practice, no source. */
const pulleys = { belt: 'ribbed', 'crank-pulley': '150 mm', 'pump-pulley': '120 mm', crank: '2000 rpm' };
const speed = { ...pulleys, ask: 'speed' };
const slip = { ...pulleys, ask: 'slip' };

export const jobs: readonly Job[] = [
  { job: '150 on 120, crank 2,000', typed: { ...speed, slip: '0 %' }, master: 'fine', says: /2500 rpm/ },
  {
    job: 'the same at idle',
    typed: { ...speed, crank: '800', slip: '0 %' },
    master: 'fine',
    says: /1000 rpm/,
  },
  { job: 'two per cent of slip', typed: { ...speed, slip: '2 %' }, master: 'fine', says: /2450 rpm/ },
  { job: 'three per cent of slip', typed: { ...speed, slip: '3 %' }, master: 'fine', near: true },
  { job: '3.5 % of slip', typed: { ...speed, slip: '3.5 %' }, master: 'look', near: true },
  { job: 'pump measured 2,480', typed: { ...slip, pump: '2480' }, master: 'fine', says: /0\.8 %/ },
  { job: 'pump measured 2,425', typed: { ...slip, pump: '2425' }, master: 'fine', near: true },
  { job: 'pump measured 2,420', typed: { ...slip, pump: '2420' }, master: 'look', near: true, says: /again/ },
  { job: 'pump measured 2,355', typed: { ...slip, pump: '2355' }, master: 'look', near: true },
  { job: 'pump measured 2,350', typed: { ...slip, pump: '2350' }, master: 'stop', near: true },
  { job: 'pump measured 2,200', typed: { ...slip, pump: '2200' }, master: 'stop', says: /tension/i },
  { job: 'pump measured 1,200', typed: { ...slip, pump: '1200' }, master: 'stop' },
  { job: 'pump stands while the crank turns', typed: { ...slip, pump: '0' }, master: 'stop', says: /stands/ },
  { job: 'pump a bit faster, within the reading', typed: { ...slip, pump: '2520' }, master: 'fine' },
  { job: 'pump 3 % faster', typed: { ...slip, pump: '2575' }, master: 'fine', near: true },
  {
    job: 'pump 4 % faster than any belt drives it',
    typed: { ...slip, pump: '2600' },
    master: 'asks',
    near: true,
    says: /faster/,
  },
  {
    job: 'a mark read twice a turn',
    typed: { ...slip, pump: '5000' },
    master: 'asks',
    says: /mark/,
  },
  {
    job: 'pulleys typed the other way round',
    typed: { ...speed, 'crank-pulley': '60 mm', 'pump-pulley': '150 mm', slip: '0 %' },
    master: 'look',
    says: /other way round/,
  },
  {
    job: 'pump at 0.7 of the crank',
    typed: { ...speed, 'crank-pulley': '105 mm', 'pump-pulley': '150 mm', slip: '0 %' },
    master: 'fine',
    near: true,
  },
  {
    job: 'pump at 0.69 of the crank',
    typed: { ...speed, 'crank-pulley': '69 mm', 'pump-pulley': '100 mm', slip: '0 %' },
    master: 'look',
    near: true,
  },
  {
    job: 'pump at twice the crank',
    typed: { ...speed, 'crank-pulley': '200 mm', 'pump-pulley': '100 mm', slip: '0 %' },
    master: 'fine',
    near: true,
  },
  {
    job: 'pump at 2.1 times the crank',
    typed: { ...speed, 'crank-pulley': '210 mm', 'pump-pulley': '100 mm', slip: '0 %' },
    master: 'look',
    near: true,
  },
  { job: 'toothed, measured 2,480', typed: { ...slip, belt: 'toothed', pump: '2480' }, master: 'fine' },
  {
    job: 'toothed, measured 2,350: teeth do not slip',
    typed: { ...slip, belt: 'toothed', pump: '2350' },
    master: 'asks',
    says: /teeth|toothed/i,
  },
  { job: 'toothed, and it stands', typed: { ...slip, belt: 'toothed', pump: '0' }, master: 'stop' },
  { job: 'crank not read', typed: { ...slip, crank: '', pump: '2400' }, master: 'asks' },
  {
    job: 'in inches',
    typed: { ...speed, 'crank-pulley': '6 in', 'pump-pulley': '4.8 in', slip: '0 %' },
    master: 'fine',
    says: /2500 rpm/,
  },
  { job: 'only the crank typed', typed: { ask: 'speed', crank: '2000' }, master: 'asks' },
];
