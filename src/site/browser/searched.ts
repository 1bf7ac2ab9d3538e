/** The words somebody searched for: the customer's, if a card is opened for the call. They stay in this tab and in no address. */
import { prefix } from './storage.ts';

const name = () => `${prefix()}searched`;
/** Milliseconds after which the words are another call's. */
const LONGEST = 15 * 60_000;

/** Keeps what was searched for until a card is opened. */
export function keepSearched(text: string): void {
  try {
    sessionStorage.setItem(name(), JSON.stringify({ text: text.slice(0, 500), at: Date.now() }));
  } catch {
    // Then the words are typed once more.
  }
}

/** The words, once: the next card does not get them too. */
export function takeSearched(): string {
  try {
    const kept: unknown = JSON.parse(sessionStorage.getItem(name()) ?? 'null');
    sessionStorage.removeItem(name());
    if (typeof kept !== 'object' || kept === null || !('text' in kept) || !('at' in kept)) return '';
    const isFresh = typeof kept.at === 'number' && Date.now() - kept.at < LONGEST;
    return isFresh && typeof kept.text === 'string' ? kept.text : '';
  } catch {
    return '';
  }
}
