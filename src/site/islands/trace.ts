/** The road test's page: a log is chosen or dropped, read in the background, judged, drawn. Nothing leaves the device. */
import '../browser/page-globals.ts';
import type { DriverInput, TraceJudgement } from '../../trace/judge-trace.ts';
import type { Choice } from '../../trace/read/layout.ts';
import type { LogFault, LogReading } from '../../trace/read/read-log.ts';
import { clockText, tell } from '../../trace/say.ts';
import { button, element } from '../browser/element.ts';
import { handOver } from '../job/page/hand-over-later.ts';
import { BackgroundReader } from '../road-test/page/trace-background.ts';
import { columnFields } from '../road-test/page/trace-columns.ts';
import { conditionFields } from '../road-test/page/trace-conditions.ts';
import { traceNames } from '../road-test/page/trace-names.ts';
import '../road-test/page/trace-proof.ts';
import type { ReaderAnswer } from '../road-test/page/trace-reader.ts';
import { ChartPart, monitorPart, verdictPart } from '../road-test/page/trace-view.ts';

/** Longer files are refused before they fill the memory, bytes. */
const LONGEST_FILE = 200e6;
/** What the log leaves open and a field under the verdict settles. */
const ASKS: ReadonlySet<string> = new Set([
  'outside-unknown',
  'heater-unknown',
  'no-speed',
  'vehicle-unknown',
]);

class RoadTest extends HTMLElement {
  private readonly reader = new BackgroundReader((answer) => this.take(answer));
  private readonly names = traceNames();
  private choice: Choice = {};
  private said: DriverInput = {};
  private file = '';
  /** Showings begun; an older one stops. */
  private shown = 0;
  /** A log just given: its verdict is brought before the reader's eyes. */
  private fresh = false;
  private last: Exclude<ReaderAnswer, { kind: 'progress' }> | undefined;
  /** Vehicle and outside temperature the last judgement was made with. */
  private orderedFor: string | undefined;

  connectedCallback() {
    const input = this.querySelector<HTMLInputElement>('input[type=file]');
    const paste = this.querySelector('textarea');
    const drop = this.querySelector<HTMLElement>('.drop');
    if (!input || !paste || !drop) return;
    this.querySelector('fieldset')?.removeAttribute('disabled');
    input.onchange = () => {
      const file = input.files?.[0];
      if (file) void this.open(file);
    };
    drop.addEventListener('dragover', (event) => {
      event.preventDefault();
      drop.classList.add('over');
    });
    drop.addEventListener('dragleave', () => drop.classList.remove('over'));
    drop.addEventListener('drop', (event) => {
      event.preventDefault();
      drop.classList.remove('over');
      const file = event.dataTransfer?.files[0];
      if (file) void this.open(file);
    });
    this.querySelector('.read-paste')?.addEventListener('click', () => {
      this.start('the pasted lines', new TextEncoder().encode(paste.value).buffer);
    });
    for (const sample of this.querySelectorAll<HTMLElement>('[data-sample]')) {
      const name = sample.dataset.sample ?? '';
      sample.append(
        ' ',
        button('Read it', () => void this.openSample(name), 'quiet'),
      );
    }
    document.addEventListener('headertank:change', () => this.vehicleOrUnits());
  }

  private async open(file: File): Promise<void> {
    if (file.size > LONGEST_FILE) {
      this.say(
        `${file.name} is larger than ${LONGEST_FILE / 1e6} MB. Log fewer columns, or cut it to the one drive.`,
      );
      return;
    }
    try {
      // A long one takes seconds to come from the disk.
      this.say(`Loading ${file.name}…`);
      this.start(file.name, await file.arrayBuffer());
    } catch {
      this.say(`${file.name} cannot be read. Copy it to this device and choose it again.`);
    }
  }

  private async openSample(name: string): Promise<void> {
    try {
      if (location.protocol === 'file:') throw new Error('A page in a folder may not read its neighbours');
      const answer = await fetch(new URL(`samples/${name}.csv`, window.headertank.root));
      if (!answer.ok) throw new Error(answer.statusText);
      this.start(`${name}.csv, invented`, await answer.arrayBuffer());
    } catch {
      this.say('The sample cannot be fetched from here. Save it by its link, then choose it as a file.');
    }
  }

  private start(name: string, bytes: ArrayBuffer): void {
    this.file = name;
    this.choice = {};
    this.said = {};
    this.fresh = true;
    // Closed, so that the verdict stands under what was chosen and not below a screen of samples.
    for (const part of this.querySelectorAll<HTMLDetailsElement>('.choose details')) part.open = false;
    this.say(`Reading ${name}…`);
    this.order(bytes);
  }

  private order(bytes?: ArrayBuffer): void {
    const { vehicle } = window.headertank;
    this.orderedFor = vehicle?.id;
    const sheet = vehicle && { title: vehicle.title, layout: vehicle.layout, figures: vehicle.figures };
    this.reader.give({ ...(bytes && { bytes }), choice: this.choice, sheet, said: this.said });
  }

  private vehicleOrUnits(): void {
    if (!this.last) return;
    if (window.headertank.vehicle?.id === this.orderedFor) void this.show();
    else this.order();
  }

