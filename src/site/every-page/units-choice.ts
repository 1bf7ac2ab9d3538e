/** Metric or US, in the top line of every page, remembered. */
import { keep } from '../browser/storage.ts';
import '../browser/page-globals.ts';
import { button } from '../browser/element.ts';

const UNITS = [
  ['metric', '°C'],
  ['US', '°F'],
] as const;

class UnitsChoice extends HTMLElement {
  connectedCallback() {
    const buttons = UNITS.map(([name, text]) => {
      const press = button(
        text,
        () => {
          keep('units', name);
          window.headertank.showUnits(name);
          mark();
        },
        'quiet',
      );
      press.title = `${text}, ${name} units`;
      press.ariaLabel = press.title;
      return press;
    });
    const mark = () => {
      const isUS = window.headertank.habit.temperature !== undefined;
      for (const [index, press] of buttons.entries())
        press.setAttribute('aria-pressed', String(index > 0 === isUS));
    };
    mark();
    this.replaceChildren(...buttons);
  }
}

customElements.define('ht-units', UnitsChoice);
