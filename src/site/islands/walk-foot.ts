/** The buttons under a question. They stay the same ones from question to question, so that the page is laid out sooner. */
import { button } from './element.ts';

export interface FootActions {
  skip(): void;
  back(): void;
  startAgain(): void;
  toJobCard(): void;
}

export class WalkFoot {
  private readonly skip: HTMLButtonElement;
  /** What there is to do once an answer is given. */
  private readonly rest: HTMLButtonElement[];
  private readonly send: HTMLButtonElement;

  constructor(place: HTMLElement, actions: FootActions) {
    this.skip = button('Can’t test that now', () => actions.skip());
    this.send = button('', () => this.copyAddress(), 'quiet');
    this.rest = [
      button('Back', () => actions.back(), 'quiet'),
      button('Start again', () => actions.startAgain(), 'quiet'),
      this.send,
      button('Print', () => window.print(), 'quiet'),
      button('To the job card', () => actions.toJobCard(), 'quiet'),
    ];
    place.replaceChildren(this.skip, ...this.rest);
  }

  show({ isTest, isAnswered }: { isTest: boolean; isAnswered: boolean }): void {
    this.skip.hidden = !isTest;
    for (const each of this.rest) each.hidden = !isAnswered;
    this.send.textContent = 'Copy the address';
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
