/** The job card: several on one device, kept at every key, printed as sheets, carried on as a file, a code or a note. */
import type { Job } from '../../model/job.ts';
import { merged } from '../browser/device-store.ts';
import { newId } from '../browser/ids.ts';
import { keepsAnything } from '../browser/open-keeper.ts';
import type { DatabaseName } from '../browser/storage-names.ts';
import { cardForCall, isOfThisCall, showCall, toldInCall, withAllTold } from '../job/page/card-call.ts';
import { withKnownDraft } from '../job/page/draft.ts';
import { didDraft } from '../job/page/for-customer.ts';
import { briefOf, jobs, openJobId, setOpenJob } from '../job/page/job-store.ts';
import { heldTyped, holdTyped, releaseTyped, type TypedField } from '../job/page/job-typed.ts';
import { newJob } from '../job/page/new-job.ts';
import { noteFromJob } from '../job/page/note-from-job.ts';
import { isOnShelf } from '../job/page/on-shelf.ts';
import { switchTo } from '../job/page/open-card.ts';
import { keepOpenJob } from '../job/page/open-job.ts';
import { drafts } from '../note/page/note-drafts.ts';
import '../browser/page-globals.ts';
import { afterPaint } from '../browser/after-paint.ts';
import { button, element } from '../browser/element.ts';
import { followFields, unkeptWarning } from '../browser/kept-fields.ts';
import { loadScript } from '../browser/load-script.ts';
import { takeSearched } from '../browser/searched.ts';
import type { CardPlan, MakeCardPlan } from '../job/card-parts.ts';
import type { DeskCard } from '../job/job-transfer.ts';
import type { CardOnPage } from '../job/page/card-on-page.ts';
import {
  addLitres,
  addOpen,
  addReading,
  addRemark,
  enterAdds,
  showEntries,
  takePictures,
} from '../job/page/job-card-entries.ts';
import { showAnswers, showCards, showFinished, showVehicle } from '../job/page/job-card-head.ts';
import { layOut, sheetCalled, showSheet } from '../job/page/job-card-sheets.ts';
import {
  askClear,
  askRemove,
  exportCards,
  exportFinished,
  finish,
  loadDesk,
  takeFile,
  takeIn,
} from '../job/page/job-card-transfer.ts';
import { tellRoom } from '../job/page/room.ts';

const TEXTS = [
  'name',
  'plate',
  'distance',
  'customer',
  'telephone',
  'wanted',
  'limit',
  'agreed',
  'said',
  'found',
  'did',
  'watch',
] as const;
type TextName = (typeof TEXTS)[number];

/** Where the card is not laid out beside itself: the width at which pages/job.astro does so. */
const IN_ONE_COLUMN = matchMedia('(max-width: 69.99rem)');

const textsOf = (job: Job) =>
  Object.fromEntries(TEXTS.map((name) => [name, job[name] ?? ''])) as Record<TextName, string>;

/** The card with what was typed in a field; what another window wrote there since stands in a remark. */
function withTyped(now: Job, name: TextName, { seen, text: typed }: TypedField): Job {
  const { text, other } = merged(seen, now[name] ?? '', typed);
  const next = { ...now, [name]: text };
  if (other === undefined) return next;
  const remark = {
    id: newId('remark'),
    at: new Date().toISOString(),
    text: `Another window wrote: ${other}`,
    private: true as const,
  };
  return { ...next, remarks: [...next.remarks, remark] };
}

class JobCard extends HTMLElement implements CardOnPage, DeskCard {
  job: Job = newJob();
  /** What this window last saw kept in the fields. */
  private seen = textsOf(this.job);
  /** What the proven cause asks for, once it is there; undefined for a cause this shelf has no plan for. */
  private plan: { cause: string; make: MakeCardPlan | undefined } | undefined;
  /** Changes on their way to the device. */
  private writing = 0;
  private isRoomTold = false;

