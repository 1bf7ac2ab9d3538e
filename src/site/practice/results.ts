/** What the device keeps of practice, and what of it an apprentice shows a teacher. Pure. */
import { LONGEST_LIST } from './case-codes.ts';

/** A case that was answered. */
export interface CaseResult {
  code: string;
  /** Id and title of the complaint. */
  symptom: string;
  title: string;
  /** Day it was answered, such as 2026-11-30. */
  on: string;
  /** Titles of the tests, in order. */
  did: string[];
  /** Title of the cause that was named. */
  named: string;
  right: boolean;
  /** A test had come out for it. */
  shown: boolean;
  minutes: number;
  planner: number;
  tree: number;
}

/** The case that is being played. */
export interface OpenRound {
  code: string;
  tests: string[];
}

export interface Practice {
  /** The latest of each case, the oldest first. */
  results: CaseResult[];
  open?: OpenRound | undefined;
}

/** More than the cases of any shelf; the oldest go first. */
const MOST_RESULTS = 1000;

const isShortText = (value: unknown): value is string => typeof value === 'string' && value.length < 400;
const isTexts = (value: unknown): value is string[] =>
  Array.isArray(value) && value.length < 200 && value.every(isShortText);
const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** Anything may lie on a device: what is no result is left out, and the rest stays. */
export function readPractice(value: unknown): Practice {
  if (!isRecord(value)) return { results: [] };
  const { results, open } = value;
  return {
    results: (Array.isArray(results) ? results : []).filter(isResult).slice(-MOST_RESULTS),
    ...(isRecord(open) &&
      isShortText(open.code) &&
      isTexts(open.tests) && { open: { code: open.code, tests: open.tests } }),
  };
}

function isResult(value: unknown): value is CaseResult {
  return (
    isRecord(value) &&
    [value.code, value.symptom, value.title, value.on, value.named].every(isShortText) &&
    isTexts(value.did) &&
    typeof value.right === 'boolean' &&
    typeof value.shown === 'boolean' &&
    [value.minutes, value.planner, value.tree].every(
      (each) => typeof each === 'number' && Number.isFinite(each),
    )
  );
}

/** With a result added; an earlier one of the same case gives way. */
export function withResult({ results }: Practice, result: CaseResult): Practice {
  return { results: [...results.filter(({ code }) => code !== result.code), result].slice(-MOST_RESULTS) };
}

/** Codes of the cases whose latest answer was not right. */
export function gotWrong({ results }: Practice): string[] {
  return results.filter(({ right }) => !right).map(({ code }) => code);
}

const whole = (minutes: number) => Math.round(minutes);

/**
 * Results as a text that a teacher reads without this site.
 * @param name what the apprentice calls himself; '' leaves it out
 */
export function resultsText(results: readonly CaseResult[], name: string, day: string): string {
  const right = results.filter((each) => each.right);
  const lines = [
    `Practice results${name === '' ? '' : ` of ${name}`}, ${day}`,
    `${right.length} of ${results.length} right, ${right.filter(({ shown }) => shown).length} of them shown by a test`,
    ...results
      .slice(0, LONGEST_LIST)
      .flatMap((each, at) => [
        '',
        `${at + 1}. ${each.title} (case ${each.code}, ${each.on})`,
        `   ${each.right ? 'Right' : 'Not right'}: ${each.named}${each.right && !each.shown ? ', shown by no test' : ''}`,
        `   ${whole(each.minutes)} min; planner ${whole(each.planner)} min, tree ${whole(each.tree)} min`,
        `   ${each.did.length === 0 ? 'No test' : each.did.join(' > ')}`,
      ]),
  ];
  return `${lines.join('\n')}\n`;
}

/** The same, short enough for a code that a phone reads off a screen: without the tests. */
export function shortResults(results: readonly CaseResult[], name: string, day: string): string {
  const lines = results.map(
    ({ code, right, shown, minutes, planner, tree }) =>
      `${code} ${right ? (shown ? 'right' : 'right, not shown') : 'not right'} ${whole(minutes)} min (${whole(planner)}, ${whole(tree)})`,
  );
  return [`Practice ${day} ${name}`.trim(), ...lines, 'in brackets: planner, tree'].join('\n');
}
