/** A pressure test with the part that temperature explains taken out. */
import { atmosphericPressure } from '../physics/atmosphere.ts';
import { mixtureVapourPressure } from '../physics/boiling.ts';
import { volumeRatio } from '../physics/expansion.ts';
import {
  HOLDS_WITHIN,
  judgePressureTest,
  LEAKS_FROM,
  NO_CAP_HOLDS,
  type PressureReading,
  type PressureTest,
  type PressurisedSystem,
  tightReading,
} from '../physics/pressure-decay.ts';
import { CAP_EARLY, judgePressureRise, type PressureRise } from '../physics/pressure-rise.ts';
import { cubicMetre, fromCelsius, gaugePascal, kelvin, second } from '../physics/units.ts';
import { ALTITUDE, altitudeOf, CAPACITY, CORRELATED_STRENGTH, GLYCOL, mixtureOf } from './coolant-inputs.ts';
import type { Answer, Calculator, QuantityFormatter, QuantityInput, Refusal, Values } from './declaration.ts';
import { refuse } from './refuse.ts';

function reading(name: string, label: string, unit: string, value: string, hint = ''): QuantityInput {
  const pressure = unit === 'bar';
  return {
    kind: 'quantity',
    name,
    label,
    dimension: pressure ? 'pressure' : 'temperature',
    unit,
    default: value,
    limits: pressure ? ['-0.9 bar', '2.4 bar'] : ['0 °C', '100 °C'],
    reading: true,
    ...(hint !== '' && { hint }),
    ...(name === 'start' && { when: { tested: ['pumped'] } }),
  };
}

/** Less than this off the air outside is no test, Pa. Common practice, no source. */
const TOO_LITTLE = 0.2e5;
/** What the arithmetic wants the air to press with at least, Pa. */
const NO_AIR_LEFT = 1e3;
/** Less warming makes too little pressure to judge by, K. Common practice, no source. */
const LEAST_WARMING = 10;
/** So far above what a tight system shows, no warmth inside does it, Pa. Common practice, no source. */
const ROSE_FAR = 0.5e5;
/** A shorter test says nothing of holding, s. Common practice, no source. */
const LEAST_TIME = 300;
/** Capacity is measured at this temperature. */
const ROOM = fromCelsius(20);

