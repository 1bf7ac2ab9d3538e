/** A note as it is being written. */

/** The fields of the form, as they stand in it. */
export interface NoteDraft {
  id: string;
  changed: string;
  title: string;
  by: string;
  date: string;
  vehicle: string;
  symptom: string;
  cause: string;
  procedure: string;
  text: string;
  /** How it is known: `measured`, `manual`, `common practice` or `from memory`. */
  known: string;
  /** What was measured, or which book. */
  source: string;
  figure: string;
  is: string;
  'is-from': string;
  /** The moment it was handed over, or ''. */
  sent: string;
}

export type DraftField = Exclude<keyof NoteDraft, 'id' | 'changed' | 'sent'>;
