import type { Job } from './job.ts';

/** Limits of the trade under working current: joint 0.1, cable or contact 0.2, earth 0.1, supply 0.4, all 0.5 V; meters are good to 0.02. */
const joint = { measured: 'joint' };
const fuse = { measured: 'fuse' };
const cable = { measured: 'cable', temperature: '60 °C' };

export const jobs: readonly Job[] = [
  {
    job: 'good joint',
    typed: { ...joint, place: 'connection', drop: '0.05', current: '25' },
    master: 'fine',
  },
  {
    job: 'joint at the limit',
    typed: { ...joint, place: 'connection', drop: '0.10', current: '25' },
    master: 'fine',
    near: true,
  },
  {
    job: 'joint a hair over',
    typed: { ...joint, place: 'connection', drop: '0.11', current: '30' },
    master: 'look',
    near: true,
  },
  {
    job: 'joint two hairs over',
    typed: { ...joint, place: 'connection', drop: '0.12', current: '28' },
    master: 'look',
    near: true,
  },
  {
    job: 'joint at 0.15 and hot',
    typed: { ...joint, place: 'connection', drop: '0.15', current: '25' },
    master: 'stop',
    near: true,
  },
  {
    job: 'joint cooking',
    typed: { ...joint, place: 'connection', drop: '0.3', current: '25' },
    master: 'stop',
    says: /7\.5 W/,
  },
  {
    job: 'supply side at the limit',
    typed: { ...joint, place: 'supply side', drop: '0.40', current: '22' },
    master: 'fine',
    near: true,
  },
  {
    job: 'supply side over',
    typed: { ...joint, place: 'supply side', drop: '0.45', current: '22' },
    master: 'look',
    near: true,
  },
  {
    job: 'earth at the limit',
    typed: { ...joint, place: 'earth side', drop: '0.10', current: '22' },
    master: 'fine',
    near: true,
  },
  {
    job: 'earth over',
    typed: { ...joint, place: 'earth side', drop: '0.14', current: '22' },
    master: 'look',
    near: true,
  },
  {
    job: 'hardly any current',
    typed: { ...joint, place: 'whole circuit', drop: '0.3', current: '0.5' },
    master: 'look',
    says: /Proves nothing/,
  },
  {
    job: 'open',
    typed: { ...joint, place: 'supply side', drop: '13', current: '0.1' },
    master: 'look',
    says: /Open/,
  },
  { job: 'no clamp on it', typed: { ...joint, place: 'connection', drop: '0.2' }, master: 'asks' },
  {
    job: '40 A maxi fuse of a 22 A fan, 33 mV',
    typed: { ...fuse, type: 'maxi', fuse: '40 A', 'fuse-drop': '33 mV', draws: '22 A' },
    master: 'fine',
    says: /22 A/,
  },
  {
    job: '60 A maxi fuse, 30 mV',
    typed: { ...fuse, type: 'maxi', fuse: '60 A', 'fuse-drop': '30 mV' },
    master: 'fine',
  },
  {
    job: '80 A bolted strip, 60 mV',
    typed: { ...fuse, type: 'cartridge', fuse: '80 A', 'fuse-drop': '58 mV' },
    master: 'look',
    near: true,
  },
  {
    job: '30 A blade of a 22 A fan, 45 mV',
    typed: { ...fuse, type: 'blade', fuse: '30 A', 'fuse-drop': '45 mV', draws: '22 A' },
    master: 'fine',
  },
  {
    job: '20 A blade, 30 mV',
    typed: { ...fuse, type: 'blade', fuse: '20 A', 'fuse-drop': '30 mV' },
    master: 'fine',
  },
  {
    job: '20 A blade, 60 mV',
    typed: { ...fuse, type: 'blade', fuse: '20 A', 'fuse-drop': '60 mV' },
    master: 'look',
    near: true,
  },
  {
    job: '20 A blade, 72 mV: a fifth of doubt either side of 21 A',
    typed: { ...fuse, type: 'blade', fuse: '20 A', 'fuse-drop': '72 mV', draws: '20 A' },
    master: 'look',
    near: true,
  },
  {
    job: '20 A blade, 100 mV',
    typed: { ...fuse, type: 'blade', fuse: '20 A', 'fuse-drop': '100 mV' },
    master: 'stop',
  },
  { job: 'fuse of unknown rating', typed: { ...fuse, 'fuse-drop': '33 mV' }, master: 'asks' },
  {
    job: 'nothing over the fuse',
    typed: { ...fuse, type: 'blade', fuse: '20 A', 'fuse-drop': '0.05 mV' },
    master: 'look',
    says: /No current/,
  },
  {
    job: '25 A over 3 m of 4 mm²',
    typed: { ...cable, current: '25', length: '3 m', area: '4 mm²' },
    master: 'fine',
    near: true,
  },
  {
    job: '15 A over 2 m of 2.5 mm²',
    typed: { ...cable, current: '15', length: '2 m', area: '2.5 mm²' },
    master: 'fine',
  },
  {
    job: '40 A over 1.5 m of 6 mm²',
    typed: { ...cable, current: '40', length: '1.5 m', area: '6 mm²' },
    master: 'fine',
  },
  {
    job: '30 A over 5 m of 6 mm²',
    typed: { ...cable, current: '30', length: '5 m', area: '6 mm²' },
    master: 'look',
    near: true,
  },
  {
    job: '30 A over 8 m of 2.5 mm²',
    typed: { ...cable, current: '30', length: '8 m', area: '2.5 mm²' },
    master: 'look',
    says: /too thin/,
  },
  {
    job: '20 A over 3 m of 12 AWG',
    typed: { ...cable, current: '20', length: '3 m', area: '12 AWG' },
    master: 'fine',
    near: true,
  },
];
