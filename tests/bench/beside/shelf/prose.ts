/** Invented sentences of the trade's length and vocabulary. They advise nothing: nobody is to work by them. */
import type { Chance } from './random.ts';

type Words = readonly [string, ...string[]];

const PARTS: Words = [
  'thermostat',
  'radiator',
  'header tank',
  'by-pass pipe',
  'heater core',
  'pump impeller',
  'fan motor',
  'relay',
  'bleed screw',
  'drain plug',
  'filler neck',
  'cap seal',
  'hose clamp',
  'sensor plug',
  'earth strap',
  'coupling',
  'vent line',
  'shut-off valve',
  'oil cooler',
  'shroud',
  'tensioner',
  'idler',
  'housing',
  'gasket',
  'outlet elbow',
  'return pipe',
  'level sender',
  'fuse holder',
  'wiring loom',
  'mounting bracket',
  'core plug',
  'manifold',
];
const SIGNS: Words = [
  'a white crust',
  'a damp edge',
  'a brown film',
  'a thin stream',
  'a rattle',
  'a slow drip',
  'a hot spot',
  'a cold band',
  'a bent fin',
  'a polished ring',
  'a green trace',
  'a sweet smell',
  'a soft wall',
  'a swollen end',
  'a hairline',
  'a burnt contact',
  'a chafed sleeve',
  'a pocket of air',
  'a whistle',
  'a jerk',
  'a dark stain',
];
const PLACES: Words = [
  'under the air duct',
  'behind the headlamp',
  'at the gearbox end',
  'along the inner wing',
  'below the battery tray',
  'beside the subframe',
  'on the pressure side',
  'at the lowest point',
  'above the drive belt',
  'near the bulkhead',
  'inside the plastic tank',
  'at the third bolt',
  'between the two hoses',
  'on the warm side of the core',
];
const STATES: Words = [
  'with the engine cold',
  'at idle',
  'after ten minutes of driving',
  'with the heater on hot',
  'under load on a hill',
  'with the fan running',
  'while it cools',
  'after a night outside',
  'with the cap off and cold',
  'at steady cruise',
];
const ACTS: Words = [
  'Look at',
  'Feel',
  'Listen to',
  'Press',
  'Measure',
  'Clean',
  'Mark',
  'Loosen',
  'Follow',
  'Support',
  'Rinse',
  'Note',
];
const RESULTS: Words = [
  'settles the question',
  'says little by itself',
  'points to the other side',
  'is worth a second reading',
  'has misled three people here',
  'comes back within a week',
  'goes away when it is dry',
  'rules the pump out',
  'is told from the next one by its colour',
  'needs a lamp and patience',
  'shows first on the return side',
];

type Pattern = (chance: Chance) => string;

const PATTERNS: readonly [Pattern, ...Pattern[]] = [
  (c) => `${c.one(ACTS)} the ${c.one(PARTS)} ${c.one(PLACES)} ${c.one(STATES)}.`,
  (c) => `${upper(c.one(SIGNS))} at the ${c.one(PARTS)} ${c.one(RESULTS)}.`,
  (c) =>
    `The ${c.one(PARTS)} and the ${c.one(PARTS)} are read together, since ${c.one(SIGNS)} ${c.one(PLACES)} is easily missed.`,
  (c) =>
    `${upper(c.one(STATES))} the ${c.one(PARTS)} stands at ${c.whole(20, 110)} °C; more than ${c.whole(2, 15)} K beside it ${c.one(RESULTS)}.`,
  (c) => `Drawing ${c.whole(1000, 99_999)} names the ${c.one(PARTS)} ${c.one(PLACES)}.`,
  (c) =>
    `${c.whole(2, 40)} of ${c.whole(41, 90)} jobs had ${c.one(SIGNS)} ${c.one(PLACES)}, most of them ${c.one(STATES)}.`,
  (c) => `Whoever changes only the ${c.one(PARTS)} sees ${c.one(SIGNS)} again ${c.one(STATES)}.`,
  (c) =>
    `Hold the ${c.one(PARTS)} up before the ${c.one(PARTS)} comes off, as ${c.one(SIGNS)} ${c.one(RESULTS)}.`,
  (c) =>
    `${c.whole(1, 9)}.${c.whole(0, 9)} bar for ${c.whole(2, 20)} minutes is enough; ${c.one(SIGNS)} ${c.one(PLACES)} ${c.one(RESULTS)}.`,
  (c) => `Without ${c.one(SIGNS)} the ${c.one(PARTS)} stays where it is.`,
];

/** About fourteen words. */
export function sentence(chance: Chance): string {
  return chance.one(PATTERNS)(chance);
}

/** Some sentences as one text. */
export function text(chance: Chance, sentences: number): string {
  return Array.from({ length: sentences }, () => sentence(chance)).join(' ');
}

/** A list of texts. */
export function list(chance: Chance, items: number, sentences = 1): string[] {
  return Array.from({ length: items }, () => text(chance, sentences));
}

/** A few words without a full stop, such as a part for a list. */
export function phrase(chance: Chance): string {
  return `${upper(chance.one(PARTS))} ${chance.one(PLACES)}, ${chance.whole(4, 60)} mm`;
}

/** As a customer would say it: a sentence of nothing but chance belongs to no complaint, and the check refuses such a shelf. */
export function saying(chance: Chance, complaint: string): string {
  return `There is ${chance.one(SIGNS)} ${chance.one(STATES)}, and ${complaint}`;
}

function upper(words: string): string {
  return `${words[0]?.toUpperCase() ?? ''}${words.slice(1)}`;
}