export const pressureDecay: Calculator = {
  id: 'pressure-decay',
  title: 'Pressure decay',
  settles:
    'whether a falling tester means a leak once cooling is taken out of it, and whether a rising one means gas',
  also: [
    'pressure rise',
    'head gasket pressure',
    'pressure test',
    'leak rate',
    'pressure drop',
    'tester falls',
    'cold pressure test',
    'ml a minute',
  ],
  inputs: [
    {
      kind: 'choice',
      name: 'tested',
      label: 'The system was',
      default: 'pumped',
      options: [
        { value: 'pumped', label: 'pumped up, and watched' },
        { value: 'warmed', label: 'closed cold without pressure, and warmed' },
      ],
    },
    reading(
      'start',
      'Tester at the start',
      'bar',
      '1.0 bar',
      'Three minutes after pumping up, and pumped up once more: hoses give at first.',
    ),
    reading('end', 'Tester at the end', 'bar', '0.85 bar'),
    reading('start-temperature', 'Coolant at the start', '°C', '22 °C'),
    reading('end-temperature', 'Coolant at the end', '°C', '21 °C'),
    {
      kind: 'quantity',
      name: 'took',
      label: 'Time between',
      dimension: 'time',
      unit: 'min',
      default: '15 min',
      limits: ['1 min', '24 h'],
      reading: true,
      when: { tested: ['pumped'] },
    },
    {
      kind: 'quantity',
      name: 'air',
      label: 'Air inside, tester and its hose too',
      hint: 'Decides how much the tester shows of a leak: little air, large fall.',
      dimension: 'volume',
      unit: 'l',
      default: '0.8 l',
      limits: ['0.05 l', '20 l'],
      figure: { path: 'coolant.air-space', end: 'middle' },
    },
    {
      kind: 'quantity',
      name: 'cap',
      label: 'Lets off at',
      hint: 'The cap’s stamp, or where the tester’s valve is set. Empty where nothing lets off.',
      dimension: 'pressure',
      unit: 'bar',
      default: '',
      limits: ['0.2 bar', '3 bar'],
      figure: { path: 'cap.opens', end: 'low' },
      optional: true,
      when: { tested: ['warmed'] },
    },
    CAPACITY,
    CORRELATED_STRENGTH,
    GLYCOL,
    ALTITUDE,
  ],
  answer(values, show): Answer | Refusal {
    if (values.choice('tested') === 'warmed') return rise(values, show);
    const outside = atmosphericPressure(altitudeOf(values));
    const tooDeep = ['start', 'end'].find((name) => values.number(name) <= -0.9 * outside);
    if (tooDeep !== undefined)
      return refuse(
        tooDeep,
        `No tester pulls so near to nothing here: the air outside is ${show.quantity(outside, 'bar', 2)}.`,
      );
    const [start, end] = [readingOf(values, 'start'), readingOf(values, 'end')];
    const system = {
      mixture: mixtureOf(values),
      liquid: cubicMetre(values.number('capacity')),
      air: cubicMetre(values.number('air')),
      outside,
    };
    const refusal = refusalOf(system, start, end, show);
    if (refusal) return refusal;
    const tightNow = tightReading(system, start, end.temperature);
    if (tightNow > NO_CAP_HOLDS)
      return refuse(
        'end-temperature',
        `Tight, it would have come to more than the ${show.quantity(NO_CAP_HOLDS, 'bar', 1)} that a cap or tester holds at most. With so little air over it a test goes wrong from cold to hot: take both readings at one temperature.`,
      );
    const test = judgePressureTest(system, start, end, second(values.number('took')));
    const says = wordsOf(test, start, values, show);
    return {
      sentence: sentenceOf(test, says, values, show),
      tone: toneOf(test, says),
      figures: figuresOf(test, says, values, show),
      notes: [
        'Only a cold system is opened to fit the tester, and never pumped above what the cap is stamped for. Let the pressure out at the tester’s valve before taking it off, and follow its maker’s procedure.',
        'A leak of the tester or of its adaptor looks the same: prove it on a blind plug. Air that gets out shows the same fall as coolant.',
        'The gas law alone is far off on a warm system: most of the fall is vapour that condenses and coolant that shrinks.',
      ],
    };
  },
  method: {
    formula:
      'tight reading = air by the gas law in the room left by the shrinking coolant + vapour pressure of the mixture − air outside; loss = tight reading − reading; warmed from cold without pressure the same, for 0.7 to 1.4 of the air and 3 K either way',
    sources: [
      'ideal gas law',
      'Melinder (2010), shrinking of the coolant',
      'vapour pressure as in the boil margin: IAPWS-IF97, Perry 8th ed., Kamihama et al. (2012)',
      'ISO 2533:1975 standard atmosphere',
      `tester read to 0.02 bar, holds within ${HOLDS_WITHIN / 1e5}, leaks from ${LEAKS_FROM / 1e5}, nothing said of holding under ${LEAST_TIME / 60} min, let off from ${ROSE_FAR / 1e5} above: common practice, no source`,
    ],
    valid: 'from the freezing point to 100 °C, 0 to 57 % by volume, rigid hoses, one temperature throughout',
    error:
      'a leak is called from 0.05 bar on: two readings of 0.02 bar, rigid hoses, even temperature; wider by a fifth of the correction, by half a degree of each thermometer and by up to 0.03 bar over a night',
  },
};

/** The figures of a pressure test as they are said, and what bears on the verdict. */
interface TestWords {
  rate: string;
  tight: string;
  unsure: string;
  least: string;
  /** Held, but not for long enough to say so. */
  isShort: boolean;
  /** A pumped system that rose by more than warmth explains. */
  roseFar: boolean;
  /** The tester held a vacuum, not a pressure. */
  pulled: boolean;
}

function wordsOf(
  test: PressureTest,
  start: { gauge: number },
  values: Values,
  show: QuantityFormatter,
): TestWords {
  const rateOf = (rate: number) => show.quantity(rate, 'ml/min', rate * 6e7 < 10 ? 1 : 0);
  return {
    rate: rateOf(test.lossRate),
    tight: show.quantity(test.tight, 'bar', 2),
    unsure: show.quantity(test.uncertainty, 'bar', 2),
    least: rateOf(test.leastRate),
    isShort: test.verdict === 'tight' && values.number('took') < LEAST_TIME,
    roseFar: test.verdict === 'rose' && start.gauge > 0 && -test.loss >= ROSE_FAR,
    pulled: start.gauge < 0,
  };
}

