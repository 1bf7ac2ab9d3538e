import type { Job } from '../../../model/job.ts';
import { isEven } from '../../../physics/fill-account.ts';

export interface LitreSums {
  drained: number;
  /** Filled and topped up. */
  filled: number;
}

/** Litres to the hundredth, finer than any jug. */
export function rounded(litres: number): number {
  return Math.round(litres * 100) / 100;
}

/** Sums in litres, free of the dust that adding decimals leaves. */
export function litreSums(litres: Job['litres']): LitreSums {
  const sum = (entries: Job['litres']) =>
    rounded(entries.reduce((total, { litres: each }) => total + each, 0));
  return {
    drained: sum(litres.filter(({ way }) => way === 'drained')),
    filled: sum(litres.filter(({ way }) => way !== 'drained')),
  };
}

/** What the jug says, as a sentence; undefined while nothing was poured. */
export function litresSentence(litres: Job['litres']): string | undefined {
  if (litres.length === 0) return undefined;
  const { drained, filled } = litreSums(litres);
  const left = rounded(drained - filled);
  const counted = `Drained ${drained} l, filled ${filled} l`;
  if (drained === 0 || filled === 0) return `${counted}.`;
  if (left > 0) return `${counted}: ${left} l less than came out.`;
  if (left < 0) return `${counted}: ${-left} l more than came out.`;
  return `${counted}: as much as came out.`;
}

/** The same for the customer: whom a quarter litre left in the jug would only worry. */
export function litresForCustomer(litres: Job['litres']): string | undefined {
  const { drained, filled } = litreSums(litres);
  return filled > 0 && isEven(drained / 1e3, filled / 1e3)
    ? `Refilled with ${filled} l.`
    : litresSentence(litres);
}

/** Litres from what somebody typed, with a point or a comma; undefined when that is no amount a jug holds. */
export function readLitres(text: string): number | undefined {
  const plain = text
    .trim()
    .replace(/\s*l(?:itres?)?$/i, '')
    .replace(',', '.');
  if (!/^\d{1,2}(?:\.\d{1,2})?$/.test(plain)) return undefined;
  const litres = Number(plain);
  return litres > 0 && litres <= 60 ? litres : undefined;
}
