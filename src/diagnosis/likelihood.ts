import { type LikelihoodWord, likelihoodOf } from './words.ts';

/** How often some outcomes of a test are seen under one cause: words, or numbers from 0 to 1. */
export type EvidenceRow = Readonly<Record<string, LikelihoodWord | number>>;

/** Why a row cannot be turned into a distribution. */
export type RowFault =
  | { kind: 'unknown-outcome'; outcome: string }
  | { kind: 'not-a-share'; outcome: string; value: number }
  /** The named outcomes are said to be seen far more often than there are cars. */
  | { kind: 'too-much'; sum: number }
  /** Every outcome is named and together they leave many cars without any. */
  | { kind: 'too-little'; sum: number }
  /** One outcome must be seen, and another is not ruled out. */
  | { kind: 'must-and-others'; must: string; other: string };

export type CompletedRow = { ok: true; distribution: number[] } | { ok: false; fault: RowFault };

/** Words are coarse, one step is up to .17: named shares within this of 1 are taken as meant to fill it. */
const SLACK = 0.25;

/** Least share of an outcome a row does not name: nothing is impossible that nobody called impossible. */
const FLOOR = 0.005;

/**
 * Completes what an author wrote about one cause to a full distribution over the outcomes of a test.
 *
 * - Outcomes the row does not name share what is left equally, at least 0.005 each.
 * - Then the whole is scaled to sum to 1. Named shares may miss 1 by up to 0.25, words being coarse;
 *   beyond that the row contradicts itself. A row that leaves outcomes out may name as little as it likes.
 * - `must` (or 1) leaves the unnamed outcomes impossible and bears no other named outcome but `cannot`.
 * - An empty row says nothing: all outcomes alike.
 * @param outcomes ids of all outcomes of the test, in order
 * @returns shares in the order of `outcomes`, sum 1, or the fault
 */
export function completeRow(outcomes: readonly string[], row: EvidenceRow): CompletedRow {
  const named = new Map<string, number>();
  for (const [outcome, word] of Object.entries(row)) {
    if (!outcomes.includes(outcome)) return failed({ kind: 'unknown-outcome', outcome });
    const value = likelihoodOf(word);
    if (!(value >= 0 && value <= 1)) return failed({ kind: 'not-a-share', outcome, value });
    named.set(outcome, value);
  }
  const certain = [...named].find(([, value]) => value === 1)?.[0];
  if (certain !== undefined) {
    const other = [...named].find(([outcome, value]) => outcome !== certain && value > 0)?.[0];
    if (other !== undefined) return failed({ kind: 'must-and-others', must: certain, other });
    return { ok: true, distribution: outcomes.map((outcome) => (outcome === certain ? 1 : 0)) };
  }
  const sum = [...named.values()].reduce((total, value) => total + value, 0);
  const unnamed = outcomes.length - named.size;
  if (sum > 1 + SLACK) return failed({ kind: 'too-much', sum });
  if (unnamed === 0 && sum < 1 - SLACK) return failed({ kind: 'too-little', sum });
  const share = unnamed === 0 ? 0 : Math.max((1 - sum) / unnamed, FLOOR);
  const whole = sum + share * unnamed;
  return { ok: true, distribution: outcomes.map((outcome) => (named.get(outcome) ?? share) / whole) };
}

/** A fault with the cause whose row has it; `otherwise` for the row of all causes not mentioned. */
export interface EvidenceFault {
  cause: string;
  fault: RowFault;
}

export type CompletedMatrix =
  | { ok: true; likelihood: number[][] }
  | { ok: false; faults: readonly EvidenceFault[] };

/**
 * The likelihood table of one test for the causes of one symptom.
 * @param causes ids in the order of the model
 * @param evidence rows of the causes the test mentions; other symptoms' causes may be among them
 * @param otherwise row of every cause not mentioned, something else included
 * @returns `likelihood[outcome][cause]` with something else as the last column, or every fault found
 */
export function completeMatrix(
  outcomes: readonly string[],
  causes: readonly string[],
  evidence: Readonly<Record<string, EvidenceRow>>,
  otherwise: EvidenceRow,
): CompletedMatrix {
  const faults: EvidenceFault[] = [];
  const complete = (cause: string, row: EvidenceRow): number[] => {
    const completed = completeRow(outcomes, row);
    if (completed.ok) return completed.distribution;
    faults.push({ cause, fault: completed.fault });
    return [];
  };
  const rest = complete('otherwise', otherwise);
  const columns = causes.map((cause) => {
    const row = Object.hasOwn(evidence, cause) ? evidence[cause] : undefined;
    return row === undefined ? rest : complete(cause, row);
  });
  if (faults.length > 0) return { ok: false, faults };
  const all = [...columns, rest];
  return {
    ok: true,
    likelihood: outcomes.map((_, outcome) => all.map((column) => column[outcome] ?? 0)),
  };
}

/** A row's fault as a sentence that says what would be right. */
export function describeRowFault(fault: RowFault, outcomes: readonly string[]): string {
  switch (fault.kind) {
    case 'unknown-outcome':
      return `The test has no outcome "${fault.outcome}". It has: ${outcomes.join(', ')}.`;
    case 'not-a-share':
      return `"${fault.outcome}" is given as ${fault.value}. Write a frequency word, or a number from 0 to 1.`;
    case 'too-much':
      return `The outcomes named add up to ${percent(fault.sum)} of the cars. Lower one of them.`;
    case 'too-little':
      return `All outcomes are named and add up to ${percent(fault.sum)} of the cars only. Raise one, or leave one out: it takes what is left.`;
    case 'must-and-others':
      return `"${fault.must}" must be seen, so "${fault.other}" cannot be. Write "always" for the first, or "cannot" for the second.`;
  }
}

function percent(share: number): string {
  return `${Math.round(share * 100)} %`;
}

function failed(fault: RowFault): CompletedRow {
  return { ok: false, fault };
}
