/** What worker and pages tell each other. */

export type FromWorker =
  | { kind: 'storing'; done: number; of: number }
  | { kind: 'stored' }
  | { kind: 'not-stored'; because: 'no-room' | 'cut-off' | 'changed'; file?: string };

export type FromPage = { kind: 'use-new-version' };
