/** The note form: kept at every key, checked by the shelf's own rules, handed over as the file it becomes. */
import type { NoteFault } from '../../library/check-note.ts';
import { dayText } from '../../model/day.ts';
import { HOST_KINDS } from '../../model/host-kinds.ts';
import type { Note } from '../../model/note.ts';
import { idFromTitle, notePath, noteText } from '../../model/note-file.ts';
import '../browser/page-globals.ts';
import { merged } from '../browser/device-store.ts';
import { button, element } from '../browser/element.ts';
import { followFields, unkeptWarning } from '../browser/kept-fields.ts';
import { loadScript } from '../browser/load-script.ts';
import { keepsAnything } from '../browser/open-keeper.ts';
import { saveFile } from '../browser/save-file.ts';
import { newFilePage } from '../note/host-address.ts';
import type { DraftField, NoteDraft } from '../note/note-draft.ts';
import { DRAFT_FIELDS, drafts, newDraft, noteOf } from '../note/page/note-drafts.ts';
import { dayAndTimeText } from '../text/day-and-time.ts';

type Field = HTMLInputElement | HTMLSelectElement | HTMLTextAreaElement;

/** Which field of the form a fault of the note belongs to. */
function fieldOf({ path }: NoteFault): DraftField {
  const [first, second] = path;
  if (first === 'sources') return 'source';
  if (first === 'corrects') return second === 'source' ? 'is-from' : second === 'is' ? 'is' : 'figure';
  if (first === 'reviewed') return 'date';
  return DRAFT_FIELDS.find((name) => name === first) ?? 'vehicle';
}

class NoteForm extends HTMLElement {
  private draft: NoteDraft = newDraft();
  /** What this window last saw kept, by field. */
  private seen: NoteDraft = this.draft;
  /** Fields somebody has been in: only there a fault is told at the field before the end. */
  /** Changes on their way to the device. */
  private writing = 0;
  private readonly visited = new Set<string>();
  private readonly taken = new Set<string>();
  /** What the last check found. */
  private faults: readonly { field: DraftField }[] = [];
  /** Figures as the shelf has them, by vehicle and path. */
  private present: Record<string, Record<string, string>> = {};

  connectedCallback() {
    for (const id of JSON.parse(this.querySelector('.taken-ids')?.textContent ?? '[]'))
      this.taken.add(String(id));
    this.present = JSON.parse(this.querySelector('.present-figures')?.textContent ?? '{}');
    this.querySelector('fieldset')?.removeAttribute('disabled');
    this.querySelector('form')?.addEventListener('submit', (event) => event.preventDefault());
    this.addEventListener('input', (event) => this.typed(event.target));
    this.addEventListener('change', (event) => this.left(event.target));
    this.addEventListener('focusout', (event) => this.left(event.target));
    this.addEventListener('focusin', () => void this.loadCheck(), { once: true });
    drafts.whenChanged(() => this.changedElsewhere());
    window.addEventListener('hashchange', () => this.openFromAddress());
    window.addEventListener('beforeunload', (event) => {
      if (drafts.hasUnkept) event.preventDefault();
    });
    document.addEventListener('headertank:change', () => this.offerVehicle());
    void this.begin();
  }

  private async begin(): Promise<void> {
    await drafts.ready();
    this.openFromAddress();
    this.dataset.live = '';
    if (!(await keepsAnything())) this.tellUnkept();
  }

  private place(selector: string): HTMLElement {
    const found = this.querySelector<HTMLElement>(selector);
    if (!found) throw new Error(`The note form has no ${selector}`);
    return found;
  }

  private field(name: DraftField): Field | null {
    return this.querySelector<Field>(`[name="${name}"]`);
  }

  /** `#draft=<id>` opens a note of this device; `#vehicle=<id>` and the like begin one. A place on this page is neither. */
  private openFromAddress(): void {
    if (location.hash.length > 1 && document.getElementById(location.hash.slice(1))) return;
    const asked = new URLSearchParams(location.hash.slice(1, 2000));
    const kept = drafts.get(asked.get('draft') ?? '');
    if (kept) {
      this.show(kept);
      void this.loadCheck();
      return;
    }
    const draft = newDraft();
    for (const name of ['vehicle', 'symptom', 'cause', 'procedure'] as const) {
      const value = asked.get(name) ?? '';
      const options = this.field(name);
      if (
        options instanceof HTMLSelectElement &&
        [...options.options].some((option) => option.value === value)
      )
        draft[name] = value;
    }
    // What somebody saw in a walk and none of its answers said.
    for (const name of ['title', 'text'] as const) draft[name] = asked.get(name) ?? '';
    this.show(draft);
    this.offerVehicle();
  }

