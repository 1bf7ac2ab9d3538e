/** An outcome of a calculator as markup; made of escaped text only. The same at build and live. */
import type { Answer, Picture } from '../calculators/declaration.ts';
import type { Outcome } from '../calculators/work-out.ts';
import { drawCurve } from './drawings/curve.ts';
import { drawLadder } from './drawings/ladder.ts';
import { escapeText } from './drawings/svg.ts';

/** @param id prefix for ids inside the picture, unique on the page */
export function answerHtml(outcome: Outcome, id: string): string {
  if (outcome.ok) return solved(outcome.answer, id);
  const lines = outcome.faults.map(({ message }) => `<li>${escapeText(message)}</li>`).join('');
  return `<p class="answer-sentence">No figure yet:</p><ul>${lines}</ul>`;
}

function solved({ sentence, tone, figures, notes, picture }: Answer, id: string): string {
  const rows = figures
    .map(
      ({ label, value, note }) =>
        `<dt>${escapeText(label)}</dt><dd>${escapeText(value)}${note ? `<small>${escapeText(note)}</small>` : ''}</dd>`,
    )
    .join('');
  return [
    `<p class="answer-sentence ${tone}">${escapeText(sentence)}</p>`,
    rows === '' ? '' : `<dl class="answer-figures">${rows}</dl>`,
    picture ? drawn(picture, id) : '',
    ...notes.map((note) => `<p class="soft">${escapeText(note)}</p>`),
  ].join('');
}

function drawn(picture: Picture, id: string): string {
  if (picture.kind === 'curve') return drawCurve({ ...picture, id });
  const { title, rungs, reading } = picture;
  return drawLadder({
    id,
    title,
    narrow: true,
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
