/** What a voltage lost under load means: in a joint, over a fuse, along a cable. */
import { cableBears, cableResistance, voltageDrop as dropOver, heatsCableIn } from '../physics/cable.ts';
import { currentFromFuseDrop, type FuseResistance, type FuseType, fuseResistance } from '../physics/fuse.ts';
import { DROP_LIMITS, type DropPlace, joint, METER } from '../physics/joint.ts';
import {
  type Ampere,
  ampere,
  kelvin,
  metre,
  ohm,
  type SquareMetre,
  squareMetre,
  volt,
} from '../physics/units.ts';
import type { Answer, Calculator, Input, QuantityFormatter, Refusal, Values } from './declaration.ts';
import { refuse } from './refuse.ts';

const PLACES: Readonly<Record<DropPlace, string>> = {
  connection: 'one connection, terminal or fuse holder',
  'switch or run of cable': 'a switch, relay contact or run of cable',
  'earth side': 'the whole earth side',
  'supply side': 'the whole supply side',
  'whole circuit': 'supply and earth together',
  'module earth': 'the earth of a control module or sensor',
};

/** Heat that melts a plastic holder over a drive, W. Common practice, no source. */
const MELTS = 3;
/** Nearly all a 12 V battery has, V: nothing else is left in the circuit to lose any. Common practice, no source. */
const WHOLE_VOLTAGE = 9;
/** A fan or pump at work draws more, A. Common practice, no source. */
const HARDLY_ANY = 3;
/** What a small motor of a cooling system draws, A: a joint that would lose too much at that is not passed at less. */
const SMALL_LOAD = 10;
/** Share of its rating that a fuse carries for long. Common practice, no source. */
const FOR_LONG = 0.8;
/** How far a resistance from the fuse maker's own sheet may be out: a warm fuse has more. */
const SHEET_DOUBT = 0.15;
/** A drop over a fuse is read to this, V: half a millivolt, probes and meter. Common practice, no source. */
const FUSE_READ_TO = 0.5e-3;
/** Largest fuse of a cooling system, twice over, A. Common practice, no source. */
const MOST_FUSED = 200;
/** What the wire to a motor may lose, V: 3 % of 13 V, and past 5 % the motor feels it. Common practice, no source. */
const CABLE = { good: DROP_LIMITS['supply side'], felt: 0.65 } as const;

/**
 * Past this multiple of what a cable bears for long its insulation goes: two and a quarter times the heat. Common practice, no
 * source.
 */
const BURNS = 1.5;
/** A starter's cable is small for its current: it heats so slowly, s, that its seconds do no harm. Common practice, no source. */
const STARTS_WITHIN = 20;
/** What a starter draws at least, A. Common practice, no source. */
const STARTER = 100;

const FUSE_TYPES: Readonly<Record<FuseType, string>> = {
  blade: 'flat blade, mini or regular',
  maxi: 'maxi, the big blade',
  cartridge: 'cartridge or bolted strip',
};

const FUSE: readonly Input[] = [
  {
    kind: 'choice',
    name: 'type',
    label: 'Fuse',
    default: 'blade',
    options: Object.entries(FUSE_TYPES).map(([value, label]) => ({ value, label })),
    when: { measured: ['fuse'] },
  },
  {
    kind: 'quantity',
    name: 'fuse',
    label: 'Stamped on it',
    dimension: 'current',
    unit: 'A',
    default: '20 A',
    limits: ['1 A', '120 A'],
    figure: { path: 'fan.fuse', end: 'middle' },
    reading: true,
    when: { measured: ['fuse'] },
  },
  {
    kind: 'quantity',
    name: 'fuse-resistance',
    label: 'Its resistance, cold',
    hint: 'From its maker’s sheet, if you have it. Empty: the usual one for type and rating.',
    dimension: 'resistance',
    unit: 'mΩ',
    default: '',
    limits: ['0.1 mΩ', '100 mΩ'],
    optional: true,
    when: { measured: ['fuse'] },
  },
];

