/** Titles and ids: what happens, and where, so that no two records of a kind read alike. */

const SIDES = [
  'left',
  'right',
  'upper',
  'lower',
  'front',
  'rear',
  'inner',
  'outer',
  'short',
  'long',
] as const;
const SPOTS = [
  'heater pipe',
  'radiator tank',
  'by-pass hose',
  'pump flange',
  'bleed line',
  'filler pipe',
  'fan shroud',
  'cooler loop',
  'gauge circuit',
  'return branch',
] as const;

/** How many areas have a name of their own. */
export const MOST_AREAS = SIDES.length * SPOTS.length;

/** Where an area's records are: left heater pipe, right radiator tank, … */
export function spotOf(area: number): string {
  const side = SIDES[area % SIDES.length] ?? SIDES[0];
  const spot = SPOTS[(area + Math.floor(area / SIDES.length)) % SPOTS.length] ?? SPOTS[0];
  return `${side} ${spot}`;
}

const FIRST = 'bdfgklmnprtvz';
const SECOND = 'aeiou';

/** A made word of each area's own, as a workshop has a name for a place: what is said of one of forty alike is known by it. */
export function areaWord(area: number): string {
  const syllable = (at: number) =>
    `${FIRST[at % FIRST.length] ?? ''}${SECOND[Math.floor(at / FIRST.length) % SECOND.length] ?? ''}`;
  return `${syllable(area)}${syllable(area * 7 + 3)}x`;
}

export function idOf(title: string): string {
  return title
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '');
}

export const COMPLAINTS = [
  'Needle climbs in traffic',
  'Heat fades at idle',
  'Drops of coolant under the car',
  'Fan runs on and on',
  'Level sinks without a trace',
  'Hoses hard after a short drive',
  'Gurgling behind the dash',
  'Slow to warm up',
] as const;

export const FAULTS = [
  'Crack',
  'Furred passage',
  'Loose clamp',
  'Perished seal',
  'Sticking valve',
  'Worn bearing',
  'Chafed wire',
  'Corroded plug',
  'Air pocket',
  'Split hose',
  'Blocked vent',
  'Slipping drive',
  'Bent flange',
  'Weak spring',
  'Porous casting',
  'Burnt contact',
  'Silted core',
  'Missing bracket',
] as const;

export const GROUP_TESTS = [
  'Feel for warmth',
  'Pressure held',
  'Colour and smell of the coolant',
  'Volts under load',
  'Flow into a jug',
  'Sound through the stethoscope',
] as const;

export const PROOFS = [
  'Dye and lamp',
  'Flow back and forth',
  'Clamp pulled by hand',
  'Bench test in water',
  'Play of the shaft',
  'Drop over the joint',
  'Vacuum held',
  'Weight before and after',
  'Camera through the neck',
  'Bubbles counted',
] as const;

export const REPAIRS = [
  'Replace the hose',
  'Replace the seal',
  'Flush',
  'Renew the wiring',
  'Fit the valve',
  'Change the pump',
  'Bleed',
  'Refit the flange',
  'Renew the spring',
  'Tighten and mark',
  'Fill under vacuum',
  'Make sure of the complaint',
] as const;

export const TOOLS = [
  'Feeler',
  'Hand pump',
  'Lamp on a stalk',
  'Clamp meter',
  'Long pliers',
  'Catch tray',
  'Test cap',
  'Infrared gun',
  'Sight glass',
  'Torque key',
] as const;

export const CODES = [
  'Circuit low',
  'Circuit high',
  'Range or performance',
  'Intermittent',
  'Below the expected temperature',
  'Stuck open',
  'Stuck closed',
  'Control circuit open',
  'Slow to answer',
  'Rotation too low',
  'Signal compared with another',
  'Warm-up time exceeded',
] as const;

export const CAUTIONS = ['Hot steam', 'Turning parts', 'Car on the lift', 'Spilt coolant'] as const;
export const COOLANTS = ['Bench mixture A', 'Bench mixture B'] as const;

/** Cautions that the pages of vehicles name by their ids: every shelf has them, here as those of the first area. */
export const NAMED_BY_PAGES = ['scald', 'turning-belts', 'fan-starts-by-itself'] as const;
