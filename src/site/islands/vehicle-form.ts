/** The form of a vehicle: kept at every key, checked by the shelf's own rules, drawn as it is typed, handed over as a file. */

import { dayText } from '../../model/day.ts';
import { HOST_KINDS } from '../../model/host-kinds.ts';
import { idFromTitle } from '../../model/note-file.ts';
import { vehiclePath } from '../../model/vehicle-file.ts';
import { fieldId } from '../vehicle/field-id.ts';
import '../browser/page-globals.ts';
import { DeviceStore } from '../browser/device-store.ts';
import { button, element } from '../browser/element.ts';
import { newId } from '../browser/ids.ts';
import { unkeptWarning } from '../browser/kept-fields.ts';
import { loadScript } from '../browser/load-script.ts';
import { saveFile } from '../browser/save-file.ts';
import { newFilePage } from '../note/host-address.ts';
import { fitQuestions } from '../vehicle/page/fit-questions.ts';
import { SameSource } from '../vehicle/page/same-source.ts';
import { isVehicleDraft, recordOf, saidLayout, type VehicleDraft } from '../vehicle/vehicle-draft.ts';

type Field = HTMLInputElement | HTMLSelectElement | HTMLTextAreaElement;

interface ShownFault {
  /** Where it is said: the name of a field, or of a figure's or a torque's row. */
  place: string;
  says: string;
  /** Nothing stands there yet. */
  isMissing: boolean;
}

const drafts = new DeviceStore<VehicleDraft>('vehicle-draft.', isVehicleDraft);

function isField(target: EventTarget | null): target is Field {
  return (
    target instanceof HTMLInputElement ||
    target instanceof HTMLSelectElement ||
    target instanceof HTMLTextAreaElement
  );
}

/** Where a fault of the record is said in the form. */
function placeOf([first, second]: readonly (string | number)[]): string {
  if (first === 'sources') return second === undefined ? 'known' : 'source';
  if (first === 'reviewed' || first === undefined) return 'title';
  return second === undefined || first === 'access' ? String(first) : `${first}/${second}`;
}

class VehicleForm extends HTMLElement {
  private draft: VehicleDraft = { id: newId('vehicle'), changed: '', fields: {} };
  private readonly visited = new Set<string>();
  /** Rows that somebody has gone on from: only there is it a fault that something has not been said. */
  private readonly left = new Set<string>();
  /** The row that is being written. */
  private at = '';
  private sources = new SameSource({});
  private readonly taken = new Set<string>();
  private waiting = 0;

  connectedCallback() {
    for (const id of JSON.parse(this.querySelector('.taken-ids')?.textContent ?? '[]'))
      this.taken.add(String(id));
    this.querySelector('fieldset.all')?.removeAttribute('disabled');
    this.querySelector('form')?.addEventListener('submit', (event) => event.preventDefault());
    this.addEventListener('input', (event) => this.typed(event.target));
    this.addEventListener('focusout', (event) => {
      if (isField(event.target) && event.target.value !== '') this.visited.add(rowOf(event.target));
      this.check();
    });
    this.addEventListener('focusin', () => void this.loadCheck(), { once: true });
    this.addEventListener('focusin', ({ target }) => {
      if (isField(target)) this.enter(rowOf(target));
    });
    this.addEventListener('click', ({ target }) => {
      const press = target instanceof Element ? target.closest('.as-before') : null;
      if (press) this.takeSource(press.closest<HTMLElement>('[data-entry]'));
    });
    window.addEventListener('beforeunload', (event) => {
      if (drafts.hasUnkept) event.preventDefault();
    });
    void this.begin();
  }

  private async begin(): Promise<void> {
    await drafts.ready();
    const [last] = drafts.list();
    if (last) this.draft = last;
    this.sources = new SameSource(this.draft.fields);
    this.fill();
    this.dataset.live = '';
    if (last) void this.loadCheck();
  }

  private async loadCheck(): Promise<void> {
    await loadScript('vehicle-check');
    this.check();
  }

  private place(selector: string): HTMLElement {
    const found = this.querySelector<HTMLElement>(selector);
    if (!found) throw new Error(`The form of a vehicle has no ${selector}`);
    return found;
  }

  private get fields(): Field[] {
    return [...this.querySelectorAll<Field>('[name]')];
  }