  connectedCallback() {
    this.querySelector('fieldset')?.removeAttribute('disabled');
    this.querySelector('form')?.addEventListener('submit', (event) => event.preventDefault());
    this.addEventListener('input', (event) => void this.typed(event.target));
    this.addEventListener('keydown', (event) => enterAdds(event));
    for (const [selector, press] of this.presses()) this.place(selector).addEventListener('click', press);
    jobs.whenChanged(() => this.changedElsewhere());
    window.addEventListener('hashchange', () => this.readAddress());
    window.addEventListener('beforeunload', (event) => {
      if (jobs.hasUnkept) event.preventDefault();
    });
    // Printed from the form, what comes out is the card and not its empty boxes.
    window.addEventListener('beforeprint', () => {
      if (this.dataset.view === 'form') layOut(this, 'card');
    });
    document.addEventListener('headertank:change', () => {
      if (!('live' in this.dataset)) return;
      // A vehicle whose record was renamed has its new id on the card by now.
      this.job = jobs.get(this.job.id) ?? this.job;
      this.showAll();
      void this.draft();
    });
    this.input('.import').addEventListener('change', () => void takeFile(this));
    this.input('.picture-file').addEventListener('change', () => void takePictures(this));
    this.input('.find-card').addEventListener('input', () => showCards(this));
    void this.begin();
  }

  private async begin(): Promise<void> {
    await Promise.all([jobs.ready(), drafts.ready()]);
    await this.bringTyped();
    await this.callIn();
    this.readAddress();
    this.dataset.live = '';
    if (!(await keepsAnything())) this.tellUnkept();
    else this.tellRoom();
    // A card that is printed is laid out at once, without time to fetch anything.
    afterPaint()(
      () => void loadScript('job-papers').catch(() => undefined),
      // The torques of the vehicle, whether a cause is proven or not.
      () =>
        void loadScript('job-plan').then(
          () => this.showAll(),
          () => undefined,
        ),
    );
  }

  /** Said once there is a card: before that there is nothing to keep. */
  private tellRoom(): void {
    if (this.isRoomTold || jobs.list().length === 0) return;
    this.isRoomTold = true;
    void tellRoom(this);
  }

  private presses(): [string, () => void][] {
    return [
      ['.new-card', () => this.open(newJob())],
      ['.take-vehicle', () => this.takeVehicle()],
      ['.add-reading', () => addReading(this)],
      ['.add-litres', () => addLitres(this)],
      ['.add-remark', () => addRemark(this)],
      ['.add-open', () => addOpen(this)],
      ['.to-note', () => void this.makeNote()],
      ['.finish', () => void finish(this)],
      ['.share-card', () => void loadDesk(this, (desk) => desk.share(this))],
      ['.show-code', () => void loadDesk(this, (desk) => desk.showCode(this))],
      ['.read-code', () => void loadDesk(this, (desk) => desk.readCode(this))],
      ['.export-one', () => void exportCards(this, [this.job])],
      ['.export-all', () => void exportCards(this, jobs.list())],
      ['.export-finished', () => void exportFinished(this)],
      ['.import-cards', () => this.input('.import').click()],
      ['.remove-card', () => askRemove(this)],
      ['.clear-all', () => askClear(this)],
      ['.print', () => window.print()],
    ];
  }

  place(selector: string): HTMLElement {
    const found = this.querySelector<HTMLElement>(selector);
    if (!found) throw new Error(`The job card has no ${selector}`);
    return found;
  }

  input(selector: string): HTMLInputElement {
    const found = this.place(selector);
    if (!(found instanceof HTMLInputElement)) throw new Error(`${selector} is no field`);
    return found;
  }

  private field(name: TextName): HTMLInputElement | HTMLTextAreaElement | null {
    return this.querySelector(`[name="${name}"]`);
  }

  /** `#call=<complaint>` begins a card for a call, with the words that were searched for; from then on the address is the card's. */
  private async callIn(): Promise<void> {
    const call = /^#call=([a-z0-9-]*)(?:&(.*))?$/.exec(location.hash);
    if (!call) return;
    const [, symptom = '', answers = ''] = call;
    const said = takeSearched();
    const open = jobs.get(openJobId() ?? '');
    const told = await toldInCall(symptom, answers);
    if (isOfThisCall(open, symptom)) {
      history.replaceState(null, '', `#${open.id}`);
      this.take(open);
      if (open.said === '' && said !== '') await this.change((now) => ({ ...now, said }));
      if (told.length > 0) await this.change((now) => withAllTold(now, told));
      return this.take(jobs.get(open.id) ?? open);
    }
    const job = await cardForCall(symptom, said, told);
    history.replaceState(null, '', `#${job.id}`);
    this.job = job;
    if (job.complaint || job.said !== '') await this.change((now) => now);
    this.take(jobs.get(job.id) ?? job);
  }