  private take(answer: ReaderAnswer): void {
    if (answer.kind === 'progress') {
      this.say(`Reading ${this.file}: ${Math.round(answer.share * 100)} %`);
      return;
    }
    this.last = answer;
    void this.show();
  }

  private say(text: string): void {
    const place = this.querySelector('.log-says');
    if (place) place.textContent = text;
  }

  /** Made piece by piece, a frame each, then shown together: nothing jumps and nothing waits. */
  private async show(): Promise<void> {
    const { last } = this;
    const place = this.querySelector('.result');
    if (!place || !last) return;
    const number = ++this.shown;
    const pieces = last.kind === 'fault' ? [() => this.faultParts(last.fault)] : this.judgedParts(last);
    const made: Node[] = [];
    for (const piece of pieces) {
      made.push(...piece());
      await new Promise((rested) => setTimeout(rested));
      if (number !== this.shown) return;
    }
    // A field that was just changed is made anew: the focus goes back to it.
    const focused = document.activeElement?.id;
    place.replaceChildren(...made);
    if (focused) document.getElementById(focused)?.focus();
    if (this.fresh) this.bringForward(place);
  }

  private bringForward(place: Element): void {
    this.fresh = false;
    const verdict = place.querySelector<HTMLElement>('.answer-sentence');
    verdict?.focus({ preventScroll: true });
    verdict?.scrollIntoView({ block: 'start' });
  }

  private faultParts(fault: LogFault): HTMLElement[] {
    this.say(`${this.file} gives no verdict yet.`);
    const fields =
      fault.columns.length > 0
        ? [element('h2', {}, 'Which column is which'), this.columns(fault.columns, fault.layout)]
        : [];
    return [
      element('p', { class: 'answer-sentence', role: 'status', tabindex: '-1' }, fault.message),
      ...fields,
    ];
  }

  private judgedParts({
    understood,
    judged,
  }: {
    understood: LogReading;
    judged: TraceJudgement;
  }): (() => Node[])[] {
    const { root, vehicle: sheet, habit } = window.headertank;
    const { vehicle } = judged;
    const told = tell(judged, vehicle, habit);
    this.say(`${this.file}: ${clockText(understood.duration)}, ${understood.rows.kept} lines read.`);
    return [
      () => [
        element('h2', { class: 'out-of-sight' }, 'Verdict'),
        ...verdictPart(judged, told, this.names, root),
        this.cardPart(told.sentence),
        ...(sheet || this.said.figures ? [] : [this.withoutVehicle(root)]),
        ...(vehicle.layout.power === 'battery electric' ? [this.withoutEngine()] : []),
      ],
      () => [element('h2', {}, 'The drive'), new ChartPart(judged, vehicle, told, habit).root],
      () => monitorPart(judged, vehicle, habit),
      () => this.understoodPart(understood, judged),
      () => {
        document.dispatchEvent(new CustomEvent('headertank:trace', { detail: judged }));
        return [];
      },
    ];
  }

  private cardPart(sentence: string): HTMLElement {
    const card = element('div', {});
    const press = () =>
      card.replaceChildren(handOver({ reading: { what: 'Road test, from the log', value: sentence } }));
    return element('div', { class: 'no-print' }, button('To the job card', press, 'quiet'), card);
  }

  private understoodPart(
    { words, rows, sampling, remarks, columns, layout }: LogReading,
    judged: TraceJudgement,
  ): HTMLElement[] {
    const { coolant, speed, ambient, intake } = layout.roles;
    const asked = judged.verdict.open.some((each) => ASKS.has(each));
    const changed = Object.keys({ ...this.choice.columns, ...this.choice.units, ...this.said }).length > 0;
    const part = element(
      'details',
      { class: 'understood' },
      element('summary', {}, 'What was understood'),
      element('p', {}, `${words}. ${rows.kept} of ${rows.read} lines used, one each ${everyText(sampling)}.`),
      ...(remarks.length > 0 ? [element('ul', {}, ...remarks.map((each) => element('li', {}, each)))] : []),
      conditionFields(judged, this.said, (from) => {
        this.said = from(this.said);
        this.order();
      }),
      this.columns(columns, layout),
    );
    part.open = !(coolant && speed && (ambient || intake)) || asked || changed || remarks.length > 0;
    return [part];
  }

  private withoutEngine(): HTMLElement {
    return element(
      'p',
      { class: 'note-line' },
      'The chosen vehicle has no engine: this is read as the log of an engine, and says nothing of that car.',
    );
  }

  private withoutVehicle(root: URL): HTMLElement {
    return element(
      'p',
      { class: 'note-line' },
      'No vehicle is chosen, so general ranges stand in for its figures. ',
      element('a', { href: new URL('vehicles/index.html', root).href }, 'Choose the vehicle'),
      ', or type its stamp and its fan’s figures under “What was understood”; the log is then read again.',
    );
  }

  private columns(columns: LogReading['columns'], layout: Parameters<typeof columnFields>[1]): HTMLElement {
    return columnFields(columns, layout, (from) => {
      this.choice = from(this.choice);
      this.order();
    });
  }
}

function everyText(seconds: number): string {
  if (seconds < 1) return `${Math.round(seconds * 100) / 100} s`;
  return seconds < 90 ? `${Math.round(seconds * 10) / 10} s` : clockText(seconds);
}

customElements.define('ht-road-test', RoadTest);
