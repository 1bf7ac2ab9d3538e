/** The job card: several on one device, kept at every key, printed as sheets, carried on as JSON or as a note. */
import { JOINTS, type Joint } from '../../model/figures.ts';
import type { Job } from '../../model/job.ts';
import { LITRE_WAYS } from '../../model/job.ts';
import { quantityText } from '../../model/show-quantity.ts';
import type { JobPlan } from '../job/job-plan.ts';
import '../page-globals.ts';
import { dayText } from '../../model/day.ts';
import { withKnownDraft } from '../job/draft.ts';
import { closeItem, stillOpen, withFollowUp, withOpenItem } from '../job/follow-up.ts';
import { jobs, openJobId, setOpenJob } from '../job/job-store.ts';
import { litresSentence, readLitres } from '../job/litres.ts';
import { jobTitle, newJob } from '../job/new-job.ts';
import { noteFromJob } from '../job/note-from-job.ts';
import { isOnShelf } from '../job/on-shelf.ts';
import { switchTo } from '../job/open-card.ts';
import { cardPaper, customerPaper, type Letterhead, partsPaper } from '../job/paper.ts';
import { exported, imported, LARGEST } from '../job/transfer.ts';
import { keepsAnything, merged, newId } from '../kept/device-store.ts';
import { drafts } from '../kept/note-drafts.ts';
import { button, element } from './element.ts';
import { loadPlan, PlanForCard } from './job-plan.ts';
import { followFields, unkeptWarning } from './kept-fields.ts';
import { saveFile } from './save-file.ts';

const TEXTS = ['name', 'plate', 'distance', 'said', 'found', 'did', 'watch'] as const;
type TextName = (typeof TEXTS)[number];
const SHEETS = ['card', 'customer', 'parts'] as const;
type Sheet = (typeof SHEETS)[number];

/** Where the card is not laid out beside itself: the width at which pages/job.astro does so. */
const IN_ONE_COLUMN = matchMedia('(max-width: 69.99rem)');

class JobCard extends HTMLElement {
  private job: Job = newJob();
  /** What this window last saw kept. */
  private seen: Job = this.job;
  /** What the proven cause asks for, once it is there; undefined for a cause this shelf has no plan for. */
  private plan: { cause: string; plan: JobPlan | undefined } | undefined;

  connectedCallback() {
    this.querySelector('fieldset')?.removeAttribute('disabled');
    this.querySelector('form')?.addEventListener('submit', (event) => event.preventDefault());
    this.addEventListener('input', (event) => this.typed(event.target));
    this.addEventListener('keydown', (event) => this.enterAdds(event));
    for (const [selector, press] of this.presses()) this.place(selector).addEventListener('click', press);
    window.addEventListener('storage', () => this.changedElsewhere());
    window.addEventListener('hashchange', () => this.readAddress());
    window.addEventListener('beforeunload', (event) => {
      if (jobs.hasUnkept) event.preventDefault();
    });
    // Printed from the form, what comes out is the card and not its empty boxes.
    window.addEventListener('beforeprint', () => {
      if (this.dataset.view === 'form') this.layOut('card');
    });
    document.addEventListener('headertank:change', () => {
      // A vehicle whose record was renamed has its new id on the card by now.
      this.job = jobs.get(this.job.id) ?? this.job;
      this.showAll();
      this.draft();
    });
    this.input('.import').addEventListener('change', () => this.takeFile());
    this.readAddress();
    if (!keepsAnything()) this.tellUnkept();
    this.dataset.live = '';
  }

  private presses(): [string, () => void][] {
    return [
      ['.new-card', () => this.open(newJob())],
      ['.take-vehicle', () => this.takeVehicle()],
      ['.add-reading', () => this.addReading()],
      ['.add-litres', () => this.addLitres()],
      ['.add-remark', () => this.addRemark()],
      ['.add-open', () => this.addOpen()],
      ['.to-note', () => this.makeNote()],
      ['.export-one', () => this.export([this.job])],
      ['.export-all', () => this.export(jobs.list())],
      ['.import-cards', () => this.input('.import').click()],
      ['.remove-card', () => this.askRemove()],
      ['.clear-all', () => this.askClear()],
      ['.print', () => window.print()],
    ];
  }

