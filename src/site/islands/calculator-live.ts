/** A calculator, live: reads the fields, shows the answer at once, keeps its state in the address of its own page. */
import type { Calculator, Input, QuantityInput } from '../../calculators/declaration.ts';
import {
  type CalculatorResult,
  hasTyped,
  isAsked,
  isExample,
  type TypedValues,
  withoutExamples,
  workOut,
} from '../../calculators/work-out.ts';
import { dayText } from '../../model/day.ts';
import { readQuantity, takenFor } from '../../model/quantity.ts';
import { loadScript } from '../browser/load-script.ts';
import { loadStyle } from '../browser/load-style.ts';
import '../browser/page-globals.ts';
import { button } from '../browser/element.ts';
import {
  answerDetail,
  answerSentence,
  answerTone,
  waitingSentence,
} from '../calculator/calculator-answer.ts';
import {
  convertField,
  type FieldText,
  joinField,
  splitField,
  writeDefault,
  writeField,
} from '../calculator/calculator-field.ts';
import { answerPlace, calculatorForm, IN_STEP, standingText } from '../calculator/calculator-form.ts';
import { handOver } from '../job/page/hand-over-later.ts';
import { openJob } from '../job/page/open-job.ts';

/** Longest text a field is given from an address. */
const LONGEST = 60;
/** Browsers refuse an address that changes at each key; it follows when the typing rests this long, ms. */
const PAUSE = 200;

declare global {
  interface DocumentEventMap {
    /** A declaration has come; its script is calculators/<id>.js. */
    'headertank:calculator': CustomEvent<Calculator>;
  }
}

const declared = new Map<string, Calculator>();
document.addEventListener('headertank:calculator', ({ detail }) => declared.set(detail.id, detail));

/** Milliseconds; longer than a finger or a mouse button stays down. */
const AFTER_PRESS = 500;

let made = 0;

class CalculatorPart extends HTMLElement {
  private calculator: Calculator | undefined;
  /** Fields somebody has typed in, or that came with the address. */
  private readonly touched = new Set<string>();
  /** What was last written under each field. */
  private readonly said = new Map<string, string>();
  given: Readonly<Record<string, string>> = {};
  /** Fields that hold the chosen vehicle's figure. */
  private readonly byVehicle = new Set<string>();
  private ownPage = false;
  /** Inside a step an example would be taken for this car's figures: none is shown. */
  inStep = false;
  private toCard: HTMLElement | undefined;
  private outcome: CalculatorResult | undefined;
  /** Fields that hold what the open card has measured. */
  private readonly byCard = new Map<string, string>();
  private pause = 0;
  /** A figure of this car stands: an example of a reading beside it would be taken for another, and goes. */
  private readingsOnly = false;
  private readonly picture = `live-picture-${made++}`;

  connectedCallback() {
    const id = this.dataset.id ?? '';
    this.inStep = this.hasAttribute('data-in-step');
    Promise.all([loadScript(`../calculators/${id}`), this.inStep && loadStyle('calculator')]).then(
      () => this.start(declared.get(id)),
      () => this.tell('The fields could not be started. Open this page again.'),
    );
  }

  private start(calculator: Calculator | undefined): void {
    if (this.calculator || !calculator) return;
    if (this.inStep) this.makeForm(calculator);
    const form = this.querySelector('form');
    if (!form) return;
    this.calculator = calculator;
    this.ownPage = this.hasAttribute('data-own-page');
    this.given = JSON.parse(this.dataset.given ?? '{}');
    this.querySelector('fieldset')?.removeAttribute('disabled');
    form.addEventListener('submit', (event) => event.preventDefault());
    form.addEventListener('input', (event) => this.typedIn(event.target));
    form.addEventListener('change', (event) => this.left(event.target));
    document.addEventListener('headertank:change', () => this.fill());
    this.offerJobCard(calculator);
    if (this.ownPage) {
      this.pinWhileTyped(form);
      this.readAddress();
      window.addEventListener('hashchange', () => this.readAddress());
    }
    this.fill();
    if (calculator.inputs.some((input) => input.kind === 'quantity' && input.card)) void this.takeFromCard();
  }

  /**
   * Says to the styles that a field has the focus. The answer goes back to its place after the press that took the focus away:
   * moved by it, a button would lie no more under the finger that is about to lift.
   */
  private pinWhileTyped(form: HTMLFormElement): void {
    const isTyped = () => form.querySelector('input:focus') !== null;
    form.addEventListener('focusin', () =>
      this.toggleAttribute('data-typing', this.hasAttribute('data-typing') || isTyped()),
    );
    form.addEventListener('focusout', () =>
      setTimeout(() => this.toggleAttribute('data-typing', isTyped()), AFTER_PRESS),
    );
  }