  private fill(): void {
    for (const row of this.querySelectorAll<HTMLElement>('[data-entry]')) {
      if ((this.draft.fields[`${row.dataset.entry}/is`] ?? '') !== '') this.openRow(row);
    }
    for (const field of this.fields) {
      const value = this.draft.fields[field.name] ?? '';
      if (field instanceof HTMLInputElement && field.type === 'radio') field.checked = field.value === value;
      else field.value = value;
    }
    fitQuestions(this, this.draft.fields);
  }

  /** A figure that stands there is asked for its source, a torque for its bolt as well. */
  private openRow(row: HTMLElement): void {
    if (row.querySelector('.origin')) return;
    const names = row.dataset.entry?.startsWith('torques/') ? ['bolt', 'origin'] : ['origin'];
    for (const name of names) {
      const template = this.querySelector<HTMLTemplateElement>(`template.${name}`);
      if (!template) continue;
      const part = template.content.cloneNode(true) as DocumentFragment;
      for (const field of part.querySelectorAll<HTMLElement>('[data-part]')) {
        const path = `${row.dataset.entry}/${field.dataset.part}`;
        field.setAttribute('name', path);
        field.id = fieldId('vehicle', path);
        field.parentElement?.querySelector('label')?.setAttribute('for', field.id);
      }
      row.append(part);
    }
  }

  private enter(row: string): void {
    if (this.at !== '' && this.at !== row) this.left.add(this.at);
    this.at = row;
  }

  private takeSource(row: HTMLElement | null): void {
    for (const [part, value] of this.sources.values(this.draft.fields)) {
      const field = row?.querySelector<Field>(`[data-part="${part}"]`);
      if (!field) continue;
      field.value = value;
      void this.typed(field);
    }
    row?.querySelector<HTMLElement>('[data-part="page"]')?.focus();
  }

  private async typed(target: EventTarget | null): Promise<void> {
    if (!isField(target) || target.name === '') return;
    const { name, value } = target;
    const row = target.closest<HTMLElement>('[data-entry]');
    if (row && name.endsWith('/is') && value.trim() !== '') this.openRow(row);
    if (row) this.sources.said(row, target, value);
    this.draft = { ...this.draft, fields: { ...this.draft.fields, [name]: value } };
    if (row) this.sources.offer(row, this.draft.fields);
    if (name.startsWith('layout/')) fitQuestions(this, this.draft.fields);
    window.clearTimeout(this.waiting);
    this.waiting = window.setTimeout(() => this.check(), 250);
    const stays = await drafts.change(this.draft.id, this.draft, (now) => ({
      ...now,
      fields: { ...now.fields, [name]: value },
    }));
    this.place('.kept').textContent = stays ? 'Kept on this device as you type.' : '';
    if (!stays)
      this.place('.unkept').replaceChildren(unkeptWarning('Save the file before you leave this page.'));
  }

  private check(): void {
    const check = window.headertank.vehicleCheck;
    if (!check) return;
    const record = recordOf(this.draft.fields, dayText(new Date()));
    const id = idFromTitle(this.draft.fields.title?.trim() ?? '');
    const { faults, readAs, text, ladder, circuit } = check(id === '' ? 'vehicle' : id, {
      ...record,
      layout: Object.fromEntries(
        Object.entries(saidLayout(this.draft.fields)).filter(([, value]) => value !== undefined),
      ),
    });
    const shown: ShownFault[] = faults.map(({ path, says, isMissing }) => ({
      place: placeOf(path),
      says: isMissing ? missing(path) : says,
      isMissing,
    }));
    if (this.taken.has(id))
      shown.push({ place: 'title', says: 'The shelf has a vehicle of this name.', isMissing: false });
    for (const place of this.querySelectorAll<HTMLElement>('[data-says]')) this.showAt(place, shown, readAs);
    this.place('.drawn-ladder').innerHTML = ladder;
    this.place('.drawn-circuit').innerHTML = circuit ?? '';
    this.showResult(shown, text, id);
  }

  private showAt(
    place: HTMLElement,
    faults: readonly ShownFault[],
    readAs: readonly { path: readonly (string | number)[]; says: string }[],
  ): void {
    const name = place.dataset.says ?? '';
    const here = this.visited.has(name) ? faults.filter((each) => each.place === name) : [];
    // What stands there and is wrong comes first; what is still missing waits until the row is left.
    const fault = (here.find(({ isMissing }) => !isMissing) ?? here.find(() => this.left.has(name)))?.says;
    const read = readAs.find(({ path }) => placeOf(path) === name)?.says;
    const text = fault ?? read ?? place.dataset.hint ?? '';
    if (place.textContent !== text) place.textContent = text;
    const row = place.closest('.field');
    row?.toggleAttribute('data-fault', fault !== undefined);
    row?.querySelector('[name]')?.setAttribute('aria-invalid', String(fault !== undefined));
  }

