/** Speed of a pump from the crank and two pulleys, and what a belt slips. */
import {
  type BeltDrive,
  driveRatio,
  judgeSlip,
  pumpSpeed,
  SLIPS_FROM,
  SLIPS_TO,
  slipOf,
  USUAL_RATIO,
} from '../physics/belt-drive.ts';
import { metre } from '../physics/units.ts';
import type { Answer, Calculator, QuantityFormatter, QuantityInput, Refusal, Values } from './declaration.ts';
import { refuse } from './refuse.ts';

const SLACK = 1e-9;
/** From here on a mark is counted twice or a pulley is another, as a share of what the belt drives. */
const READ_TWICE = 1.5;
/** A pump that turns so little beside its belt stands. */
const STANDS_STILL = 0.02;

function pulley(name: string, label: string, hint: string, example: string): QuantityInput {
  return {
    kind: 'quantity',
    name,
    label,
    hint,
    dimension: 'length',
    unit: 'mm',
    default: example,
    limits: ['40 mm', '500 mm'],
    reading: true,
  };
}

export const beltSpeed: Calculator = {
  id: 'belt-speed',
  title: 'Pump speed by its belt',
  settles: 'how fast the pump turns for the crank, and whether its belt slips',
  also: ['pulley ratio', 'belt slip', 'water pump rpm', 'pump speed', 'crank pulley', 'slipping belt'],
  inputs: [
    {
      kind: 'choice',
      name: 'ask',
      label: 'Wanted',
      default: 'speed',
      options: [
        { value: 'speed', label: 'the speed of the pump' },
        { value: 'slip', label: 'the slip, the pump’s speed measured' },
      ],
    },
    {
      kind: 'choice',
      name: 'belt',
      label: 'Belt',
      default: 'ribbed',
      options: [
        { value: 'ribbed', label: 'ribbed or V' },
        { value: 'toothed', label: 'toothed, or a chain' },
      ],
    },
    {
      kind: 'quantity',
      name: 'crank',
      label: 'Crank turns at',
      hint: 'By scan tool or rev counter, held steady.',
      dimension: 'rotation',
      unit: 'rpm',
      default: '2000 rpm',
      limits: ['100 rpm', '12000 rpm'],
      reading: true,
    },
    pulley(
      'crank-pulley',
      'Crank pulley, across',
      'Engine off. Both over the belt, or both over the rim. Toothed: ten times the teeth of each.',
      '150 mm',
    ),
    pulley('pump-pulley', 'Pump pulley, across', '', '120 mm'),
    {
      kind: 'quantity',
      name: 'slip',
      label: 'Slip to reckon with',
      dimension: 'share',
      unit: '%',
      default: '1 %',
      limits: ['0 %', '50 %'],
      when: { ask: ['speed'], belt: ['ribbed'] },
    },
    {
      kind: 'quantity',
      name: 'pump',
      label: 'Pump measured at',
      hint: 'Optical counter on one mark, from outside the belt’s reach.',
      dimension: 'rotation',
      unit: 'rpm',
      default: '2480 rpm',
      limits: ['0 rpm', '30000 rpm'],
      reading: true,
      when: { ask: ['slip'] },
    },
  ],
  answer(values, show): Answer | Refusal {
    const drive = {
      crankPulley: metre(values.number('crank-pulley')),
      pumpPulley: metre(values.number('pump-pulley')),
    };
    const crank = values.number('crank');
    const said =
      values.choice('ask') === 'slip'
        ? judgeMeasured(drive, crank, values, show)
        : speedOf(drive, crank, values, show);
    if ('refused' in said) return said;
    const ratio = driveRatio(drive);
    return {
      ...said,
      figures: [
        { label: 'Turns of the pump for one of the crank', value: ratio.toFixed(2) },
        { label: 'Pump, nothing slipping', value: rpm(pumpSpeed(drive, crank, 0), show) },
        ...said.figures,
      ],
      notes: [
        'Sleeves, hair, rags and leads of a lamp away from running belts. Pulleys are measured with the engine off and its key out.',
        'A pulley that turns proves no impeller: one that is loose on its shaft stands still inside.',
      ],
    };
  },
  method: {
    formula: 'pump = crank × crank pulley / pump pulley × (1 − slip)',
    sources: [
      'speed of a belt over two pulleys: textbooks of machine elements, such as Khurmi and Gupta, Theory of Machines, 11.4 and 11.5',
      `slips by up to ${SLIPS_TO * 100} %, at fault from ${SLIPS_FROM * 100} %; pumps turn at ${USUAL_RATIO[0]} to ${USUAL_RATIO[1]} times the crank: common practice, no source`,
    ],
    valid:
      'one belt over both pulleys, nothing between; not an electric pump, nor one with a clutch that is let go',
    error:
      'pulleys to a millimetre each and two counters to half a per cent: about 2 % in the slip of pulleys of 120 mm, more on small ones',
  },
};