  private place(selector: string): HTMLElement {
    const found = this.querySelector<HTMLElement>(selector);
    if (!found) throw new Error(`The job card has no ${selector}`);
    return found;
  }

  private input(selector: string): HTMLInputElement {
    const found = this.place(selector);
    if (!(found instanceof HTMLInputElement)) throw new Error(`${selector} is no field`);
    return found;
  }

  private field(name: TextName): HTMLInputElement | HTMLTextAreaElement | null {
    return this.querySelector(`[name="${name}"]`);
  }

  /** `#<card>` opens a card, `#<card>/customer` its sheet; without either the open card, or a new one. */
  private readAddress(): void {
    const [id = '', sheet] = location.hash.slice(1, 200).split('/');
    const job = jobs.get(id) ?? jobs.get(openJobId() ?? '') ?? jobs.list()[0];
    this.take(job ?? newJob());
    this.showSheet(SHEETS.find((each) => each === sheet));
  }

  private open(job: Job): void {
    history.pushState(null, '', `#${job.id}`);
    this.take(job);
    this.showSheet(undefined);
    this.field('name')?.focus();
  }

  private take(job: Job): void {
    this.job = job;
    this.seen = job;
    switchTo(jobs.get(job.id));
    for (const name of TEXTS) {
      const field = this.field(name);
      if (field) field.value = job[name];
    }
    this.showAll();
    for (const part of this.parts()) part.open = 'filled' in part.dataset || !IN_ONE_COLUMN.matches;
  }

  private parts(): Iterable<HTMLDetailsElement> {
    return this.querySelectorAll<HTMLDetailsElement>('details.part');
  }

  /** In one column a part with nothing in it is a line, until somebody opens it or something comes into it. */
  private unfoldFilled(): void {
    for (const part of this.parts()) {
      const isFilled = part.querySelector('li') !== null;
      if (isFilled && !('filled' in part.dataset)) part.open = true;
      part.toggleAttribute('data-filled', isFilled);
    }
  }

  /** Reads what is kept, changes it, keeps it. */
  private change(change: (job: Job) => Job): void {
    const { vehicle } = window.headertank;
    // A card that begins with a vehicle chosen is that vehicle's.
    const start =
      vehicle && !jobs.get(this.job.id) && !this.job.vehicle
        ? { ...this.job, vehicle: { id: vehicle.id, title: vehicle.title } }
        : this.job;
    const stays = jobs.change(start.id, start, change);
    this.job = jobs.get(this.job.id) ?? this.job;
    if (stays) {
      setOpenJob(this.job.id);
      this.place('.unkept').replaceChildren();
    } else this.tellUnkept();
    document.dispatchEvent(new CustomEvent('headertank:job'));
    if (location.hash === '') history.replaceState(null, '', `#${this.job.id}`);
    this.showAll();
  }

  private typed(target: EventTarget | null): void {
    const name = TEXTS.find((each) => this.field(each) === target);
    if (!name) return;
    const value = this.field(name)?.value ?? '';
    const before = this.seen[name];
    this.change((now) => {
      const { text, other } = merged(before, now[name], value);
      const next = { ...now, [name]: text };
      if (other === undefined) return next;
      const remark = {
        id: newId('remark'),
        at: new Date().toISOString(),
        text: `Another window wrote: ${other}`,
      };
      return { ...next, remarks: [...next.remarks, remark] };
    });
    this.seen = { ...this.seen, [name]: value };
  }

  /** In a line of fields the Enter key does what the button at its end does. */
  private enterAdds(event: KeyboardEvent): void {
    if (event.key !== 'Enter' || !(event.target instanceof HTMLInputElement)) return;
    const press = event.target.closest('.add-line')?.querySelector('button');
    if (!press) return;
    event.preventDefault();
    press.click();
  }

  private changedElsewhere(): void {
    const now = jobs.get(this.job.id);
    if (now && now.changed !== this.job.changed) {
      const taken = followFields(TEXTS, (name) => this.field(name), now);
      this.seen = { ...this.seen, ...Object.fromEntries(taken) };
      this.job = now;
    }
    this.showAll();
  }

