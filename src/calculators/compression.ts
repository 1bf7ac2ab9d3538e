/** Compression and leak-down of the cylinders: how far apart, which is low, and whether two neighbours are. */
import {
  type CylinderSpread,
  compressionSpread,
  EVEN_BELOW,
  IN_ORDER,
  LOW_FROM,
  leakDownSpread,
  TOO_GOOD,
} from '../physics/cylinder-spread.ts';
import type { Answer, Calculator, QuantityFormatter, QuantityInput, Refusal, Values } from './declaration.ts';
import { refuse } from './refuse.ts';

const CYLINDERS = ['one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight'];
const SHOWN = ['12.0 bar', '11.8 bar', '12.1 bar', '11.9 bar'];
const LOST = ['8 %', '6 %', '9 %', '7 %'];

/** So much lost, a valve stands open first of all: the piston is not at its dead centre. Common practice, no source. */
const VALVE_OPEN = 0.9;

function cylinder(name: string, at: number, kind: 'pressure' | 'loss'): QuantityInput {
  const common = { kind: 'quantity', label: `Cylinder ${at + 1}`, reading: true, optional: true } as const;
  return kind === 'pressure'
    ? {
        ...common,
        name,
        dimension: 'pressure',
        unit: 'bar',
        default: SHOWN[at] ?? '',
        limits: ['0 bar', '70 bar'],
        when: { measured: ['compression'] },
      }
    : {
        ...common,
        name: `loss-${name}`,
        dimension: 'share',
        unit: '%',
        default: LOST[at] ?? '',
        limits: ['0 %', '100 %'],
        when: { measured: ['loss'] },
      };
}

export const compression: Calculator = {
  id: 'compression',
  title: 'Compression and leak-down',
  settles: 'how far the cylinders are apart, which one is low, and whether two neighbours share a gasket',
  also: [
    'compression test',
    'leak-down percent',
    'cylinder loss',
    'compression difference',
    'head gasket between cylinders',
  ],
  inputs: [
    {
      kind: 'choice',
      name: 'measured',
      label: 'Measured',
      default: 'compression',
      options: [
        { value: 'compression', label: 'compression, cranked' },
        { value: 'loss', label: 'loss, on the leak-down tester' },
      ],
    },
    {
      kind: 'choice',
      name: 'fuel',
      label: 'Engine',
      default: 'petrol',
      options: [
        { value: 'petrol', label: 'petrol' },
        { value: 'diesel', label: 'diesel' },
      ],
      when: { measured: ['compression'] },
    },
    ...CYLINDERS.map((name, at) => cylinder(name, at, 'pressure')),
    ...CYLINDERS.map((name, at) => cylinder(name, at, 'loss')),
    {
      kind: 'choice',
      name: 'bubbles',
      label: 'Coolant at the filler meanwhile',
      default: 'no',
      options: [
        { value: 'no', label: 'stood still' },
        { value: 'yes', label: 'bubbled or rose as the air went in' },
      ],
      when: { measured: ['loss'] },
    },
  ],
  answer(values, show): Answer | Refusal {
    const isLoss = values.choice('measured') === 'loss';
    const read = CYLINDERS.flatMap((name, at) => {
      const value = values.optional(isLoss ? `loss-${name}` : name);
      return value === undefined ? [] : [{ number: at + 1, value }];
    });
    if (read.length < 2)
      return refuse(
        isLoss ? 'loss-one' : 'one',
        'One cylinder says nothing by itself. Write two at least, in the order of the engine.',
      );
    const gap = read.findIndex(({ number }, at) => number !== at + 1);
    if (gap >= 0)
      return refuse(
        `${isLoss ? 'loss-' : ''}${CYLINDERS[gap]}`,
        `Cylinder ${gap + 1} is missing. Neighbours count, so write all of them in the order of the engine.`,
      );
    const figures = read.map(({ value }) => value);
    if (!isLoss && Math.max(...figures) < 1e5)
      return refuse(
        'one',
        'That is no compression at all: the throttle is shut, the gauge leaks or the engine does not turn.',
      );
    const spread = isLoss ? leakDownSpread(figures) : compressionSpread(figures, inOrderOf(values));
    return {
      ...(isLoss
        ? judgeLoss(spread, values, show)
        : judgeCompression(spread, Math.max(...figures), values, show)),
      figures: [
        {
          label: isLoss ? 'Worst loss' : 'Lowest under the best',
          value: show.quantity(spread.worst, '%', 0),
          note: `even below ${show.quantity(EVEN_BELOW, '%', 0)}, low from ${show.quantity(LOW_FROM, '%', 0)}`,
        },
        ...spread.under.map((share, at) => ({
          label: `Cylinder ${at + 1}`,
          value: isLoss
            ? show.quantity(share, '%', 0)
            : share < 0.005
              ? 'the best'
              : `${show.quantity(share, '%', 0)} under it`,
        })),
      ],
      notes: [
        'Ignition and fuel off by their fuses before it is cranked, nobody near the belts. For the air: crankshaft locked, bar and socket off the bolt first; the air turns it hard enough to break a wrist.',
        'A gasket that leaks into the water jacket loses hardly anything at cranking speed: even figures do not clear it. Coolant in a cylinder raises its figure.',
      ],
    };
  },
  method: {
    formula:
      'share under the best = 1 − compression / highest compression; a loss as the tester shows it; two neighbours both low are named as such',
    sources: [
      `even below ${EVEN_BELOW * 100} %, low from ${LOW_FROM * 100} %: common practice, no source; the maker’s own figure goes before it`,
      'neighbours: cylinders in the order of the engine, in one bank',
      'in order 8 to 14 bar petrol, 18 to 34 bar diesel, doubted a seventh above; leak-down alike within 10 %, a valve open from 90 %: common practice, no source',
    ],
    valid: 'two to eight cylinders of one bank, all cranked the same number of turns with the same gauge',
    error:
      'a gauge is read to about 2 %; battery, throttle and temperature move all cylinders alike and leave the shares',
  },
};

