/**
 * What has been answered in a walk, in the order it was answered, and how it is written into an address:
 * `level-cold=full&layout.thermostat=outlet+side&prove.coolant-low=not-it`.
 */
export type Answers = ReadonlyMap<string, string>;

/** The answer "can't do that now": the walk finds another way. */
export const SKIPPED = 'skipped';
export const PROVEN = 'proven';
export const NOT_IT = 'not-it';

/** Key of the answer where a part sits. */
export function layoutKey(feature: string): string {
  return `layout.${feature}`;
}

/** Key of the answer whether a cause is proven. */
export function proveKey(cause: string): string {
  return `prove.${cause}`;
}

/** @param value none takes the answer back; one that is given again comes last */
export function withAnswer(answers: Answers, key: string, value: string | undefined): Map<string, string> {
  const all = new Map(answers);
  all.delete(key);
  if (value !== undefined) all.set(key, value);
  return all;
}

/** Answers as the fragment of an address, without the #. */
export function writeAnswers(answers: Answers): string {
  return new URLSearchParams([...answers]).toString();
}

/**
 * Answers from the fragment of an address. What is not an answer is dropped: an address may be old, shortened by a
 * mail program or made up.
 * @param known whether a key and value belong to this walk
 */
export function readAnswers(
  fragment: string,
  known: (key: string, value: string) => boolean,
): Map<string, string> {
  const answers = new Map<string, string>();
  const text = fragment.replace(/^#/, '').slice(0, 4000);
  if (!text.includes('=')) return answers;
  for (const [key, value] of new URLSearchParams(text)) {
    if (known(key, value)) answers.set(key, value);
  }
  return answers;
}
