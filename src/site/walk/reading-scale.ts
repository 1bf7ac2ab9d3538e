/** The scale of a test as its question carries it: what a typed reading needs to choose the answer. */
import type { Test } from '../../model/test.ts';

export interface ReadingScale {
  test: string;
  measures: string;
  unit: string;
  /** Per outcome that is cut from the scale: its limits as written. */
  bands: Record<string, { from?: string; to?: string }>;
}

/** @returns undefined for a test whose outcomes are not cut from a measurement */
export function readingScaleOf(test: string, { scale, outcomes }: Test): ReadingScale | undefined {
  if (!scale) return undefined;
  const bands = Object.entries(outcomes).flatMap(([outcome, { from, to }]) =>
    from || to ? [[outcome, { ...(from && { from: from.text }), ...(to && { to: to.text }) }] as const] : [],
  );
  return { test, ...scale, bands: Object.fromEntries(bands) };
}
