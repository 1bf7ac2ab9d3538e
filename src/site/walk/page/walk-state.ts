/** Where a walk stands after some answers, and the question as it is shown there. */
import '../../browser/page-globals.ts';
import type { KnownLayout } from '../../../model/layout.ts';
import { button, element } from '../../browser/element.ts';
import { type Answers, NOT_IT, PROVEN, proveKey } from '../answers.ts';
import type { WalkData } from '../walk-data.ts';
import type { Diagnoser, Diagnosis } from './diagnose.ts';
import { knownLayout, type Replay, replay, withVerdicts } from './replay.ts';
import { fitCauses } from './walk-causes.ts';

/** Where a walk stands after some answers. */
export interface WalkState {
  answers: Answers;
  replayed: Replay;
  layout: KnownLayout;
  /** What the numbers say; costly, so worked out when it is first wanted, and then once. */
  diagnose: () => Diagnosis;
  /** The section that has been made as it is wanted here. */
  fitted?: HTMLElement;
}

/**
 * @param missing tools that are not at hand
 * @returns where the walk stands with the vehicle that is chosen now
 */
export function stateAfter(
  answers: Answers,
  { tree }: WalkData,
  diagnoser: Diagnoser,
  missing: ReadonlySet<string>,
): WalkState {
  const vehicle = window.headertank.vehicle?.layout ?? {};
  const layout = knownLayout(vehicle, answers);
  const replayed = replay(tree, answers, vehicle, {
    cannot: (test) => diagnoser.cannot(test, layout, missing),
    cannotHave: (cause) => diagnoser.cannotHave(cause, layout),
  });
  let diagnosis: Diagnosis | undefined;
  return {
    answers,
    replayed,
    layout,
    diagnose: () => {
      diagnosis ??= diagnoser.diagnose(withVerdicts(answers, replayed.trail), layout, missing);
      return diagnosis;
    },
  };
}

/**
 * A question as it stands after these answers: what is proven, its causes as the car can have them, the answers given
 * before marked. What is right already is left alone, so that nothing is laid out twice.
 * @param titles of the causes
 * @param give takes a verdict on a cause
 */
export function fitQuestion(
  section: HTMLElement,
  state: WalkState,
  diagnoser: Diagnoser,
  titles: Readonly<Record<string, string>>,
  give: (key: string, value: string) => void,
): void {
  if (state.fitted === section) return;
  state.fitted = section;
  const { answers, layout, replayed } = state;
  const isProven = replayed.standing.kind === 'proven';
  section.toggleAttribute('data-proven', isProven);
  if (section.querySelector('[data-cause]')) {
    fitCauses(
      section,
      diagnoser.ranked(withVerdicts(answers, replayed.trail), layout),
      (cause) => !isProven && diagnoser.cannotHave(cause, layout),
      titles,
    );
  }
  for (const answer of section.querySelectorAll<HTMLElement>('.answer')) {
    const { key = '', value } = answer.dataset;
    answer.toggleAttribute('data-chosen', answers.get(key) === value);
  }
  for (const place of section.querySelectorAll<HTMLElement>('[data-verdict]')) {
    const key = proveKey(place.dataset.verdict ?? '');
    if (section.querySelector(`.answer[data-key="${key}"]`)) continue;
    const said = answers.get(key) ?? 'open';
    if (place.dataset.said === said) continue;
    place.dataset.said = said;
    place.replaceChildren(
      ...(said === 'open'
        ? [
            button('Proven: what to do', () => give(key, PROVEN)),
            ' ',
            button('Not this', () => give(key, NOT_IT), 'quiet'),
          ]
        : [element('b', {}, said === PROVEN ? 'Proven.' : 'Ruled out.')]),
    );
  }
}
