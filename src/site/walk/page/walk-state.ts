/** Where a walk stands after some answers, and the question as it is shown there. */
import '../../browser/page-globals.ts';
import { NOT_THIS_UNDER } from '../../../diagnosis/belief.ts';
import type { WalkPlace } from '../../../diagnosis/walk.ts';
import type { KnownLayout } from '../../../model/layout.ts';
import { button, element } from '../../browser/element.ts';
import type { Answers } from '../answers.ts';
import type { WalkData, WalkTexts } from '../walk-data.ts';
import type { Diagnoser } from './diagnose.ts';
import { knownLayout, type TrailEntry, trailOf } from './replay.ts';
import { fitCauses } from './walk-causes.ts';

/** Where a walk stands after some answers. */
export interface WalkState {
  answers: Answers;
  place: WalkPlace;
  trail: TrailEntry[];
  layout: KnownLayout;
  /** Tools that are not at hand. */
  missing: ReadonlySet<string>;
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
  const place = diagnoser.place(answers, layout, missing);
  return {
    answers,
    place,
    trail: trailOf(tree, place, answers, (cause) => diagnoser.proofsOf(cause), vehicle),
    layout,
    missing,
  };
}

/** The name of the section that is asked or shown where a walk stands; undefined where the planner is asked first. */
export function partAt({ place: { standing, end } }: WalkState): string | undefined {
  switch (standing.kind) {
    case 'ask':
      if (end !== undefined) return `step ${end}`;
      return standing.step === undefined ? undefined : `step ${standing.step}`;
    case 'ask-layout':
    case 'other-walk':
      return `step ${standing.step}`;
    case 'proven':
      return `proof ${standing.cause}`;
    case 'list':
      return end === undefined ? undefined : `step ${end}`;
    case 'off-tree':
      return undefined;
  }
}

/**
 * A question as it stands after these answers: what is proven, its causes as the car can have them, the answers given
 * before marked. What is right already is left alone, so that nothing is laid out twice.
 * @param goesOn where the walk goes on from a cause
 * @param ask asks a proof of a cause
 */
export function fitQuestion(
  section: HTMLElement,
  state: WalkState,
  diagnoser: Diagnoser,
  goesOn: WalkTexts['goesOn'],
  ask: (test: string) => void,
): void {
  if (state.fitted === section) return;
  state.fitted = section;
  const { answers, layout, place, missing } = state;
  const { belief, standing } = place;
  const isProven = standing.kind === 'proven';
  section.toggleAttribute('data-proven', isProven);
  const shares = new Map(belief.ranked.map(({ cause, share }) => [cause, share]));
  if (section.querySelector('[data-cause]')) {
    fitCauses(
      section,
      belief.ranked,
      (cause) => !isProven && diagnoser.cannotHave(cause, layout),
      diagnoser.data.causes,
    );
  }
  for (const answer of section.querySelectorAll<HTMLElement>('.answer')) {
    const { key = '', value } = answer.dataset;
    answer.toggleAttribute('data-chosen', answers.get(key) === value);
  }
  for (const claim of section.querySelectorAll<HTMLElement>('[data-after]'))
    claim.hidden = !holds(JSON.parse(claim.dataset.after ?? '{}'), answers);
  const next = standing.kind === 'ask' && place.end !== undefined ? standing.cause : undefined;
  for (const spot of section.querySelectorAll<HTMLElement>('[data-verdict]')) {
    const cause = spot.dataset.verdict ?? '';
    const proof = diagnoser.nextProof(cause, answers, layout, missing);
    const said = verdictOf(cause, place, shares.get(cause) ?? 0, next, proof !== undefined);
    if (spot.dataset.said === said) continue;
    spot.dataset.said = said;
    const { title, href } = goesOn[cause] ?? {};
    const words = {
      proven: 'Proven.',
      found: 'Found.',
      'not this': 'Not this.',
      open: '',
      next: '',
      done: 'All its proofs are done.',
    }[said];
    spot.replaceChildren(
      ...(words === ''
        ? [
            proofButton(
              diagnoser.data.causes[cause] ?? cause,
              () => proof !== undefined && ask(proof),
              said === 'next' ? 'main' : 'quiet',
            ),
          ]
        : [element('b', {}, words)]),
      ...(said === 'proven' && title !== undefined && href !== undefined
        ? [
            ' Something made it. ',
            element('a', { class: 'button', href, 'data-carry': '' }, `Find what: ${title}`),
          ]
        : []),
    );
  }
}

/** Several stand on one page, so each says what it is about. */
function proofButton(cause: string, press: () => void, look: string): HTMLButtonElement {
  const made = button('Do this proof', press, look);
  made.ariaLabel = `Do this proof: ${cause}`;
  return made;
}

type Verdict = 'proven' | 'found' | 'not this' | 'next' | 'open' | 'done';

function verdictOf(
  cause: string,
  { standing, belief }: WalkPlace,
  share: number,
  next: string | undefined,
  hasProofLeft: boolean,
): Verdict {
  if (standing.kind === 'proven' && standing.cause === cause) return 'proven';
  if (belief.found.includes(cause)) return 'found';
  if (share < NOT_THIS_UNDER) return 'not this';
  if (cause === next) return 'next';
  return hasProofLeft ? 'open' : 'done';
}

/** Whether all answers that a sentence rests on were given. */
function holds(after: Record<string, string[]>, answers: Answers): boolean {
  return Object.entries(after).every(([test, seen]) => seen.includes(answers.get(test) ?? ''));
}