  /** What was measured already stands in its field: two books of one jug would not agree. */
  private async takeFromCard(): Promise<void> {
    if (!openJob()) return;
    await loadScript('hand-over').catch(() => undefined);
    const sums = await window.headertank.litresOnCard?.();
    if (!sums) return;
    for (const input of this.calculator?.inputs ?? []) {
      if (input.kind !== 'quantity' || !input.card || this.touched.has(input.name)) continue;
      const has = sums[input.card];
      if (has === 0) continue;
      const written = this.written(input, `${has} l`);
      this.touched.add(input.name);
      this.byCard.set(input.name, joinField(written));
      this.put(input.name, written);
    }
    if (this.byCard.size > 0) this.show();
  }

  /** Inside a step the fields come only now, where the line stands that waited for them. */
  private makeForm(calculator: Calculator): void {
    const prefix = `live-${calculator.id}-${made++}`;
    const form = calculatorForm(calculator, { prefix, inStep: true, given: {} });
    const waiting = waitingSentence(calculator, false);
    const place = document.createElement('template');
    place.innerHTML = form + answerPlace('as-example', waiting, '');
    this.querySelector('.example')?.replaceWith(place.content);
  }

  /** The answer can go onto the job card as a reading. */
  private offerJobCard(calculator: Calculator): void {
    const place = this.querySelector('.worked');
    const sentence = this.querySelector('.answer-sentence');
    if (!place || !sentence) return;
    const toCard = button(
      'To the job card',
      () => {
        this.querySelector('.on-card')?.remove();
        const reading = { what: calculator.title, value: sentence.textContent ?? '' };
        const values = this.outcome?.ok ? this.outcome.answer.onCard : undefined;
        // An estimate has its own place on the card; every other answer is a reading as well.
        const line = handOver({ ...(values?.estimate ? {} : { reading }), ...values });
        line.classList.add('on-card');
        place.append(line);
      },
      'quiet',
    );
    this.toCard = toCard;
    place.append(toCard);
  }

  private inputOf(name: string | undefined): Input | undefined {
    return this.calculator?.inputs.find((input) => input.name === name);
  }

  private field(name: string): HTMLInputElement | HTMLSelectElement | null {
    return this.querySelector(`[name="${name}"]`);
  }

  private unitBeside(name: string): HTMLElement | null {
    return this.querySelector(`[data-unit="${name}"]`);
  }

  private put(name: string, { text, unit }: FieldText): void {
    const field = this.field(name);
    const beside = this.unitBeside(name);
    if (field) field.value = text;
    if (beside instanceof HTMLSelectElement) beside.value = unit;
  }

  private taken(name: string): FieldText {
    const beside = this.unitBeside(name);
    const unit = beside instanceof HTMLSelectElement ? beside.value : (beside?.textContent ?? '');
    return { text: this.field(name)?.value ?? '', unit };
  }

  /** A field or a unit was changed: what was typed stays as typed, and the unit beside says how it is read. */
  private typedIn(target: EventTarget | null): void {
    if (!(target instanceof HTMLInputElement || target instanceof HTMLSelectElement)) return;
    const unitOf = this.inputOf(target.dataset.unit);
    if (unitOf?.kind === 'quantity' && !this.touched.has(unitOf.name)) {
      this.convert(unitOf, target.value);
      return;
    }
    const name = unitOf?.name ?? target.name;
    if (name === '') return;
    this.touched.add(name);
    this.show();
    this.writeAddress();
  }

  /** A default nobody typed means the same in another unit. */
  private convert(input: QuantityInput, unit: string): void {
    const read = readQuantity(this.standing(input), input.dimension, input.unit);
    if (read.ok) this.put(input.name, convertField(read.quantity.low, read.quantity, unit));
    this.show();
  }

  /** On leaving a field, a unit typed in it goes to its place beside it. */
  private left(target: EventTarget | null): void {
    if (!(target instanceof HTMLInputElement || target instanceof HTMLSelectElement)) return;
    if (target.closest('.sets')) this.takeSet(target.value);
    const input = this.inputOf(target.name);
    if (input?.kind !== 'quantity') return;
    const { text, unit } = this.taken(input.name);
    this.put(input.name, splitField(text, input, unit));
  }

  private readAddress(): void {
    for (const [name, value] of new URLSearchParams(location.hash.slice(1, 2000))) {
      const input = this.inputOf(name);
      if (!input) continue;
      const text = value.slice(0, LONGEST);
      if (input.kind === 'choice' && !input.options.some((option) => option.value === text)) continue;
      this.touched.add(name);
      this.put(
        name,
        input.kind === 'quantity' ? splitField(text, input, this.taken(name).unit) : { text, unit: '' },
      );
    }
    this.show();
  }

