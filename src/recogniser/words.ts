/** A sentence as clauses of words: what is said together is read together. */

export interface Word {
  /** As typed, for showing it again. */
  said: string;
  /** Lower case, without apostrophes: “Won’t” is “wont”. */
  word: string;
}

/** One thought ends and another begins at these; the word itself opens the new clause, for it tells something. */
const OPENERS = new Set(
  'but and when if while until till then because so although though whenever unless yet once except'.split(
    ' ',
  ),
);

/** Shared with the index: letters, figures and signs that belong to a word. */
const WORD = /[\p{L}\p{N}]+(?:['’‘`][\p{L}]+)*/gu;

/** P 0128, p-0128: letter, first digit 0 to 3, three more (the form of SAE J2012, from memory). */
const CODE = /\b([pbcu])[\s.-]{0,2}([0-3][0-9a-f]{3})\b/gi;

/**
 * The clauses of a text, each a list of words.
 * @param text a customer's sentence, a title, a few words
 */
export function clausesOf(text: string): Word[][] {
  const clauses: Word[][] = [];
  for (const part of text
    .normalize('NFC')
    .replace(CODE, '$1$2')
    .split(/[.,;:!?()\n]+|\s[-–—]+\s/u)) {
    let clause: Word[] = [];
    for (const [said] of part.matchAll(WORD)) {
      const word = said.toLowerCase().replace(/['’‘`]/g, '');
      if (OPENERS.has(word) && clause.length > 0) {
        clauses.push(clause);
        clause = [];
      }
      clause.push({ said, word });
    }
    if (clause.length > 0) clauses.push(clause);
  }
  return clauses;
}

/** Units and the like, which stand beside a figure. */
const UNITS =
  'bar psi kpa mbar nm mm ml kw kwh ohm ohms volt volts amp amps km kg deg degree degrees celsius fahrenheit';

const SMALL = new Set(
  `${UNITS} a about after again all also always am an and any are as at away be because been before being but by can could did do does doing
   done down even ever every for from get gets getting go goes going got had has have he her here him his how i if im in into is it
   its ive just like lot me more most much my now of off on once one only or our out over own per quite really said same say says see
   seems she since so some still such than that thats the their them then there these they thing this those though through till to
   too up upon us very was we well went were what when where which while who why will with would yet you your`.split(
    /\s+/,
  ),
);

/** A word of grammar, a unit or a figure, which tells little by itself; a trouble code tells much. */
export function isSmall(word: string): boolean {
  return SMALL.has(word) || word.length === 1 || /^\d/.test(word);
}

const NEGATIONS = new Set(
  `not no never none nothing without cannot cant dont doesnt didnt wont isnt arent wasnt werent hasnt havent hadnt wouldnt couldnt
   shouldnt aint nor neither hardly barely`.split(/\s+/),
);

/** A word that turns what follows it round. */
export function isNegation(word: string): boolean {
  return NEGATIONS.has(word);
}