function sentenceOf(test: PressureTest, says: TestWords, values: Values, show: QuantityFormatter): string {
  const { rate, tight, unsure, least } = says;
  const by = show.quantity(Math.abs(test.loss), 'bar', 2);
  switch (test.verdict) {
    case 'repeat':
      return test.loss > 0
        ? `Repeat it: ${by} is more than two readings differ by and less than a leak is called from. Let the hoses settle three minutes, pump up again and wait longer; a leak goes on at the same rate.`
        : `Repeat it: it rose by ${by}, more than two readings differ by. The coolant is not at one temperature yet; wait, and read again.`;
    case 'tight':
      return says.isShort
        ? `Too short to say it holds: in ${show.quantity(values.number('took'), 'min', 0)} a leak of less than ${least} does not show. Leave it on for ${show.quantity(900, 'min', 0)} and read again.`
        : `Holds: what the tester lost is what cooling and reading explain; a leak of less than ${least} would not have shown. Leave it on for longer if the level still falls on the road.`;
    case 'leaks':
      return `It leaks: a tight system would still show ${tight}. About ${rate} if it is coolant. Look along hoses, radiator seams, pump weep hole and heater, and dry-feel the floor.`;
    case 'cannot tell':
      return `Cannot tell: it changed temperature so far that a leak of ${unsure} hides in it. Let it come to one temperature, pump up again and repeat.`;
    case 'rose':
      if (says.pulled)
        return `It lets air in: a tight system would still show ${tight}. Look for the place under a little pressure instead, where it weeps or hisses.`;
      return says.roseFar
        ? `It rose by ${by} above what a tight system would show (${tight}), and no warmth between the readings makes that. Let the pressure off at the tester’s valve now, before anything bursts. Engine running: gas gets in, stop it and test for combustion gas. Engine off: look for what feeds it, the pump or another line.`
        : `It rose above what a tight system would show (${tight}). The coolant was warmer inside than measured, or gas gets in: repeat at one temperature, then look at the head gasket.`;
  }
}

function toneOf({ verdict }: PressureTest, { isShort, roseFar, pulled }: TestWords): Answer['tone'] {
  if (verdict === 'tight') return isShort ? 'look' : 'fine';
  return verdict === 'leaks' || (verdict === 'rose' && (roseFar || pulled)) ? 'stop' : 'look';
}

function figuresOf(
  test: PressureTest,
  { rate, tight, unsure, least }: TestWords,
  values: Values,
  show: QuantityFormatter,
): Answer['figures'] {
  return [
    {
      label: 'A tight system would show',
      value: tight,
      note: `holds within ${show.quantity(test.holdsWithin, 'bar', 2)}, a leak from ${unsure} on`,
    },
    {
      label: test.loss < 0 ? 'Above that by' : 'Lost beyond that',
      value: show.quantity(Math.abs(test.loss), 'bar', 2),
    },
    ...(test.verdict === 'tight' ? [{ label: 'Least leak it would have shown', value: least }] : []),
    ...(test.verdict === 'leaks'
      ? [
          { label: 'Lost, if it is coolant', value: show.quantity(test.lostVolume, 'ml', 0) },
          {
            label: 'A minute',
            value: rate,
            note: `with ${show.quantity(values.number('air'), 'l', 1)} of air inside; half the air, half the rate`,
          },
        ]
      : []),
  ];
}

