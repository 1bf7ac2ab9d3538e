/** What two looks at a level come to in litres, and what is reckoned from them. */
import { expansion } from '../physics/expansion.ts';
import { type AgainstTester, againstTester, lastsFor, usualTimeFor } from '../physics/loss-rate.ts';
import { freezingPoint } from '../physics/mixture-properties.ts';
import { cubicMetre, cubicMetrePerSecond, kelvin, metre, second, ZERO_CELSIUS } from '../physics/units.ts';
import { mixtureOf } from './coolant-inputs.ts';
import type { AnswerFigure, QuantityFormatter, Refusal, Values } from './declaration.ts';
import { refuse } from './refuse.ts';

/** A level is read to this, twice, m. A jug with marks is good to the second, m³. Common practice, no source. */
const EYE = 3e-3;
const JUG = 0.03e-3;
/** Two cold looks that nobody took the temperature of are this far apart, K. Common practice, no source. */
const COLD_IS_COLD = 5;
export const DAY = 86_400;

/** What is missing and how far that may be off, m³. */
export function lossOf(values: Values, show: QuantityFormatter): { lost: number; error: number } | Refusal {
  if (values.choice('how') === 'topped') return { lost: values.number('topped'), error: JUG };
  const area = values.optional('area');
  if (area === undefined)
    return refuse(
      'area',
      'A fall is turned into litres by the size of the bottle. Measure it from above, such as 12 x 8 cm.',
    );
  const [before, now] = [values.optional('before'), values.optional('now')];
  if ((before === undefined) !== (now === undefined))
    return refuse(
      before === undefined ? 'before' : 'now',
      'Write the temperature of the coolant at both looks, or at neither.',
    );
  const mixture = mixtureOf(values);
  const capacity = cubicMetre(values.number('capacity'));
  const freezes = mixture.fraction === 0 ? ZERO_CELSIUS : freezingPoint(mixture);
  for (const [name, at] of Object.entries({ before, now }))
    if (at !== undefined && at < freezes)
      return refuse(
        name,
        `This mixture begins to freeze at ${show.quantity(freezes, '°C', 0)}, and a level says nothing then. Thaw it first.`,
      );
  const cold = kelvin(before ?? ZERO_CELSIUS + 20);
  // Warmer now, the level stands higher than its litres say.
  const hidden = now === undefined ? 0 : expansion(mixture, capacity, cold, kelvin(now));
  const unsure = Math.abs(
    expansion(mixture, capacity, cold, kelvin(cold + (now === undefined ? COLD_IS_COLD : 2))),
  );
  return { lost: values.number('down') * area + hidden, error: EYE * area + unsure };
}

/** How long what is above the low mark lasts. */
export function lastsOf(
  values: Values,
  lost: number,
  error: number,
  show: QuantityFormatter,
): { said: string; figures: AnswerFigure[] } | Refusal {
  const left = values.optional('left');
  const area = values.optional('area');
  if (left === undefined || lost <= error) return { said: '', figures: [] };
  if (area === undefined)
    return refuse(
      'area',
      'What is left above the low mark is reckoned by the size of the bottle. Measure it from above, such as 12 x 8 cm.',
    );
  const spans = (['days', 'distance'] as const).flatMap((name) => {
    const over = values.optional(name);
    if (over === undefined) return [];
    const { soonest, latest } = lastsFor(
      cubicMetre(left * area),
      lost,
      error,
      name === 'days' ? second(over) : metre(over),
    );
    const unit = name === 'distance' ? 'km' : soonest < 3 * DAY ? 'h' : 'days';
    return [
      latest === undefined
        ? `${show.quantity(soonest, unit, 0)} or more`
        : show.range(soonest, latest, unit, 0),
    ];
  });
  return {
    said: `At that pace it is at the low mark after ${spans.join(', ')}.`,
    figures: spans.map((value) => ({ label: 'Lasts to the low mark', value })),
  };
}

/** The loss beside what the pressure tester showed; nothing where no rate was typed, a refusal where the time is not known. */
export function testerOf(values: Values, lost: number): AgainstTester | Refusal | undefined {
  const rate = values.optional('tester');
  if (rate === undefined) return undefined;
  const distance = values.optional('distance');
  const hours =
    values.optional('hours') ?? (distance === undefined ? undefined : usualTimeFor(metre(distance)));
  if (hours === undefined)
    return refuse(
      'hours',
      'To set the leak on the tester beside it, write the hours at the wheel or the kilometres.',
    );
  return againstTester(lost, cubicMetrePerSecond(rate), second(hours));
}