export const voltageDropCalculator: Calculator = {
  id: 'voltage-drop',
  title: 'Voltage drop',
  settles:
    'whether a voltage lost under load is too much, what heat it makes, and what current a fuse carries',
  also: [
    'hot joint',
    'fuse drop',
    'bad earth',
    'melted fuse holder',
    'contact resistance',
    'parasitic current',
    'cable size',
  ],
  inputs: [
    {
      kind: 'choice',
      name: 'measured',
      label: 'What was measured',
      default: 'joint',
      options: [
        { value: 'joint', label: 'a drop over a joint or a side of the circuit' },
        { value: 'fuse', label: 'a drop over a fuse, for its current' },
        { value: 'cable', label: 'nothing yet: what should a cable lose' },
      ],
    },
    {
      kind: 'choice',
      name: 'place',
      label: 'Measured over',
      default: 'connection',
      options: Object.entries(PLACES).map(([value, label]) => ({ value, label })),
      when: { measured: ['joint'] },
    },
    {
      kind: 'quantity',
      name: 'drop',
      label: 'Volts lost',
      hint: 'Under load, probes on the two ends.',
      dimension: 'voltage',
      unit: 'V',
      default: '0.30 V',
      limits: ['0 V', '16 V'],
      reading: true,
      when: { measured: ['joint'] },
    },
    ...FUSE,
    {
      kind: 'quantity',
      name: 'fuse-drop',
      label: 'Drop over the fuse',
      hint: 'On its two test points.',
      dimension: 'voltage',
      unit: 'mV',
      default: '60 mV',
      limits: ['0 mV', '500 mV'],
      reading: true,
      when: { measured: ['fuse'] },
    },
    {
      kind: 'quantity',
      name: 'draws',
      label: 'What it feeds should draw',
      hint: 'Of a chosen vehicle, its fan. Empty when not known or not the fan.',
      dimension: 'current',
      unit: 'A',
      default: '',
      limits: ['0.1 A', '200 A'],
      figure: { path: 'fan.current', end: 'middle' },
      optional: true,
      when: { measured: ['fuse'] },
    },
    {
      kind: 'quantity',
      name: 'current',
      label: 'Current flowing then',
      hint: 'Clamp meter, with everything on that the wire feeds.',
      dimension: 'current',
      unit: 'A',
      default: '25 A',
      limits: ['0.1 A', '1500 A'],
      figure: { path: 'fan.current', end: 'high' },
      reading: true,
      when: { measured: ['joint', 'cable'] },
    },
    {
      kind: 'quantity',
      name: 'length',
      label: 'Cable, one way',
      dimension: 'length',
      unit: 'm',
      default: '3 m',
      limits: ['0.05 m', '50 m'],
      when: { measured: ['cable'] },
    },
    {
      kind: 'quantity',
      name: 'area',
      label: 'Copper',
      hint: 'Cross-section, or a gauge such as 12 AWG.',
      dimension: 'area',
      unit: 'mm²',
      default: '4 mm²',
      limits: ['0.2 mm²', '120 mm²'],
      when: { measured: ['cable'] },
    },
    {
      kind: 'quantity',
      name: 'temperature',
      label: 'Cable temperature',
      dimension: 'temperature',
      unit: '°C',
      default: '60 °C',
      limits: ['-40 °C', '150 °C'],
      when: { measured: ['cable'] },
    },
  ],
  answer(values, show): Answer | Refusal {
    const measured = values.choice('measured');
    if (measured === 'fuse') return fuse(values, show);
    return measured === 'cable' ? cable(values, show) : drop(values, show);
  },
  method: {
    formula:
      'R = V / I; P = V × I; current of a fuse = drop / resistance; cable R = ρ × length / area, copper warmed',
    sources: [
      'Ohm’s law',
      'limits by place, 3 W above them in one spot: common practice, no source',
      'cold resistance of blade fuses to 30 A: a maker’s sheet, from memory; of larger ones 58 mV at their rating, from memory',
      'copper: IEC 60028',
      'current a cable bears: DIN VDE 0298-4, single in air, from memory; half as much again is too much: common practice, no source',
    ],
    valid: '12 V circuits under their working current; fuses to 0.5 V drop',
    error:
      'joint: as good as the two meters; fuse current good to about 20 % for blades to 30 A, 30 % for larger fuses (types differ, a warm fuse has more resistance); stranded cable has 6 to 14 % more than solid copper',
  },
};