  /** `#<card>` opens a card, `#<card>/customer` its sheet; without either the open card, or a new one. */
  readAddress(): void {
    const [id = '', sheet] = location.hash.slice(1, 200).split('/');
    // A place of this page is no card: the way to it leaves the card as it is.
    if (id !== '' && document.getElementById(id)) return;
    if (id === this.job.id && id !== '') {
      void showSheet(this, sheetCalled(sheet));
      if (!jobs.get(id)) return;
    }
    const job = jobs.get(id) ?? jobs.get(openJobId() ?? '') ?? jobs.list().find(({ finished }) => !finished);
    if (job === undefined || job.id !== this.job.id || !('live' in this.dataset)) this.take(job ?? newJob());
    void showSheet(this, sheetCalled(sheet));
  }

  open(job: Job): void {
    history.pushState(null, '', `#${job.id}`);
    this.take(job);
    void showSheet(this, undefined);
    this.field('said')?.focus();
  }

  private take(job: Job): void {
    this.job = job;
    this.seen = textsOf(job);
    // A finished card is looked at; what is worked on is none of it.
    if (!job.finished) switchTo(jobs.get(job.id));
    for (const name of TEXTS) {
      const field = this.field(name);
      if (field) field.value = this.seen[name];
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
      const fields = [...part.querySelectorAll<HTMLInputElement>('input[name]')];
      const isFilled = part.querySelector('li') !== null || fields.some(({ value }) => value !== '');
      if (isFilled && !('filled' in part.dataset)) part.open = true;
      part.toggleAttribute('data-filled', isFilled);
    }
  }

  async change(change: (job: Job) => Job, others?: ReadonlyMap<DatabaseName, unknown>): Promise<boolean> {
    const { vehicle } = window.headertank;
    // A card that begins with a vehicle chosen is that vehicle's.
    const start =
      vehicle && !jobs.get(this.job.id) && !this.job.vehicle
        ? { ...this.job, vehicle: { id: vehicle.id, title: vehicle.title } }
        : this.job;
    if (location.hash === '') history.replaceState(null, '', `#${start.id}`);
    this.writing += 1;
    const stays = await jobs.change(start.id, start, change, others);
    this.writing -= 1;
    if (stays) this.place('.unkept').replaceChildren();
    else this.tellUnkept();
    // Another card may be on the page by now.
    if (this.job.id !== start.id) return stays;
    this.job = jobs.get(start.id) ?? this.job;
    if (stays && !this.job.finished) setOpenJob(start.id);
    if (stays) this.tellRoom();
    this.followDid();
    this.showAll();
    return stays;
  }

  private async typed(target: EventTarget | null): Promise<void> {
    const name = TEXTS.find((each) => this.field(each) === target);
    if (!name) return;
    const text = this.field(name)?.value ?? '';
    const typed = { id: this.job.id, field: name, seen: this.seen[name], text };
    holdTyped(typed);
    if (!this.job.finished) keepOpenJob(briefOf({ ...this.job, [name]: text }));
    this.seen = { ...this.seen, [name]: text };
    if (await this.change((now) => withTyped(now, name, typed))) releaseTyped(typed);
  }

  /** What was typed on a page that was left before the database had it. */
  private async bringTyped(): Promise<void> {
    const typed = heldTyped();
    const name = TEXTS.find((each) => each === typed?.field);
    if (!typed || !name) return;
    const start = { ...newJob(), id: typed.id };
    const stays = await jobs.change(typed.id, start, (now) => withTyped(now, name, typed));
    if (stays) releaseTyped(typed);
  }

  private changedElsewhere(): void {
    if (this.writing > 0 || !('live' in this.dataset)) return;
    const now = jobs.get(this.job.id);
    if (now && now.changed !== this.job.changed) {
      const taken = followFields(TEXTS, (name) => this.field(name), textsOf(now));
      this.seen = { ...this.seen, ...Object.fromEntries(taken) };
      this.job = now;
    }
    this.showAll();
  }

  tellUnkept(): void {
    this.place('.unkept').replaceChildren(
      unkeptWarning(
        'The card is only on this page: export it or print it before you leave. ',
        button('Export it now', () => void exportCards(this, [this.job])),
      ),
    );
  }

  showAll(): void {
    showCards(this);
    showFinished(this);
    showVehicle(this);
    void showCall(this);
    showAnswers(this);
    this.showPlan();
    showEntries(this);
    window.headertank.showTorques?.(this);
    this.unfoldFilled();
  }

