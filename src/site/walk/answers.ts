/**
 * What has been answered in a walk, in the order it was answered, and how it is written into an address:
 * `level-cold=full&layout.thermostat=outlet+side&prove.coolant-low=not-it&reading.level-cold=0.4+l`.
 */
export type Answers = ReadonlyMap<string, string>;

/** The answer "can't do that now": the walk finds another way. */
export const SKIPPED = 'skipped';
/** The answer "something else was seen": it moves nothing, and its words stay on the device. */
export const OTHER = 'something-else-seen';

/** Answers that are no finding: nothing was learnt by them. */
export function isNoFinding(value: string): boolean {
  return value === SKIPPED || value === OTHER;
}

/** Key of the answer where a part sits. */
export function layoutKey(feature: string): string {
  return `layout.${feature}`;
}

const TOLD = 'told.';

/** Key of what the customer answered at the counter: `told.hot-in-traffic.fan-heard`. Its value is the answer in words. */
export function toldKey(symptom: string, question: string): string {
  return `${TOLD}${symptom}.${question}`;
}

/** Whether a key holds what the customer answered; without its beginning it is the key on the job card. */
export function isToldKey(key: string): boolean {
  return key.startsWith(TOLD);
}

/** The key on the job card. */
export function toldOnCard(key: string): string {
  return key.slice(TOLD.length);
}

/** Characters of an answer, as the record limits it. */
export const TOLD_LENGTH = 60;

const READING = 'reading.';

/** Key of the reading that chose the answer of a test. */
export function readingKey(test: string): string {
  return `${READING}${test}`;
}

/** Whether a key holds a reading, which goes with the answer of its test. */
export function isReadingKey(key: string): boolean {
  return key.startsWith(READING);
}

/** The longest reading kept: a number with its unit. */
export const READING_LENGTH = 24;

/**
 * @param value none takes the answer back; one that is given again comes last
 * @param reading what was read, where it chose the answer
 */
export function withAnswer(
  answers: Answers,
  key: string,
  value: string | undefined,
  reading?: string,
): Map<string, string> {
  const all = new Map(answers);
  all.delete(key);
  all.delete(readingKey(key));
  if (value !== undefined) all.set(key, value);
  if (value !== undefined && reading !== undefined) all.set(readingKey(key), reading);
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
  for (const key of answers.keys())
    if (isReadingKey(key) && !answers.has(key.slice(READING.length))) answers.delete(key);
  return answers;
}