const LOAD_NOTE =
  'Measured with the consumer running: with no current there is no drop, and an ohmmeter on a dead circuit proves nothing at 30 A.';
const BATTERY_NOTE =
  'Live cables without a fuse can weld a tool and burn a hand: rings off, probes with short tips, battery disconnected as the maker says before any joint is opened. Keep clear of a fan that starts by itself.';

function drop(values: Values, show: QuantityFormatter): Answer {
  const place =
    Object.keys(PLACES).find((each): each is DropPlace => each === values.choice('place')) ?? 'connection';
  const lost = volt(values.number('drop'));
  const found = joint(lost, ampere(values.number('current')), place);
  const heat = show.quantity(found.heat, 'W', 1);
  const limit = show.quantity(found.limit, 'V', 2);
  const volts = show.quantity(lost, 'V', 2);
  const current = values.number('current');
  const amps = show.quantity(current, 'A', current < 10 ? 1 : 0);
  const limitLine = { label: 'Limit there', value: limit, note: 'common practice, no source' };
  if (lost >= WHOLE_VOLTAGE)
    return {
      sentence: `Open between the probes: ${volts} is nearly all the battery has, so nothing else is left in the circuit. ${current > 1 ? `${amps} cannot flow through that; read the clamp again. ` : ''}Bring the probes together step by step: the break is where the reading falls away.`,
      tone: 'look',
      figures: [limitLine],
      notes: [LOAD_NOTE, BATTERY_NOTE],
    };
  const atLoad = found.resistance * SMALL_LOAD;
  if (found.withinLimit && place !== 'module earth' && current < HARDLY_ANY && atLoad > found.limit)
    return {
      sentence: `Proves nothing yet: hardly any current flows, ${amps}. What loses ${volts} at that would lose ${show.quantity(atLoad, 'V', 1)} at ${SMALL_LOAD}\u00a0A. Repeat it with the consumer working; if no more flows then, this part is what holds it up, or the consumer is.`,
      tone: 'look',
      figures: [limitLine, { label: 'Resistance', value: show.quantity(found.resistance, 'mΩ', 0) }],
      notes: [LOAD_NOTE, BATTERY_NOTE],
    };
  const isEdge = !found.withinLimit && lost <= found.limit + METER;
  const oneSpot = place === 'connection';
  const hot = oneSpot
    ? found.heat >= MELTS
    : !found.withinLimit && !isEdge && inOneSpot(place, found.heat, found.heat * (1 - found.limit / lost));
  const sentence = isEdge
    ? `At the edge: ${volts}, and ${limit} is the limit there. A meter may be out by that much: clean the tips, read again at full load${hot ? `, and feel for heat, since ${heat} is made in one spot` : ''}.`
    : found.withinLimit
      ? `Within the limit: ${volts} of ${limit} allowed there. Look elsewhere${found.heat >= MELTS ? `, but feel for heat: ${heat} is made in it` : ''}.`
      : hot && !oneSpot
        ? `Too much, and hot: ${volts} lost where ${limit} is the limit, ${heat} of heat, and most of it may be made in one joint or contact. Switch the load off, and feel along for the hot spot; then probe joint by joint until the step is found.`
        : hot
          ? `Bad joint: ${volts} lost where ${limit} is the limit, and ${heat} of heat in one spot. Switch the load off, and replace holder and terminals, not the fuse alone.`
          : `Too much: ${volts} lost where ${limit} is the limit. Move the probes along, joint by joint, until the step is found.`;
  return {
    sentence,
    tone: found.withinLimit ? 'fine' : hot && !isEdge ? 'stop' : 'look',
    figures: [
      limitLine,
      { label: 'Resistance', value: show.quantity(found.resistance, 'mΩ', 1) },
      { label: 'Heat made in it', value: heat },
    ],
    notes: [LOAD_NOTE, BATTERY_NOTE],
  };
}