  private takeVehicle(): void {
    const { vehicle } = window.headertank;
    if (vehicle) void this.change((job) => ({ ...job, vehicle: { id: vehicle.id, title: vehicle.title } }));
  }

  get ownVehicle() {
    const { vehicle } = window.headertank;
    return vehicle && vehicle.id === this.job.vehicle?.id ? vehicle : undefined;
  }

  get planned(): CardPlan | undefined {
    const { proven } = this.job;
    const make = this.plan?.cause === proven?.id ? this.plan?.make : undefined;
    return make?.(this.ownVehicle);
  }

  private showPlan(): void {
    const { proven } = this.job;
    this.place('.has-plan').hidden = !proven;
    for (const link of this.querySelectorAll<HTMLElement>('.parts-sheet')) link.hidden = !proven;
    if (!proven) return;
    if (this.plan?.cause !== proven.id) {
      this.plan = { cause: proven.id, make: undefined };
      void this.loadPlan(proven.id);
    }
    const planned = this.planned;
    this.place('.plan').replaceChildren(
      ...(planned?.show(this.job) ?? [
        element('p', { class: 'soft' }, `No plan for “${proven.title}” can be had from this shelf just now.`),
      ]),
    );
  }

  private async loadPlan(cause: string): Promise<void> {
    await loadScript('job-plan').catch(() => undefined);
    const make = await window.headertank.cardPlanOf?.(cause);
    if (this.plan?.cause !== cause) return;
    this.plan = { cause, make };
    this.showAll();
    await this.draft();
    const [, sheet] = location.hash.slice(1, 200).split('/');
    if (sheet === 'parts') void showSheet(this, 'parts');
  }

  /** Words for the customer are drafted once for a cause, into fields nobody has written in. */
  private async draft(): Promise<void> {
    const planned = this.planned;
    const { proven, drafted } = this.job;
    if (!planned || !proven) return;
    if (drafted === proven.id) {
      const { wordings } = planned;
      if (withKnownDraft(this.job, wordings) !== this.job)
        await this.change((job) => withKnownDraft(job, wordings));
      return;
    }
    const { vehicle } = this.job;
    const waits = window.headertank.vehicle === undefined && vehicle !== undefined && isOnShelf(vehicle.id);
    if (waits) return;
    const { found, watch } = planned.drafts;
    const before = jobs.get(this.job.id);
    await this.change((job) => ({
      ...job,
      found: job.found || found,
      watch: job.watch || watch,
      drafted: proven.id,
      'drafted-words': { ...job['drafted-words'], found, watch },
    }));
    for (const name of ['found', 'watch'] as const) if (before?.[name] === '') this.put(name, this.job[name]);
  }

  /** What was done is drafted from steps and torques as they are ticked, as long as nobody has written his own words. */
  private followDid(): void {
    const { did, 'drafted-words': draft } = this.job;
    const now = didDraft(this.job);
    const drafted = draft?.did ?? '';
    if (now === drafted || did !== drafted) return;
    this.put('did', now);
    void this.change((job) => ({
      ...job,
      did: now,
      'drafted-words': { found: '', watch: '', ...job['drafted-words'], did: now },
    }));
  }

  private put(name: TextName, text: string): void {
    const field = this.field(name);
    if (field) field.value = text;
    this.seen = { ...this.seen, [name]: text };
  }

  takeText(text: string, from: string): Promise<string> {
    return takeIn(this, text, from);
  }

  say(selector: string, text: string): void {
    this.place(selector).textContent = text;
  }

  fault(selector: string, text: string, fields: readonly HTMLElement[]): void {
    const says = this.place(selector);
    for (const field of this.querySelectorAll(`[aria-describedby="${says.id}"]`))
      field.removeAttribute('aria-invalid');
    // Taken away first, so that the same words are said again.
    says.textContent = '';
    if (text === '') return;
    for (const field of fields) field.setAttribute('aria-invalid', 'true');
    fields[0]?.focus();
    requestAnimationFrame(() => {
      says.textContent = text;
    });
  }

  private async makeNote(): Promise<void> {
    const draft = noteFromJob(this.job);
    const stays = await drafts.change(draft.id, draft, (now) => now);
    if (!stays) {
      this.tellUnkept();
      return;
    }
    location.href = new URL(`note.html#draft=${draft.id}`, window.headertank.root).href;
  }
}

customElements.define('ht-job-card', JobCard);
