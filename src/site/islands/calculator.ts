/** A calculator, live: reads the fields, shows the answer at once, keeps its state in the address of its own page. */
import { CALCULATORS } from '../../calculators/catalogue.ts';
import type { Calculator, QuantityInput } from '../../calculators/declaration.ts';
import { isAsked, unitFor, workOut } from '../../calculators/work-out.ts';
import { readQuantity } from '../../model/quantity.ts';
import { type Habit, METRIC, showNumber } from '../../model/show-quantity.ts';
import { findUnit, fromSI } from '../../model/units.ts';
import '../page-globals.ts';
import { answerHtml } from '../calculator-answer.ts';

let made = 0;

class CalculatorPart extends HTMLElement {
  private calculator: Calculator | undefined;
  private readonly typed = new Map<string, string>();
  /** Fields that show the chosen vehicle's figure until somebody types over it. */
  private readonly fromVehicle = new Set<string>();
  private ownPage = false;
  private readonly picture = `live-picture-${made++}`;

  connectedCallback() {
    this.calculator = CALCULATORS.find(({ id }) => id === this.dataset.id);
    const form = this.querySelector('form');
    if (!this.calculator || !form) return;
    this.ownPage = this.hasAttribute('data-own-page');
    if (this.ownPage) this.readAddress();
    form.addEventListener('submit', (event) => event.preventDefault());
    form.addEventListener('input', (event) => {
      const field = event.target;
      if (!(field instanceof HTMLInputElement || field instanceof HTMLSelectElement)) return;
      this.typed.set(field.name, field.value);
      this.fromVehicle.delete(field.name);
      this.writeAddress();
      this.show();
    });
    document.addEventListener('headertank:change', () => this.fill());
    this.fill();
  }

  private readAddress(): void {
    for (const [name, value] of new URLSearchParams(location.hash.slice(1, 2000))) {
      if (this.calculator?.inputs.some((input) => input.name === name))
        this.typed.set(name, value.slice(0, 60));
    }
  }

  private writeAddress(): void {
    if (this.ownPage) history.replaceState(null, '', `#${new URLSearchParams([...this.typed])}`);
  }

  /** Put the vehicle's figures, or the defaults in the reader's units, into the fields nobody has typed into. */
  private fill(): void {
    const { vehicle, habit } = window.headertank;
    this.fromVehicle.clear();
    for (const input of this.calculator?.inputs ?? []) {
      const field = this.field(input.name);
      if (!field) continue;
      const typed = this.typed.get(input.name);
      if (typed !== undefined) {
        field.value = typed;
        continue;
      }
      if (input.kind === 'choice') continue;
      const own = input.figure ? vehicle?.figures[input.figure.path] : undefined;
      if (own && input.figure) {
        const { low, high, unit, decimals } = own.quantity;
        const end = input.figure.end ?? 'middle';
        field.value = written(
          end === 'low' ? low : end === 'high' ? high : (low + high) / 2,
          unit,
          decimals,
          input,
          habit,
        );
        this.fromVehicle.add(input.name);
      } else if (input.default !== '') {
        const read = readQuantity(input.default, input.dimension, input.unit);
        if (read.ok)
          field.value = written(read.quantity.low, read.quantity.unit, read.quantity.decimals, input, habit);
      }
    }
    this.show();
  }

  private field(name: string): HTMLInputElement | HTMLSelectElement | null {
    return this.querySelector<HTMLInputElement | HTMLSelectElement>(`[name="${name}"]`);
  }

  private show(): void {
    const { calculator } = this;
    const output = this.querySelector('output');
    if (!calculator || !output) return;
    const values = Object.fromEntries(
      calculator.inputs.map(({ name }) => [name, this.field(name)?.value ?? '']),
    );
    const outcome = workOut(calculator, values, window.headertank.habit);
    for (const input of calculator.inputs) {
      const part = this.querySelector<HTMLElement>(`[data-field="${input.name}"]`);
      const says = part?.querySelector('.says');
      if (!part || !says) continue;
      part.hidden = !isAsked(input, calculator, values);
      const fault = outcome.ok ? undefined : outcome.faults.find(({ name }) => name === input.name);
      part.toggleAttribute('data-fault', fault !== undefined);
      this.field(input.name)?.setAttribute('aria-invalid', String(fault !== undefined));
      const origin = this.fromVehicle.has(input.name) ? `From ${window.headertank.vehicle?.title}.` : '';
      says.textContent = fault?.message ?? [origin, input.hint].filter(Boolean).join(' ');
    }
    output.innerHTML = answerHtml(outcome, this.picture);
  }
}

/** A figure for a field, in the unit this reader types. */
function written(si: number, unit: string, decimals: number, input: QuantityInput, habit: Habit): string {
  const from = findUnit(unit);
  const to = findUnit(habit === METRIC ? unit : unitFor(input, habit));
  if (!from || !to) return '';
  const step = (10 ** -decimals * from.factor) / to.factor;
  const shown = to === from ? decimals : Math.max(0, Math.round(-Math.log10(step)));
  return `${showNumber(fromSI(si, to), shown)} ${to.symbol}`.trim();
}

customElements.define('ht-calculator', CalculatorPart);
