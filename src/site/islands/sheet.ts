/** The button that prints a sheet, without scripts the browser's own does; and the chosen vehicle's minutes on it. */
import { button } from '../browser/element.ts';
import { showBooking, vehicleMinutes } from '../walk/page/walk-booking.ts';

class Print extends HTMLElement {
  connectedCallback() {
    this.replaceChildren(button('Print', () => window.print(), 'main'));
  }
}

customElements.define('ht-print', Print);

const symptom = document.querySelector<HTMLElement>('[data-booking]')?.dataset.booking;
if (symptom) {
  const show = () => showBooking(vehicleMinutes(symptom), false);
  document.addEventListener('headertank:change', show);
  show();
}