/** Closed cold and warmed: what a sound system comes to by heat alone, and what is above it. */
function rise(values: Values, show: QuantityFormatter): Answer | Refusal {
  const outside = atmosphericPressure(altitudeOf(values));
  const cold = kelvin(values.number('start-temperature'));
  const now = kelvin(values.number('end-temperature'));
  if (now - cold < LEAST_WARMING)
    return refuse(
      'end-temperature',
      `Warm it further: ${show.difference(LEAST_WARMING)} and more above the start, or heat makes no pressure that could be judged.`,
    );
  const found = gaugePascal(values.number('end'));
  const system = {
    mixture: mixtureOf(values),
    liquid: cubicMetre(values.number('capacity')),
    air: cubicMetre(values.number('air')),
    outside,
  };
  const cap = values.optional('cap');
  const test = judgePressureRise(system, cold, now, found, cap === undefined ? undefined : gaugePascal(cap));
  if (test.lowest >= NO_CAP_HOLDS)
    return refuse(
      'air',
      'With so little air over it the coolant would fill it all on the way, and the cap blow off. Look at the air, the capacity and the two temperatures again.',
    );
  const shown = show.quantity(found, 'bar', 2);
  const sound = show.range(test.lowest, test.highest, 'bar', 2);
  const atTheCap = cap !== undefined && found >= cap - CAP_EARLY;
  const said: Record<PressureRise['verdict'], Pick<Answer, 'sentence' | 'tone'>> = {
    'as a sound one': {
      sentence: `Heat alone makes that: a sound system shows ${sound} there, and it has ${shown}. ${atTheCap ? 'It is where the cap lets off, and more would not show: the early minutes tell, and a test for combustion gas.' : 'No gas by this; a test for combustion gas still decides where other signs speak for it.'}`,
      tone: 'fine',
    },
    'somewhat above': {
      sentence: `Above what heat makes: ${shown}, where a sound system shows ${sound}. Little air inside does the same. Look at the level, let it cool a night and do it again, and test for combustion gas.`,
      tone: 'look',
    },
    'gas gets in': {
      sentence: `More than heat can make: ${shown}, where a sound system shows ${sound}, so gas gets in. Stop the engine, let the pressure off at the tester, and test for combustion gas before anything is taken apart.`,
      tone: 'stop',
    },
    below: {
      sentence: `Less than heat makes: ${shown}, where a sound system shows ${sound}. It does not hold (a leak, tester or adaptor), there is more air inside than thought, or the level is low. Pump it up cold and watch it.`,
      tone: 'look',
    },
  };
  return {
    ...said[test.verdict],
    figures: [
      {
        label: 'A sound system would show',
        value: sound,
        note:
          cap === undefined
            ? 'for 0.7 to 1.4 of the air inside, coolant not at one temperature'
            : 'for 0.7 to 1.4 of the air inside, coolant not at one temperature, no more than lets off',
      },
    ],
    notes: [
      'Only a cold system is opened to fit the tester. The warm one stays shut until it has cooled; let the pressure out at the tester’s valve, and follow its maker’s procedure.',
      'The early minutes tell most: at little heat a sound system has hardly any pressure, and gas does not wait for heat.',
    ],
  };
}

function readingOf(values: Values, name: 'start' | 'end'): PressureReading {
  return {
    gauge: gaugePascal(values.number(name)),
    temperature: kelvin(values.number(`${name}-temperature`)),
  };
}

/** Why two readings prove nothing whatever the system: too little pressure, less than its own vapour, or no room for air. */
function refusalOf(
  system: PressurisedSystem,
  start: PressureReading,
  end: PressureReading,
  show: QuantityFormatter,
): Refusal | undefined {
  if (Math.abs(start.gauge) < TOO_LITTLE)
    return refuse(
      'start',
      `${show.quantity(start.gauge, 'bar', 2)} is no test: so little tries no seal. Pump up to what the cap is stamped for and begin again.`,
    );
  for (const [name, { gauge, temperature }] of Object.entries({ start, end })) {
    const least = mixtureVapourPressure(system.mixture, temperature) - system.outside + NO_AIR_LEFT;
    if (gauge < least)
      return refuse(
        name,
        `At ${show.quantity(temperature, '°C', 0)} the vapour of the coolant alone keeps the tester at ${show.quantity(least, 'bar', 2)} or more. The pressure or the temperature was read wrong.`,
      );
  }
  const sizeAt = ({ temperature }: PressureReading) => volumeRatio(system.mixture, ROOM, temperature);
  const shrinks = system.liquid * (sizeAt(start) - sizeAt(end));
  if (system.air + shrinks < system.air / 100)
    return refuse(
      'air',
      `Warming so far, the coolant would grow by ${show.quantity(-shrinks, 'l', 2)} and fill all the air inside. Look at the air, the capacity and the two temperatures again.`,
    );
  return undefined;
}