  private tellUnkept(): void {
    this.place('.unkept').replaceChildren(
      unkeptWarning(
        'The card is only on this page: export it or print it before you leave. ',
        button('Export it now', () => this.export([this.job])),
      ),
    );
  }

  private showAll(): void {
    this.showCards();
    this.showVehicle();
    this.showAnswers();
    this.showPlan();
    this.showOpen();
    this.showReadings();
    this.showLitres();
    this.showTorques();
    this.showRemarks();
    this.unfoldFilled();
  }

  private showCards(): void {
    const all = jobs.list();
    const rows = all.map((job) => {
      const open = stillOpen(job);
      const link = element('a', { href: `#${job.id}` }, jobTitle(job));
      if (job.id === this.job.id) link.setAttribute('aria-current', 'true');
      return element('li', {}, link, open.length > 0 ? ` Still open: ${open.join('; ')}` : '');
    });
    const lost = jobs.unreadable().map(({ id, text }) =>
      element(
        'li',
        {},
        'One card here cannot be read by this version. ',
        button('Save it as it is', () => saveFile(`${id}.json`, text, 'application/json'), 'quiet'),
      ),
    );
    this.place('.cards').replaceChildren(...rows, ...lost);
    this.place('.has-cards').hidden = rows.length + lost.length === 0;
    for (const name of ['.export-all', '.clear-all']) this.place(name).hidden = all.length === 0;
    this.place('.remove-card').hidden = !jobs.get(this.job.id);
    for (const [sheet, link] of this.sheetLinks()) link.href = `#${this.job.id}/${sheet}`;
  }

  private sheetLinks(): [Sheet, HTMLAnchorElement][] {
    return SHEETS.flatMap((sheet): [Sheet, HTMLAnchorElement][] => {
      const links = this.querySelectorAll<HTMLAnchorElement>(`a[data-sheet="${sheet}"]`);
      return [...links].map((link) => [sheet, link]);
    });
  }

  private showVehicle(): void {
    const { vehicle: chosen, root } = window.headertank;
    const { vehicle, complaint } = this.job;
    const take = this.place('.take-vehicle');
    take.hidden = !chosen || chosen.id === vehicle?.id;
    take.textContent = `Take ${chosen?.title ?? ''}`;
    const link = (folder: string, { id, title }: { id: string; title: string }) =>
      element('a', { href: new URL(`${folder}/${id}.html`, root).href }, title);
    this.place('.vehicle').replaceChildren(
      !vehicle
        ? 'none yet; choose it under Vehicles, or take the chosen one'
        : isOnShelf(vehicle.id)
          ? link('vehicles', vehicle)
          : `${vehicle.title}. It is no longer on the shelf: its figures are not here, and what the card has of it stays.`,
    );
    this.place('.complaint').replaceChildren(
      complaint ? link('symptoms', complaint) : 'none yet; a walk brings it along',
    );
  }

  private takeVehicle(): void {
    const { vehicle } = window.headertank;
    if (vehicle) this.change((job) => ({ ...job, vehicle: { id: vehicle.id, title: vehicle.title } }));
  }

  private showAnswers(): void {
    const { answers, proven } = this.job;
    const rows = answers.map(({ asked, answer }) =>
      element('li', {}, element('span', { class: 'soft' }, asked), ' ', element('b', {}, answer)),
    );
    this.place('.answers-given').replaceChildren(
      ...(rows.length > 0
        ? [element('ul', { class: 'plain-list' }, ...rows)]
        : [element('p', { class: 'soft' }, 'None. At the foot of a walk: “To the job card”.')]),
      ...(proven ? [element('p', {}, 'Proven: ', element('b', {}, proven.title))] : []),
    );
  }

  private ownVehicle() {
    const { vehicle } = window.headertank;
    return vehicle && vehicle.id === this.job.vehicle?.id ? vehicle : undefined;
  }

  private planned(): PlanForCard | undefined {
    const { proven } = this.job;
    const plan = this.plan?.cause === proven?.id ? this.plan?.plan : undefined;
    return plan && new PlanForCard(plan, this.ownVehicle());
  }

