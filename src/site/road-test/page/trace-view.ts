/** A judged log as a page: verdict, chart, table, the regulation's measure. Text stays text. */
import type { Habit } from '../../../model/habit.ts';
import { eventsOf, type TraceEvent } from '../../../trace/events.ts';
import type { TraceJudgement } from '../../../trace/judge-trace.ts';
import {
  clockText,
  degrees,
  eventText,
  figureText,
  monitorText,
  stopText,
  type VerdictText,
} from '../../../trace/say.ts';
import type { TraceVehicle } from '../../../trace/vehicle.ts';
import { button, element } from '../../browser/element.ts';
import { drawTrace, secondsAt, type TraceChart } from '../../drawings/trace-chart.ts';
import type { TraceNames } from '../trace-names.ts';

/** The verdict: sentence, reason, next step, walk and causes it leads to. */
export function verdictPart(
  { verdict }: TraceJudgement,
  told: VerdictText,
  names: TraceNames,
  root: URL,
): HTMLElement[] {
  const walk = verdict.symptom;
  const walkTitle = walk === undefined ? undefined : names.symptoms[walk];
  const answers = verdict.outcomes.map(({ test, outcome }) => `${test}=${outcome}`).join('&');
  return [
    element(
      'p',
      { class: `answer-sentence${verdict.stop ? ' stop' : ''}`, role: 'status', tabindex: '-1' },
      told.sentence,
    ),
    element('p', {}, told.because),
    element('p', {}, element('b', {}, 'Next: '), told.next),
    ...(walkTitle !== undefined
      ? [
          element(
            'p',
            {},
            element(
              'a',
              {
                class: 'button main',
                href: new URL(`symptoms/${walk}.html${answers === '' ? '' : `#${answers}`}`, root).href,
              },
              `Continue the walk: ${walkTitle}`,
            ),
          ),
        ]
      : []),
    ...(verdict.outcomes.length > 0
      ? [
          element('h3', {}, 'What it answers'),
          element(
            'ul',
            {},
            ...verdict.outcomes.map(({ test, outcome }) =>
              element(
                'li',
                {},
                recordLink(new URL(`tests/${test}.html`, root), test, names.tests[test]),
                `: ${names.outcomes[`${test} ${outcome}`] ?? outcome}`,
              ),
            ),
          ),
        ]
      : []),
    ...(verdict.causes.length > 0
      ? [
          element('h3', {}, 'What can be behind it'),
          element(
            'ul',
            {},
            ...verdict.causes.map((cause) =>
              element(
                'li',
                {},
                recordLink(new URL(`causes/${cause}.html`, root), cause, names.causes[cause]),
              ),
            ),
          ),
        ]
      : []),
    ...(told.open.length > 0
      ? [
          element('h3', {}, 'What this log leaves open'),
          element('ul', {}, ...told.open.map((each) => element('li', {}, each))),
        ]
      : []),
  ];
}

/** A shop's shelf need not hold what a verdict points to: then its id stands there as words. */
function recordLink(address: URL, id: string, title: string | undefined): HTMLElement {
  return title === undefined
    ? element('span', {}, id.replaceAll('-', ' '))
    : element('a', { href: address.href }, title);
}

/** Kinds that get their number on the line; the others stand in the table only. */
const MARKED: ReadonlySet<TraceEvent['kind']> = new Set([
  'opens',
  'pause',
  'at speed',
  'standing',
  'fan on',
  'fan off',
  'highest',
  'heat soak',
  'sensor fault',
]);

/** The chart with its buttons for closer, wider, earlier and later. */
export class ChartPart {
  readonly root: HTMLElement;
  private readonly figure = element('div', { class: 'chart' });
  private readonly buttons: HTMLElement;
  private readonly chart: Omit<TraceChart, 'from' | 'to' | 'narrow'>;
  private readonly end: number;
  private from = 0;
  private to: number;
  private readonly narrow = window.matchMedia('(max-width: 44rem)');

  constructor(judged: TraceJudgement, vehicle: TraceVehicle, told: VerdictText, habit: Habit) {
    this.end = Math.max(1, (judged.grid.length - 1) * judged.grid.step);
    this.to = this.end;
    const events = eventsOf(judged, vehicle);
    this.chart = {
      id: 'trace-chart',
      title: `Coolant temperature on this road test${vehicle.title ? `, ${vehicle.title}` : ''}`,
      description: `${told.sentence} ${told.because} The same facts stand in the table below.`,
      judged,
      vehicle,
      // The table's numbers: unmarked rows keep their place.
      events: events.map((event) => (MARKED.has(event.kind) ? event : { ...event, kelvin: Number.NaN })),
      habit,
    };
    this.buttons = element(
      'div',
      { class: 'zoom no-print', role: 'group', 'aria-label': 'Part of the log shown' },
      button('Zoom in', () => this.zoom(0.5)),
      button('Zoom out', () => this.zoom(2)),
      button('Earlier', () => this.move(-0.5)),
      button('Later', () => this.move(0.5)),
      button('Whole log', () => this.show(0, this.end)),
    );
    const stop = ` Stop is ${figureText(vehicle.stopAt, habit)}, ${stopText(vehicle, habit)}.`;
    const legend = element(
      'p',
      { class: 'soft' },
      (judged.band
        ? 'Line: the log. Shaded: what a sound engine of this kind would have read on this drive and this day. Thin bar: fan. Foot: road speed. Numbers: rows of the table.'
        : 'Line: the log. Thin bar: fan. Foot: road speed. Numbers: rows of the table. No band is shaded: road speed or the temperature outside is not known.') +
        stop,
    );
    this.root = element('div', {}, this.figure, legend, this.buttons, eventTable(events, habit));
    this.narrow.addEventListener('change', () => this.draw());
    this.listen();
    this.draw();
  }

  private show(from: number, to: number): void {
    const span = Math.min(this.end, Math.max(20, to - from));
    this.from = Math.max(0, Math.min(this.end - span, from));
    this.to = this.from + span;
    this.draw();
  }

  private zoom(by: number): void {
    const middle = (this.from + this.to) / 2;
    const half = ((this.to - this.from) * by) / 2;
    this.show(middle - half, middle + half);
  }

  private move(by: number): void {
    const span = this.to - this.from;
    this.show(this.from + by * span, this.to + by * span);
  }

  private draw(): void {
    this.figure.innerHTML = drawTrace({
      ...this.chart,
      from: this.from,
      to: this.to,
      narrow: this.narrow.matches,
    });
  }

  /** Drawing a finger or mouse across the chart shows that part. */
  private listen(): void {
    let start: number | undefined;
    const share = (event: PointerEvent) => {
      const { left, width } = this.figure.getBoundingClientRect();
      return (event.clientX - left) / width;
    };
    this.figure.addEventListener('pointerdown', (event) => {
      if (event.pointerType === 'mouse') start = share(event);
    });
    this.figure.addEventListener('pointerup', (event) => {
      const end = share(event);
      if (start === undefined || Math.abs(end - start) < 0.03) return;
      const [a, b] = [Math.min(start, end), Math.max(start, end)];
      start = undefined;
      const shown = { from: this.from, to: this.to };
      this.show(secondsAt(a, shown, this.narrow.matches), secondsAt(b, shown, this.narrow.matches));
    });
  }
}

function eventTable(events: readonly TraceEvent[], habit: Habit): HTMLElement {
  const rows = events.map((event, index) =>
    element(
      'tr',
      {},
      element('td', {}, String(index + 1)),
      element('td', {}, clockText(event.at)),
      element('th', { scope: 'row' }, eventText(event, habit)),
      element('td', { class: 'figure' }, degrees(event.kelvin, habit)),
    ),
  );
  return element(
    'div',
    { class: 'scroll', role: 'region', 'aria-label': 'What happened, in order', tabindex: '0' },
    element(
      'table',
      { class: 'trace-events' },
      element(
        'thead',
        {},
        element(
          'tr',
          {},
          ...['No.', 'Time', 'What', 'Coolant'].map((text) => element('th', { scope: 'col' }, text)),
        ),
      ),
      element('tbody', {}, ...rows),
    ),
  );
}

/** The regulation’s measure; nothing where it says nothing of this log. */
export function monitorPart(judged: TraceJudgement, vehicle: TraceVehicle, habit: Habit): HTMLElement[] {
  const text = monitorText(judged, vehicle, habit);
  if (text === undefined) return [];
  return [
    element('h2', {}, 'The regulation’s own measure'),
    element('p', {}, text),
    element(
      'p',
      { class: 'soft' },
      'California Code of Regulations, title 13, section 1968.2 (e)(10.2.1), thermostat monitor, quoted from memory: read the current text before relying on it. A trouble code for the thermostat is set by it; a thermostat can be out of order long before.',
    ),
  ];
}