/**
 * Whether what is lost melts something, were the surplus all in one joint. A relay contact is one spot whatever the limit; a
 * run of cable spreads twice as much. Common practice, no source.
 * @param heat all of it, W
 * @param surplus the part above the limit, W
 */
function inOneSpot(place: DropPlace, heat: number, surplus: number): boolean {
  return surplus >= MELTS || (place === 'switch or run of cable' && heat >= 2 * MELTS);
}

function fuse(values: Values, show: QuantityFormatter): Answer | Refusal {
  const rating = values.number('fuse');
  const { resistance, doubt } = resistanceOf(values, rating);
  const current = currentFromFuseDrop(volt(values.number('fuse-drop')), resistance);
  const misread = currentFromFuseDrop(volt(FUSE_READ_TO), resistance);
  const least = Math.max(0, current - misread) * (1 - doubt);
  const most = (current + misread) * (1 + doubt);
  const amps = show.range(least, most, 'A', current < 3 ? 2 : 0);
  if (current > MOST_FUSED)
    return refuse(
      'fuse-drop',
      `That would be ${show.quantity(current, 'A', 0)}, more than any fuse here carries. Probes on the holder instead of the fuse, or another resistance.`,
    );
  if (current < 0.05)
    return {
      sentence:
        'No current: nothing runs over this fuse now. Switch the consumer on, or look on the other side for the open circuit.',
      tone: 'look',
      figures: [{ label: 'Current', value: show.quantity(current, 'A', 2) }],
      notes: [BATTERY_NOTE],
    };
  return {
    ...sayFuse({ current, least, most, amps }, rating, values.optional('draws'), show),
    figures: [
      { label: 'Current', value: amps },
      {
        label: 'Resistance taken',
        value: show.quantity(resistance, 'mΩ', 2),
        note:
          values.optional('fuse-resistance') === undefined
            ? `from memory, good to ${show.quantity(doubt, '%', 0)}; types and makers differ`
            : 'as typed',
      },
    ],
    notes: [
      'On the test points of the fuse itself: on the holder the bad joint is measured along with it, and the current comes out too high.',
      BATTERY_NOTE,
    ],
  };
}

function resistanceOf(values: Values, rating: number): FuseResistance {
  const typed = values.optional('fuse-resistance');
  if (typed !== undefined) return { resistance: ohm(typed), doubt: SHEET_DOUBT };
  const type = Object.keys(FUSE_TYPES).find((each): each is FuseType => each === values.choice('type'));
  return fuseResistance(type ?? 'blade', ampere(rating));
}

/** The current of a fuse against what the fuse bears and against what should flow. */
function sayFuse(
  { current, least, most, amps }: { current: number; least: number; most: number; amps: string },
  rating: number,
  draws: number | undefined,
  show: QuantityFormatter,
): Pick<Answer, 'sentence' | 'tone'> {
  const flows = `About ${amps} flows`;
  const stamped = show.quantity(rating, 'A', rating % 1 === 0 ? 0 : 1);
  if (least > rating)
    return {
      sentence: `${flows}, more than the ${stamped} the fuse is made for. Find what draws it; do not fit a larger fuse.`,
      tone: 'stop',
    };
  const should = draws === undefined ? '' : show.quantity(draws, 'A', draws < 3 ? 2 : 0);
  if (draws !== undefined && most < draws * FOR_LONG)
    return {
      sentence: `${flows}, less than the ${should} it should draw. Look at its voltage while it runs: full, the motor is weak or runs free; short of the battery’s, follow the drop.`,
      tone: 'look',
    };
  if (draws !== undefined && least > draws / FOR_LONG)
    return {
      sentence: `${flows}, more than the ${should} it should draw. The motor is stiff, blocked or shorted inside: take its plug off before it is turned by hand.`,
      tone: 'look',
    };
  const long = rating * FOR_LONG;
  if (current > (draws === undefined ? long : rating))
    return {
      sentence: `${flows}: near the ${stamped} of the fuse, which in the long run bears about ${show.quantity(long, 'A', 0)}. Put a clamp on the wire, and if it is so, find what draws it before the fuse gives way.`,
      tone: 'look',
    };
  const within = current > long ? '' : `, well within the ${stamped} of the fuse`;
  return draws === undefined
    ? {
        sentence: `${flows}${within}. Hold it against what the consumer should draw: more is a stiff or shorted motor, less is a poor joint or a weak one. With everything switched off it is a drain on the battery.`,
        tone: 'fine',
      }
    : {
        sentence: `${flows}${within}, and ${should} is what it should draw. Fuse and motor do their work; look elsewhere.`,
        tone: 'fine',
      };
}

