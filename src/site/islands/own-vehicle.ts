/** <ht-own-vehicle>: a vehicle of this device alone is typed, chosen, changed, removed, or taken on to the form of the shelf. */
import { generalRange } from '../../model/figure-lookup.ts';
import { REFERABLE_PATHS } from '../../model/figures.ts';
import { contradictionIn, LAYOUT_FEATURES, LAYOUT_LABELS } from '../../model/layout.ts';
import { quantityText } from '../../model/show-quantity.ts';
import { DeviceStore } from '../browser/device-store.ts';
import { button, element } from '../browser/element.ts';
import { newId } from '../browser/ids.ts';
import { unkeptWarning } from '../browser/kept-fields.ts';
import { loadScript } from '../browser/load-script.ts';
import '../browser/page-globals.ts';
import { lastWalk } from '../browser/storage.ts';
import { fieldId } from '../vehicle/field-id.ts';
import { FOR_COMPLAINT, isOwnId, OWN_START } from '../vehicle/own-id.ts';
import { ownField, readFigure, withTyped } from '../vehicle/own-sheet.ts';
import { fitQuestions } from '../vehicle/page/fit-questions.ts';
import { keepOwnVehicle, ownVehicle, ownVehicles, removeOwnVehicle } from '../vehicle/page/own-vehicles.ts';
import { isVehicleDraft, saidLayout, type VehicleDraft } from '../vehicle/vehicle-draft.ts';

class OwnVehicle extends HTMLElement {
  private draft: VehicleDraft = empty();
  private readonly drafts = new DeviceStore<VehicleDraft>('vehicle-draft.', isVehicleDraft);

  connectedCallback() {
    this.addEventListener('input', ({ target }) => this.typed(target));
    this.querySelector('form')?.addEventListener('submit', (event) => {
      event.preventDefault();
      void this.take();
    });
    this.querySelector<HTMLButtonElement>('.ask-all button')?.addEventListener('click', () => this.askAll());
    window.addEventListener('hashchange', () => this.begin());
    document.addEventListener('headertank:change', () => this.showList());
    this.begin();
    this.dataset.live = '';
  }

  /** The address names a vehicle to be changed, or nothing. */
  private begin(): void {
    const id = location.hash.slice(1);
    this.open(isOwnId(id) ? (ownVehicle(id) ?? empty()) : empty());
  }

  private open(draft: VehicleDraft): void {
    this.draft = draft;
    this.addRows(draft.fields);
    for (const field of this.querySelectorAll<HTMLInputElement>('[name]')) {
      const value = draft.fields[field.name] ?? '';
      if (field.type === 'radio') field.checked = field.value === value;
      else field.value = value;
    }
    fitQuestions(this, draft.fields);
    this.say({});
    this.querySelector('.outcome')?.replaceChildren();
    this.askForComplaint();
    this.showList();
  }

  /** What was typed at the work, or measured there, beyond the figures that are asked here. */
  private addRows(fields: VehicleDraft['fields']): void {
    for (const old of this.querySelectorAll('.own-more')) old.remove();
    const rows = REFERABLE_PATHS.filter(
      (path) => fields[ownField(path)] && !this.querySelector(`[name="${ownField(path)}"]`),
    ).map((path) => figureRow(path));
    this.querySelector('.own-figures')?.append(...rows);
  }

  /** Who came from a complaint is asked what its causes and tests know apart. */
  private askForComplaint(): void {
    const from = location.hash === `#${FOR_COMPLAINT}` ? lastWalk() : undefined;
    const symptom = /^symptoms\/([a-z0-9-]+)\.html/.exec(from?.address ?? '')?.[1] ?? '';
    const all: Record<string, number[]> = JSON.parse(this.querySelector('.asked')?.textContent ?? '{}');
    const features = Object.hasOwn(all, symptom) ? all[symptom] : undefined;
    const names: readonly string[] = LAYOUT_FEATURES;
    for (const question of this.querySelectorAll<HTMLElement>('[data-feature]')) {
      const { feature = '' } = question.dataset;
      const at = names.indexOf(feature);
      const isAsked = features?.includes(at) ?? true;
      const isSaid = (this.draft.fields[`layout/${feature}`] ?? '') !== '';
      question.classList.toggle('not-asked', !isAsked && !isSaid);
    }
    this.querySelector('.ask-all')?.toggleAttribute('hidden', features === undefined);
    const says = this.querySelector('.asked-for');
    if (says && from && features)
      says.textContent = `Only what matters for “${from.title}” is asked. Answer what you can see; an open point stays open.`;
  }

  private askAll(): void {
    for (const question of this.querySelectorAll('.not-asked')) question.classList.remove('not-asked');
    this.querySelector('.ask-all')?.toggleAttribute('hidden', true);
    this.querySelector('.asked-for')?.replaceChildren('Answer what you can see. An open point stays open.');
  }

  private typed(target: EventTarget | null): void {
    if (!(target instanceof HTMLInputElement) || target.name === '') return;
    this.draft = { ...this.draft, fields: withTyped(this.draft.fields, target.name, target.value) };
    if (target.type === 'radio') fitQuestions(this, this.draft.fields);
  }

