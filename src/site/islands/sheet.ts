/** The button that prints a sheet; without scripts the browser's own does. */
import { button } from './element.ts';

class Print extends HTMLElement {
  connectedCallback() {
    this.replaceChildren(button('Print', () => window.print(), 'main'));
  }
}

customElements.define('ht-print', Print);
