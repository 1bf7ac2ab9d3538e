/** The field at a question for what was read: the number chooses the answer. Fetched with the first question that has one. */
import '../browser/page-globals.ts';
import { button, element } from '../browser/element.ts';
import { READING_LENGTH } from '../walk/answers.ts';
import { readOnScale, unitShown } from '../walk/page/read-on-scale.ts';
import type { ReadingScale } from '../walk/reading-scale.ts';

class Reading extends HTMLElement {
  private readonly input = element('input', {
    inputmode: 'decimal',
    autocomplete: 'off',
    maxlength: String(READING_LENGTH),
  });
  private readonly unit = element('span', { class: 'unit' });
  private readonly says = element('p', { role: 'status', class: 'soft' });

  connectedCallback() {
    if (this.childElementCount > 0) return;
    const scale = this.scale();
    this.input.id = `reading-${scale.test}`;
    this.unit.id = `unit-${scale.test}`;
    this.says.id = `says-${scale.test}`;
    this.input.setAttribute('aria-describedby', `${this.unit.id} ${this.says.id}`);
    const form = element(
      'form',
      {},
      element('label', { for: this.input.id }, scale.measures),
      this.input,
      this.unit,
      button('Take this reading', () => undefined),
    );
    for (const each of form.querySelectorAll('button')) each.type = 'submit';
    form.addEventListener('submit', (event) => {
      event.preventDefault();
      this.take();
    });
    this.append(form, this.says);
    this.showUnit();
    document.addEventListener('headertank:change', () => this.showUnit());
  }

  private scale(): ReadingScale {
    return JSON.parse(this.dataset.scale ?? '{}');
  }

  private showUnit(): void {
    this.unit.textContent = unitShown(this.scale(), window.headertank.habit);
  }

  private take(): void {
    const scale = this.scale();
    const rows = [...(this.closest('.step')?.querySelectorAll<HTMLElement>('.answer') ?? [])];
    const label = (outcome: string) =>
      rows.find(({ dataset }) => dataset.value === outcome)?.querySelector('b')?.textContent ?? outcome;
    const read = readOnScale(
      scale,
      this.input.value,
      window.headertank.habit,
      window.headertank.vehicle,
      label,
    );
    if (!read.ok) {
      this.input.ariaInvalid = 'true';
      // Cleared first, so that the same sentence is said again to who listens.
      this.says.textContent = '';
      this.says.textContent = read.says;
      this.input.focus();
      return;
    }
    this.input.ariaInvalid = null;
    this.says.textContent = '';
    this.dispatchEvent(
      new CustomEvent('headertank:reading', {
        bubbles: true,
        detail: { test: scale.test, outcome: read.outcome, reading: read.reading },
      }),
    );
  }
}

customElements.define('ht-reading', Reading);