  private show(draft: NoteDraft): void {
    this.draft = draft;
    this.seen = draft;
    this.visited.clear();
    for (const name of DRAFT_FIELDS) {
      const field = this.field(name);
      if (field) field.value = draft[name];
    }
    this.showCheck();
    this.showList();
  }

  /** A new note hangs on the chosen vehicle until somebody says otherwise. */
  private offerVehicle(): void {
    const { vehicle } = window.headertank;
    const field = this.field('vehicle');
    if (!vehicle || vehicle.own || !field || this.draft.changed !== '' || this.draft.vehicle !== '') return;
    field.value = vehicle.id;
    this.draft = { ...this.draft, vehicle: field.value };
    this.seen = this.draft;
    this.showCheck();
  }

  private async typed(target: EventTarget | null): Promise<void> {
    const name = DRAFT_FIELDS.find((each) => this.field(each) === target);
    if (!name) return;
    const value = this.field(name)?.value ?? '';
    const before = this.seen[name];
    history.replaceState(null, '', `#draft=${this.draft.id}`);
    const { id } = this.draft;
    this.seen = { ...this.seen, [name]: value };
    this.writing += 1;
    const stays = await drafts.change(id, this.draft, (now) => {
      const { text, other } = merged(before, now[name], value);
      const next = { ...now, [name]: text, sent: '' };
      return other === undefined ? next : { ...next, text: `${next.text}\n\n(Another window: ${other})` };
    });
    this.writing -= 1;
    if (this.draft.id !== id) return;
    this.draft = drafts.get(id) ?? this.draft;
    this.place('.kept').textContent = stays ? 'Kept on this device as you type.' : '';
    if (!stays) this.tellUnkept();
    this.showCheck();
    this.showList();
  }

  private left(target: EventTarget | null): void {
    const name = DRAFT_FIELDS.find((each) => this.field(each) === target);
    if (!name) return;
    this.visited.add(name);
    this.showCheck();
  }

  /** Another window has written: fields that nobody is in here follow it. */
  private changedElsewhere(): void {
    if (this.writing > 0) return;
    const now = drafts.get(this.draft.id);
    if (now && now.changed !== this.draft.changed) {
      const taken = followFields(DRAFT_FIELDS, (name) => this.field(name), now);
      this.seen = { ...this.seen, ...Object.fromEntries(taken) };
      this.draft = now;
      this.showCheck();
    }
    this.showList();
  }

  private tellUnkept(): void {
    this.place('.unkept').replaceChildren(
      unkeptWarning('What you write is only on this page: save the file before you leave it.'),
    );
  }

  /** The rules of the shelf, fetched once somebody is in a field: most who read this page write nothing. */
  private async loadCheck(): Promise<void> {
    try {
      await loadScript('note-check');
      this.showCheck();
    } catch {
      this.place('.result').replaceChildren(
        element(
          'p',
          {},
          'The check cannot be fetched: there is no connection, and this device has not kept the site yet. What you write is kept. ',
          button('Try again', () => void this.loadCheck()),
        ),
      );
    }
  }

  private showCheck(): void {
    this.place('.corrected').hidden = this.draft.figure === '';
    this.showPresent();
    const check = window.headertank.noteCheck;
    if (!check) {
      const save = button(
        'Save',
        () => void this.loadCheck().then(() => this.showAllFaults(this.faults)),
        'main',
      );
      this.place('.result').replaceChildren(save);
      return;
    }
    const note = noteOf(this.draft);
    const id = idFromTitle(this.draft.title.trim());
    const checked = check(id === '' ? 'note' : id, note);
    const faults: { field: DraftField; says: string }[] = checked.faults.map((fault) => ({
      field: fieldOf(fault),
      // On the shelf a field is a line of a file; here it is a box that stands empty.
      says: fault.isMissing ? 'Nothing is written here.' : fault.says,
    }));
    if (note.title !== undefined && id === '')
      faults.push({ field: 'title', says: 'The title has no letter that a file can be named by.' });
    if (this.taken.has(id))
      faults.push({
        field: 'title',
        says: 'A note on the shelf has this title. Say what is different here.',
      });
    // One box may fill two fields of the file: what is wrong with it is said once.
    const told = faults.filter(
      ({ field, says }, at) => faults.findIndex((each) => each.field === field && each.says === says) === at,
    );
    for (const name of DRAFT_FIELDS) this.showFault(name, told.find(({ field }) => field === name)?.says);
    this.faults = told;
    this.showResult(checked.ready, id, told);
  }

