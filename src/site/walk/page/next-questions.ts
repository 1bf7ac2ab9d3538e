/**
 * The questions an answer may lead to are put into the page and laid out, out of sight, while the reader still reads the one
 * before them: a slow phone then shows the next at once.
 */
import type { WalkParts } from './walk-parts.ts';

const inSpareTime: (work: () => void) => void =
  'requestIdleCallback' in window ? (work) => requestIdleCallback(work) : (work) => setTimeout(work, 50);

export interface NextQuestion {
  /** Of its section, as WalkParts knows it. */
  name: string;
  /** Makes it as it will be shown. */
  fit(section: HTMLElement): void;
}

/** Questions an answer may lead to, laid out ahead while nobody waits. */
export class NextQuestions {
  private readonly parts: WalkParts;
  private readonly ready = new Set<HTMLElement>();
  private waiting: NextQuestion[] = [];

  constructor(parts: WalkParts) {
    this.parts = parts;
  }

  /** @param questions one may come more than once: it is made ready as it comes first. Those of the question before are let go */
  prepare(questions: readonly NextQuestion[]): void {
    const isAtWork = this.waiting.length > 0;
    this.waiting = questions.filter(
      ({ name }, at) => questions.findIndex((other) => other.name === name) === at,
    );
    for (const section of this.ready) section.removeAttribute('data-soon');
    this.ready.clear();
    if (!isAtWork) this.goOn();
  }

  /** The question before is put out of sight, which costs less than taking it out of the page; Back shows it as soon. */
  setAside(section: HTMLElement): void {
    section.setAttribute('data-soon', '');
    this.ready.add(section);
  }

  /** One at a time, so that a touch meanwhile waits for one only. */
  private goOn(): void {
    if (this.waiting.length > 0) inSpareTime(() => this.prepareOne());
  }

  private prepareOne(): void {
    const question = this.waiting.shift();
    const section = question && this.parts.section(question.name);
    if (question && section instanceof HTMLElement) {
      question.fit(section);
      this.setAside(section);
      // Reading the size of what is in it makes the browser lay it out now instead of with the answer.
      section.firstElementChild?.getBoundingClientRect();
    }
    this.goOn();
  }
}
