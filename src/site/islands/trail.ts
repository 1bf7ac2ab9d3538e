/**
 * The answers so far, a line each. Those that the next answer may add stand in the list already, laid out and out of sight, while
 * the reader still reads: a slow phone then only has to show one.
 */
import { element } from './element.ts';

/** The list of answers so far. */
export class Trail {
  readonly root = element('ol', { class: 'trail', 'aria-label': 'Answers so far' });

  /** @param lines in the order in which they were given */
  show(lines: readonly HTMLElement[]): void {
    const there = [...this.root.children].filter((line) => lines.some((own) => own === line));
    if (lines.some((line, at) => there[at] !== line)) this.root.append(...lines);
    for (const line of this.root.children) line.ariaHidden = hiddenUnless(lines.some((own) => own === line));
    this.root.ariaHidden = hiddenUnless(lines.length > 0);
  }

  /** @param lines that may be shown next, whether they are shown now or not. Other hidden ones go from the page */
  prepare(lines: readonly HTMLElement[]): void {
    for (const line of this.root.querySelectorAll(':scope > [aria-hidden]')) line.remove();
    for (const line of lines) {
      if (line.isConnected) continue;
      line.ariaHidden = hiddenUnless(false);
      this.root.append(line);
      // Reading the size of what is in it makes the browser lay it out now instead of with the answer.
      line.firstElementChild?.getBoundingClientRect();
    }
  }
}

const hiddenUnless = (isShown: boolean) => (isShown ? null : 'true');