  private showPlan(): void {
    const { proven } = this.job;
    this.place('.has-plan').hidden = !proven;
    for (const link of this.querySelectorAll<HTMLElement>('.parts-sheet')) link.hidden = !proven;
    if (!proven) return;
    if (this.plan?.cause !== proven.id) {
      this.plan = { cause: proven.id, plan: undefined };
      loadPlan(proven.id).then((plan) => {
        if (this.plan?.cause !== proven.id) return;
        this.plan = { cause: proven.id, plan };
        this.showAll();
        this.draft();
        const [, sheet] = location.hash.slice(1, 200).split('/');
        if (sheet === 'parts') this.showSheet('parts');
      });
    }
    const planned = this.planned();
    this.place('.plan').replaceChildren(
      ...(planned?.show(this.job) ?? [
        element('p', { class: 'soft' }, `No plan for “${proven.title}” can be had from this shelf just now.`),
      ]),
    );
  }

  /** Words for the customer are drafted once for a cause, into fields nobody has written in. */
  private draft(): void {
    const planned = this.planned();
    const { proven, drafted } = this.job;
    if (!planned || !proven) return;
    if (drafted === proven.id) {
      const { wordings } = planned;
      if (withKnownDraft(this.job, wordings) !== this.job)
        this.change((job) => withKnownDraft(job, wordings));
      return;
    }
    const { vehicle } = this.job;
    const waits = window.headertank.vehicle === undefined && vehicle !== undefined && isOnShelf(vehicle.id);
    if (waits) return;
    const { drafts } = planned;
    const before = jobs.get(this.job.id);
    this.change((job) => ({
      ...job,
      found: job.found || drafts.found,
      watch: job.watch || drafts.watch,
      drafted: proven.id,
      'drafted-words': { found: drafts.found, watch: drafts.watch },
    }));
    for (const name of ['found', 'watch'] as const) {
      const field = this.field(name);
      if (field && before?.[name] === '') field.value = this.job[name];
      this.seen = { ...this.seen, [name]: this.job[name] };
    }
  }

  private showOpen(): void {
    const rows = (this.job.open ?? []).map(({ id, what, done }) => {
      if (done) return element('li', {}, element('span', {}, what), element('b', {}, done.value));
      const field = element('input', { type: 'text', maxlength: '200', 'aria-label': `Reading: ${what}` });
      const close = button('Done', () =>
        this.change((job) => closeItem(job, id, field.value.trim() || 'done')),
      );
      close.setAttribute('aria-label', `Done: ${what}`);
      return element('li', {}, element('span', {}, what), field, close);
    });
    this.place('.open-items').replaceChildren(...rows);
  }

  private addOpen(): void {
    const field = this.input('.open-what');
    const what = field.value.trim();
    if (what === '') return;
    this.change((job) => withOpenItem(job, what));
    field.value = '';
    field.focus();
  }

  private showReadings(): void {
    this.showRows('.readings', this.job.readings, ({ id, what, value }) =>
      this.row([element('span', {}, what), element('b', {}, value)], what, (job) => ({
        ...job,
        readings: job.readings.filter((each) => each.id !== id),
      })),
    );
  }

  private showLitres(): void {
    this.showRows('.litres', this.job.litres, ({ id, way, litres }) =>
      this.row([element('span', {}, way), element('b', {}, `${litres} l`)], way, (job) => ({
        ...job,
        litres: job.litres.filter((each) => each.id !== id),
      })),
    );
    this.place('.litres-sum').textContent = litresSentence(this.job.litres) ?? '';
  }

  private showRemarks(): void {
    this.showRows('.remarks', this.job.remarks, ({ id, text }) =>
      this.row([element('span', {}, text)], text.slice(0, 40), (job) => ({
        ...job,
        remarks: job.remarks.filter((each) => each.id !== id),
      })),
    );
  }

  private showRows<T>(selector: string, entries: readonly T[], row: (entry: T) => Node): void {
    this.place(selector).replaceChildren(...entries.map(row));
  }

  private row(parts: Node[], name: string, without: (job: Job) => Job): Node {
    const off = button('Remove', () => this.change(without), 'quiet');
    off.setAttribute('aria-label', `Remove: ${name}`);
    return element('li', {}, ...parts, off);
  }

