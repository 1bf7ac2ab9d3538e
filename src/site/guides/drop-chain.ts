/** A fan circuit with the volts lost on the way, place by place. The circuit is invented; Ohm's law is not. */
import { cableResistance, voltageDrop } from '../../physics/cable.ts';
import { type DropPlace, joint } from '../../physics/joint.ts';
import { ampere, fromCelsius, metre, type Ohm, ohm, squareMetre, type Volt } from '../../physics/units.ts';
import { coordinate, escapeText, line, picture } from '../drawings/svg.ts';

const CURRENT = ampere(25);
export const BATTERY = 13.5;

interface Link {
  name: string;
  side: 'supply' | 'earth';
  place: DropPlace;
  resistance: Ohm;
}

const LINKS: readonly Link[] = [
  { name: 'Fuse holder, one leg burnt', side: 'supply', place: 'connection', resistance: ohm(13e-3) },
  { name: 'Relay contact, 30 to 87', side: 'supply', place: 'switch or run of cable', resistance: ohm(5e-3) },
  {
    name: 'Feed, 2 m of 6 mm² at 60 °C',
    side: 'supply',
    place: 'switch or run of cable',
    resistance: cableResistance(metre(2), squareMetre(6e-6), fromCelsius(60)),
  },
  { name: 'Plug at the motor', side: 'supply', place: 'connection', resistance: ohm(2e-3) },
  { name: 'Earth cable and its eye', side: 'earth', place: 'earth side', resistance: ohm(1.6e-3) },
];

export interface LinkDrop extends Link {
  volts: Volt;
  watts: number;
  limit: Volt;
  withinLimit: boolean;
}

/** What each place loses under the working current. */
export const chain: readonly LinkDrop[] = LINKS.map((link) => {
  const volts = voltageDrop(CURRENT, link.resistance);
  const { heat, limit, withinLimit } = joint(volts, CURRENT, link.place);
  return { ...link, volts, watts: heat, limit, withinLimit };
});

/** Volts lost on one side, or on both. */
export function lostOn(side?: Link['side']): number {
  return chain
    .filter((each) => side === undefined || each.side === side)
    .reduce((sum, { volts }) => sum + volts, 0);
}

const WIDTH = 350;
const ROPE = 22;
const TEXT = 48;
const TOP = 30;
const ROW = 46;
/** Drawing units for a volt; the worst place still leaves room for its figures. */
const VOLT = 440;

/** The chain from battery to battery, each place with its loss as a bar and its limit as a stroke across it. */
export function drawDropChain(id: string): string {
  const supply = chain.filter(({ side }) => side === 'supply');
  const earth = chain.filter(({ side }) => side === 'earth');
  const motorRow = supply.length + 1;
  const rows = [
    end('Battery positive', 0),
    ...supply.map((each, index) => loss(each, index + 1)),
    motor(motorRow),
    ...earth.map((each, index) => loss(each, motorRow + 1 + index)),
    end('Battery negative', motorRow + 1 + earth.length),
  ];
  const bottom = TOP + (motorRow + 1 + earth.length) * ROW;
  const description = chain
    .map(({ name, volts, limit }) => `${name}: ${volts.toFixed(2)} V lost, limit ${limit} V`)
    .join('; ');
  return picture(
    {
      id,
      kind: 'guide',
      title: 'Volts lost along a fan circuit',
      description: `${CURRENT} A flows. ${description}.`,
      width: WIDTH,
      height: bottom + 24,
    },
    `<path class="rope" d="${line(ROPE, TOP, ROPE, bottom)}"/>${rows.join('')}`,
  );
}

function rowAt(row: number): number {
  return TOP + row * ROW;
}

function end(name: string, row: number): string {
  const y = rowAt(row);
  return `<circle class="part" cx="${ROPE}" cy="${y}" r="9"/><text class="strong" x="${TEXT}" y="${y + 5}">${name}</text>`;
}

function motor(row: number): string {
  const y = rowAt(row);
  const left = BATTERY - lostOn();
  return (
    `<circle class="part" cx="${ROPE}" cy="${y}" r="16"/><text class="strong" x="${ROPE}" y="${y + 5}" text-anchor="middle">M</text>` +
    `<text class="strong" x="${TEXT}" y="${y + 5}">Fan motor: ${left.toFixed(2)} V of ${BATTERY} V arrive</text>`
  );
}

function loss({ name, volts, watts, limit, withinLimit }: LinkDrop, row: number): string {
  const y = rowAt(row);
  const tone = withinLimit ? '' : ' class="strong over"';
  const [width, stroke] = [volts * VOLT, TEXT + limit * VOLT].map(coordinate);
  const words = `${volts.toFixed(2)} V, ${watts.toFixed(1)} W`;
  const after = TEXT + Math.max(volts, limit) * VOLT + 8;
  return (
    `<rect class="part" x="${ROPE - 7}" y="${y - 9}" width="14" height="18" rx="2"/>` +
    `<text${tone} x="${TEXT}" y="${y - 5}">${escapeText(name)}</text>` +
    `<rect class="bar" x="${TEXT}" y="${y + 2}" width="${width}" height="11"/>` +
    `<path class="heavy" d="M${stroke} ${y - 1}v17"/>` +
    `<text${tone} x="${coordinate(after)}" y="${y + 12}">${words}</text>`
  );
}
