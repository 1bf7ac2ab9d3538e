/** The buttons under a question. They stay the same ones from question to question, so that the page is laid out sooner. */
import { button, element } from '../../browser/element.ts';

export interface FootActions {
  skip(): void;
  other(): void;
  back(): void;
  startAgain(): void;
  toJobCard(): void;
}

/** The buttons under a question or a result. */
export class WalkFoot {
  private readonly skip: HTMLButtonElement;
  private readonly other: HTMLButtonElement;
  private readonly back: HTMLButtonElement;
  private readonly send: HTMLButtonElement;
  private readonly toJobCard: HTMLButtonElement;
  /** What there is to do once an answer is given. */
  private readonly rest: HTMLElement;
  /** Stays within reach of the thumb on a phone. */
  private readonly reach: HTMLElement;
  private onCard: HTMLElement | undefined;

  constructor(place: HTMLElement, actions: FootActions) {
    this.skip = button('Can’t test that now', () => actions.skip());
    this.other = button('Something else was seen', () => actions.other(), 'quiet walk-other');
    this.back = button('Back', () => actions.back(), 'quiet');
    this.send = button('', () => this.copyAddress(), 'quiet');
    this.toJobCard = button('To the job card', () => actions.toJobCard());
    this.reach = element(
      'div',
      { class: 'walk-reach' },
      element('p', { class: 'walk-line', 'aria-live': 'polite' }),
      this.back,
      this.skip,
    );
    this.rest = element(
      'div',
      { class: 'walk-rest' },
      this.toJobCard,
      button('Start again', () => actions.startAgain(), 'quiet'),
      this.send,
      button('Print', () => window.print(), 'quiet'),
    );
    place.replaceChildren(this.other, this.reach, this.rest);
  }

  show({ isTest, isAnswered, isProven }: { isTest: boolean; isAnswered: boolean; isProven: boolean }): void {
    this.onCard?.remove();
    this.skip.hidden = !isTest;
    this.other.hidden = !isTest;
    this.back.hidden = !isAnswered;
    this.rest.hidden = !isAnswered;
    this.reach.hidden = !isTest && !isAnswered;
    this.toJobCard.className = isProven ? 'main' : 'quiet';
    // What comes next stands where the thumb is.
    const place = isProven ? this.reach : this.rest;
    if (this.toJobCard.parentElement !== place) place.prepend(this.toJobCard);
    this.send.textContent = 'Copy the address';
  }

  /** @param line what became of the answers; it stands with the button until the next answer, so that who pressed it sees it */
  sayOnCard(line: HTMLElement): void {
    this.onCard?.remove();
    this.onCard = line;
    line.classList.add('on-card');
    this.toJobCard.parentElement?.append(line);
  }

  private async copyAddress(): Promise<void> {
    try {
      await navigator.clipboard.writeText(location.href);
      this.send.textContent = 'Copied: it holds all answers';
    } catch {
      this.send.textContent = 'Copying is blocked here; take it from the address line';
    }
  }
}
