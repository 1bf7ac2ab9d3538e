import type { Contradiction } from './contradiction.ts';
import { SOMETHING_ELSE } from './model.ts';
import type { NextStep, RatedAction, Split } from './next-step.ts';

/** Looks up what to call things; ids serve when a title is missing. */
export interface Titles {
  cause(id: string): string;
  /** What is seen, as a clause: "the hose warms early". */
  outcome(test: string, outcome: string): string;
  /** What is asked: "How early does the hose warm?". */
  question(test: string): string;
}

/** Words for why an action comes next; the parts are clauses of one sentence, in order. */
export interface Reason {
  sentence: string;
  parts: string[];
}

/**
 * Why an action is worth doing now, in words: "splits thermostat stuck open from sensor reads low; 82 % of
 * these cars: the hose warms early; 6 minutes".
 * @param split from `splitOf`, for a test
 */
export function reasonFor(considered: RatedAction, step: NextStep, titles: Titles, split?: Split): Reason {
  const parts = partsFor(considered, step, titles, split);
  const sentence = `${parts.join('; ')}.`;
  return { sentence: sentence.charAt(0).toUpperCase() + sentence.slice(1), parts };
}

function partsFor(
  considered: RatedAction,
  step: NextStep,
  titles: Titles,
  split: Split | undefined,
): string[] {
  const { action } = considered;
  if (action.kind === 'pass-on')
    return [
      'no likely cause is left that is quicker to prove than passing the car on',
      inMinutes(considered.own),
    ];
  const parts: string[] = [];
  if (action.kind === 'prove') {
    const share = step.ranked.find((one) => one.cause === action.cause)?.share ?? 0;
    parts.push(`fits ${shareText(share)} of these cars`, 'settles it either way');
  } else if (split !== undefined) {
    if (split.separates !== undefined) {
      const [one, other] = split.separates;
      parts.push(`splits ${causeTitle(one, titles)} from ${causeTitle(other, titles)}`);
    }
    const likeliest = [...split.outcomes].sort((a, b) => b.chance - a.chance)[0];
    if (likeliest !== undefined)
      parts.push(
        `${shareText(likeliest.chance)} of these cars: ${titles.outcome(split.test, likeliest.outcome)}`,
      );
  }
  parts.push(timeOf(considered));
  return parts;
}

function timeOf(considered: RatedAction): string {
  const total = inMinutes(considered.own);
  return considered.gettingReady > 0.5
    ? `${total}, ${Math.round(considered.gettingReady)} of them getting the car ready`
    : total;
}

/** What conflicts, in words: both questions with their answers. */
export function describeContradiction(found: Contradiction, titles: Titles): string {
  const [one, other] = found.pair.map(
    ({ test, outcome }) => `${titles.question(test)} “${titles.outcome(test, outcome)}”.`,
  );
  const fight = `${one} ${other} These two do not go together.`;
  if (found.best === undefined) return `${fight} No cause shows both: check these two again.`;
  const times = Math.round(found.times / 10) * 10;
  return `${fight} Even ${causeTitle(found.best, titles)}, the best fit, shows this about ${times} times less often than its usual picture. Check these two again, or think of two faults at once or of something not listed.`;
}

function causeTitle(id: string, titles: Titles): string {
  return id === SOMETHING_ELSE ? 'something else' : titles.cause(id);
}

/** Minutes as a person says them: whole, at least 1 unless nothing. */
export function inMinutes(minutes: number): string {
  const rounded = minutes > 0 ? Math.max(1, Math.round(minutes)) : 0;
  return rounded === 1 ? '1 minute' : `${rounded} minutes`;
}

/** A share for people: whole per cent; "under 1 %" below that, and "over 99 %" for what is not quite certain. */
export function shareText(share: number): string {
  const percent = Math.round(share * 100);
  if (percent < 1) return 'under 1 %';
  return percent > 99 && share < 1 ? 'over 99 %' : `${percent} %`;
}
