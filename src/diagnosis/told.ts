/** What the customer answers at the counter, as evidence: weaker than any test, and each question by itself. */
import { completeRow, type EvidenceRow, type RowFault } from './likelihood.ts';

/**
 * How often an answer is heard under a cause. A customer remembers, guesses and means well, so nothing stronger can be said: two
 * causes come apart by four at most, where a test parts them by forty.
 */
export const TOLD_WORDS = ['seldom', 'sometimes', 'half the time', 'often'] as const;

/** An answer, and how often it is given under the causes it tells something about. */
export interface ToldAnswer {
  is: string;
  of: Readonly<Record<string, (typeof TOLD_WORDS)[number]>>;
}

/** Cause -> how much likelier the answer is under it than under a cause of which it tells nothing; 1 where it is not given. */
export type ToldFactors = Readonly<Record<string, number>>;

/** Factors of each answer of a question, in their order. A cause whose row contradicts itself is left out. */
export function toldFactors(answers: readonly ToldAnswer[]): ToldFactors[] {
  const factors = answers.map((): Record<string, number> => ({}));
  for (const [cause, row] of rowsOf(answers)) {
    const completed = completeRow(
      answers.map(({ is }) => is),
      row,
    );
    if (!completed.ok) continue;
    for (const [at, share] of completed.distribution.entries()) {
      const own = factors[at];
      if (own) own[cause] = Math.round(share * answers.length * 100) / 100;
    }
  }
  return factors;
}

/** Causes whose answers together are given far too often, or too seldom. */
export function toldFaults(answers: readonly ToldAnswer[]): { cause: string; fault: RowFault }[] {
  return [...rowsOf(answers)].flatMap(([cause, row]) => {
    const completed = completeRow(
      answers.map(({ is }) => is),
      row,
    );
    return completed.ok ? [] : [{ cause, fault: completed.fault }];
  });
}

/** Answers are independent of each other under one cause, so their factors multiply. */
export function toldTogether(all: readonly ToldFactors[]): ToldFactors {
  const together: Record<string, number> = {};
  for (const factors of all)
    for (const [cause, factor] of Object.entries(factors)) together[cause] = (together[cause] ?? 1) * factor;
  return together;
}

function rowsOf(answers: readonly ToldAnswer[]): Map<string, EvidenceRow> {
  const rows = new Map<string, EvidenceRow>();
  for (const { is, of } of answers)
    for (const [cause, word] of Object.entries(of)) rows.set(cause, { ...rows.get(cause), [is]: word });
  return rows;
}
