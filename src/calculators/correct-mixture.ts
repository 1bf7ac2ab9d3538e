/** Litres to drain and to fill for the strength wanted, and how often to flush. */
import {
  type Correction,
  type CorrectionQuestion,
  correctMixture,
  type Fill,
  fillAfterDrain,
} from '../physics/correct-mixture.ts';
import { flushesToBelow, oldCoolantLeft } from '../physics/flushing.ts';
import { cubicMetre, volumeFraction } from '../physics/units.ts';
import { CAPACITY, doubtfulStrength } from './coolant-inputs.ts';
import type { Answer, Calculator, QuantityFormatter, Refusal, Values } from './declaration.ts';
import { refuse } from './refuse.ts';

/** Differences in strength below this are within what a refractometer can tell. Common practice, no source. */
const REFRACTOMETER_TELLS = 0.02;
/** More than this many flushes and another method is wanted. Common practice, no source. */
const MANY_FLUSHES = 4;
/** Less than this is not poured by itself, m³. */
const A_DROP = 0.05e-3;

const STRENGTHENING = ['full', 'drained'] as const;

export const correctMixtureCalculator: Calculator = {
  id: 'correct-mixture',
  title: 'Correct the mixture',
  settles: 'how many litres to drain and what to fill for the strength wanted, or how often to flush',
  also: [
    'strengthen coolant',
    'dilute coolant',
    'drain and add',
    'flush count',
    'part drain',
    'top up concentrate',
  ],
  inputs: [
    {
      kind: 'choice',
      name: 'system',
      label: 'The system is',
      default: 'full',
      options: [
        { value: 'full', label: 'full, and too weak or too strong' },
        { value: 'drained', label: 'drained in part, to be filled now' },
        { value: 'flush', label: 'to be flushed of its old coolant' },
      ],
    },
    CAPACITY,
    {
      kind: 'quantity',
      name: 'drained',
      label: 'Comes out at one draining',
      hint: 'Measured, or about two thirds of the whole. The block, the heater and the low hoses keep the rest.',
      dimension: 'volume',
      unit: 'l',
      default: '4.0 l',
      limits: ['0.1 l', '60 l'],
      figure: { path: 'coolant.drain', end: 'middle' },
    },
    {
      kind: 'quantity',
      name: 'is',
      label: 'Strength found, by volume',
      hint: 'What is inside, or what stayed inside. 0 after flushing with water.',
      dimension: 'share',
      unit: '%',
      default: '30 %',
      limits: ['0 %', '100 %'],
      reading: true,
      when: { system: STRENGTHENING },
    },
    {
      kind: 'quantity',
      name: 'wanted',
      label: 'Strength wanted, by volume',
      dimension: 'share',
      unit: '%',
      default: '50 %',
      limits: ['0 %', '70 %'],
      figure: { path: 'coolant.mixture', end: 'middle' },
      when: { system: STRENGTHENING },
    },
    {
      kind: 'choice',
      name: 'adding',
      label: 'To fill there is',
      default: 'concentrate',
      options: [
        { value: 'concentrate', label: 'concentrate and water' },
        { value: 'ready', label: 'ready mix and water' },
      ],
      when: { system: STRENGTHENING },
    },
    {
      kind: 'quantity',
      name: 'ready',
      label: 'The ready mix is',
      hint: 'By volume, on the canister.',
      dimension: 'share',
      unit: '%',
      default: '50 %',
      limits: ['10 %', '90 %'],
      when: { system: STRENGTHENING, adding: ['ready'] },
    },
    {
      kind: 'quantity',
      name: 'below',
      label: 'Old coolant left, less than',
      hint: 'For another family of inhibitors some makers ask under 10 %; theirs stands.',
      dimension: 'share',
      unit: '%',
      default: '10 %',
      limits: ['0.1 %', '90 %'],
      when: { system: ['flush'] },
    },
  ],
  answer(values, show): Answer | Refusal {
    const capacity = values.number('capacity');
    if (values.choice('system') !== 'flush') {
      const doubt = doubtfulStrength(values, 'is', show) ?? doubtfulStrength(values, 'wanted', show);
      if (doubt) return doubt;
    }
    if (values.choice('system') === 'full') return cautioned(correct(values, show), values);
    if (values.number('drained') > capacity)
      return refuse(
        'drained',
        `More came out than the ${show.quantity(capacity, 'l', 1)} the system holds. Measure again, or check the capacity for this engine.`,
      );
    return values.choice('system') === 'flush' ? flush(values, show) : cautioned(fill(values, show), values);
  },
  method: {
    formula:
      'drain = capacity × (wanted − found) / (added − found); fill after a drain by balance of glycol; old coolant left = (1 − drained/capacity)ⁿ, the draining before the fill counted with the rinses',
    sources: ['conservation of volume and of glycol', 'perfect mixing between flushes'],
    valid: 'volumes at about 20 °C before mixing, systems of 1 to 60 l',
    error:
      'water and glycol shrink by about 1 % on mixing, which is left out; the jug and the strength read decide. Flushing leaves more behind where a core is not flowed through.',
  },
};

