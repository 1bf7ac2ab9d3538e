import type { Job } from './job.ts';

/** A hole is good to 15 % and friction to a third: a thread that holds only if both are kind is looked at again. */
const al = { class: '8.8', into: 'aluminium', foot: 'no' };

export const jobs: readonly Job[] = [
  { job: 'M6, 50', typed: { ...al, thread: 'M6', torque: '50' }, master: 'stop' },
  { job: 'M8, 60', typed: { ...al, thread: 'M8', torque: '60' }, master: 'stop' },
  { job: 'M8, 25', typed: { ...al, thread: 'M8', torque: '25' }, master: 'fine' },
  { job: 'M6, 10', typed: { ...al, thread: 'M6', torque: '10' }, master: 'fine' },
  { job: 'M5, 9', typed: { ...al, thread: 'M5', torque: '9' }, master: 'look', near: true },
  {
    job: 'M10 10.9 in steel, 70',
    typed: { ...al, class: '10.9', into: 'steel', thread: 'M10', torque: '70' },
    master: 'fine',
    near: true,
  },
  {
    job: 'M12x1.5 10.9 in steel, 120',
    typed: { ...al, class: '10.9', into: 'steel', thread: 'M12x1.5', torque: '120' },
    master: 'fine',
    near: true,
  },
  {
    job: 'M8 in steel, 38',
    typed: { ...al, into: 'steel', thread: 'M8', torque: '38' },
    master: 'look',
    near: true,
  },
  {
    job: 'M8, 20 in 5 mm of aluminium',
    typed: { ...al, thread: 'M8', torque: '20', engagement: '5 mm' },
    master: 'look',
    near: true,
    says: /strip/,
  },
  {
    job: 'M8, 22 in 4 mm',
    typed: { ...al, thread: 'M8', torque: '22', engagement: '4 mm' },
    master: 'look',
    near: true,
    says: /strip/,
  },
  {
    job: 'M8, 30 in 4 mm',
    typed: { ...al, thread: 'M8', torque: '30', engagement: '4 mm' },
    master: 'stop',
    near: true,
    says: /strip/,
  },
  {
    job: 'M8, 25 in 12 mm',
    typed: { ...al, thread: 'M8', torque: '25', engagement: '12 mm' },
    master: 'fine',
  },
  {
    job: 'M8, 25 in 6 mm',
    typed: { ...al, thread: 'M8', torque: '25', engagement: '6 mm' },
    master: 'look',
    near: true,
    says: /strip/,
  },
  {
    job: 'M10, 45 in 5 mm',
    typed: { ...al, thread: 'M10', torque: '45', engagement: '5 mm' },
    master: 'look',
    near: true,
    says: /strip/,
  },
  {
    job: 'M6, 10 in 3 mm',
    typed: { ...al, thread: 'M6', torque: '10', engagement: '3 mm' },
    master: 'look',
    near: true,
    says: /strip/,
  },
  {
    job: 'M6, 10 in 2 mm: a stripped hole, no slip of the pen',
    typed: { ...al, thread: 'M6', torque: '10', engagement: '2 mm' },
    master: 'stop',
    says: /strip/,
    never: /slip|M7/,
  },
  {
    job: 'M10, 20: low for it, can be meant',
    typed: { ...al, thread: 'M10', torque: '20' },
    master: 'fine',
    near: true,
  },
  {
    job: 'M10, 8: a unit or thread may be wrong',
    typed: { ...al, thread: 'M10', torque: '8' },
    master: 'look',
    near: true,
  },
  {
    job: 'brass plug, 15',
    typed: { class: 'none', thread: 'M14x1.5', torque: '15' },
    master: 'look',
    says: /maker/,
  },
  { job: 'M6, 7.4 ft-lbs', typed: { ...al, thread: 'M6', torque: '7.4 ft-lbs' }, master: 'fine' },
  { job: 'M6, 89 in-lbs', typed: { ...al, thread: 'M6', torque: '89 in-lbs' }, master: 'fine' },
  { job: 'M8, 2.5 kgf·m', typed: { ...al, thread: 'M8', torque: '2.5 kgf·m' }, master: 'fine' },
  {
    job: 'M6, 8-10 Nm',
    typed: { ...al, thread: 'M6', torque: '8-10 Nm' },
    master: 'asks',
    says: /range/,
    never: /not a unit/,
  },
  {
    job: 'M8, 10 N·m + 90°',
    typed: { ...al, thread: 'M8', torque: '10 N·m + 90°' },
    master: 'asks',
    says: /angle/,
    never: /not a unit/,
  },
  {
    job: 'crow-foot under the hand',
    typed: { ...al, thread: 'M6', torque: '10', foot: 'back', wrench: '300 mm', extension: '280 mm' },
    master: 'asks',
  },
];
