/** Colours as the device has them, light, dark, or for the sun. */
import { element } from '../../browser/element.ts';
import '../../browser/page-globals.ts';
import { forget, keep } from '../../browser/storage.ts';
import { showColours } from './colours.ts';

const DEVICE = 'as the device';

class ColoursChoice extends HTMLElement {
  connectedCallback() {
    const { dataset } = document.documentElement;
    const names = [DEVICE, 'light', 'dark', 'sun'];
    const choice = element('select', {}, ...names.map((name) => element('option', {}, name)));
    const says = element('span', { role: 'status' });
    const show = () => {
      choice.value = dataset.colours ?? DEVICE;
    };
    choice.addEventListener('change', () => {
      says.textContent = '';
      if (choice.value === DEVICE) {
        delete dataset.colours;
        forget('colours');
      } else {
        dataset.colours = choice.value;
        if (!keep('colours', choice.value))
          says.textContent =
            ' This device keeps nothing here (storage full or blocked): they hold for this page alone.';
      }
    });
    // Forgotten here, or chosen in another window.
    window.addEventListener('storage', () => {
      showColours();
      show();
    });
    show();
    this.replaceChildren(element('label', {}, 'Colours ', choice), says);
  }
}

customElements.define('ht-colours', ColoursChoice);
