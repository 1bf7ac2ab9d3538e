/** What the recogniser learns from: the texts of one complaint, each with how much it counts. */

/** The texts of a symptom that somebody might say. Its summary is no one's words, and a sixth of all signs. */
export interface SymptomTexts {
  id: string;
  title: string;
  /** How often it comes in beside the others. */
  weight: number;
  /** As customers say it, shown on the page. */
  said: readonly string[];
  /** As customers say it, kept for the recogniser alone. */
  heard: readonly string[];
  /** As the trade calls it. */
  trade: readonly string[];
  /** With the usual misspellings. */
  slips: readonly string[];
  /** Trouble codes that go with it, such as p0128. */
  codes: readonly string[];
}

export type Field = 'title' | 'said' | 'heard' | 'trade' | 'slips' | 'codes';

/** What one text of each field counts. A code goes with several complaints. */
const WEIGHTS: Record<Field, number> = {
  title: 1.5,
  said: 1,
  heard: 1,
  trade: 1,
  slips: 1,
  codes: 0.5,
};

/** Fields whose texts are phrasings by themselves: what the proof leaves out in turn. */
const PHRASINGS: readonly Field[] = ['said', 'heard', 'trade', 'slips'];

export interface Phrasing {
  text: string;
  /** Column of its complaint. */
  column: number;
  field: Field;
  weight: number;
  isPhrasing: boolean;
}

/** All texts of all complaints, in their order. */
export function phrasingsOf(complaints: readonly SymptomTexts[]): Phrasing[] {
  return complaints.flatMap((told, column) => {
    const texts: Record<Field, readonly string[]> = {
      title: [told.title],
      said: told.said,
      heard: told.heard,
      trade: told.trade,
      slips: told.slips,
      codes: told.codes,
    };
    return FIELDS.flatMap((field) =>
      texts[field].map((text) => ({
        text,
        column,
        field,
        weight: WEIGHTS[field],
        isPhrasing: PHRASINGS.includes(field),
      })),
    );
  });
}

const FIELDS: readonly Field[] = ['title', 'said', 'heard', 'trade', 'slips', 'codes'];