/** What the heat of the current does to the cable, however short it is; undefined where it bears it for long. */
function heatOf(
  current: Ampere,
  area: SquareMetre,
  show: QuantityFormatter,
): Pick<Answer, 'sentence' | 'tone'> | undefined {
  const bears = cableBears(area);
  if (current <= bears) return undefined;
  const amps = show.quantity(current, 'A', 0);
  const long = show.quantity(bears, 'A', 0);
  if (current <= BURNS * bears)
    return {
      sentence: `Too warm for long: ${long} is what such a cable bears, free in air, and ${amps} flows. For a minute it will do; for a motor that runs, take a thicker one.`,
      tone: 'look',
    };
  const within = heatsCableIn(current, area);
  return current >= STARTER && within >= STARTS_WITHIN
    ? {
        sentence: `For seconds only, as a starter draws it: such a cable bears ${long} for long, and ${amps} makes it ${show.difference(60)} hotter in about ${Math.round(within)}\u00a0s. Longer, it burns: a thicker one.`,
        tone: 'look',
      }
    : {
        sentence: `Far too thin, however short: ${amps} flows, and such a cable bears about ${long}. Its insulation melts and can burn. Do not switch it on: a thicker cable, and a fuse that goes before it does.`,
        tone: 'stop',
      };
}

function cable(values: Values, show: QuantityFormatter): Answer {
  const current = ampere(values.number('current'));
  const area = squareMetre(values.number('area'));
  const resistance = cableResistance(
    metre(values.number('length')),
    area,
    kelvin(values.number('temperature')),
  );
  const lost = dropOver(current, resistance);
  const range = show.range(lost, lost * 1.14, 'V', 2);
  const good = show.quantity(CABLE.good, 'V', 1);
  const isGood = lost <= CABLE.good;
  const heat = heatOf(current, area, show);
  return {
    sentence:
      lost >= WHOLE_VOLTAGE
        ? `A cable like this cannot carry that: it would lose all the battery has. It is far too thin or too long for that current.`
        : heat
          ? heat.sentence
          : isGood
            ? `A sound cable like this loses ${range}. More than that measured is a fault in it or in its ends.`
            : lost <= CABLE.felt
              ? `On the long side: sound, it loses ${range}, where ${good} is good practice. The motor runs a little slower for it; a size thicker is right for a new wire.`
              : `Even a sound cable like this loses ${range}, where ${good} is good practice. It is too thin or too long for that current.`,
    tone: heat?.tone ?? (isGood ? 'fine' : 'look'),
    figures: [
      {
        label: 'Bears for long',
        value: show.quantity(cableBears(area), 'A', 0),
        note: 'one cable in PVC, free in air; less in a loom or by a hot engine',
      },
      { label: 'Drop, solid to stranded', value: range },
      { label: 'Resistance, solid copper', value: show.quantity(resistance, 'mΩ', 1) },
      { label: 'Heat along it', value: show.quantity(lost * current, 'W', 1) },
    ],
    notes: ['One way only. Add the return if the earth is a cable too.', BATTERY_NOTE],
  };
}
