/** How often readings are seen, as people count cars: "9 of 10". */
import { completeRow, type EvidenceRow } from '../../diagnosis/likelihood.ts';

/** Seen in fewer cars than this it is left out of a row: 1 of 40, as coarse as the words of the records. */
const RARE = 0.025;

/** @param share from 0 to 1 */
export function shareInWords(share: number): string {
  if (share > 0.95) return 'nearly always';
  if (share >= 0.1) return `${Math.round(share * 10)} of 10`;
  return `1 of ${Math.max(11, Math.round(1 / share))}`;
}

/**
 * The outcomes of a test under one cause, the most seen first, with what the record leaves open shared out as the walk
 * does it. What is hardly ever seen is left out.
 * @throws RangeError if the record contradicts itself, which the check refuses
 */
export function sharesInWords(
  outcomes: readonly string[],
  row: EvidenceRow,
): { key: string; words: string }[] {
  const completed = completeRow(outcomes, row);
  if (!completed.ok) throw new RangeError('This evidence does not add up.');
  return outcomes
    .map((key, index) => ({ key, share: completed.distribution[index] ?? 0 }))
    .filter(({ share }) => share > RARE)
    .sort((a, b) => b.share - a.share)
    .map(({ key, share }) => ({ key, words: shareInWords(share) }));
}