const POUR_NOTE =
  'Run it warm with the heater on hot and measure the strength again: unmixed coolant reads wrong. Mix only what the maker lets mix.';
const WASTE_NOTE =
  'Old coolant is poisonous and tastes sweet: catch it, cover it at once, keep children and animals away, dispose of it by the local rules.';

/** A strength outside these is asked of the maker's book. Common practice, no source. */
const USUAL = { weak: 0.4, strong: 0.6 } as const;
const LAST_BITS = 1e-9;

/** Says of a strength wanted what it costs, after how it is reached. */
function cautioned(answer: Answer | Refusal, values: Values): Answer | Refusal {
  if ('refused' in answer) return answer;
  const wanted = values.number('wanted');
  const caution =
    wanted > USUAL.strong + LAST_BITS
      ? ' That strong it protects no further and carries less heat: 60 % is the most without the maker’s word.'
      : wanted < USUAL.weak - LAST_BITS
        ? ' That weak it freezes sooner and protects the metal less: ask the maker’s book before it is mixed so.'
        : '';
  if (caution === '') return answer;
  return {
    ...answer,
    sentence: `${answer.sentence}${caution}`,
    tone: answer.tone === 'fine' ? 'look' : answer.tone,
  };
}

function strongIs(values: Values): number {
  return values.choice('adding') === 'ready' ? values.number('ready') : 1;
}

function nameOf(values: Values, show: QuantityFormatter, share: number): string {
  if (share === 0) return 'water';
  return values.choice('adding') === 'ready' ? `ready mix of ${show.quantity(share, '%', 0)}` : 'concentrate';
}

function correct(values: Values, show: QuantityFormatter): Answer | Refusal {
  const capacity = cubicMetre(values.number('capacity'));
  const is = volumeFraction(values.number('is'));
  const wanted = volumeFraction(values.number('wanted'));
  if (Math.abs(is - wanted) < REFRACTOMETER_TELLS)
    return {
      sentence: 'Leave it: the difference is within what a refractometer can tell.',
      tone: 'fine',
      figures: [
        { label: 'Found', value: show.quantity(is, '%', 0) },
        { label: 'Wanted', value: show.quantity(wanted, '%', 0) },
      ],
      notes: [],
    };
  const adding = volumeFraction(wanted > is ? strongIs(values) : 0);
  const correction: Correction = correctMixture({ capacity, is, wanted, adding });
  if (correction.verdict !== 'drain and add') {
    return refuse(
      'adding',
      `A ready mix of ${show.quantity(adding, '%', 0)} cannot bring it up to ${show.quantity(wanted, '%', 0)}. Use concentrate, or want less.`,
    );
  }
  const litres = show.quantity(correction.drain, 'l', 1);
  const added = nameOf(values, show, adding);
  const comes = values.number('drained');
  if (correction.drain > comes + A_DROP) {
    const question = { capacity, is, wanted, adding };
    return { ...inMoreRounds(question, comes, added, litres, show), notes: [POUR_NOTE, WASTE_NOTE] };
  }
  return {
    sentence: `Drain ${litres} cold, measured, and fill ${litres} of ${added}.`,
    tone: 'look',
    figures: [
      { label: 'Drain', value: litres },
      { label: `Fill ${added}`, value: litres },
      { label: 'Then', value: show.quantity(wanted, '%', 0), note: 'by volume' },
    ],
    notes: [POUR_NOTE, WASTE_NOTE],
  };
}

/** More has to come out than one draining gives: concentrate instead of ready mix, or a second round. */
function inMoreRounds(
  question: CorrectionQuestion,
  comes: number,
  added: string,
  needed: string,
  show: QuantityFormatter,
): Omit<Answer, 'notes'> {
  const { capacity, is, wanted, adding } = question;
  const drained = show.quantity(comes, 'l', 1);
  const first = `Not in one draining: ${needed} would have to come out for ${added}, and ${drained} comes.`;
  const strong = correctMixture({ ...question, adding: volumeFraction(1) });
  if (adding < 1 && wanted > is && strong.verdict === 'drain and add' && strong.drain <= comes) {
    const litres = show.quantity(strong.drain, 'l', 1);
    return {
      sentence: `${first} Take concentrate: drain ${litres} cold, measured, and fill ${litres} of it.`,
      tone: 'look',
      figures: [
        { label: 'Drain', value: litres },
        { label: 'Fill concentrate', value: litres },
        { label: 'Then', value: show.quantity(wanted, '%', 0), note: 'by volume' },
      ],
    };
  }
  const then = show.quantity(is + (adding - is) * (comes / capacity), '%', 0);
  return {
    sentence: `${first} Drain that, fill as much ${added}, run it warm and measure again: it comes to about ${then}, and the rest takes another round.`,
    tone: 'look',
    figures: [
      { label: 'Drain, first round', value: drained },
      { label: `Fill ${added}`, value: drained },
      { label: 'Then about', value: then, note: `by volume, of ${show.quantity(wanted, '%', 0)} wanted` },
    ],
  };
}

