/** <ht-vehicle-choice>: the vehicles of the shelf by any part of their name, chosen without leaving the page. */
import { loadScript } from '../browser/load-script.ts';
import { vehicleToCard } from '../job/page/vehicle-to-card.ts';
import '../browser/page-globals.ts';
import { button, element } from '../browser/element.ts';
import { FOR_COMPLAINT, isOwnId } from '../vehicle/own-id.ts';
import { ownVehicles } from '../vehicle/page/own-vehicles.ts';

/** Rows on a phone's screen, the keyboard open. */
const MOST = 6;

type ListedVehicle = readonly [id: string, title: string];
let listed: Promise<readonly ListedVehicle[]> | undefined;

function vehicles(): Promise<readonly ListedVehicle[]> {
  listed ??= new Promise((resolve, reject) => {
    window.headertank.receiveVehicles = resolve;
    loadScript('../data/vehicles').catch((error: unknown) => {
      listed = undefined;
      reject(error);
    });
  });
  return listed;
}

/** Those of this device first: who typed one works on it. */
function own(): ListedVehicle[] {
  return ownVehicles().map(({ id, fields }) => [id, fields.title ?? '']);
}

class VehicleChoice extends HTMLElement {
  private readonly field = element('input', {
    type: 'search',
    autocomplete: 'off',
    placeholder: 'Name, engine or year',
    'aria-label': 'Vehicle: any part of its name',
  });
  private readonly rows = element('div', { class: 'rows' });
  private readonly says = element('p', { role: 'status' });
  private all: readonly ListedVehicle[] = [];

  connectedCallback() {
    // Put elsewhere it stays as it is, with what it has just said.
    if (this.childElementCount > 0) return;
    const { root } = window.headertank;
    const ownHash = document.querySelector('ht-walk') ? `#${FOR_COMPLAINT}` : '';
    this.field.oninput = () => this.show();
    this.field.onkeydown = (event) => {
      if (event.key !== 'Enter') return;
      // The same press would go on to the row that gets the focus.
      event.preventDefault();
      this.enter();
    };
    this.replaceChildren(
      this.field,
      this.rows,
      this.says,
      element(
        'p',
        {},
        element('a', { href: new URL(`own-vehicle.html${ownHash}`, root).href }, 'My car is not listed'),
      ),
      element('p', {}, element('a', { href: new URL('vehicles/index.html', root).href }, 'All vehicles')),
    );
    vehicles().then(
      (all) => {
        this.all = [...own(), ...all];
        this.show();
      },
      () => {
        this.says.textContent = 'The vehicles cannot be fetched: there is no connection just now.';
      },
    );
  }

  private show(): void {
    const words = this.field.value.toLowerCase().split(/\s+/);
    const fit = this.all.filter(([, title]) => words.every((word) => title.toLowerCase().includes(word)));
    this.rows.replaceChildren(
      ...fit
        .slice(0, MOST)
        .map((each) =>
          button(isOwnId(each[0]) ? `${each[1]} (your own)` : each[1], () => this.choose(each), 'quiet'),
        ),
    );
    const more = fit.length - MOST;
    this.says.textContent =
      fit.length === 0
        ? 'No vehicle on this shelf has that name. Without one, general figures are shown.'
        : more > 0
          ? `And ${more} more: type a part of the name.`
          : '';
  }

  /** The only one that fits is meant; of several the first is at hand, and none is taken unseen. */
  private enter(): void {
    const [first, second] = this.rows.querySelectorAll('button');
    if (first && !second) first.click();
    else first?.focus();
  }

  private choose([id, title]: ListedVehicle): void {
    const stays = window.headertank.chooseVehicle(id);
    this.field.value = '';
    this.show();
    this.says.textContent = `${stays ? '' : 'Chosen for this page; this device keeps nothing. '}${vehicleToCard({ id, title })}`;
    this.dispatchEvent(new CustomEvent('headertank:chosen', { bubbles: true }));
  }
}

customElements.define('ht-vehicle-choice', VehicleChoice);
