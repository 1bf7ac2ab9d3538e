/** One field asked at the terminal: a line, or one of several words. Nothing has an answer that stands there already. */
import { wordMeant } from '../model/word-aliases.ts';

/** Asks until nothing is wrong with the answer. */
export type Ask = (question: string, wrong: (answer: string) => string | undefined) => Promise<string>;

/** Somebody cannot say: the file then has it as still to write. */
export const OPEN = '-';

/**
 * @param fault what is wrong with a line, in words; undefined where nothing is
 * @returns the line, or undefined where it is left open
 */
export async function askText(
  question: string,
  ask: Ask,
  fault: (text: string) => string | undefined = () => undefined,
): Promise<string | undefined> {
  const answer = await ask(question, (typed) => {
    const text = typed.trim();
    if (text === '') return `Type it, or ${OPEN} to leave it open.`;
    return text === OPEN ? undefined : fault(text);
  });
  return answer.trim() === OPEN ? undefined : answer.trim();
}

export interface Choice {
  asks: string;
  words: readonly string[];
  /** What a word means, where it needs saying. */
  tell?: Readonly<Record<string, string>>;
  /** It cannot be left open. */
  must?: boolean;
}

/** @returns the word chosen by its number or itself, or undefined where it is left open */
export async function askChoice(
  { asks, words, tell = {}, must = false }: Choice,
  ask: Ask,
): Promise<string | undefined> {
  const widest = Math.max(...words.map((word) => word.length));
  const lines = words.map((word, at) => `  ${at + 1}  ${word.padEnd(widest)}  ${tell[word] ?? ''}`.trimEnd());
  const open = must ? '' : `, ${OPEN} if you cannot say`;
  const answer = await ask(`${asks}\n${lines.join('\n')}\nNumber or word${open}: `, (typed) =>
    (!must && typed.trim() === OPEN) || chosen(words, typed) !== undefined
      ? undefined
      : `Nothing is taken for granted here: a number from 1 to ${words.length}${must ? '' : `, or ${OPEN} to leave it open`}.`,
  );
  return chosen(words, answer);
}

function chosen(words: readonly string[], typed: string): string | undefined {
  const text = typed.trim();
  if (/^\d+$/.test(text)) return words[Number(text) - 1] ?? words.find((word) => word === text);
  return words.includes(text) ? text : wordMeant(text, words);
}
