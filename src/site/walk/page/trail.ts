/** The answers so far, a line each. They stand under the question: each question then stands where the one before it stood. */

import { button, element } from '../../browser/element.ts';
import { OTHER } from '../answers.ts';
import type { OtherSeen } from './other-seen.ts';
import type { TrailEntry } from './replay.ts';
import type { WalkWords } from './walk-words.ts';

/** The list of answers so far. */
export class Trail {
  private readonly list = element('ol', { role: 'list' });
  private readonly words: WalkWords;
  private readonly other: OtherSeen;
  private readonly change: (key: string) => void;
  readonly root = element(
    'div',
    { class: 'trail', hidden: true },
    element('h3', {}, 'Answers so far'),
    this.list,
  );

  /** @param change takes an answer back, so that it is asked again */
  constructor(words: WalkWords, other: OtherSeen, change: (key: string) => void) {
    this.words = words;
    this.other = other;
    this.change = change;
  }

  /** @param entries in the order in which they were given; without any nothing is shown */
  show(entries: readonly TrailEntry[]): void {
    this.root.hidden = entries.length === 0;
    this.list.replaceChildren(...entries.map((entry) => this.line(entry)));
  }

  private line(entry: TrailEntry): HTMLElement {
    const { key, value, fromVehicle, reading } = entry;
    const asked = this.words.asked(key);
    const line = element(
      'li',
      {},
      element('span', { class: 'asked' }, asked),
      element('b', {}, this.words.answer(key, value)),
      ...(reading === undefined ? [] : [element('span', { class: 'reading' }, element('b', {}, reading))]),
    );
    const seen = value === OTHER ? this.other.words(key) : undefined;
    if (seen !== undefined)
      line.append(
        element('span', { class: 'seen-words' }, `“${seen}”`),
        element('a', { href: this.other.noteAddress(key, asked) }, 'Send it as a note'),
      );
    if (fromVehicle) line.append(element('small', {}, 'from the vehicle'));
    else {
      const change = button('Change', () => this.change(key), 'quiet');
      change.ariaLabel = `Change: ${asked}`;
      line.append(change);
    }
    return line;
  }
}