  private showResult(faults: readonly ShownFault[], text: string | undefined, id: string): void {
    const parts: Node[] = [];
    if (faults.length > 0 && this.draft.changed + this.visited.size !== '0') {
      const list = faults.map(({ place, says }) => {
        const link = element('a', { href: '#' }, this.labelOf(place));
        link.addEventListener('click', (event) => {
          event.preventDefault();
          this.visited.add(place);
          this.left.add(place);
          this.check();
          this.fieldAt(place)?.focus();
        });
        return element('li', {}, link, `: ${says}`);
      });
      parts.push(
        element('h2', {}, `Still to say: ${faults.length}`),
        element('ul', { class: 'plain-list faults' }, ...list),
      );
    }
    if (faults.length === 0 && text !== undefined) parts.push(...this.ready(text, id));
    parts.push(button('Begin another vehicle', () => void this.another(), 'quiet'));
    const place = this.place('.result');
    const print = parts.map((part) => part.textContent).join('\n');
    if (place.dataset.print === print) return;
    place.dataset.print = print;
    place.replaceChildren(...parts);
  }

  private async another(): Promise<void> {
    const said = Object.values(this.draft.fields).some((value) => value !== '');
    if (said && !window.confirm('Remove what stands here from this device?')) return;
    await drafts.remove(this.draft.id);
    this.draft = { id: newId('vehicle'), changed: '', fields: {} };
    this.visited.clear();
    this.left.clear();
    this.at = '';
    this.sources = new SameSource({});
    for (const part of this.querySelectorAll('[data-entry] > :is(.origin, .bolt, .as-before)')) part.remove();
    this.fill();
    this.check();
  }

  private fieldAt(place: string): HTMLElement | null {
    const says = this.querySelector(`[data-says="${place}"]`);
    return says?.closest('.field')?.querySelector<HTMLElement>('[name]') ?? null;
  }

  private labelOf(place: string): string {
    const row = this.querySelector(`[data-says="${place}"]`)?.closest('.field');
    const label = row?.querySelector('legend, label');
    return label?.firstChild?.textContent?.trim() ?? place;
  }

  private ready(text: string, id: string): Node[] {
    const path = `content/${vehiclePath(id)}`;
    const save = button('Save the file', () => saveFile(`${id}.yaml`, text, 'application/yaml'), 'main');
    const { repository, host, branch } = this.dataset;
    const kind = HOST_KINDS.find((each) => each === host);
    const page = repository
      ? newFilePage({ address: repository, host: kind, branch }, path, text)
      : undefined;
    const open =
      page &&
      element(
        'a',
        { class: 'button', href: page.href, target: '_blank', rel: 'noopener noreferrer' },
        'Open the host’s page for it',
      );
    return [
      element('h2', {}, 'Ready'),
      element(
        'p',
        {},
        'Save the file and hand it to whoever keeps the shelf: npm run take-in reads it. Somebody else reads it before it stands there.',
      ),
      element('p', { class: 'ways' }, save, ...(open ? [open] : [])),
      element('p', { class: 'soft' }, 'The file it becomes: ', element('code', {}, path)),
      element('pre', { class: 'file', tabindex: '0', 'aria-label': 'The file' }, text),
    ];
  }
}

/** The row that a field belongs to: of a figure's source, the figure. */
function rowOf(field: Field): string {
  return field.closest<HTMLElement>('[data-entry]')?.dataset.entry ?? field.name;
}

const PARTS: Readonly<Record<string, string>> = {
  from: 'Where is this figure from?',
  sure: 'How sure is it?',
  bolt: 'Which thread?',
  into: 'What is it screwed into?',
};

function missing([group, , part]: readonly (string | number)[]): string {
  const asks = group === 'figures' || group === 'torques' ? PARTS[String(part)] : undefined;
  return (
    asks ??
    (group === 'layout' ? 'This decides what a test means: look at the car.' : 'Nothing is written here.')
  );
}

customElements.define('ht-vehicle-form', VehicleForm);
