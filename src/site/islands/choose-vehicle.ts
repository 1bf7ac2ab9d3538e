/** The button on a vehicle's page and in the list of vehicles; once chosen, the way back to the complaint. */
import { loadScript } from '../browser/load-script.ts';
import '../browser/page-globals.ts';

const loadRest = () => loadScript('vehicle-chosen').catch(() => undefined);

class ChooseVehicle extends HTMLElement {
  connectedCallback() {
    const button = this.querySelector('button');
    const { vehicle: id, title } = this.dataset;
    if (!button || !id || !title) return;
    button.hidden = false;
    // A finger or a key is on it: what comes after the press is there by then.
    for (const near of ['pointerenter', 'focus']) button.addEventListener(near, loadRest, { once: true });
    button.onclick = async () => {
      const stays = window.headertank.chooseVehicle(id);
      for (const other of document.querySelectorAll<HTMLButtonElement>('ht-choose-vehicle button'))
        other.hidden = other === button;
      await loadRest();
      for (const old of document.querySelectorAll('.vehicle-chosen')) old.remove();
      window.headertank.sayChosen?.(this, { id, title }, stays);
    };
  }
}

customElements.define('ht-choose-vehicle', ChooseVehicle);
