/** Slips of the pen: which known word was meant. */

/** Shorter words have too many neighbours to be mended by guess. */
const SHORTEST = 4;
/** From here on two slips are mended although the words sound different. */
const LONG = 8;

/** Reads a misspelt word as the known one it was meant to be. */
export type Mender = (word: string) => string | undefined;

interface Candidate {
  word: string;
  letters: number;
  sound: string;
}

/**
 * One slip, or two in a long word or one that sounds the same. A slip is a letter too many, too few, another one, or two
 * that changed places. Codes and figures are never guessed at.
 * @param known most used first: of words equally near, one with the same first letter wins, then the most used
 */
export function mender(known: Iterable<string>): Mender {
  const byLength = new Map<number, Candidate[]>();
  for (const word of known) {
    if (word.length < SHORTEST - 1) continue;
    const candidate = { word, letters: lettersOf(word), sound: soundOf(word) };
    const alike = byLength.get(word.length);
    if (alike) alike.push(candidate);
    else byLength.set(word.length, [candidate]);
  }
  return (word) => {
    if (word.length < SHORTEST || /\d/.test(word)) return undefined;
    const letters = lettersOf(word);
    const sound = soundOf(word);
    let best: string | undefined;
    let bestRank = Number.POSITIVE_INFINITY;
    // Its own length first: of words equally near, one with a letter more or less is the less likely.
    for (const length of [0, -1, 1, -2, 2].map((more) => word.length + more))
      for (const candidate of byLength.get(length) ?? []) {
        // A slip puts in one letter and takes out one at most: most words are ruled out by that alone.
        if (bitsOf(letters ^ candidate.letters) > 4) continue;
        const rank = rankOf(word, sound, candidate);
        if (rank >= bestRank) continue;
        best = candidate.word;
        bestRank = rank;
      }
    return best;
  };
}

/** Less is nearer; infinite for a word that cannot be meant. */
function rankOf(word: string, sound: string, candidate: Candidate): number {
  const slips = slipsBetween(word, candidate.word);
  const same = candidate.sound === sound;
  if (slips > 2) return Number.POSITIVE_INFINITY;
  if (slips > 1 && !same && Math.min(word.length, candidate.word.length) < LONG)
    return Number.POSITIVE_INFINITY;
  return slips * 4 + (same ? 0 : 2) + (candidate.word[0] === word[0] ? 0 : 3);
}

/** Which letters a word has, a bit for each. */
function lettersOf(word: string): number {
  let letters = 0;
  for (let at = 0; at < word.length; at++) letters |= 1 << (word.charCodeAt(at) & 31);
  return letters;
}

function bitsOf(set: number): number {
  let count = 0;
  for (let left = set; left !== 0; left &= left - 1) count++;
  return count;
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