function fill(values: Values, show: QuantityFormatter): Answer | Refusal {
  const capacity = cubicMetre(values.number('capacity'));
  const drained = values.number('drained');
  const strong = volumeFraction(strongIs(values));
  const found: Fill = fillAfterDrain({
    capacity,
    remaining: cubicMetre(capacity - drained),
    remainingStrength: volumeFraction(values.number('is')),
    wanted: volumeFraction(values.number('wanted')),
    strong,
    weak: volumeFraction(0),
  });
  const wanted = show.quantity(values.number('wanted'), '%', 0);
  const left = show.quantity(capacity - drained, 'l', 1);
  if (found.verdict === 'not reachable') {
    const weak = found.remainder === 'too weak';
    const alone = weak ? nameOf(values, show, strong) : 'water';
    const further =
      found.mayRemain !== undefined && found.mayRemain < A_DROP
        ? 'It would have to be drained to the last drop: flush it with water first.'
        : found.mayRemain === undefined
          ? `Even an empty system would not get there with ${alone}: take concentrate.`
          : `Drain ${show.quantity(capacity - found.mayRemain - drained, 'l', 1)} more, so that no more than ${show.quantity(found.mayRemain, 'l', 1)} stays inside.`;
    return {
      sentence: `Not with what is left inside: filled with ${alone} alone it comes to ${show.quantity(found.nearest, '%', 0)}, not ${wanted}. ${further}`,
      tone: 'look',
      figures: [
        { label: 'Still inside', value: left },
        { label: `Nearest, filling ${alone} only`, value: show.quantity(found.nearest, '%', 0) },
        ...(found.mayRemain === undefined
          ? []
          : [{ label: 'May stay inside at most', value: show.quantity(found.mayRemain, 'l', 1) }]),
      ],
      notes: [WASTE_NOTE],
    };
  }
  const added = nameOf(values, show, strong);
  const first = show.quantity(found.strong, 'l', 1);
  const second = show.quantity(found.weak, 'l', 1);
  return {
    sentence:
      found.strong < A_DROP
        ? `Fill ${second} of water alone, for ${wanted} in the whole.`
        : found.weak < A_DROP
          ? `Fill ${first} of ${added} alone, for ${wanted} in the whole.`
          : `Fill ${first} of ${added} first, then ${second} of water, for ${wanted} in the whole.`,
    tone: 'look',
    figures: [
      { label: 'Still inside', value: left },
      { label: `Fill ${added}`, value: first },
      { label: 'Fill water', value: second, note: 'the kind the maker allows' },
    ],
    notes: [POUR_NOTE, WASTE_NOTE],
  };
}

function flush(values: Values, show: QuantityFormatter): Answer | Refusal {
  const capacity = cubicMetre(values.number('capacity'));
  const drained = cubicMetre(values.number('drained'));
  if (drained < 0.05 * capacity)
    return refuse(
      'drained',
      'So little at a time is no flushing: less than a twentieth of the system. Find a lower drain.',
    );
  const below = values.number('below');
  // Draining for the fill takes the old coolant down once more, so the rinses are one fewer.
  const drains = Math.max(1, flushesToBelow(capacity, drained, below));
  const rinses = drains - 1;
  const left = show.quantity(oldCoolantLeft(capacity, drained, drains), '%', 1);
  const times = rinses === 1 ? 'once' : rinses === 2 ? 'twice' : `${rinses} times`;
  const many = rinses > MANY_FLUSHES;
  return {
    sentence: many
      ? `It would take ${rinses} rinses before the fill. Take the lowest hose off or use a flushing machine instead.`
      : rinses === 0
        ? `No rinse is needed: drain and fill, and ${left} of the old coolant is left.`
        : `Drain, fill with water and run warm ${times}; then drain and fill. ${left} of the old coolant is left after the fill.`,
    tone: many ? 'look' : 'fine',
    figures: [
      { label: 'Rinses with water', value: String(rinses) },
      { label: 'Old coolant left after the fill', value: left },
      { label: 'Rinse water for it', value: show.quantity(rinses * drained, 'l', 0) },
      ...[1, 2, 3]
        .filter((n) => n < drains)
        .map((n) => ({
          label: ['Left after the first draining', 'after the second', 'after the third'][n - 1] ?? '',
          value: show.quantity(oldCoolantLeft(capacity, drained, n), '%', 0),
        })),
    ],
    notes: [
      'The heater on hot and the thermostat open at each rinse, or the core and the radiator keep their old coolant. Let it cool down before each draining.',
      'What stays inside at the last draining is mostly water: work the fill out by “drained in part” with the strength found then.',
      WASTE_NOTE,
    ],
  };
}
