/** What was removed can be brought back: a line in its place says what it was, as long as nothing else is removed. */
import { button, element } from '../../browser/element.ts';

export interface RemovedLine {
  /** Where its line stands. */
  place: string;
  words: string;
  back: () => Promise<unknown>;
}

/** The line, with the way back in it. */
export function undoLine({ words, back }: RemovedLine, done: () => void): HTMLElement {
  const undo = button('Undo', async () => {
    done();
    await back();
  });
  undo.setAttribute('aria-label', `Undo: ${words}`);
  return element('li', { class: 'undone', role: 'status' }, element('span', {}, words), undo);
}
