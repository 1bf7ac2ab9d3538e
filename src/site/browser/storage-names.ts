/** Every name under which the site keeps something on a device. Scripts need only the types, so the list weighs nothing in a page. */

/** One thing each. */
export const SINGLE_NAMES = ['units', 'vehicle', 'tools-missing', 'job-open', 'came-from'] as const;

/** Things of one kind each: a name starts so and ends with the id of a complaint, a card, a note, a vehicle. */
export const NAME_STARTS = ['walk.', 'job.', 'note.', 'proof.'] as const;

export type NameStart = (typeof NAME_STARTS)[number];

/** `probe` only tries whether anything can be kept, and is gone at once. */
export type KeptName = (typeof SINGLE_NAMES)[number] | `${NameStart}${string}` | 'probe';
