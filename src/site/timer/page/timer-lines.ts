/** The timers of the device in the top of the page: what runs, what is over, what was just stopped. */
import '../../browser/page-globals.ts';
import { button, element } from '../../browser/element.ts';
import { timeText } from '../../text/day-and-time.ts';
import { clockText, isDue, lengthText, type Timer, timeLeft } from '../timers.ts';

interface Actions {
  stop(timer: Timer): void;
  putBack(timer: Timer): void;
}

/** A line for each timer at the top of the page, with its way back and its end. */
export class TimerLines {
  private readonly list = element('ul');
  /** Says aloud what has changed, and not the seconds. */
  private readonly says = element('p', { class: 'out-of-sight', role: 'alert' });
  private readonly note = element('p', { class: 'soft', hidden: true });
  readonly place = element(
    'section',
    { class: 'timers no-print', 'aria-label': 'Timers', hidden: true },
    this.says,
    this.list,
    this.note,
  );
  private shown = '';
  private clocks = new Map<string, HTMLElement>();
  private readonly actions: Actions;

  constructor(actions: Actions) {
    this.actions = actions;
  }

  /** @param stopped what can be put back, in the place where it stood */
  show(timers: readonly Timer[], stopped: Timer | undefined, now: number): void {
    // Lines stay the same elements as long as they say the same, so that the focus stays.
    const state = JSON.stringify([stopped?.id, ...timers.map((each) => [each.id, isDue(each, now)])]);
    if (state !== this.shown) {
      this.shown = state;
      const hadFocus = this.list.contains(document.activeElement);
      this.clocks = new Map();
      this.list.replaceChildren(
        ...timers.map((timer) => this.lineOf(timer, now)),
        ...(stopped ? [this.undoOf(stopped)] : []),
      );
      this.place.hidden = this.list.childElementCount === 0;
      const isOver = timers.some((timer) => isDue(timer, now));
      this.place.classList.toggle('over', isOver);
      document.documentElement.classList.toggle('timer-over', isOver);
      if (hadFocus) {
        const first = this.list.querySelector('button');
        (this.list.querySelector<HTMLElement>('.undone button') ?? first)?.focus();
      }
    }
    for (const timer of timers) {
      const clock = this.clocks.get(timer.id);
      if (clock) clock.textContent = clockText(timeLeft(timer, now));
    }
  }

  sayAloud(text: string): void {
    this.says.textContent = text;
  }

  /** What does not work here as it should; nothing where all does. */
  sayNote(text: string): void {
    this.note.hidden = text === '';
    if (this.note.textContent !== text) this.note.textContent = text;
  }

  private lineOf(timer: Timer, now: number): HTMLElement {
    const over = isDue(timer, now);
    const clock = element('b', { class: 'clock', role: 'timer' });
    if (!over) this.clocks.set(timer.id, clock);
    const length = lengthText(timer.length / 60_000);
    const press = button(over ? 'Done' : 'Stop', () => this.actions.stop(timer));
    press.setAttribute('aria-label', `${over ? 'Done' : 'Stop'}: ${timer.title}`);
    return element(
      'li',
      over ? { class: 'over' } : {},
      over ? element('b', {}, `${length} over at ${timeText(new Date(timer.ends))}`) : clock,
      element(
        'span',
        {},
        element('a', { href: new URL(timer.from, window.headertank.root).href }, timer.title),
        ` ${timer.step}`,
      ),
      press,
    );
  }

  private undoOf(timer: Timer): HTMLElement {
    const undo = button('Undo', () => this.actions.putBack(timer));
    undo.setAttribute('aria-label', `Undo: the timer of ${timer.title} runs on`);
    return element('li', { class: 'undone' }, element('span', {}, `Removed: ${timer.title}`), undo);
  }
}