  /** Everything asked, units written out: what is sent means the same to another reader with another vehicle. */
  private writeAddress(): void {
    if (!this.ownPage) return;
    window.clearTimeout(this.pause);
    this.pause = window.setTimeout(() => this.putAddress(), PAUSE);
  }

  private putAddress(): void {
    if (!this.calculator) return;
    const values = this.values();
    const asked = this.calculator.inputs.filter(
      (input) => this.calculator && isAsked(input, this.calculator, values),
    );
    const state = new URLSearchParams(asked.map(({ name }) => [name, values[name] ?? '']));
    history.replaceState(null, '', `#${state}`);
  }

  private values(): Record<string, string> {
    return Object.fromEntries(
      (this.calculator?.inputs ?? []).map(({ name }) => [name, joinField(this.taken(name))]),
    );
  }

  /** What stands in a field nobody typed in, unless the vehicle gives it. */
  private standing(input: Input): string {
    // With a figure of this car the visit is today's; an example has none, and says the same on any day.
    if (input.kind === 'word' && input.today && this.readingsOnly) return dayText(new Date());
    return standingText(input, { inStep: this.inStep || this.readingsOnly, given: this.given });
  }

  private figureOf(input: Input) {
    return input.kind === 'quantity' && input.figure
      ? window.headertank.vehicle?.figures[input.figure.path]?.quantity
      : undefined;
  }

  private vehicleText(input: QuantityInput): FieldText | undefined {
    const figure = this.figureOf(input);
    if (!figure) return undefined;
    const { low, high } = figure;
    const end = { low, high, middle: (low + high) / 2 }[input.figure?.end ?? 'middle'];
    return writeField(end, figure, input, window.headertank.habit);
  }

  /** Put the vehicle's figures, or the defaults, in the reader's units into the fields nobody has typed in. */
  private fill(): void {
    const ofStep = this.setOfStep()?.fields ?? {};
    this.byVehicle.clear();
    for (const input of this.calculator?.inputs ?? []) {
      const { name } = input;
      if (this.touched.has(name)) continue;
      const fromStep = ofStep[name];
      const own = fromStep === undefined && input.kind === 'quantity' ? this.vehicleText(input) : undefined;
      if (fromStep !== undefined || own) this.byVehicle.add(name);
      this.put(name, own ?? this.written(input, fromStep ?? this.standing(input)));
    }
    this.offerSets();
    this.show();
  }

  private written(input: Input, text: string): FieldText {
    return input.kind === 'quantity'
      ? writeDefault(input, text, window.headertank.habit)
      : { text, unit: '' };
  }

  /** What the chosen vehicle has of the joint that the step around it tightens. */
  private setOfStep() {
    return this.sets().find(({ id }) => id === this.dataset.joint);
  }

  private sets() {
    const { vehicle } = window.headertank;
    return vehicle ? (this.calculator?.sets?.of(vehicle) ?? []) : [];
  }

  private offerSets(): void {
    const part = this.querySelector<HTMLElement>('.sets');
    const select = part?.querySelector('select');
    const says = part?.querySelector('.says');
    if (!part || !select || !says) return;
    const sets = this.sets();
    part.hidden = sets.length === 0;
    select.replaceChildren(new Option('choose', ''), ...sets.map(({ label }) => new Option(label, label)));
    select.value = this.setOfStep()?.label ?? '';
    says.textContent = `From ${window.headertank.vehicle?.title ?? ''}.`;
  }

  private takeSet(label: string): void {
    const set = this.sets().find((each) => each.label === label);
    if (!set) return;
    for (const [name, text] of Object.entries(set.fields)) {
      const input = this.inputOf(name);
      if (!input) continue;
      this.touched.add(name);
      this.put(name, this.written(input, text));
    }
    this.show();
    this.writeAddress();
  }