  /** The joints of this repair first, the rest of the vehicle's behind them. */
  private showTorques(): void {
    const own = this.ownVehicle();
    const { torques } = this.job;
    const has = (joint: Joint) => joint in torques || own?.figures[`torque.${joint}`] !== undefined;
    const planned = this.planned()?.joints ?? [];
    const others = (Object.keys(JOINTS) as Joint[]).filter((joint) => has(joint) && !planned.includes(joint));
    const focused = document.activeElement?.id;
    const first = planned.length > 0 ? planned : others;
    this.place('.torques').replaceChildren(
      ...first.map((joint) =>
        has(joint)
          ? this.torqueRow(joint)
          : element(
              'li',
              { class: 'soft' },
              `${JOINTS[joint].label}: no figure of this vehicle here, take the maker’s`,
            ),
      ),
    );
    const rest = planned.length > 0 ? others : [];
    this.place('.other-torques').hidden = rest.length === 0;
    this.place('.torques-rest').replaceChildren(...rest.map((joint) => this.torqueRow(joint)));
    if (focused?.startsWith('tick-')) document.getElementById(focused)?.focus();
    this.place('.torques-none').textContent =
      first.length > 0
        ? 'Tick a joint when it is tightened. The maker’s sequence and angle stand above these figures.'
        : 'The torques of the vehicle stand here to be ticked once it is chosen and taken onto the card.';
  }

  private torqueRow(joint: Joint): HTMLElement {
    const { torques } = this.job;
    const own = this.ownVehicle();
    const figure = own?.figures[`torque.${joint}`];
    const bolt = own?.bolts[joint];
    const text =
      torques[joint]?.figure ?? (figure ? quantityText(figure.quantity, window.headertank.habit) : '');
    const box = element('input', { type: 'checkbox', id: `tick-${joint}` });
    box.checked = joint in torques;
    box.addEventListener('change', () => this.tick(joint, box.checked, text));
    const size = bolt ? `${bolt.bolt} ${bolt.class} into ${bolt.into}` : '';
    const words = [JOINTS[joint].label, ' ', element('b', {}, text), ' ', element('small', {}, size)];
    return element('li', {}, element('label', { class: 'tick' }, box, element('span', {}, ...words)));
  }

  private tick(joint: Joint, on: boolean, figure: string): void {
    this.change((job) => {
      const { [joint]: _, ...rest } = job.torques;
      const tick = { at: new Date().toISOString(), what: JOINTS[joint].label, figure };
      return { ...job, torques: on ? { ...rest, [joint]: tick } : rest };
    });
  }

  private addReading(): void {
    const what = this.input('.reading-what');
    const value = this.input('.reading-value');
    if (what.value.trim() === '' || value.value.trim() === '') {
      this.say('.reading-says', 'What was measured, and what it read, with the unit.');
      (what.value.trim() === '' ? what : value).focus();
      return;
    }
    this.say('.reading-says', '');
    const reading = {
      id: newId('reading'),
      at: new Date().toISOString(),
      what: what.value.trim(),
      value: value.value.trim(),
    };
    this.change((job) => ({ ...job, readings: [...job.readings, reading] }));
    what.value = '';
    value.value = '';
    what.focus();
  }

  private addLitres(): void {
    const field = this.input('.litres-amount');
    const litres = readLitres(field.value);
    if (litres === undefined) {
      this.say('.litres-says', 'Litres as the jug says, such as 3.4; more than 0 and at most 60.');
      field.focus();
      return;
    }
    this.say('.litres-says', '');
    const chosen = this.querySelector<HTMLSelectElement>('.litres-way')?.value;
    const way = LITRE_WAYS.find((each) => each === chosen) ?? 'filled';
    const entry = { id: newId('litres'), at: new Date().toISOString(), way, litres };
    this.change((job) => withFollowUp({ ...job, litres: [...job.litres, entry] }));
    field.value = '';
    field.focus();
  }

  private addRemark(): void {
    const field = this.input('.remark-text');
    const text = field.value.trim();
    if (text === '') return;
    const remark = { id: newId('remark'), at: new Date().toISOString(), text };
    this.change((job) => ({ ...job, remarks: [...job.remarks, remark] }));
    field.value = '';
    field.focus();
  }

