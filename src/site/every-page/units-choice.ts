/** Metric or US, remembered. */
import { keep } from '../browser/storage.ts';
import '../browser/page-globals.ts';
import { button, element } from '../browser/element.ts';

const UNITS = [
  ['metric', 'metric'],
  ['US', 'US customary'],
] as const;

class UnitsChoice extends HTMLElement {
  connectedCallback() {
    const isUS = window.headertank.habit.temperature !== undefined;
    const mark = (now: string) => {
      for (const [index, [name]] of UNITS.entries())
        buttons[index]?.setAttribute('aria-pressed', String(name === now));
    };
    const buttons = UNITS.map(([name, text]) =>
      button(
        text,
        () => {
          keep('units', name);
          mark(name);
          window.headertank.showUnits(name);
        },
        'quiet',
      ),
    );
    mark(isUS ? 'US' : 'metric');
    this.replaceChildren(element('span', {}, 'Units: '), ...buttons);
  }
}

customElements.define('ht-units', UnitsChoice);
