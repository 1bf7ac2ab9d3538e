/** Beside the still picture of two cars, a button that lets them warm up: the simulated car is fetched when it is pressed. */
import '../browser/page-globals.ts';
import { button, element } from '../browser/element.ts';
import { loadScript } from '../browser/load-script.ts';

class MoveButton extends HTMLElement {
  connectedCallback() {
    const says = element('p', { role: 'status' });
    const start = button(
      'See it move',
      async () => {
        try {
          await loadScript('see-it-move');
          const { fault, title, severity } = this.dataset;
          const cars = document.createElement('ht-see-it-move');
          Object.assign(cars.dataset, { fault, title, severity });
          this.replaceChildren(cars);
          cars.querySelector('input')?.focus();
        } catch {
          says.textContent = 'There is no connection just now.';
        }
      },
      'no-print',
    );
    this.append(start, says);
  }
}

customElements.define('ht-move-button', MoveButton);
