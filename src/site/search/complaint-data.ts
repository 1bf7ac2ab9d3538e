/** What the search needs to answer with complaints at once: one script, data/complaints.js. */
import type { PackedKnowledge } from '../../recogniser/packed.ts';

/** A page, by its address from the site's top folder. */
export interface PageLink {
  kind: string;
  title: string;
  address: string;
}

/** What a caller waits for. */
export interface ComplaintCard {
  title: string;
  /** May it be driven in. */
  drive: 'yes' | 'short and watched' | 'no, stop';
  /** Whole minutes to book for finding the cause, on the commonest layout. */
  minutes: number;
}

/** The question that parts two complaints, with the answer that means each. */
export interface PartingQuestion {
  ask: string;
  answers: readonly { text: string; means: string }[];
}

export interface ComplaintData {
  knowledge: PackedKnowledge;
  /** By the symptom's id. */
  cards: Record<string, ComplaintCard>;
  questions: readonly PartingQuestion[];
  /** Pages of other kinds: their names are looked for whole. */
  pages: readonly PageLink[];
  /** Guides that somebody needs before any complaint, with what he says then. */
  guides: readonly { address: string; phrases: readonly string[] }[];
}
