/** Every name under which the site keeps something on a device. Scripts need only the types, so the list weighs nothing in a page. */

/** One thing each, in the small storage. */
export const SINGLE_NAMES = [
  'units',
  'colours',
  'vehicle',
  'tools-missing',
  'job-open',
  'job-typed',
  'came-from',
  'practice',
  'timers',
] as const;

/**
 * Things of one kind each: a name starts so and ends with the id of a complaint, a card, a note, a vehicle. Cards and notes lie
 * in the database, and where a browser has none, in the small storage.
 */
export const NAME_STARTS = ['walk.', 'seen.', 'own.', 'job.', 'note.', 'proof.'] as const;

/** What lies in the database only where there is one: pictures are too large for the small storage. */
export const DATABASE_STARTS = ['job.', 'note.', 'picture.', 'vehicle-draft.'] as const;

export type NameStart = (typeof NAME_STARTS)[number];
export type DatabaseStart = (typeof DATABASE_STARTS)[number];
export type DatabaseName = `${DatabaseStart}${string}` | 'probe';

/** `probe` only tries whether anything can be kept, and is gone at once. */
export type KeptName = (typeof SINGLE_NAMES)[number] | `${NameStart | DatabaseStart}${string}` | 'probe';
