/** The proof run: milestones by hand or from the log, held against this vehicle, kept on the device, printed, put on the job card. */
import '../../browser/page-globals.ts';
import { readQuantity } from '../../../model/quantity.ts';
import { findUnit, fromSI } from '../../../model/units.ts';
import type { TraceJudgement } from '../../../trace/judge-trace.ts';
import {
  fromTrace,
  leftToDo,
  type Milestone,
  type MilestoneId,
  type MilestoneLine,
  type MilestoneResult,
  milestonesFor,
  passes,
  proofSentence,
  wantedText,
} from '../../../trace/proof.ts';
import { degrees } from '../../../trace/say.ts';
import { type TraceVehicle, traceVehicleOf } from '../../../trace/vehicle.ts';
import { button, element } from '../../browser/element.ts';
import { forget, keep, kept } from '../../browser/storage.ts';
import { handOver } from '../../job/page/hand-over-later.ts';

interface MilestoneAnswer {
  /** K, or one of the milestone's answers. */
  value: number | string;
  from: 'hand' | 'log';
}
type Answers = Partial<Record<MilestoneId, MilestoneAnswer>>;

const isAnswers = (value: unknown): value is Answers =>
  typeof value === 'object' &&
  value !== null &&
  Object.values(value).every(
    (each: unknown) =>
      typeof each === 'object' &&
      each !== null &&
      'value' in each &&
      (typeof each.value === 'number' || typeof each.value === 'string') &&
      'from' in each,
  );

/** What can be meant on a proof run, K: −40 to 150 °C. */
const COLDEST = 233;
const HOTTEST = 424;

const WORDS: Record<MilestoneResult, string> = { pass: 'Pass', fail: 'Fail', 'not done': 'To do' };

declare global {
  interface DocumentEventMap {
    /** A log has been judged on this page. */
    'headertank:trace': CustomEvent<TraceJudgement>;
  }
}

class ProofRun extends HTMLElement {
  private answers: Answers = {};
  private log: Partial<Record<MilestoneId, number>> = {};
  /** Figures the log was judged by: those of the vehicle, and what was typed of the car. */
  private judgedBy: TraceVehicle | undefined;

  connectedCallback() {
    document.addEventListener('headertank:change', () => {
      this.judgedBy = undefined;
      this.load();
    });
    document.addEventListener('headertank:trace', ({ detail }) => {
      this.log = fromTrace(detail, detail.vehicle);
      this.judgedBy = detail.vehicle;
      this.show();
    });
    this.load();
  }

  private get name() {
    return `proof.${window.headertank.vehicle?.id ?? 'no-vehicle'}` as const;
  }

  private load(): void {
    this.answers = kept(this.name, isAnswers) ?? {};
    this.show();
  }

  private give(id: MilestoneId, given: MilestoneAnswer | undefined): void {
    if (given) this.answers[id] = given;
    else delete this.answers[id];
    const stays = keep(this.name, this.answers);
    const warning = this.querySelector('.unkept');
    if (warning)
      warning.textContent = stays
        ? ''
        : 'This device keeps nothing here (storage full or blocked). Print the run before you leave the page.';
  }

  private show(): void {
    const { vehicle: sheet, habit } = window.headertank;
    const milestones = milestonesFor(this.judgedBy ?? traceVehicleOf(sheet), sheet);
    const taken = Object.keys(this.log).length;
    const sentence = element('p', { class: 'answer-sentence', role: 'status' });
    const left = element('p', { class: 'soft' });
    const results = () => this.results(milestones);
    const tell = () => {
      sentence.textContent = proofSentence(results());
      left.textContent = leftToDo(results());
      sentence.classList.toggle(
        'stop',
        results().some(({ passed }) => passed === 'fail'),
      );
    };
    const rows = milestones.map((milestone) => this.row(milestone, tell));
    const card = element('div', { class: 'on-card' });
    const tools = element(
      'div',
      { class: 'proof-tools no-print' },
      ...(taken > 0 ? [button(`Use ${taken} from the log`, () => this.takeLog())] : []),
      button('To the job card, before the repair', () =>
        card.replaceChildren(this.toCard(milestones, 'before')),
      ),
      button('To the job card, after the repair', () =>
        card.replaceChildren(this.toCard(milestones, 'after')),
      ),
      button('Print', () => window.print()),
      button('Clear', () => this.clear(), 'quiet'),
    );
    tell();
    this.replaceChildren(
      element(
        'p',
        { class: 'soft' },
        sheet
          ? `Held against the figures of ${sheet.title}.`
          : this.judgedBy?.opens.from === 'vehicle'
            ? 'No vehicle chosen: held against what you typed of it, and general ranges for the rest.'
            : 'No vehicle chosen: held against general ranges.',
        habit.temperature ? ' Temperatures in °F.' : '',
      ),
      sentence,
      left,
      element('ol', { class: 'proof-rows' }, ...rows),
      element('div', { class: 'unkept', role: 'alert' }),
      tools,
      card,
    );
  }

  private results(milestones: readonly Milestone[]): MilestoneLine[] {
    return milestones.map((each) => ({
      label: each.label,
      passed: passes(each, this.answers[each.id]?.value),
    }));
  }

