/** The first of every page, what its other scripts share: the chosen vehicle, the reader's units, and the figures in the texts that follow both. */
import { METRIC, US } from '../../model/habit.ts';
import { loadScript } from '../browser/load-script.ts';
import { isOwnId } from '../vehicle/own-id.ts';
import type { VehicleSheet } from '../vehicle/vehicle-sheet.ts';
import '../browser/page-globals.ts';
import { button, element } from '../browser/element.ts';
import { isFilledText } from '../browser/guards.ts';
import { forget, keep, kept } from '../browser/storage.ts';
import { openJobName } from '../job/page/open-job.ts';

const script = document.currentScript;
const root = new URL('..', script instanceof HTMLScriptElement ? script.src : document.baseURI);
const unitsOf = (name: string | undefined) => (name === 'US' ? US : METRIC);
/** Until the reader chooses: the United States, Puerto Rico and Liberia read °F, quarts and psi; no region says nothing. */
const unitsOfRegion = () =>
  /-(US|PR|LR)/.test(navigator.languages.find((each) => /-[A-Z]{2}/.test(each)) ?? '') ? 'US' : undefined;

/** What has failed, said once in its place until it goes well. */
const unitsSay = new Text();
const vehicleSays = new Text();
function say(line: Text, place: string, text: string): void {
  line.data = text;
  document.querySelector(place)?.append(line);
}

window.headertank = {
  element,
  button,
  loadScript,
  root,
  vehicle: undefined,
  habit: METRIC,
  showUnits(name) {
    window.headertank.habit = unitsOf(name);
    changed();
  },
  chooseVehicle(id) {
    if (id === undefined) {
      forget('vehicle');
      window.headertank.vehicle = undefined;
      vehicleSays.data = '';
      changed();
      return true;
    }
    const stays = keep('vehicle', id);
    loadVehicle(id);
    return stays;
  },
  receiveVehicle(sheet: VehicleSheet) {
    window.headertank.vehicle = sheet;
    vehicleSays.data = '';
    changed();
    // What the device keeps under an older id follows.
    if (sheet.was) loadScript('renamed').catch(() => undefined);
  },
  // A walk that waits for its sections puts itself here.
  receiveWalkParts() {},
  figures: undefined,
};

// What is kept has the site's folder in its name, and that is known only now.
window.headertank.habit = unitsOf(
  kept('units', isFilledText) ?? unitsOfRegion() ?? document.documentElement.dataset.units,
);

/** Tells every part of the page, once its texts show the vehicle's figures in the reader's units. */
async function changed(): Promise<void> {
  try {
    if (!window.headertank.figures) await loadScript('reader-figures');
    window.headertank.figures?.fill(document);
    if (window.headertank.habit !== METRIC) await loadScript('reader-texts');
    unitsSay.data = '';
  } catch {
    say(unitsSay, '.foot', ' The figures cannot be rewritten just now: they are general and metric.');
  }
  document.dispatchEvent(new CustomEvent('headertank:change'));
}

/** Load the figures of a vehicle by its data script. */
function loadVehicle(id: string): void {
  const data = document.createElement('script');
  data.src = new URL(isOwnId(id) ? 'scripts/own-sheet.js' : `data/vehicles/${id}.js`, root).href;
  data.onerror = () => {
    // Only an answer says that it is gone; without one it may be the connection, and the choice stays.
    const [asked] = performance.getEntriesByName(data.src);
    const isGone = asked instanceof PerformanceResourceTiming && asked.responseStatus === 404;
    if (isGone) forget('vehicle');
    const what = isGone
      ? 'vehicle is no longer on the shelf.'
      : 'vehicle’s figures cannot be fetched just now.';
    say(vehicleSays, 'ht-vehicle', ` The chosen ${what}`);
  };
  document.head.append(data);
}

/** Beside the way to the job card, which one is open. */
class OpenJob extends HTMLElement {
  connectedCallback() {
    document.addEventListener('headertank:job', () => this.show());
    window.addEventListener('storage', () => this.show());
    this.show();
  }
  show() {
    const name = this.querySelector('b');
    if (name) name.textContent = openJobName() ?? '';
  }
}

/** Says on every page which vehicle is chosen; what can be done about it is fetched when it is opened. */
class VehicleLine extends HTMLElement {
  private readonly name = document.createElement('summary');
  private readonly menu = document.createElement('details');

  connectedCallback() {
    this.menu.append(this.name, document.createElement('ht-top-menu'));
    this.menu.addEventListener('toggle', () => {
      loadScript('top-menu').catch(() => {
        this.menu.lastElementChild?.replaceChildren('There is no connection just now.');
      });
    });
    document.addEventListener('headertank:change', () => this.show());
    this.replaceChildren(this.menu);
    this.show();
  }
  show() {
    const { vehicle } = window.headertank;
    this.name.textContent = vehicle?.short ?? 'No vehicle';
    // What is heard begins with what is seen: who speaks to the device says the words on the screen.
    this.name.ariaLabel = vehicle ? `${vehicle.short}, the chosen vehicle` : 'No vehicle chosen';
  }
}

customElements.define('ht-vehicle', VehicleLine);
customElements.define('ht-open-job', OpenJob);

const chosen = kept('vehicle', isFilledText);
if (chosen !== undefined && /^[a-z0-9-]+$/.test(chosen)) loadVehicle(chosen);
if (window.headertank.habit !== METRIC) changed();

/** While a card is open, what uses it here: steps that can be ticked, a sheet that is filled in. */
function useCard(): void {
  const name = document.querySelector<HTMLElement>('[data-with-card]')?.dataset.withCard;
  if (name && openJobName() !== undefined) loadScript(name).catch(() => undefined);
}
useCard();
document.addEventListener('headertank:job', useCard);
// The way back from choosing a vehicle, and on from the front page.
if (document.querySelector('ht-walk'))
  window.addEventListener('pagehide', () => {
    const { pathname, hash } = location;
    keep('came-from', [
      pathname.slice(root.pathname.length) + hash,
      document.querySelector('h1')?.textContent,
    ]);
  });