  /** @returns what is wrong, by the place where it is said */
  private faults(): Record<string, string> {
    const { fields } = this.draft;
    const faults: Record<string, string> = {};
    if ((fields.title ?? '').trim() === '') faults.title = 'It needs a name.';
    for (const path of REFERABLE_PATHS) {
      const typed = fields[ownField(path)] ?? '';
      const read = typed.trim() === '' ? undefined : readFigure(path, typed);
      if (read && !read.ok) faults[rowName(path)] = read.says;
    }
    const [one, other] = contradictionIn(saidLayout(fields)) ?? [];
    if (one && other)
      faults[`layout/${other}`] = `This and “${LAYOUT_LABELS[one]}” cannot both be so on one car.`;
    return faults;
  }

  private say(faults: Readonly<Record<string, string>>): void {
    for (const place of this.querySelectorAll<HTMLElement>('[data-says]')) {
      const fault = faults[place.dataset.says ?? ''];
      place.textContent = fault ?? place.dataset.hint ?? '';
      const row = place.closest('.field');
      row?.toggleAttribute('data-fault', fault !== undefined);
      row?.querySelector('[name]')?.setAttribute('aria-invalid', String(fault !== undefined));
    }
    this.querySelector<HTMLElement>('[data-fault] [name]')?.focus();
  }

  private async take(): Promise<void> {
    const faults = this.faults();
    this.say(faults);
    if (Object.keys(faults).length > 0) return;
    const { fields } = this.draft;
    this.draft = {
      ...this.draft,
      changed: new Date().toISOString(),
      fields: { ...fields, title: (fields.title ?? '').trim() },
    };
    await this.choose(this.draft);
  }

  private async choose(vehicle: VehicleDraft): Promise<void> {
    const place = this.querySelector('.outcome');
    if (!keepOwnVehicle(vehicle)) {
      place?.replaceChildren(unkeptWarning('A vehicle of your own cannot be used without it.'));
      return;
    }
    const { headertank } = window;
    const stays = headertank.chooseVehicle(vehicle.id);
    this.showList();
    const after = element('span');
    place?.replaceChildren(after);
    await loadScript('vehicle-chosen').catch(() => undefined);
    headertank.sayChosen?.(after, { id: vehicle.id, title: vehicle.fields.title ?? '' }, stays);
  }

  private showList(): void {
    const chosen = window.headertank.vehicle?.id;
    const rows = ownVehicles().map((vehicle) => this.row(vehicle, vehicle.id === chosen));
    const place = this.querySelector('.own-list');
    place?.replaceChildren(
      ...(rows.length > 0 ? [element('h2', {}, 'Your own, on this device'), ...rows] : []),
    );
    if (rows.length > 0) void this.offerMeasured();
  }

  /** What jobs measured on them is looked up when one is there. */
  private async offerMeasured(): Promise<void> {
    await loadScript('own-measured').catch(() => undefined);
    for (const vehicle of ownVehicles()) {
      const row = this.querySelector<HTMLElement>(`[data-own-row="${vehicle.id}"]`);
      if (row)
        await window.headertank.offerMeasured?.(row, vehicle, (fields) => {
          void this.choose({ ...vehicle, changed: new Date().toISOString(), fields });
          this.open({ ...vehicle, fields });
        });
    }
  }

  private row(vehicle: VehicleDraft, isChosen: boolean): HTMLElement {
    const { title = '' } = vehicle.fields;
    const named = (press: HTMLButtonElement, label: string) => {
      press.setAttribute('aria-label', `${label}: ${title}`);
      return press;
    };
    const act = (label: string, go: () => void) => named(button(label, go, 'quiet'), label);
    return element(
      'div',
      { class: 'own-row', 'data-own-row': vehicle.id },
      element('b', {}, title),
      isChosen ? ' (chosen)' : '',
      element(
        'p',
        { class: 'ways' },
        ...(isChosen ? [] : [act('Work on this', () => void this.choose(vehicle))]),
        act('Change', () => {
          this.open(vehicle);
          this.querySelector<HTMLElement>('[name="title"]')?.focus();
        }),
        act('Put it on the shelf', () => void this.toForm(vehicle)),
        act('Remove', () => this.takeOff(vehicle, isChosen)),
      ),
    );
  }

  private takeOff({ id, fields }: VehicleDraft, isChosen: boolean): void {
    if (!window.confirm(`Remove “${fields.title}” from this device? Cards of it keep what they hold.`))
      return;
    removeOwnVehicle(id);
    if (isChosen) window.headertank.chooseVehicle(undefined);
    if (this.draft.id === id) this.open(empty());
    this.showList();
  }

  /** The form of the shelf begins with what was said here; what stands there already stays. */
  private async toForm({ id, fields }: VehicleDraft): Promise<void> {
    await this.drafts.change(id, { id, changed: '', fields }, (now) => ({
      ...now,
      fields: { ...fields, ...now.fields },
    }));
    location.href = new URL('vehicle.html', window.headertank.root).href;
  }
}

/** The row in which a figure or a torque is asked and said. */
function rowName(path: string): string {
  return ownField(path).replace(/\/is$/, '');
}

function figureRow(path: string): HTMLElement {
  const { label = path, quantity } = generalRange(path) ?? {};
  const id = fieldId('vehicle', ownField(path));
  const usual = element('small', {}, quantity ? `usually ${quantityText(quantity)}` : '');
  return element(
    'div',
    { class: 'field figure own-more' },
    element('label', { for: id }, `${label} `, usual),
    element('input', { id, name: ownField(path), type: 'text', maxlength: '40' }),
    element('p', { class: 'says', 'data-says': rowName(path), 'data-hint': '' }),
  );
}

function empty(): VehicleDraft {
  return { id: newId(OWN_START), changed: '', fields: {} };
}

customElements.define('ht-own-vehicle', OwnVehicle);