/** Below its least the best cylinder says more about cranking than about the engine. */
function inOrderOf(values: Values) {
  return values.choice('fuel') === 'diesel' ? IN_ORDER.diesel : IN_ORDER.petrol;
}

/** "Cylinder 3 is", "Cylinders 2 and 3 are" */
function named(places: readonly number[]): string {
  const numbers = places.map((at) => at + 1);
  if (numbers.length === 1) return `Cylinder ${numbers[0]} is`;
  return `Cylinders ${numbers.slice(0, -1).join(', ')} and ${numbers.at(-1)} are`;
}

/** Two beside each other; "the others" are named by the sentence before. */
function between([one, other]: readonly [number, number]): string {
  return `Cylinders ${one + 1} and ${other + 1} are neighbours and low together: the gasket between them is the first thought.`;
}

function judgeCompression(
  { verdict, low, neighbours, worst, high }: CylinderSpread,
  best: number,
  values: Values,
  show: QuantityFormatter,
): Pick<Answer, 'sentence' | 'tone'> {
  const down = show.quantity(worst, '%', 0);
  if (high !== undefined)
    return {
      sentence: `Cylinder ${high + 1} stands far above the others. Coolant or oil in it does that: look into it with the borescope, and crank it with the plug out before anything else.`,
      tone: 'look',
    };
  if (verdict === 'low' && low.length > 2)
    return {
      sentence: `${named(low)} low, ${down} under the best at worst. So many together: valve timing, valves that met a piston, or rings worn out, sooner than one gasket. Look at the timing first, then the leak-down on each.`,
      tone: 'stop',
    };
  if (verdict === 'low')
    return {
      sentence: neighbours
        ? `${between(neighbours)} The worst is ${down} under the best. Leak-down next, listening at the plug hole beside it.`
        : `${named(low)} low, ${down} under the best at worst. A spoon of oil: up with it is rings, no change is valve or gasket. Then the leak-down.`,
      tone: 'stop',
    };
  if (verdict === 'undecided')
    return {
      sentence: `${named(low)} ${down} under the best at worst: more than a gauge differs by, less than a fault is called from. Charge the battery, repeat with a spoon of oil, and take the leak-down before judging.`,
      tone: 'look',
    };
  if (best < inOrderOf(values).least)
    return {
      sentence: `Even, and all of them low: ${show.quantity(best, 'bar', 1)} at best. Throttle open? Battery strong enough to crank? Cam timing right? Repeat before the engine is blamed.`,
      tone: 'look',
    };
  const most = inOrderOf(values).most * (1 + TOO_GOOD);
  if (best > most)
    return {
      sentence: `Even, and higher than a ${values.choice('fuel')} engine makes: ${show.quantity(best, 'bar', 1)}, where ${show.quantity(most, 'bar', 0)} is much. The fuel chosen here, the gauge and its hose first; then soot, a thin gasket or a planed head. It clears nothing.`,
      tone: 'look',
    };
  return {
    sentence: `Even: the lowest is ${down} under the best. That speaks for rings and valves. It does not clear a gasket that leaks into the coolant.`,
    tone: 'fine',
  };
}

function judgeLoss(
  { verdict, low, neighbours, worst, alike, under }: CylinderSpread,
  values: Values,
  show: QuantityFormatter,
): Pick<Answer, 'sentence' | 'tone'> {
  const lost = show.quantity(worst, '%', 0);
  if (values.choice('bubbles') === 'yes')
    return {
      sentence: `Bubbles in the coolant prove a way from a cylinder into it, whatever the percentage (${lost} at worst): head gasket or head. Find the cylinder that makes them.`,
      tone: 'stop',
    };
  if (alike)
    return {
      sentence: `All lose about the same, ${lost} at worst, and no gasket does that. Each piston at top dead centre of its own compression stroke? Engine warm, tester set to nothing on a blind plug? The same again then is worn bores and rings.`,
      tone: 'look',
    };
  if (worst >= VALVE_OPEN)
    return {
      sentence: `${named(under.flatMap((share, at) => (share >= VALVE_OPEN ? [at] : [])))} losing ${lost}: first of all not at top dead centre of the compression stroke, and a valve stands open. Turn to it again, mark and both valves shut, and repeat. The same there is a valve or a piston with a hole: listen where the air goes.`,
      tone: 'look',
    };
  if (verdict === 'low')
    return {
      sentence: neighbours
        ? `${between(neighbours)} They lose up to ${lost}; air out of the plug hole beside it proves it.`
        : `${named(low)} losing ${lost} at worst. Top dead centre made sure of, listen where it goes: intake and tailpipe are valves, oil filler is rings.`,
      tone: 'stop',
    };
  if (verdict === 'undecided')
    return {
      sentence: `${named(low)} losing ${lost} at worst. Find top dead centre again, a degree either way, and repeat it warm before judging.`,
      tone: 'look',
    };
  return {
    sentence: `No cylinder loses more than ${lost}, and the coolant stood still. A crack that opens under firing pressure holds at this; it does not clear the head by itself.`,
    tone: 'fine',
  };
}