  private row(milestone: Milestone, tell: () => void): HTMLElement {
    const { id, label, how, asks } = milestone;
    const { habit } = window.headertank;
    const field = `proof-${id}`;
    const word = element('b', { class: 'passed' });
    const reading = element('span', { class: 'print-only' });
    const says = element('span', { class: 'says', id: `${field}-says`, role: 'status' });
    const mark = () => {
      const given = this.answers[id];
      const passed = passes(milestone, given?.value);
      word.textContent = WORDS[passed];
      word.dataset.passed = passed;
      reading.textContent =
        given === undefined ? '__________' : textOf(milestone, given.value, habit.temperature);
      says.textContent = given?.from === 'log' ? 'from the log' : '';
      tell();
    };
    const input =
      asks === 'temperature'
        ? this.temperatureField(milestone, field, says, mark)
        : this.choiceField(milestone, asks, field, mark);
    mark();
    const wanted = wantedText(milestone, habit);
    return element(
      'li',
      {},
      element('label', { for: field }, label),
      element('span', { class: 'wanted', id: `${field}-wanted` }, wanted === '' ? '' : `passes: ${wanted}`),
      element('span', { class: 'entry no-print' }, input),
      reading,
      word,
      element('p', { class: 'how' }, how),
      says,
    );
  }

  private temperatureField(
    { id }: Milestone,
    field: string,
    says: HTMLElement,
    mark: () => void,
  ): HTMLElement {
    const unit = window.headertank.habit.temperature ?? '°C';
    const given = this.answers[id]?.value;
    const input = element('input', {
      id: field,
      type: 'text',
      inputmode: 'decimal',
      'aria-describedby': `${field}-wanted ${field}-says`,
      value: typeof given === 'number' ? inUnit(given, unit) : '',
    });
    input.onchange = () => {
      const text = input.value.trim();
      const read = text === '' ? undefined : readQuantity(text, 'temperature', unit);
      const kelvin = read?.ok ? read.quantity.low : undefined;
      const fault =
        read && !read.ok
          ? `“${text}” is no temperature. Write one, such as ${unit === '°F' ? '190' : '88'}.`
          : kelvin !== undefined && (kelvin < COLDEST || kelvin > HOTTEST)
            ? 'Nothing on this run has that temperature.'
            : '';
      input.setAttribute('aria-invalid', String(fault !== ''));
      says.classList.toggle('stop', fault !== '');
      if (fault !== '') {
        // What was typed stays in sight; a value that cannot be read is none, and passes nothing.
        this.give(id, undefined);
        mark();
        says.textContent = fault;
        return;
      }
      this.give(id, kelvin === undefined ? undefined : { value: kelvin, from: 'hand' });
      mark();
    };
    return element('span', { class: 'with-unit' }, input, element('i', {}, unit));
  }

  private choiceField(
    { id }: Milestone,
    answers: Exclude<Milestone['asks'], 'temperature'>,
    field: string,
    mark: () => void,
  ): HTMLElement {
    const select = element('select', { id: field });
    const given = this.answers[id]?.value;
    select.append(new Option('Not looked yet', '', false, given === undefined));
    for (const { value, label } of answers) select.append(new Option(label, value, false, value === given));
    select.onchange = () => {
      this.give(id, select.value === '' ? undefined : { value: select.value, from: 'hand' });
      mark();
    };
    return select;
  }

  /** Figures of the log; what was entered by hand stays. */
  private takeLog(): void {
    for (const [id, value] of Object.entries(this.log) as [MilestoneId, number][])
      if (this.answers[id]?.from !== 'hand') this.give(id, { value, from: 'log' });
    this.show();
  }

  private clear(): void {
    const { name, answers } = this;
    if (Object.keys(answers).length === 0) return;
    forget(name);
    this.answers = {};
    this.show();
    const back = button('Undo', () => {
      keep(name, answers);
      this.load();
      this.querySelector<HTMLButtonElement>('.proof-tools button')?.focus();
    });
    this.querySelector('.proof-tools')?.after(
      element('p', { class: 'note-line', role: 'status' }, 'The run is cleared. ', back),
    );
    back.focus();
  }

  /** The run as it stands: what was entered, and what was not done, for a run half done is none. */
  private toCard(milestones: readonly Milestone[], when: 'before' | 'after'): Node {
    const { habit } = window.headertank;
    const rows = milestones.flatMap((milestone) => {
      const given = this.answers[milestone.id];
      const passed = passes(milestone, given?.value);
      if (!given || passed === 'not done') return [];
      const value = textOf(milestone, given.value, habit.temperature);
      return [{ what: milestone.label, value, wanted: wantedText(milestone, habit), passed }];
    });
    if (rows.length === 0)
      return element('p', { class: 'note-line', role: 'status' }, 'Nothing entered yet.');
    const results = this.results(milestones);
    const says = `${proofSentence(results)} ${leftToDo(results)}`.trim();
    return handOver({ proof: { when, rows, says } });
  }
}

function inUnit(kelvin: number, symbol: string): string {
  const unit = findUnit(symbol);
  return unit ? String(Math.round(fromSI(kelvin, unit))) : '';
}

function textOf({ asks }: Milestone, value: number | string, unit: string | undefined): string {
  if (typeof value === 'number') return degrees(value, unit ? { temperature: unit } : {});
  return asks === 'temperature' ? value : (asks.find((each) => each.value === value)?.label ?? value);
}

customElements.define('ht-proof-run', ProofRun);
