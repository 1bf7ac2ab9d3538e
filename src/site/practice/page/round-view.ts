/** A case as it is played: the customer's words, the vehicle, the tests with their minutes, what they showed, and the cause to name. */
import '../../browser/page-globals.ts';
import { LAYOUT_FEATURES, LAYOUT_LABELS, type Layout } from '../../../model/layout.ts';
import { quantityText } from '../../../model/show-quantity.ts';
import { button, element } from '../../browser/element.ts';
import type { ShelfSheet } from '../../vehicle/vehicle-sheet.ts';
import type { WalkWords } from '../../walk/page/walk-words.ts';
import type { Bench } from './load.ts';
import { type Round, sum } from './round.ts';

/** What a round on the page needs. */
export interface RoundHost {
  bench: Bench;
  round: Round;
  vehicle: ShelfSheet;
  words: WalkWords;
  /** Of the complaint. */
  title: string;
  /** The simulated car knows the fault and can be shown. */
  moves: boolean;
  /** Tests done so far, in order; a test that was repeated stands twice. */
  tests: string[];
  /** Called after each test. */
  changed(): void;
  /** The cause that is named. */
  name(cause: string): void;
  leave(): void;
}

const GROUPS: readonly [work: string | undefined, name: string][] = [
  [undefined, 'Look, feel, listen, scan tool'],
  ['electrical', 'With a meter'],
  ['opened', 'With something opened'],
];

const inWhole = (minutes: number) => `${Math.round(minutes)} min`;

/** The case on the page. */
export function roundView(host: RoundHost): HTMLElement {
  const { bench, round, vehicle } = host;
  const symptom = bench.pack.walk.symptom;
  const clock = element('div', { class: 'practice-clock' });
  const log = element('ol', { class: 'practice-log' });
  const naming = nameCause(host);
  const toNaming = button(
    'Name the cause',
    () => {
      naming.open = true;
      naming.querySelector('input')?.focus();
    },
    'quiet',
  );
  const spent = element('span', { role: 'status' });
  const rows = testRows(host, (test) => {
    host.tests.push(test);
    host.changed();
    show(true);
  });
  const view = element(
    'section',
    { class: 'practice-round', 'aria-labelledby': 'practice-said' },
    element('p', { class: 'kind' }, 'The customer says'),
    element('blockquote', { id: 'practice-said' }, round.car.said),
    element('p', {}, 'Booked in as: ', link(`symptoms/${symptom}.html`, host.title)),
    vehiclePart(vehicle, bench.pack.figures),
    clock,
    log,
    element('h2', {}, 'Tests'),
    rows.node,
    naming,
    element(
      'p',
      {},
      button('Leave this case', () => host.leave(), 'quiet'),
    ),
  );
  clock.append(spent, toNaming);
  show(false);
  return view;

  function show(isNew: boolean): void {
    const minutes = round.minutes(host.tests);
    const count = host.tests.length;
    spent.replaceChildren(
      element('b', {}, inWhole(sum(minutes))),
      ` used, ${count === 1 ? '1 test' : `${count} tests`} done`,
    );
    log.replaceChildren(...host.tests.map((test, at) => seenRow(host, test, minutes[at] ?? 0, at)));
    rows.show();
    const last = log.lastElementChild;
    if (isNew && last instanceof HTMLElement) {
      last.tabIndex = -1;
      last.focus({ preventScroll: true });
      last.scrollIntoView({ block: 'center' });
    }
  }
}

function link(href: string, text: string): HTMLAnchorElement {
  return element('a', { href: new URL(href, window.headertank.root).href }, text);
}

/** The vehicle with its figures and how its circuit is laid out. */
function vehiclePart(vehicle: ShelfSheet, labels: Readonly<Record<string, string>>): HTMLElement {
  const { habit } = window.headertank;
  const figures = Object.entries(vehicle.figures).filter(([path]) => Object.hasOwn(labels, path));
  const pair = (name: string, value: string) => [element('dt', {}, name), element('dd', {}, value)];
  const laidOut = (layout: Layout) =>
    LAYOUT_FEATURES.flatMap((feature) => {
      const value = layout[feature];
      return value === undefined || value === 'none' ? [] : pair(LAYOUT_LABELS[feature], value);
    });
  return element(
    'details',
    { class: 'practice-vehicle' },
    element('summary', {}, vehicle.title),
    element(
      'dl',
      {},
      ...figures.flatMap(([path, { quantity }]) => pair(labels[path] ?? path, quantityText(quantity, habit))),
    ),
    element('p', {}, element('b', {}, 'Layout')),
    element('dl', {}, ...laidOut(vehicle.layout)),
  );
}

