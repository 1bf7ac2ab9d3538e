/** Known so far: every finding of the complaint, ticked in any order; and the tools that are not at hand. */
import type { Answers } from '../walk/answers.ts';
import { SKIPPED } from '../walk/answers.ts';
import type { WalkData } from '../walk/walk-data.ts';
import { element } from './element.ts';

interface Listener {
  answer(test: string, outcome: string | undefined): void;
  missing(tools: string[]): void;
}

export class KnownSoFar {
  readonly root: HTMLElement;
  private readonly choices = new Map<string, HTMLSelectElement>();
  /** Where questions and answers stand, with their text as written. */
  private readonly texts: { part: Node; text: string }[] = [];
  private readonly ticks = new Map<string, HTMLInputElement>();

  constructor(data: WalkData, listener: Listener) {
    const tests = [...data.model.tests].sort((a, b) => a.minutes - b.minutes);
    const rows = tests.map(({ id }) => this.row(id, data, listener));
    const tools = [...new Set(tests.flatMap(({ id }) => data.tools[id] ?? []))].sort((a, b) =>
      (data.titles.tools[a] ?? a).localeCompare(data.titles.tools[b] ?? b),
    );
    const ticks = tools.map((tool) => this.tick(tool, data, listener));
    this.root = element(
      'div',
      { class: 'known no-print' },
      element(
        'details',
        {},
        element('summary', {}, 'Known so far: tick findings in any order'),
        element('div', { class: 'known-rows' }, ...rows),
      ),
      element(
        'details',
        {},
        element('summary', {}, 'Tools not at hand'),
        element(
          'p',
          { class: 'soft' },
          'The walk finds another way round tests that need them. Kept on this device.',
        ),
        element('div', { class: 'known-tools' }, ...ticks),
      ),
    );
  }

  private row(test: string, data: WalkData, listener: Listener): HTMLElement {
    const choice = element('select', { id: `known-${test}` });
    choice.append(new Option('not known', ''));
    for (const [outcome, text] of Object.entries(data.titles.outcomes[test] ?? {})) {
      const option = new Option('', outcome);
      choice.append(option);
      this.texts.push({ part: option, text });
    }
    choice.addEventListener('change', () =>
      listener.answer(test, choice.value === '' ? undefined : choice.value),
    );
    this.choices.set(test, choice);
    const question = element('label', { for: `known-${test}` });
    this.texts.push({ part: question, text: data.titles.questions[test] ?? test });
    return element('div', { class: 'known-row' }, question, choice);
  }

  private tick(tool: string, data: WalkData, listener: Listener): HTMLElement {
    const box = element('input', { type: 'checkbox', id: `missing-${tool}` });
    box.addEventListener('change', () =>
      listener.missing([...this.ticks].filter(([, each]) => each.checked).map(([id]) => id)),
    );
    this.ticks.set(tool, box);
    return element('label', { class: 'tick', for: `missing-${tool}` }, box, data.titles.tools[tool] ?? tool);
  }

  /** @param say writes the vehicle's figures into a question or an answer */
  show(answers: Answers, missing: ReadonlySet<string>, say: (text: string) => string): void {
    for (const { part, text } of this.texts) part.textContent = say(text);
    for (const [test, choice] of this.choices) {
      const value = answers.get(test);
      choice.value = value === undefined || value === SKIPPED ? '' : value;
    }
    for (const [tool, box] of this.ticks) box.checked = missing.has(tool);
  }
}