  private say(selector: string, text: string): void {
    this.place(selector).textContent = text;
  }

  private letterhead(): Letterhead {
    const { shop = '', hours = '', footer = '' } = this.dataset;
    return { shop, hours, footer };
  }

  private showSheet(sheet: Sheet | undefined): void {
    this.dataset.view = sheet ?? 'form';
    if (sheet === undefined) return;
    this.layOut(sheet);
    this.querySelector<HTMLAnchorElement>('.back')?.setAttribute('href', `#${this.job.id}`);
    this.querySelector<HTMLElement>('.paper h2')?.focus({ preventScroll: true });
    window.scrollTo(0, 0);
  }

  private layOut(sheet: Sheet): void {
    const head = this.letterhead();
    const papers = {
      customer: () => customerPaper(this.job, head),
      card: () => cardPaper(this.job, head),
      parts: () => partsPaper(this.job, head, this.planned()?.parts ?? []),
    };
    this.place('.paper').replaceChildren(...papers[sheet]());
  }

  private makeNote(): void {
    const draft = noteFromJob(this.job);
    const stays = drafts.change(draft.id, draft, (now) => now);
    if (!stays) {
      this.tellUnkept();
      return;
    }
    location.href = new URL(`note.html#draft=${draft.id}`, window.headertank.root).href;
  }

  private export(some: readonly Job[]): void {
    const day = dayText(new Date());
    saveFile(`job-cards-${day}.json`, exported(some, drafts.list()), 'application/json');
    this.say(
      '.told',
      `${some.length === 1 ? 'One card' : `${some.length} cards`} exported, with the notes that are ready.`,
    );
  }

  private async takeFile(): Promise<void> {
    const input = this.input('.import');
    const [file] = input.files ?? [];
    if (!file) return;
    const says = await this.import(file);
    this.say('.told', says);
    input.value = '';
  }

  private async import(file: File): Promise<string> {
    if (file.size > LARGEST) return `${file.name} is too large for job cards. Nothing was taken in.`;
    const text = await file.text().catch(() => undefined);
    if (text === undefined) return `${file.name} cannot be read. Copy it to this device and choose it again.`;
    const read = imported(text, (id) => jobs.get(id));
    if (!read.ok) return `${file.name}: ${read.says}`;
    const stays = read.jobs.map((job) => jobs.change(job.id, job, () => job));
    if (stays.includes(false)) this.tellUnkept();
    this.showAll();
    const [first] = read.jobs;
    if (!first) return 'Every card of this file is here already.';
    this.open(first);
    return read.jobs.length === 1 ? 'One card taken in.' : `${read.jobs.length} cards taken in.`;
  }

  private askRemove(): void {
    this.ask('Remove this card from the device? There is no way back but an export.', 'Remove it', () => {
      jobs.remove(this.job.id);
      if (openJobId() === this.job.id || openJobId() === undefined) setOpenJob(undefined);
      document.dispatchEvent(new CustomEvent('headertank:job'));
      history.replaceState(null, '', location.pathname);
      this.readAddress();
    });
  }

  private askClear(): void {
    const count = jobs.list().length;
    const cards = count === 1 ? 'the one card' : `all ${count} cards`;
    this.ask(`Remove ${cards} from this device? There is no way back but an export.`, 'Remove all', () => {
      for (const { id } of jobs.list()) jobs.remove(id);
      setOpenJob(undefined);
      document.dispatchEvent(new CustomEvent('headertank:job'));
      history.replaceState(null, '', location.pathname);
      this.readAddress();
      this.say('.told', 'No card is left on this device.');
    });
  }

  private ask(question: string, yes: string, go: () => void): void {
    const place = this.place('.question');
    const done = () => place.replaceChildren();
    const keepIt = button('Keep', done);
    place.replaceChildren(
      element('p', {}, element('b', {}, question)),
      element(
        'p',
        { class: 'ways' },
        button(yes, () => {
          done();
          go();
        }),
        button('Export first', () => this.export(jobs.list()), 'quiet'),
        keepIt,
      ),
    );
    place.scrollIntoView({ block: 'nearest' });
    keepIt.focus();
  }
}

customElements.define('ht-job-card', JobCard);