/** What a test showed. */
export function seenRow(
  { bench, round, words }: Pick<RoundHost, 'bench' | 'round' | 'words'>,
  test: string,
  minutes: number,
  at: number,
): HTMLLIElement {
  const seen = round.seen(test);
  const measures = bench.pack.measures[test];
  // The simulated car names what it reads itself.
  const measured = measures === undefined || seen?.reading.includes(':') ? [] : [`${measures}: `];
  const label = seen ? words.answer(test, seen.outcome) : 'Nothing to be seen on this car.';
  return element(
    'li',
    { id: `seen-${at}` },
    element('b', {}, words.test(test)),
    ` ${inWhole(minutes)}`,
    element('br'),
    ...(seen && seen.reading !== ''
      ? [...measured, element('span', { class: 'practice-reading' }, seen.reading), element('br')]
      : []),
    label,
  );
}

function testRows(host: RoundHost, press: (test: string) => void): { node: HTMLElement; show(): void } {
  const { round, words, bench } = host;
  const filter = element('input', { id: 'practice-filter', type: 'search', autocomplete: 'off' });
  const rows = round.offered.map((test) => {
    const price = element('span', { class: 'price' });
    const choose = element('button', { type: 'button' }, element('b', {}, words.test(test)), price);
    choose.addEventListener('click', () => press(test));
    const tools = (bench.pack.walk.tools[test] ?? []).map((tool) => bench.texts.tools[tool] ?? tool);
    const asks = [words.asked(test), ...(tools.length > 0 ? [`Tools: ${tools.join(', ')}.`] : [])].join(' ');
    const row = element('li', {}, choose, element('small', {}, asks));
    return { test, row, price, said: `${words.test(test)} ${asks}`.toLowerCase() };
  });
  const groups = GROUPS.map(([work, name], at) => {
    const own = rows
      .filter(({ test }) => bench.texts.work[test] === work)
      .sort((a, b) => words.test(a.test).localeCompare(words.test(b.test), 'en'));
    const node = element(
      'details',
      { open: at === 0 },
      element('summary', {}, `${name} (${own.length})`),
      element('ul', { class: 'practice-tests' }, ...own.map(({ row }) => row)),
    );
    return { node, own };
  }).filter(({ own }) => own.length > 0);
  filter.addEventListener('input', () => {
    const wanted = filter.value.trim().toLowerCase();
    for (const { row, said } of rows) row.hidden = !said.includes(wanted);
    for (const { node, own } of groups) {
      node.hidden = own.every(({ row }) => row.hidden);
      if (wanted !== '') node.open = true;
    }
  });
  return {
    node: element(
      'div',
      {},
      element('label', { for: 'practice-filter' }, 'Find a test'),
      filter,
      ...groups.map(({ node }) => node),
    ),
    show() {
      for (const { test, price, row } of rows) {
        const isDone = host.tests.includes(test);
        row.classList.toggle('done', isDone);
        price.textContent = `${isDone ? 'again, ' : ''}${inWhole(round.minutesAfter(host.tests, test))}`;
      }
    },
  };
}

/** The cause, found by typing among those of the complaint. */
function nameCause({ round, words, name }: RoundHost): HTMLDetailsElement {
  const field = element('input', { id: 'practice-cause', type: 'search', autocomplete: 'off' });
  const list = element('ul', { class: 'practice-causes' });
  const says = element('p', { class: 'says', role: 'status' });
  const causes = round.causes
    .map((id) => ({ id, title: words.cause(id) }))
    .sort((a, b) => a.title.localeCompare(b.title, 'en'));
  const show = () => {
    const wanted = field.value.trim().toLowerCase().split(/\s+/);
    const found = causes.filter(({ title }) => wanted.every((word) => title.toLowerCase().includes(word)));
    list.replaceChildren(
      ...found.map(({ id, title }) =>
        element(
          'li',
          {},
          button(title, () => ask(id, title), 'quiet'),
        ),
      ),
    );
    says.textContent =
      found.length === 0 ? 'No cause of this complaint is called so.' : `${found.length} causes`;
  };
  const ask = (id: string, title: string) => {
    const sure = button(`I name it: ${title}`, () => name(id), 'main');
    list.replaceChildren(element('li', {}, sure), element('li', {}, button('Another one', show, 'quiet')));
    sure.focus();
  };
  field.addEventListener('input', show);
  const part = element(
    'details',
    { class: 'practice-name' },
    element('summary', {}, 'Name the cause'),
    element('label', { for: 'practice-cause' }, 'Search in the causes of this complaint'),
    field,
    says,
    list,
  );
  show();
  return part;
}
