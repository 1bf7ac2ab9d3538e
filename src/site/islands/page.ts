/** On every page: the chosen vehicle, the reader's units, and the figures in the texts that follow both. */
import { METRIC, US } from '../../model/habit.ts';
import { loadScript } from '../browser/load-script.ts';
import type { VehicleSheet } from '../vehicle-sheet.ts';
import '../page-globals.ts';
import { forget, keep, kept } from '../keep.ts';
import './offline.ts';
import './paper-line.ts';

const script = document.currentScript;
const root = new URL('..', script instanceof HTMLScriptElement ? script.src : document.baseURI);
const isText = (value: unknown): value is string => typeof value === 'string';
const unitsOf = (name: string | undefined) => (name === 'US' ? US : METRIC);

window.headertank = {
  root,
  vehicle: undefined,
  habit: unitsOf(kept('units', isText) ?? document.documentElement.dataset.units),
  receiveVehicle(sheet: VehicleSheet) {
    window.headertank.vehicle = sheet;
    changed();
  },
  // A walk that waits for its sections puts itself here.
  receiveWalkParts() {},
  figures: undefined,
};

/** Tells every part of the page, once its texts show the vehicle's figures in the reader's units. */
async function changed(): Promise<void> {
  try {
    if (!window.headertank.figures) await loadScript('reader-figures');
    window.headertank.figures?.fill(document);
  } catch {
    for (const part of document.querySelectorAll('ht-units'))
      part.append(' The figures cannot be rewritten just now: those in the texts are general and metric.');
  }
  document.dispatchEvent(new CustomEvent('headertank:change'));
}

/** Load the figures of a vehicle by its data script. */
function loadVehicle(id: string): void {
  const data = document.createElement('script');
  data.src = new URL(`data/vehicles/${id}.js`, root).href;
  data.onerror = () => {
    forget('vehicle');
    for (const part of document.querySelectorAll('ht-vehicle')) {
      part.append(' The vehicle kept on this device is no longer on the shelf; choose another.');
    }
  };
  document.head.append(data);
}

/** Says which vehicle is chosen, on every page. */
class VehicleLine extends HTMLElement {
  connectedCallback() {
    document.addEventListener('headertank:change', () => this.show());
    this.show();
  }
  show() {
    const { vehicle } = window.headertank;
    if (!vehicle) return;
    const link = document.createElement('a');
    link.href = new URL(`vehicles/${vehicle.id}.html`, root).href;
    link.textContent = vehicle.title;
    const off = document.createElement('button');
    off.type = 'button';
    off.className = 'quiet';
    off.textContent = 'Take off';
    off.setAttribute('aria-label', `Take ${vehicle.title} off: no vehicle chosen`);
    off.onclick = () => {
      forget('vehicle');
      location.reload();
    };
    this.replaceChildren(link, ' ', off);
  }
}

/** The button on a vehicle's page and in the list of vehicles. */
class ChooseVehicle extends HTMLElement {
  connectedCallback() {
    const button = this.querySelector('button');
    const id = this.dataset.vehicle;
    if (!button || !id) return;
    button.hidden = false;
    button.onclick = () => {
      const stays = keep('vehicle', id);
      loadVehicle(id);
      button.textContent = stays
        ? 'Chosen. It stays chosen on this device.'
        : 'Chosen for this page; this device keeps nothing.';
      button.disabled = true;
    };
  }
}

/** Metric or US, remembered. */
class UnitsChoice extends HTMLElement {
  connectedCallback() {
    const label = document.createElement('span');
    label.textContent = 'Units: ';
    const buttons = (['metric', 'US'] as const).map((name) => {
      const button = document.createElement('button');
      button.type = 'button';
      button.className = 'quiet';
      button.textContent = name === 'US' ? 'US customary' : 'metric';
      button.onclick = () => {
        keep('units', name);
        window.headertank.habit = unitsOf(name);
        mark();
        changed();
      };
      return button;
    });
    const mark = () => {
      buttons.forEach((button, index) => {
        button.setAttribute('aria-pressed', String((window.headertank.habit === US) === (index === 1)));
      });
    };
    mark();
    this.replaceChildren(label, ...buttons);
  }
}

customElements.define('ht-vehicle', VehicleLine);
customElements.define('ht-choose-vehicle', ChooseVehicle);
customElements.define('ht-units', UnitsChoice);

const chosen = kept('vehicle', isText);
if (chosen !== undefined && /^[a-z0-9-]+$/.test(chosen)) loadVehicle(chosen);
if (window.headertank.habit !== METRIC) changed();
