/** A misspelt word read as the known word it was meant to be. */

/** Shorter words have too many neighbours to be mended by guess. */
const SHORTEST = 4;
/** From here on two slips are mended although the words sound different. */
const LONG = 8;

/**
 * One slip, or two in a long word or one that sounds the same. A slip is a letter too many, too few, another one, or two
 * that changed places. Codes and figures are never guessed at.
 * @param known most used first: of words equally near, one with the same first letter wins, then the most used
 */
export function mendedWord(word: string, known: Iterable<string>): string | undefined {
  if (word.length < SHORTEST || /\d/.test(word)) return undefined;
  const sound = soundOf(word);
  let best: string | undefined;
  let bestRank = Number.POSITIVE_INFINITY;
  for (const candidate of known) {
    if (candidate.length < 3 || Math.abs(candidate.length - word.length) > 2) continue;
    const slips = slipsBetween(word, candidate);
    if (slips > 2) continue;
    const same = soundOf(candidate) === sound;
    if (slips > 1 && !same && Math.min(word.length, candidate.length) < LONG) continue;
    const rank = slips * 4 + (same ? 0 : 2) + (candidate[0] === word[0] ? 0 : 3);
    if (rank >= bestRank) continue;
    best = candidate;
    bestRank = rank;
  }
  return best;
}

/** Damerau's distance with changes of neighbours only; 3 for anything above 2. */
function slipsBetween(a: string, b: string): number {
  let twoBack: number[] = [];
  let before = Array.from({ length: b.length + 1 }, (_, at) => at);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    let least = i;
    for (let j = 1; j <= b.length; j++) {
      const differs = a[i - 1] === b[j - 1] ? 0 : 1;
      let slips = Math.min((before[j] ?? 9) + 1, (row[j - 1] ?? 9) + 1, (before[j - 1] ?? 9) + differs);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1])
        slips = Math.min(slips, (twoBack[j - 2] ?? 9) + 1);
      row.push(slips);
      least = Math.min(least, slips);
    }
    if (least > 2) return 3;
    twoBack = before;
    before = row;
  }
  return Math.min(before[b.length] ?? 3, 3);
}

/** A rough sound: consonants that are spelt in several ways made one, vowels after the first left out. */
function soundOf(word: string): string {
  const plain = word
    .replace(/ph/g, 'f')
    .replace(/gh/g, '')
    .replace(/^kn/, 'n')
    .replace(/^wr/, 'r')
    .replace(/^wh/, 'w')
    .replace(/sc(?=[eiy])|c(?=[eiy])/g, 's')
    .replace(/ck|c|q/g, 'k')
    .replace(/z/g, 's')
    .replace(/x/g, 'ks')
    .replace(/dg|j/g, 'g');
  const [first = '', ...rest] = plain;
  return (
    first +
    rest
      .filter((letter) => !/[aeiouyhw]/.test(letter))
      .join('')
      .replace(/(.)\1+/g, '$1')
  );
}