type BeltFinding = Pick<Answer, 'sentence' | 'tone' | 'figures'>;

function rpm(value: number, show: QuantityFormatter): string {
  return show.quantity(value, 'rpm', 0);
}

/** Pulleys that hardly belong together, by their ratio. */
function oddRatio(drive: BeltDrive): string | undefined {
  const ratio = driveRatio(drive);
  const [low, high] = USUAL_RATIO;
  if (ratio >= low - SLACK && ratio <= high + SLACK) return undefined;
  return `Look at the pulleys again: a pump that turns ${ratio.toFixed(2)} times for one turn of the crank is unusual. Are the two typed the other way round?`;
}

function speedOf(drive: BeltDrive, crank: number, values: Values, show: QuantityFormatter): BeltFinding {
  const slip = values.optional('slip') ?? 0;
  const speed = rpm(pumpSpeed(drive, crank, slip), show);
  const sentence = `At ${rpm(crank, show)} of the crank the pump turns at ${speed}.`;
  const odd = oddRatio(drive);
  const tooMuch = judgeSlip(slip) !== 'holds';
  return {
    sentence: [
      ...(odd === undefined ? [] : [odd]),
      sentence,
      ...(tooMuch
        ? [`No sound belt slips ${show.quantity(slip, '%', 1)}: up to ${show.quantity(SLIPS_TO, '%', 0)} do.`]
        : []),
    ].join(' '),
    tone: odd === undefined && !tooMuch ? 'fine' : 'look',
    figures: slip === 0 ? [] : [{ label: 'Pump, with the slip', value: speed }],
  };
}

function judgeMeasured(
  drive: BeltDrive,
  crank: number,
  values: Values,
  show: QuantityFormatter,
): BeltFinding | Refusal {
  const pump = values.number('pump');
  const slip = slipOf(drive, crank, pump);
  const driven = rpm(pumpSpeed(drive, crank, 0), show);
  const isToothed = values.choice('belt') === 'toothed';
  const share = show.quantity(Math.max(0, slip), '%', 1);
  const figures = [{ label: 'Slip', value: show.quantity(slip, '%', 1), note: 'good to about 2 %' }];
  if (slip >= 1 - STANDS_STILL)
    return {
      sentence:
        'The pump stands while the crank turns. Engine off at once: belt thrown or torn, a pulley loose on its shaft, or a pump that seized.',
      tone: 'stop',
      figures,
    };
  const verdict = judgeSlip(slip);
  if (verdict === 'faster')
    return refuse(
      'pump',
      pump > READ_TWICE * pumpSpeed(drive, crank, 0)
        ? `The belt drives the pump at ${driven}; this is far more. A second mark or a bright spoke is counted: one mark of tape, and read again.`
        : `The belt drives the pump at ${driven}, and it cannot turn faster. Both pulleys over the belt, both speeds in the same minute, and again.`,
    );
  const odd = oddRatio(drive);
  if (odd !== undefined) return { sentence: odd, tone: 'look', figures };
  if (verdict === 'holds')
    return {
      sentence: `${isToothed ? 'The teeth hold' : 'The belt holds'}: ${share} behind, which ${isToothed ? 'is the reading' : 'creep and the reading make'}. Flow that is missing is missing inside the pump or behind it.`,
      tone: 'fine',
      figures,
    };
  if (isToothed)
    return refuse(
      'pump',
      `A toothed belt or a chain cannot slip by ${share}. Count the teeth of both pulleys and read both speeds again; what skips teeth throws the timing out first.`,
    );
  return verdict === 'slips'
    ? {
        sentence: `The belt slips: the pump is ${share} behind. Tension and tensioner, glazed ribs, oil or coolant on it, a pump or pulley that drags: spin each by hand, belt off. Mend it before the car is driven hard.`,
        tone: 'stop',
        figures,
      }
    : {
        sentence: `At the edge: the pump is ${share} behind, and up to ${show.quantity(SLIPS_TO, '%', 0)} is usual. Measure both pulleys again and read it once more, with lamps, heated screen and air conditioning on.`,
        tone: 'look',
        figures,
      };
}
