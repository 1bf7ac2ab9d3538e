/** Known so far: every finding of the complaint, tapped in any order; and the tools that are not at hand. Fetched when it is opened. */

import { type KnownLayout, layoutAllows } from '../../model/layout.ts';
import type { Answers } from '../walk/answers.ts';
import type { WalkData, WalkTexts } from '../walk/walk-data.ts';
import '../browser/page-globals.ts';
import { button, element } from '../browser/element.ts';
import type { KnownListener, KnownNow } from '../walk/known-list.ts';

/** In the order of a morning: cold first, what has to come apart last. */
const GROUPS = [
  ['cold', 'Engine cold'],
  ['any', 'Cold or warm'],
  ['warm', 'Engine warm or running'],
  ['electrical', 'Electrical'],
  ['opened', 'Opened or taken off'],
] as const;
type Group = (typeof GROUPS)[number][0];

/** One finding with its outcomes. */
interface Row {
  root: HTMLElement;
  taps: Map<string, HTMLButtonElement>;
  says: HTMLElement;
}

class KnownSoFar {
  private readonly data: WalkData;
  private readonly texts: WalkTexts;
  private readonly listener: KnownListener;
  private readonly say: (text: string) => string;
  private readonly places: { rows: HTMLElement; tools: HTMLElement };
  private answers: Answers = new Map();
  private missing: ReadonlySet<string> = new Set();
  private layout: KnownLayout = {};
  private readonly rows = new Map<string, Row>();
  private readonly groups: HTMLElement[] = [];
  /** Where questions and answers stand, with their text as written. */
  private readonly written: { part: Node; text: string }[] = [];
  private readonly ticks = new Map<string, HTMLInputElement>();
  /** The finding that was tapped last: what it comes to is said at it, where the finger is. */
  private tapped: string | undefined;

  /**
   * @param say writes the vehicle's figures into a question or an answer
   * @param places of the findings and of the tools
   */
  constructor(
    data: WalkData,
    texts: WalkTexts,
    listener: KnownListener,
    say: (text: string) => string,
    places: { rows: HTMLElement; tools: HTMLElement },
  ) {
    this.data = data;
    this.texts = texts;
    this.listener = listener;
    this.say = say;
    this.places = places;
    this.build();
    document.addEventListener('headertank:change', () => this.write());
  }

  private build(): void {
    const { data, texts } = this;
    const tests = data.model.tests
      .filter(({ id }) => texts.outcomes[id])
      .sort((a, b) => a.minutes - b.minutes);
    for (const [group, heading] of GROUPS) {
      const rows = tests.filter((test) => this.groupOf(test) === group).map(({ id }) => this.row(id));
      if (rows.length === 0) continue;
      const section = element('section', {}, element('h3', {}, heading), ...rows);
      this.groups.push(section);
      this.places.rows.append(section);
    }
    const titleOf = (tool: string) => texts.tools[tool] ?? tool;
    const needed = [...new Set(tests.flatMap(({ id }) => data.tools[id] ?? []))].sort((a, b) =>
      titleOf(a).localeCompare(titleOf(b)),
    );
    this.places.tools.append(...needed.map((tool) => this.tick(tool, titleOf(tool))));
    this.write();
    this.mark();
  }

  private groupOf({ id, engine }: WalkData['model']['tests'][number]): Group {
    return this.texts.work[id] ?? engine ?? 'any';
  }

  private row(test: string): HTMLElement {
    const { texts } = this;
    const taps = new Map(
      Object.entries(texts.outcomes[test] ?? {}).map(([outcome, text]) => {
        const tap = button('', () => this.tap(test, outcome), 'tap');
        this.written.push({ part: tap, text });
        return [outcome, tap];
      }),
    );
    const question = element('span', {});
    this.written.push({ part: question, text: texts.questions[test] ?? test });
    const says = element('p', { class: 'known-says', role: 'status' });
    const name = `known-${test}`;
    const root = element(
      'div',
      { class: 'known-row', role: 'group', 'aria-labelledby': name },
      element('p', { id: name }, element('small', {}, texts.tests[test] ?? test), element('br'), question),
      element('div', { class: 'taps' }, ...taps.values()),
      says,
    );
    this.rows.set(test, { root, taps, says });
    return root;
  }

  /** A second tap on an answer takes it back. */
  private tap(test: string, outcome: string): void {
    this.tapped = test;
    this.listener.answer(test, this.answers.get(test) === outcome ? undefined : outcome);
  }

  private tick(tool: string, title: string): HTMLElement {
    const box = element('input', { type: 'checkbox', id: `missing-${tool}` });
    box.addEventListener('change', () =>
      this.listener.missing([...this.ticks].filter(([, each]) => each.checked).map(([id]) => id)),
    );
    this.ticks.set(tool, box);
    return element('label', { class: 'tick', for: `missing-${tool}` }, box, title);
  }

  /** Shows what is known now, and at the finding that was tapped what it comes to. */
  show({ answers, missing, layout, comesTo }: KnownNow): void {
    this.answers = answers;
    this.layout = layout;
    this.missing = missing;
    this.mark();
    for (const [test, { says }] of this.rows) {
      const text = test === this.tapped ? comesTo : '';
      if (says.textContent !== text) says.textContent = text;
    }
  }

  private write(): void {
    for (const { part, text } of this.written) part.textContent = this.say(text);
  }

  private mark(): void {
    for (const [test, { root, taps }] of this.rows) {
      const value = this.answers.get(test);
      for (const [outcome, tap] of taps) tap.ariaPressed = String(outcome === value);
      // An answer that was given stays in sight, to be taken back.
      root.hidden =
        !taps.has(value ?? '') &&
        test !== this.tapped &&
        !layoutAllows(this.data.testLayouts[test], this.layout);
    }
    for (const group of this.groups) group.hidden = !group.querySelector('.known-row:not([hidden])');
    for (const [tool, box] of this.ticks) box.checked = this.missing.has(tool);
  }
}

window.headertank.knownSoFar = (data, texts, listener, say, places) =>
  new KnownSoFar(data, texts, listener, say, places);
