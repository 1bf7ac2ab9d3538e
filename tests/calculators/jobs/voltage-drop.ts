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
  // DIN VDE 0298-4, single cable in air, from memory: 0.5 mm² 11 A, 0.75 14 A, 2.5 32 A, 4 42 A, 16 98 A.
  {
    job: '40 A through 0.5 mm², 0.2 m of it',
    typed: { ...cable, current: '40', length: '0.2 m', area: '0.5 mm²' },
    master: 'stop',
    says: /11 A/,
    never: /sound cable/,
  },
  {
    job: '100 A through 0.75 mm²',
    typed: { ...cable, current: '100', length: '0.1 m', area: '0.75 mm²' },
    master: 'stop',
  },
  {
    job: '2.5 mm² with 31 A',
    typed: { ...cable, current: '31', length: '0.5 m', area: '2.5 mm²' },
    master: 'fine',
    near: true,
  },
  {
    job: '2.5 mm² with 35 A',
    typed: { ...cable, current: '35', length: '0.5 m', area: '2.5 mm²' },
    master: 'look',
    near: true,
    says: /for long/,
  },
  {
    job: '2.5 mm² with 47 A',
    typed: { ...cable, current: '47', length: '0.5 m', area: '2.5 mm²' },
    master: 'look',
    near: true,
  },
  {
    job: '2.5 mm² with 49 A',
    typed: { ...cable, current: '49', length: '0.5 m', area: '2.5 mm²' },
    master: 'stop',
    near: true,
  },
  {
    job: 'starter, 250 A through 35 mm²',
    typed: { ...cable, current: '250', length: '1.2 m', area: '35 mm²' },
    master: 'look',
    says: /seconds/,
  },
  // A surplus of 3 W in one spot melts a holder: common practice, no source.
  {
    job: 'supply loses 1.2 V at 25 A',
    typed: { ...joint, place: 'supply side', drop: '1.2', current: '25' },
    master: 'stop',
    says: /30\.0 W/,
  },
  {
    job: 'supply 0.5 V at 25 A: 2.5 W over',
    typed: { ...joint, place: 'supply side', drop: '0.50', current: '25' },
    master: 'look',
    near: true,
  },
  {
    job: 'supply 0.53 V at 25 A: 3.3 W over',
    typed: { ...joint, place: 'supply side', drop: '0.53', current: '25' },
    master: 'stop',
    near: true,
  },
  {
    job: 'earth loses half a volt at 25 A',
    typed: { ...joint, place: 'earth side', drop: '0.5', current: '25' },
    master: 'stop',
  },
  {
    job: 'relay contact, 3 V at 30 A',
    typed: { ...joint, place: 'switch or run of cable', drop: '3', current: '30' },
    master: 'stop',
    says: /90\.0 W/,
  },
  {
    job: 'relay contact 0.23 V at 25 A: 5.8 W',
    typed: { ...joint, place: 'switch or run of cable', drop: '0.23', current: '25' },
    master: 'look',
    near: true,
  },
  {
    job: 'relay contact 0.25 V at 25 A: 6.3 W',
    typed: { ...joint, place: 'switch or run of cable', drop: '0.25', current: '25' },
    master: 'stop',
    near: true,
  },
];
