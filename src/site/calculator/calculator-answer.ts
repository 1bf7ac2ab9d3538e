/** An outcome of a calculator as words and markup; markup is made of escaped text only. The same at build and live. */
import type { AnswerFigure, Calculator, Picture } from '../../calculators/declaration.ts';
import type { CalculatorResult } from '../../calculators/work-out.ts';
import { type Habit, METRIC } from '../../model/habit.ts';
import { drawCurve } from '../drawings/curve.ts';
import { drawLadder } from '../drawings/ladder.ts';
import { escapeText } from '../drawings/svg.ts';

/** What is said first, as plain text. An answer on example figures says that it is one. */
export function answerSentence(outcome: CalculatorResult, example = false): string {
  if (!outcome.ok) return 'No figure yet.';
  return example ? `Example: ${outcome.answer.sentence}` : outcome.answer.sentence;
}

/** Class of what is said first: an example alarms nobody. */
export function answerTone(outcome: CalculatorResult, example = false): string {
  return example ? 'as-example' : outcome.ok ? outcome.answer.tone : 'look';
}

/** What stands in place of an answer inside a step, where an example would be taken for this car's. */
export function waitingSentence({ inputs, sets }: Calculator, vehicleChosen: boolean): string {
  const helps = sets !== undefined || inputs.some((input) => input.kind === 'quantity' && input.figure);
  return helps && !vehicleChosen ? 'Choose the vehicle or type the figures.' : 'Type the figures.';
}

/**
 * What comes under the sentence.
 * @param id prefix for ids inside the pictures, unique on the page; without it no picture is drawn
 */
export function answerDetail(
  calculator: Calculator,
  outcome: CalculatorResult,
  id?: string,
  habit: Habit = METRIC,
): string {
  if (!outcome.ok) {
    const lines = outcome.faults.map(({ name, message }) => {
      const label = calculator.inputs.find((input) => input.name === name)?.label;
      return `<li>${escapeText(label === undefined ? message : `${label}: ${message}`)}</li>`;
    });
    return `<ul>${lines.join('')}</ul>`;
  }
  const { figures, pictures = [], notes } = outcome.answer;
  return [
    figures.length === 0 ? '' : `<dl class="answer-figures">${figures.map(figureRow).join('')}</dl>`,
    ...(id === undefined ? [] : pictures.map((picture, index) => drawn(picture, `${id}-${index}`, habit))),
    ...notes.map((note) => `<p class="soft">${escapeText(note)}</p>`),
  ].join('');
}

/** Number, no-break space, unit: as figures are written for the reader. */
const WITH_UNIT = /^([\d.−]+(?: to [\d.−]+)?)\u00a0([^\d\u00a0]+)$/;

function figureRow({ label, value, note }: AnswerFigure): string {
  const parts = WITH_UNIT.exec(value);
  const shown = parts
    ? `<b>${escapeText(parts[1] ?? '')}</b>\u00a0<i>${escapeText(parts[2] ?? '')}</i>`
    : `<b>${escapeText(value)}</b>`;
  const small = note === undefined ? '' : `<small>${escapeText(note)}</small>`;
  return `<dt>${escapeText(label)}</dt><dd>${shown}${small}</dd>`;
}

function drawn(picture: Picture, id: string, habit: Habit): string {
  if (picture.kind === 'curve') return drawCurve({ ...picture, id, habit });
  const { title, rungs, reading } = picture;
  return drawLadder({
    id,
    title,
    narrow: true,
    unit: habit.temperature === '°F' ? '°F' : '°C',
    rungs: rungs.map(({ id: rung, label, celsius }) => ({
      id: rung,
      label,
      low: celsius,
      high: celsius,
      kind: 'computed',
    })),
    marker: {
      celsius: reading.celsius,
      label: reading.label,
      to: { rung: reading.to, below: reading.below, above: reading.above },
    },
  });
}
