/** The buttons at steps that have a wait: each starts its timer, shows what is left of it, and stops it. */
import { element } from '../../browser/element.ts';
import { clockText, isDue, lengthText, type Timer, timeLeft } from '../timers.ts';

/** As much of the step as stands in one line. */
const WORDS = 90;

/** What a timer started here is for, and where it is. */
export function aboutWait(start: HTMLElement, root: URL): Pick<Timer, 'title' | 'step' | 'from'> {
  const part = start.closest('.step') ?? document;
  const words = start.closest('li')?.querySelector('p:not(.soft, .caution)')?.textContent?.trim() ?? '';
  const { pathname, hash } = location;
  const page = decodeURI(pathname).slice(decodeURI(root.pathname).length);
  return {
    title: part.querySelector('h3[tabindex], h1')?.textContent?.trim() ?? document.title,
    step: words.length > WORDS ? `${words.slice(0, WORDS).replace(/\s+\S*$/, '')} …` : words,
    from: (page === '' ? 'index.html' : page) + (start.id === '' ? hash : `#${start.id}`),
  };
}

/** A step's timer is found again by what it is for: it may be shown in the walk and on a page of its own. */
export function timerOf(start: HTMLElement, all: readonly Timer[], root: URL): Timer | undefined {
  const { title, step } = aboutWait(start, root);
  return all.find((each) => each.title === title && each.step === step);
}

/** Shows at each step that waits whether its timer runs, and how long it has left. */
export function showWaits(all: readonly Timer[], root: URL, now: number): void {
  for (const start of document.querySelectorAll<HTMLElement>('[data-wait]')) {
    const timer = timerOf(start, all, root);
    const running = timer && !isDue(timer, now) ? timer : undefined;
    const clock = start.querySelector('.clock');
    if (running && clock) clock.textContent = clockText(timeLeft(running, now));
    else if (running)
      start.replaceChildren(
        'Stop ',
        element('span', { class: 'clock', 'aria-hidden': 'true' }, clockText(timeLeft(running, now))),
      );
    else if (clock) start.replaceChildren(`Start ${lengthText(Number(start.dataset.wait))}`);
  }
}