  private show(): void {
    const { calculator } = this;
    const sentence = this.querySelector('.answer-sentence');
    const detail = this.querySelector<HTMLElement>('.answer-detail');
    if (!calculator || !sentence || !detail) return;
    this.clearExamples(calculator);
    const given = { person: this.touched, vehicle: this.byVehicle };
    const values = withoutExamples(calculator, this.values(), given);
    const outcome = workOut(calculator, values, window.headertank.habit);
    this.outcome = outcome;
    const example = isExample(calculator, values, given);
    const waits = example && this.inStep;
    const faults = new Map(outcome.ok ? [] : outcome.faults.map(({ name, message }) => [name, message]));
    for (const input of calculator.inputs) {
      // A reading not typed yet is no fault of anybody's; what is missing stands under the answer.
      const missing =
        (this.inStep || this.readingsOnly) &&
        !this.touched.has(input.name) &&
        this.taken(input.name).text === '';
      this.showField(input, values, missing ? undefined : faults.get(input.name));
    }
    this.tell(this.exampleLine());
    const said = waits
      ? waitingSentence(calculator, window.headertank.vehicle !== undefined)
      : answerSentence(outcome, example);
    // Unchanged words are left alone, so that a screen reader does not say them again at each key.
    if (sentence.textContent !== said) sentence.textContent = said;
    sentence.className = `answer-sentence ${answerTone(outcome, example)}`;
    this.closest('.calculator')?.toggleAttribute('data-example', example);
    if (this.toCard) this.toCard.hidden = example || !outcome.ok;
    // While there is no figure the place is kept, so that the page does not jump under the thumb.
    detail.style.minHeight = outcome.ok || waits ? '' : `${detail.offsetHeight}px`;
    detail.innerHTML = waits ? '' : answerDetail(calculator, outcome, this.picture, window.headertank.habit);
  }

  /** Examples of readings leave their fields with the first figure typed, and come back where none is. */
  private clearExamples(calculator: Calculator): void {
    const typed = hasTyped(calculator, this.values(), this.touched);
    if (typed === this.readingsOnly) return;
    this.readingsOnly = typed;
    for (const input of calculator.inputs)
      if ((input.kind === 'word' && input.today) || (input.kind !== 'choice' && input.reading))
        if (!this.touched.has(input.name) && !this.byVehicle.has(input.name))
          this.put(input.name, this.written(input, this.standing(input)));
  }

  /** The line above the fields. */
  private tell(text: string): void {
    const line = this.querySelector('.example');
    if (line) line.textContent = text;
  }

  private exampleLine(): string {
    const { vehicle } = window.headertank;
    if (this.readingsOnly) return 'Your figures. A reading that is not typed does not count.';
    if (this.touched.size > 0) return 'Your figures; the rest stands as shown.';
    if (this.inStep) return this.setOfStep() ? 'This vehicle’s figures for this joint.' : IN_STEP;
    return vehicle && this.calculator?.inputs.some((input) => this.figureOf(input))
      ? 'This vehicle’s figures and examples. Type yours.'
      : 'Example figures. Type yours over them.';
  }

  private showField(input: Input, values: TypedValues, fault: string | undefined): void {
    const part = this.querySelector<HTMLElement>(`[data-field="${input.name}"]`);
    const says = part?.querySelector('.says');
    if (!part || !says || !this.calculator) return;
    part.hidden = !isAsked(input, this.calculator, values);
    part.toggleAttribute('data-fault', fault !== undefined);
    this.field(input.name)?.setAttribute('aria-invalid', String(fault !== undefined));
    const text =
      fault ?? [this.readAs(input), this.originOf(input), input.hint].filter((each) => each).join(' ');
    const label = part.querySelector('label');
    if (label) label.textContent = input.label;
    // Not held against the page: there the figures may stand in other units. What was typed is quoted as typed.
    says.toggleAttribute('data-as-written', fault !== undefined);
    if (this.said.get(input.name) !== text) says.textContent = text;
    this.said.set(input.name, text);
  }

  /** What is not read as it stands, such as a decimal comma or `2k5`, says at its field as what it is taken. */
  private readAs(input: Input): string | undefined {
    if (input.kind !== 'quantity') return undefined;
    const taken = takenFor(joinField(this.taken(input.name)), input.dimension, input.unit);
    return taken === undefined ? undefined : `Read as ${taken}.`;
  }

  /** Whether the figure in a field is the chosen vehicle's. */
  private originOf(input: Input): string | undefined {
    const { vehicle } = window.headertank;
    const card = this.byCard.get(input.name);
    if (card !== undefined && card === joinField(this.taken(input.name))) return 'From the job card.';
    if (vehicle && this.byVehicle.has(input.name) && !this.touched.has(input.name))
      return `From ${vehicle.title}.`;
    if (!vehicle || input.kind !== 'quantity' || !input.figure) return undefined;
    const own = this.vehicleText(input);
    if (own && joinField(own) === joinField(this.taken(input.name))) return `From ${vehicle.title}.`;
    return own || this.touched.has(input.name)
      ? undefined
      : `No figure of ${vehicle.title} here; an example.`;
  }
}

customElements.define('ht-calculator', CalculatorPart);