  private showFault(name: DraftField, says: string | undefined): void {
    const field = this.field(name);
    const place = this.querySelector(`[data-says="${name}"]`);
    if (!field || !place) return;
    const shown = says !== undefined && this.visited.has(name);
    field.setAttribute('aria-invalid', String(shown));
    field.closest('.field')?.toggleAttribute('data-fault', shown);
    const text = shown ? says : (place.getAttribute('data-hint') ?? '');
    if (place.textContent !== text) place.textContent = text;
  }

  private showResult(
    note: Note | undefined,
    id: string,
    faults: { field: DraftField; says: string }[],
  ): void {
    const parts: Node[] = [];
    if (faults.length > 0) {
      parts.push(button(`Save: ${faults.length} to go`, () => this.showAllFaults(faults), 'main'));
    }
    // Nobody has done anything wrong before a key is pressed.
    if (faults.length > 0 && (this.draft.changed !== '' || this.visited.size > 0)) {
      const list = faults.map(({ field, says }) => {
        const link = element('a', { href: `#note-${field}` }, this.labelOf(field));
        link.addEventListener('click', (event) => {
          event.preventDefault();
          this.visited.add(field);
          this.field(field)?.focus();
          this.showCheck();
        });
        return element('li', {}, link, `: ${says}`);
      });
      parts.push(element('h2', {}, 'Still to fix'), element('ul', { class: 'plain-list faults' }, ...list));
    }
    if (faults.length === 0 && note) parts.push(...this.ready(note, id));
    const place = this.place('.result');
    // The same again would take the focus from a button somebody is on.
    const print = parts.map((part) => part.textContent).join('\n');
    if (place.dataset.print === print) return;
    place.dataset.print = print;
    place.replaceChildren(...parts);
  }

  /** At every field what is wrong there, and to the first of them. */
  private showAllFaults(faults: readonly { field: DraftField }[]): void {
    for (const { field } of faults) this.visited.add(field);
    this.showCheck();
    const first = DRAFT_FIELDS.find((name) => faults.some(({ field }) => field === name));
    if (first) this.field(first)?.focus();
  }

  /** Beside the figure that should be otherwise: what the shelf has now for the note's vehicle. */
  private showPresent(): void {
    const { vehicle, figure } = this.draft;
    const now = this.present[vehicle]?.[figure];
    const words =
      figure === '' || vehicle === ''
        ? ''
        : now === undefined
          ? 'The shelf has no figure of this vehicle for it.'
          : `Now on the shelf: ${now}.`;
    const place = this.place('.present');
    if (place.textContent !== words) place.textContent = words;
  }

  private labelOf(field: DraftField): string {
    return this.querySelector(`label[for="note-${field}"]`)?.textContent ?? field;
  }

  private ready(note: Note, id: string): Node[] {
    const path = `content/${notePath(id, note)}`;
    const text = noteText(note);
    const name = `${id}.yaml`;
    const file = element('pre', { class: 'file', tabindex: '0', 'aria-label': 'The file' }, text);
    const save = button('Save the file', () => {
      saveFile(name, text, 'application/yaml');
      void this.markSent(`saved as ${name}`);
    });
    const copy = button('Copy the text', () => this.copy(text, copy), 'quiet');
    const page = this.hostPage(path, text);
    const ways: Node[] = [];
    if (page) {
      const open = element(
        'a',
        { class: 'button main', href: page.href, target: '_blank', rel: 'noopener noreferrer' },
        'Open the host’s page for it',
      );
      open.addEventListener('click', () => {
        if (!page.carriesText) void this.copy(text, copy);
        void this.markSent('opened on the host’s page');
      });
      ways.push(open, save, copy);
    } else {
      save.className = 'main';
      ways.push(save, copy);
    }
    return [
      element('h2', {}, 'Ready'),
      element('p', {}, this.wayOn(page?.carriesText)),
      element('p', { class: 'ways' }, ...ways),
      element('p', { class: 'soft' }, 'The file it becomes: ', element('code', {}, path)),
      file,
    ];
  }

  private wayOn(carriesText: boolean | undefined): string {
    if (carriesText === undefined) return 'Save the file and hand it to whoever keeps the shelf.';
    return carriesText
      ? 'The host’s page opens with name and text filled in. Propose the change there; somebody else reads it before it stands on the shelf.'
      : 'The text is copied when the host’s page opens: paste it into the large box there, and propose the change.';
  }

