import type { Job } from './job.ts';

/**
 * Air behind a heater comes seven tenths of the way to the coolant and more, behind a radiator at idle with its fan on six; under 0.55
 * and 0.45 it goes past. Between the hoses 5 to 20 K and 4 to 15 K, as in the heat balance. Common practice, no source.
 */
const read = (place: string, hot: string, cold: string, air: string, behind: string) => ({
  place,
  hot,
  cold,
  'air-in': air,
  'air-out': behind,
});
const heater = (...four: [string, string, string, string]) => read('heater', ...four);
const radiator = (...four: [string, string, string, string]) => read('radiator', ...four);

export const jobs: readonly Job[] = [
  { job: 'heater 85/77, air 10 to 70', typed: heater('85', '77', '10', '70'), master: 'fine', says: /80 %/ },
  { job: 'heater 85/75, air 20 to 66', typed: heater('85', '75', '20', '66'), master: 'fine', near: true },
  { job: 'heater 85/77, air 0 to 60', typed: heater('85', '77', '0', '60'), master: 'fine', near: true },
  {
    job: 'heater 85/76, air 10 to 61',
    typed: heater('85', '76', '10', '61'),
    master: 'look',
    near: true,
    says: /again/,
    never: /door/,
  },
  {
    job: 'heater 85/77, air 10 to 53',
    typed: heater('85', '77', '10', '53'),
    master: 'look',
    near: true,
    never: /door/,
  },
  {
    job: 'heater 85/77, air 10 to 50: cold air past the core',
    typed: heater('85', '77', '10', '50'),
    master: 'look',
    near: true,
    says: /door/,
  },
  {
    job: 'heater 85/79, air 5 to 30',
    typed: heater('85', '79', '5', '30'),
    master: 'look',
    says: /door/,
    never: /Too little coolant/,
  },
  {
    job: 'heater 88/50: hardly any coolant',
    typed: heater('88', '50', '10', '40'),
    master: 'look',
    says: /Too little coolant/,
    never: /door/,
  },
  {
    job: 'heater 21 K between the hoses',
    typed: heater('85', '64', '10', '65'),
    master: 'look',
    near: true,
    says: /again/,
  },
  {
    job: 'heater 23 K between the hoses',
    typed: heater('85', '62', '10', '60'),
    master: 'look',
    near: true,
    says: /Too little coolant/,
  },
  {
    job: 'heater 3 K between the hoses, vent 75',
    typed: heater('85', '82', '10', '75'),
    master: 'look',
    near: true,
    says: /again/,
  },
  {
    job: 'heater 2.5 K between the hoses, vent 75: hot, and little of it',
    typed: heater('85', '82.5', '10', '75'),
    master: 'look',
    near: true,
    says: /filter/,
  },
  {
    job: 'heater 1 K between the hoses, vent 78',
    typed: heater('85', '84', '10', '78'),
    master: 'look',
    says: /Too little air/,
  },
  {
    job: 'heater 2 K between the hoses, vent 25: the door is on cold',
    typed: heater('85', '83', '10', '25'),
    master: 'look',
    says: /door/,
  },
  { job: 'engine cold', typed: heater('40', '35', '10', '30'), master: 'asks', says: /Warm/ },
  { job: 'vent hotter than the coolant', typed: heater('85', '77', '10', '90'), master: 'asks' },
  { job: 'hoses the other way round', typed: heater('77', '85', '10', '70'), master: 'asks', says: /round/ },
  {
    job: 'air going in at 70: nothing to tell by',
    typed: heater('85', '77', '70', '80'),
    master: 'asks',
    says: /30 K/,
  },
  {
    job: 'air going in 30 K under the coolant, the least that tells',
    typed: heater('85', '77', '55', '78'),
    master: 'fine',
    near: true,
  },
  {
    job: 'vent colder than the air that goes in',
    typed: heater('85', '77', '10', '8'),
    master: 'asks',
    says: /air conditioning/i,
  },
  {
    job: 'vent not measured',
    typed: { place: 'heater', hot: '85', cold: '77', 'air-in': '10' },
    master: 'asks',
  },
  { job: 'radiator 95/87, air 25 to 72', typed: radiator('95', '87', '25', '72'), master: 'fine' },
  { job: 'radiator air 25 to 67', typed: radiator('95', '87', '25', '67'), master: 'fine', near: true },
  {
    job: 'radiator air 25 to 65',
    typed: radiator('95', '87', '25', '65'),
    master: 'look',
    near: true,
    says: /again/,
  },
  {
    job: 'radiator air 25 to 57',
    typed: radiator('95', '87', '25', '57'),
    master: 'look',
    near: true,
    never: /shroud/,
  },
  {
    job: 'radiator air 25 to 55: it goes past the core',
    typed: radiator('95', '87', '25', '55'),
    master: 'look',
    near: true,
    says: /shroud/,
  },
  {
    job: 'radiator 1.5 K, air as hot as the core',
    typed: radiator('95', '93.5', '25', '90'),
    master: 'look',
    says: /fan/,
  },
  {
    job: 'radiator 20 K',
    typed: radiator('95', '75', '20', '60'),
    master: 'look',
    says: /thermostat/,
  },
  {
    job: 'radiator 16 K',
    typed: radiator('95', '79', '25', '70'),
    master: 'look',
    near: true,
    says: /again/,
  },
  { job: 'radiator, °F', typed: radiator('203 °F', '189 °F', '77 °F', '160 °F'), master: 'fine' },
  {
    job: 'outlet colder than the air',
    typed: radiator('95', '24', '25', '60'),
    master: 'asks',
    says: /colder than the air/,
  },
];
