/**
 * The questions an answer may lead to are put into the page and laid out, out of sight, while the reader still reads the one
 * before them: a slow phone then shows the next at once.
 */
import type { WalkParts } from './walk-parts.ts';

const inSpareTime: (work: () => void) => void =
  'requestIdleCallback' in window ? (work) => requestIdleCallback(work) : (work) => setTimeout(work, 50);

export class NextQuestions {
  private readonly parts: WalkParts;
  private readonly ready = new Set<HTMLElement>();
  private waiting: string[] = [];

  constructor(parts: WalkParts) {
    this.parts = parts;
  }

  /** @param names of the sections, as WalkParts knows them; those of the question before are let go */
  prepare(names: Iterable<string>): void {
    const isAtWork = this.waiting.length > 0;
    this.waiting = [...new Set(names)];
    for (const section of this.ready) section.removeAttribute('data-soon');
    this.ready.clear();
    if (!isAtWork) this.goOn();
  }

  /** One at a time, so that a touch meanwhile waits for one only. */
  private goOn(): void {
    if (this.waiting.length > 0) inSpareTime(() => this.prepareOne());
  }

  private prepareOne(): void {
    const name = this.waiting.shift();
    const section = name === undefined ? undefined : this.parts.section(name);
    if (section instanceof HTMLElement) {
      section.setAttribute('data-soon', '');
      this.ready.add(section);
      // Reading a size makes the browser lay it out now instead of with the answer.
      section.getBoundingClientRect();
    }
    this.goOn();
  }
}