  private hostPage(path: string, text: string) {
    const { repository, host, branch } = this.dataset;
    if (!repository) return undefined;
    return newFilePage(
      { address: repository, host: HOST_KINDS.find((kind) => kind === host), branch },
      path,
      text,
    );
  }

  private async copy(text: string, pressed: HTMLButtonElement): Promise<void> {
    try {
      await navigator.clipboard.writeText(text);
      pressed.textContent = 'Copied';
    } catch {
      pressed.textContent = 'Copying is blocked here; mark the text below';
    }
  }

  private async markSent(how: string): Promise<void> {
    await drafts.change(this.draft.id, this.draft, (now) => ({ ...now, sent: new Date().toISOString() }));
    this.draft = drafts.get(this.draft.id) ?? this.draft;
    this.place('.kept').textContent = `It was ${how}. It stays in the list below until you remove it.`;
    this.showList();
  }

  /** Notes of this device, the ones not handed over first. */
  private showList(): void {
    const all = drafts.list().sort((a, b) => Number(a.sent !== '') - Number(b.sent !== ''));
    const rows = all.map((draft) => {
      const open = element('a', { href: `#draft=${draft.id}` }, draft.title.trim() || 'Note without a title');
      if (draft.id === this.draft.id) open.setAttribute('aria-current', 'true');
      const day = dayAndTimeText(draft.sent || draft.changed);
      const state = draft.sent ? `handed over ${day}` : `not handed over, written ${day}`;
      const off = button('Remove', () => this.askRemove(draft, row), 'quiet');
      off.setAttribute('aria-label', `Remove: ${draft.title || 'note without a title'}`);
      const row = element(
        'li',
        { class: 'row' },
        element('span', {}, open, element('br'), element('small', {}, state)),
        off,
      );
      return row;
    });
    const lost = drafts.unreadable().map(({ id, text }) =>
      element(
        'li',
        { class: 'row' },
        'One note here cannot be read by this version. ',
        button('Save it as it is', () => saveFile(`${id}.json`, text, 'application/json'), 'quiet'),
        button('Remove it', () => void this.removeLost(id), 'quiet'),
      ),
    );
    const waiting = all.filter(({ sent }) => sent === '').length;
    const again = button('Write another', () => {
      history.pushState(null, '', location.pathname);
      this.show(newDraft());
      this.offerVehicle();
      this.field('title')?.focus();
    });
    this.place('.unsent').replaceChildren(
      ...(rows.length + lost.length > 0
        ? [
            element('h2', {}, 'Notes on this device'),
            element('ul', { class: 'plain-list' }, ...rows, ...lost),
            again,
            ...(waiting > 1 ? [button('Save all as one file', () => void this.saveAll(), 'quiet')] : []),
          ]
        : []),
    );
  }

  private async removeLost(id: string): Promise<void> {
    const back = await drafts.removeUnreadable(id);
    const told = this.place('.kept');
    const undo = button('Undo', async () => {
      told.textContent = '';
      await back();
      this.showList();
    });
    told.replaceChildren('The note that cannot be read is removed. ', undo);
    this.showList();
    undo.focus();
  }

  /** Every note that is ready and not handed over, as one file: no card and nothing of a customer goes with them. */
  private async saveAll(): Promise<void> {
    await loadScript('job-transfer').catch(() => undefined);
    const told = this.place('.kept');
    const transfer = window.headertank.jobTransfer;
    if (!transfer) {
      told.textContent =
        'This needs a part of the site that cannot be fetched just now. Save the notes one by one.';
      return;
    }
    saveFile(`notes-${dayText(new Date())}.json`, transfer.exported([], drafts.list()), 'application/json');
    told.textContent =
      'The notes that are ready are saved as one file, for whoever keeps the shelf: npm run take-in.';
  }

  private askRemove(draft: NoteDraft, row: HTMLElement): void {
    const question = draft.sent
      ? 'Remove it from this device?'
      : 'It was not handed over. Remove it for good?';
    const yes = button('Remove it', async () => {
      await drafts.remove(draft.id);
      if (draft.id === this.draft.id) {
        history.replaceState(null, '', location.pathname);
        this.show(newDraft());
      } else this.showList();
    });
    row.replaceChildren(
      element('span', {}, question),
      yes,
      button('Keep it', () => this.showList(), 'quiet'),
    );
    yes.focus();
  }
}

customElements.define('ht-note-form', NoteForm);
