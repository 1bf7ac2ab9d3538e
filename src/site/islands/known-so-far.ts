/** Known so far: every finding of the complaint, ticked in any order; and the tools that are not at hand. Fetched when it is opened. */

import { type KnownLayout, layoutAllows } from '../../model/layout.ts';
import type { Answers } from '../walk/answers.ts';
import { SKIPPED } from '../walk/answers.ts';
import type { WalkData } from '../walk/walk-data.ts';
import '../browser/page-globals.ts';
import { element } from '../browser/element.ts';
import type { KnownListener } from '../walk/known-list.ts';

/** In the order of a morning: cold first, what has to come apart last. */
const GROUPS = [
  ['cold', 'Engine cold'],
  ['any', 'Cold or warm'],
  ['warm', 'Engine warm or running'],
  ['electrical', 'Electrical'],
  ['opened', 'Opened or taken off'],
] as const;
type Group = (typeof GROUPS)[number][0];

class KnownSoFar {
  private readonly data: WalkData;
  private readonly listener: KnownListener;
  private readonly say: (text: string) => string;
  private readonly rows: HTMLElement;
  private readonly tools: HTMLElement;
  private answers: Answers = new Map();
  private missing: ReadonlySet<string> = new Set();
  private layout: KnownLayout = {};
  private readonly choices = new Map<string, HTMLSelectElement>();
  private readonly groups: HTMLElement[] = [];
  /** Where questions and answers stand, with their text as written. */
  private readonly texts: { part: Node; text: string }[] = [];
  private readonly ticks = new Map<string, HTMLInputElement>();

  /**
   * @param say writes the vehicle's figures into a question or an answer
   * @param places of the findings and of the tools
   */
  constructor(
    data: WalkData,
    listener: KnownListener,
    say: (text: string) => string,
    places: { rows: HTMLElement; tools: HTMLElement },
  ) {
    this.data = data;
    this.listener = listener;
    this.say = say;
    this.rows = places.rows;
    this.tools = places.tools;
    this.build();
    document.addEventListener('headertank:change', () => this.write());
  }

  private build(): void {
    const { model, tools, titles } = this.data;
    const tests = [...model.tests].sort((a, b) => a.minutes - b.minutes);
    for (const [group, heading] of GROUPS) {
      const rows = tests.filter((test) => this.groupOf(test) === group).map(({ id }) => this.row(id));
      if (rows.length === 0) continue;
      const section = element('section', {}, element('h3', {}, heading), ...rows);
      this.groups.push(section);
      this.rows.append(section);
    }
    const needed = [...new Set(tests.flatMap(({ id }) => tools[id] ?? []))].sort((a, b) =>
      (titles.tools[a] ?? a).localeCompare(titles.tools[b] ?? b),
    );
    this.tools.append(...needed.map((tool) => this.tick(tool)));
    this.write();
    this.mark();
  }

  private groupOf({ id, engine }: WalkData['model']['tests'][number]): Group {
    return this.data.work[id] ?? engine ?? 'any';
  }

  private row(test: string): HTMLElement {
    const { titles } = this.data;
    const choice = element('select', { id: `known-${test}` });
    choice.append(new Option('not known', ''));
    for (const [outcome, text] of Object.entries(titles.outcomes[test] ?? {})) {
      const option = new Option('', outcome);
      choice.append(option);
      this.texts.push({ part: option, text });
    }
    choice.addEventListener('change', () =>
      this.listener.answer(test, choice.value === '' ? undefined : choice.value),
    );
    this.choices.set(test, choice);
    const question = element('span', {});
    this.texts.push({ part: question, text: titles.questions[test] ?? test });
    const label = element(
      'label',
      { for: `known-${test}` },
      element('small', {}, titles.tests[test] ?? test),
      element('br'),
      question,
    );
    return element('div', { class: 'known-row' }, label, choice);
  }

  private tick(tool: string): HTMLElement {
    const box = element('input', { type: 'checkbox', id: `missing-${tool}` });
    box.addEventListener('change', () =>
      this.listener.missing([...this.ticks].filter(([, each]) => each.checked).map(([id]) => id)),
    );
    this.ticks.set(tool, box);
    return element(
      'label',
      { class: 'tick', for: `missing-${tool}` },
      box,
      this.data.titles.tools[tool] ?? tool,
    );
  }

  /** @param layout what is known of the vehicle: tests it has no place for are not offered */
  show(answers: Answers, missing: ReadonlySet<string>, layout: KnownLayout): void {
    this.answers = answers;
    this.layout = layout;
    this.missing = missing;
    this.mark();
  }

  private write(): void {
    for (const { part, text } of this.texts) part.textContent = this.say(text);
  }

  private mark(): void {
    for (const [test, choice] of this.choices) {
      const value = this.answers.get(test);
      choice.value = value === undefined || value === SKIPPED ? '' : value;
      const row = choice.parentElement;
      // An answer that was given stays in sight, to be taken back.
      if (row) row.hidden = choice.value === '' && !layoutAllows(this.data.testLayouts[test], this.layout);
    }
    for (const group of this.groups) group.hidden = !group.querySelector('.known-row:not([hidden])');
    for (const [tool, box] of this.ticks) box.checked = this.missing.has(tool);
  }
}

window.headertank.knownSoFar = (data, listener, say, places) => new KnownSoFar(data, listener, say, places);
