/**
 * The walk, one question at a time. Answers live in the address and on the device; the drawn path is followed while
 * it goes on, and the planner finds another way when a test is skipped or every named cause is ruled out.
 */
import '../page-globals.ts';
// The walk says its questions with figures in them from the start; in one script the two weigh less than side by side.
import './reader-figures.ts';
import { describeContradiction } from '../../diagnosis/reason.ts';
import type { KnownLayout } from '../../model/layout.ts';
import { loadScript } from '../browser/load-script.ts';
import { forget, keep, kept } from '../keep.ts';
import { dayAndTimeText } from '../text/day-and-time.ts';
import {
  type Answers,
  NOT_IT,
  PROVEN,
  proveKey,
  readAnswers,
  SKIPPED,
  writeAnswers,
} from '../walk/answers.ts';
import { Diagnoser, type Diagnosis } from '../walk/diagnose.ts';
import { knownIn } from '../walk/known-answers.ts';
import { notHere } from '../walk/not-here.ts';
import { knownLayout, type Replay, replay, type TrailEntry, withVerdicts } from '../walk/replay.ts';
import type { WalkData } from '../walk/walk-data.ts';
import { WalkWords } from '../walk/walk-words.ts';
import { afterPaint } from './after-paint.ts';
import { button, element } from './element.ts';
import { KnownPart } from './known-part.ts';
import { NextQuestions } from './next-questions.ts';
import { Trail } from './trail.ts';
import { showBooking } from './walk-booking.ts';
import { fitCauses } from './walk-causes.ts';
import { WalkFoot } from './walk-foot.ts';
import { likelyParts } from './walk-likely.ts';
import { WalkParts } from './walk-parts.ts';

interface KeptWalk {
  answers: [string, string][];
  at: string;
  /** What the car was called that they were given for. */
  vehicle?: string;
}

/** Where a walk stands after some answers. */
interface View {
  answers: Answers;
  replayed: Replay;
  layout: KnownLayout;
  /** What the numbers say; costly, so worked out when it is first wanted. */
  diagnose: () => Diagnosis;
  /** The section that has been made as this view wants it. */
  fitted?: HTMLElement;
}

const isText = (value: unknown): value is string => typeof value === 'string';
const isTexts = (value: unknown): value is string[] => Array.isArray(value) && value.every(isText);
const isKeptWalk = (value: unknown): value is KeptWalk =>
  typeof value === 'object' &&
  value !== null &&
  'answers' in value &&
  Array.isArray(value.answers) &&
  value.answers.every((each) => isTexts(each) && each.length === 2) &&
  'at' in value &&
  typeof value.at === 'string' &&
  (!('vehicle' in value) || typeof value.vehicle === 'string');

class Walk extends HTMLElement {
  private data!: WalkData;
  private diagnoser!: Diagnoser;
  private answers = new Map<string, string>();
  private missing = new Set<string>();
  /** A test asked out of turn, until it is answered. */
  private detour: string | undefined;
  private known!: KnownPart;
  private words!: WalkWords;
  private foot!: WalkFoot;
  private view: View | undefined;
  /** What each row that can be pressed now leads to, worked out while the reader still reads. */
  private readonly ahead = new Map<HTMLElement, View>();
  private trail!: Trail;
  private readonly afterPaint = afterPaint();
  /** What is due stays so when a newer picture takes the turn of the one it was for. */
  private isFocusDue = false;
  private isKeepingDue = false;
  private parts!: WalkParts;
  private next!: NextQuestions;
  private keeps = true;

  connectedCallback() {
    const source = this.querySelector('.walk-data');
    if (!source?.textContent) return;
    this.data = JSON.parse(source.textContent);
    this.diagnoser = new Diagnoser(this.data, (text) => this.say(text));
    this.words = new WalkWords(this.data.titles, (text) => this.say(text));
    this.parts = new WalkParts(this.data.symptom, this.place('.steps'));
    this.next = new NextQuestions(this.parts);
    this.missing = new Set(kept('tools-missing', isTexts) ?? []);
    this.known = new KnownPart(
      this.data,
      {
        answer: (test, outcome) => this.give(test, outcome),
        missing: (tools) => this.setMissing(tools),
      },
      (text) => this.say(text),
    );
    this.foot = new WalkFoot(this.place('.walk-foot'), {
      skip: () => {
        const asked = this.view && this.testAskedNow(this.view.replayed.standing);
        if (asked) this.give(asked, SKIPPED, true);
      },
      back: () => {
        const last = [...this.answers.keys()].at(-1);
        if (last !== undefined) this.give(last, undefined, true);
      },
      startAgain: () => this.startAgain(),
      toJobCard: () => {
        if (this.view) void this.toJobCard(this.view);
      },
    });
    this.trail = new Trail(this.words, (key) => this.give(key, undefined, true));
    this.place('.walk-foot').after(this.trail.root, this.known.root);
    this.dataset.live = '';
    // Whoever comes near an answer is about to give it: the other questions are fetched by then.
    for (const sign of ['pointerover', 'touchstart', 'focusin'])
      this.addEventListener(sign, () => void this.loadAhead(), {
        once: true,
        passive: true,
      });
    this.addEventListener('click', (event) => this.press(event));
    this.addEventListener('keydown', (event) => {
      if (event.key === 'Enter' || event.key === ' ') this.press(event);
      else this.pressNumber(event);
    });
    window.addEventListener('popstate', () => this.readAddress());
    window.addEventListener('pagehide', () => this.keepAnswers());
    document.addEventListener('headertank:change', () => {
      showBooking(this.data.symptom);
      this.showStops();
      this.show();
    });
    showBooking(this.data.symptom);
    this.showStops();
    this.readAddress();
  }

  private place(selector: string): HTMLElement {
    const found = this.querySelector<HTMLElement>(selector);
    if (!found) throw new Error(`The walk has no ${selector}`);
    return found;
  }

  /** A question or answer with the chosen vehicle's figures written in. */
  private say(text: string): string {
    return window.headertank.figures?.say(text, this.data.general) ?? text;
  }

  private readAddress(follow = false): void {
    this.answers = readAnswers(location.hash, knownIn(this.data));
    this.detour = undefined;
    // An answer of this very moment that is not in the address yet is gone with the way back.
    this.isKeepingDue = false;
    this.show(follow);
  }

  /**
   * Take an answer, whichever way it was given.
   * @param value undefined takes it back
   * @param view what it leads to, where that is known already
   */
  private give(key: string, value: string | undefined, follow = false, view?: View): void {
    this.answers = withAnswer(this.answers, key, value);
    if (key === this.detour) this.detour = undefined;
    this.isKeepingDue = true;
    this.show(follow, view);
  }

  /** Both are slow, so they come after the question they are about, or before the page goes. */
  private keepAnswers(): void {
    if (!this.isKeepingDue) return;
    this.isKeepingDue = false;
    const fragment = writeAnswers(this.answers);
    history.pushState(null, '', fragment === '' ? `${location.pathname}${location.search}` : `#${fragment}`);
    const name = `walk.${this.data.symptom}` as const;
    const { vehicle } = window.headertank;
    if (this.answers.size === 0) forget(name);
    else
      this.keeps = keep(name, {
        answers: [...this.answers],
        at: new Date().toISOString(),
        ...(vehicle && { vehicle: vehicle.short }),
      } satisfies KeptWalk);
  }

  private setMissing(tools: string[]): void {
    this.missing = new Set(tools);
    keep('tools-missing', tools);
    this.show();
  }

  private press(event: Event): void {
    if (event.target instanceof Element) this.take(event, event.target.closest<HTMLElement>('.answer'));
  }

  /** A number chooses the answer in that row while the focus is in the walk, where the rows show it; never from a field. */
  private pressNumber(event: KeyboardEvent): void {
    const isTyped = event.target instanceof Element && event.target.matches('input, select, textarea');
    if (isTyped || event.ctrlKey || event.altKey || event.metaKey || !/^[1-9]$/.test(event.key)) return;
    this.take(event, this.rowsNow()[Number(event.key) - 1]);
  }

  private rowsNow(): HTMLElement[] {
    return [...this.querySelectorAll<HTMLElement>('.step[data-now] .answer')];
  }

  private take(event: Event, row: HTMLElement | null | undefined): void {
    const { key, value } = row?.dataset ?? {};
    if (!row || !key) return;
    // A proven cause leads on to its repair as a plain link would, after the answer is kept.
    event.preventDefault();
    this.give(key, value, true, this.ahead.get(row));
  }

  /**
   * What is asked now comes at once; what the numbers say beside it after that is on the screen.
   * @param follow the reader is taken to the question, with the next words a screen reader says
   */
  private show(follow = false, view = this.viewOf(this.answers)): void {
    this.ahead.clear();
    const notThis = notHere(this.data.needs, window.headertank.vehicle?.layout ?? {});
    this.toggleAttribute('data-not-here', notThis !== undefined);
    if (notThis !== undefined) {
      keepChildren(this.place('.walk-top'), [element('p', {}, element('b', {}, notThis))]);
      // In the turn of what was to be drawn before the vehicle was known.
      this.afterPaint(() => document.querySelector('[data-start-ranking]')?.replaceChildren());
      return;
    }
    this.view = view;
    const { standing } = view.replayed;
    const part = this.partNow(view);
    const wanted = part === undefined ? undefined : this.parts.section(part);
    // What was asked stays in sight until the next can be shown.
    const before = this.querySelector<HTMLElement>('.step[data-now]') ?? undefined;
    const now = wanted === 'to be loaded' ? before : wanted;
    if (before && before !== now) {
      this.next.setAside(before);
      before.removeAttribute('data-now');
    }
    now?.setAttribute('data-now', '');
    if (now) this.fit(now, view);
    this.showTop(view);
    if (wanted === 'to be loaded') this.fetchQuestions(follow);
    if (follow && wanted !== 'to be loaded') {
      this.place('.walk-title').scrollIntoView({ block: 'start' });
      this.isFocusDue = true;
    }
    this.afterPaint(
      () => {
        this.foot.show({
          isTest: this.testAskedNow(standing) !== undefined,
          isAnswered: this.answers.size > 0,
          isProven: standing.kind === 'proven',
        });
        this.trail.show(allAnswers(view.answers, view.replayed.trail));
        if (now) this.carryAnswers(now);
        if (this.isFocusDue) now?.querySelector('h3')?.focus({ preventScroll: true });
        this.isFocusDue = false;
      },
      () => {
        const { keeps } = this;
        this.keepAnswers();
        if (this.keeps !== keeps) this.showTop(view);
      },
      view.diagnose,
      () => this.showNumbers(view),
      () => this.makeReady(),
    );
  }

  private viewOf(answers: Answers): View {
    const vehicle = window.headertank.vehicle?.layout ?? {};
    const layout = knownLayout(vehicle, answers);
    const replayed = replay(this.data.tree, answers, vehicle, {
      cannot: (test) => this.diagnoser.cannot(test, layout, this.missing),
      cannotHave: (cause) => this.diagnoser.cannotHave(cause, layout),
    });
    return {
      answers,
      replayed,
      layout,
      diagnose: once(() =>
        this.diagnoser.diagnose(withVerdicts(answers, replayed.trail), layout, this.missing),
      ),
    };
  }

  /** Without leaving the walk: the answers stay, and what the vehicle says of itself is not asked. */
  private offerVehicle(): HTMLElement {
    const place = element('div', { class: 'choice no-print' }, 'General figures. ');
    const choose = async () => {
      await loadScript('vehicle-choice');
      const choice = document.createElement('ht-vehicle-choice');
      choice.addEventListener('headertank:chosen', () => {
        this.isFocusDue = true;
      });
      place.replaceChildren(choice);
      choice.querySelector('input')?.focus();
    };
    const tell = () => place.append(unfetched('The vehicles'));
    place.append(button('Choose the vehicle', () => void choose().catch(tell), 'quiet'));
    return place;
  }

  /** What can hurt on the chosen vehicle beyond what every engine has stands over every question. */
  private showStops(): void {
    const { vehicle, root } = window.headertank;
    const stops = this.place('.walk-stops');
    if (!vehicle) {
      // One that is kept is on its way.
      if (kept('vehicle', isText) === undefined && !stops.querySelector('.choice'))
        stops.replaceChildren(this.offerVehicle());
      return;
    }
    keepChildren(
      stops,
      vehicle.stops.map(({ id, title, short, before }) => {
        const href = new URL(`cautions/${id}.html`, root).href;
        const name = element('b', {}, 'Caution: ', element('a', { href }, title), '. ');
        return element('p', { class: 'caution' }, name, short, ' ', element('b', {}, before));
      }),
    );
  }

  /** The name of the section that is asked now. The planner is asked only where the drawn path ends. */
  private partNow({ replayed: { standing }, diagnose }: View): string | undefined {
    if (this.detour) return this.partOf(this.detour);
    if (standing.kind !== 'off-path') return partOnPath(standing);
    const { action } = diagnose().step.best;
    if (action.kind === 'test') return this.partOf(action.test);
    return action.kind === 'prove' ? `proof ${action.cause}` : undefined;
  }

  /** A test is asked as its step where the tree has it. */
  private partOf(test: string): string {
    const own = Object.entries(this.data.tree.steps).find(
      ([, node]) => node.kind === 'test' && node.test === test,
    );
    return own ? `step ${own[0]}` : `spare ${test}`;
  }

  private async loadAhead(): Promise<void> {
    try {
      await this.parts.load();
      this.makeReady();
    } catch {
      // Said when an answer needs them; a sign of one is no reason for a message.
    }
  }

  /** What each answer leads to on the drawn path is made ready; what the planner would ask is not worked out ahead. */
  private makeReady(): void {
    this.next.prepare(
      this.rowsNow().flatMap((row) => {
        const { key, value } = row.dataset;
        if (key === undefined || value === undefined) return [];
        const view = this.viewOf(withAnswer(this.answers, key, value));
        this.ahead.set(row, view);
        const name = partOnPath(view.replayed.standing);
        return name === undefined ? [] : [{ name, fit: (section) => this.fit(section, view) }];
      }),
    );
  }

  /** The answers are kept already, so nothing is lost when the questions cannot be had. */
  private fetchQuestions(follow: boolean): void {
    const line = element('p', { class: 'note-line' }, 'The questions are being fetched.');
    this.place('.walk-top').append(line);
    // Says so to who listens too: what is on the page is about to change.
    this.ariaBusy = 'true';
    const again = () => this.show(follow);
    this.parts
      .load()
      .finally(() => {
        this.ariaBusy = null;
      })
      .then(again, () => line.replaceChildren(unfetched('The questions'), button('Try again', again)));
  }

  private showTop({ replayed: { standing, trail }, answers, diagnose }: View): void {
    const parts: Node[] = allAnswers(answers, trail).length === 0 ? this.resumeOffer() : [];
    if (!this.keeps)
      parts.push(
        element(
          'p',
          { class: 'note-line' },
          'This device keeps nothing (its storage is full or blocked). The address holds the answers: send it to yourself to go on later.',
        ),
      );
    if (standing.kind === 'off-path') {
      const { step, reason } = diagnose();
      const { action } = step.best;
      const sentence =
        action.kind === 'pass-on'
          ? 'Nothing left here is quicker than passing the car on: hand it over with this sheet. The likeliest causes are in the list.'
          : `The drawn path ends here; quickest by the numbers: ${reason.sentence}`;
      parts.push(element('p', { class: 'note-line' }, sentence));
    }
    keepChildren(this.place('.walk-top'), parts);
  }

  private resumeOffer(): Node[] {
    const before = kept(`walk.${this.data.symptom}`, isKeptWalk);
    if (!before || before.answers.length === 0) return [];
    const day = new Date(before.at);
    const when = Number.isNaN(day.getTime()) ? 'before' : `on ${dayAndTimeText(day)}`;
    const count = before.answers.length === 1 ? '1 answer' : `${before.answers.length} answers`;
    return [
      element(
        'p',
        { class: 'note-line no-print' },
        `You were here ${when}, with ${count}${before.vehicle ? ` for ${before.vehicle}` : ''}. `,
        button('Go on from there', () => {
          location.hash = new URLSearchParams(before.answers).toString();
          this.readAddress(true);
        }),
        ' ',
        button(
          'Forget it',
          () => {
            forget(`walk.${this.data.symptom}`);
            this.show();
          },
          'quiet',
        ),
      ),
    ];
  }

  /** Complaint, vehicle and every answer, as words; a line says where they went. */
  private async toJobCard({ answers, replayed: { trail, standing } }: View): Promise<void> {
    const { headertank } = window;
    // Without it the line below says so.
    await loadScript('hand-over').catch(() => undefined);
    const line = headertank.putOnJobCard?.({
      complaint: { id: this.data.symptom, title: document.querySelector('h1')?.textContent ?? '' },
      answers: allAnswers(answers, trail).map((entry) => ({
        key: entry.key,
        asked: this.words.asked(entry.key),
        answer: [this.words.answer(entry.key, entry.value), this.words.conclusion(entry)]
          .filter((part) => part !== undefined)
          .join('. '),
      })),
      ...(standing.kind === 'proven' && {
        proven: { id: standing.cause, title: this.words.cause(standing.cause) },
      }),
    });
    this.querySelector('.on-card')?.remove();
    const said = line ?? element('p', { class: 'note-line', role: 'status' }, unfetched('The job card'));
    said.classList.add('on-card');
    this.place('.walk-foot').after(said);
  }

  private testAskedNow(standing: Replay['standing']): string | undefined {
    if (standing.kind === 'proven') return undefined;
    const asked = this.querySelector<HTMLElement>('.step[data-now] .answers > li > .answer')?.dataset.key;
    return asked?.startsWith('layout.') ? undefined : asked;
  }

  private startAgain(): void {
    this.answers = new Map();
    this.detour = undefined;
    this.isKeepingDue = true;
    this.show(true);
  }

  /**
   * A question as it stands after these answers: what is proven, its causes as the car can have them, the answers given
   * before marked. What is right already is left alone, so that nothing is laid out twice.
   */
  private fit(section: HTMLElement, view: View): void {
    if (view.fitted === section) return;
    view.fitted = section;
    const { answers, layout, replayed } = view;
    const isProven = replayed.standing.kind === 'proven';
    section.toggleAttribute('data-proven', isProven);
    if (section.querySelector('[data-cause]')) {
      fitCauses(
        section,
        this.diagnoser.ranked(withVerdicts(answers, replayed.trail), layout),
        (cause) => !isProven && this.diagnoser.cannotHave(cause, layout),
        this.data.titles.causes,
      );
    }
    for (const answer of section.querySelectorAll<HTMLElement>('.answer')) {
      const { key = '', value } = answer.dataset;
      answer.toggleAttribute('data-chosen', answers.get(key) === value);
    }
    for (const place of section.querySelectorAll<HTMLElement>('[data-verdict]')) {
      const key = proveKey(place.dataset.verdict ?? '');
      if (section.querySelector(`.answer[data-key="${key}"]`)) continue;
      const said = answers.get(key) ?? 'open';
      if (place.dataset.said === said) continue;
      place.dataset.said = said;
      place.replaceChildren(
        ...(said === 'open'
          ? [
              button('Proven: repair it', () => this.give(key, PROVEN, true)),
              ' ',
              button('Not this', () => this.give(key, NOT_IT, true), 'quiet'),
            ]
          : [element('b', {}, said === PROVEN ? 'Proven.' : 'Ruled out.')]),
      );
    }
  }

  /** Links that go on elsewhere take the answers along. */
  private carryAnswers(now: HTMLElement): void {
    for (const link of now.querySelectorAll<HTMLAnchorElement>('a[data-carry]')) {
      link.hash = writeAnswers(this.answers);
    }
  }

  private showNumbers({ answers, layout, replayed: { standing }, diagnose }: View): void {
    const diagnosis = diagnose();
    this.place('.walk-fights').replaceChildren(
      ...(diagnosis.fights
        ? [
            element(
              'p',
              { class: 'caution' },
              element('b', {}, 'These two fight. '),
              describeContradiction(diagnosis.fights, this.diagnoser.titles),
            ),
          ]
        : []),
    );
    this.known.show(answers, this.missing, layout);
    const place = document.querySelector<HTMLElement>('[data-start-ranking]');
    if (!place) return;
    // What is proven is not likely any more.
    place.hidden = standing.kind === 'proven';
    if (place.hidden) return;
    const likely = { diagnosis, isStart: answers.size === 0, asked: this.testAskedNow(standing) };
    place.replaceChildren(
      ...likelyParts(likely, this.data.titles.causes, this.words, (test) => {
        this.detour = test;
        this.show(true);
      }),
    );
  }
}

/** @param what in the plural or not: the verb is the same */
const unfetched = (what: string) =>
  `${what} cannot be fetched: there is no connection, and this device has not kept the site yet. Your answers are kept. `;

/** @param value none takes the answer back */
function withAnswer(answers: Answers, key: string, value: string | undefined): Map<string, string> {
  const all = new Map(answers);
  // One that is given again comes last.
  all.delete(key);
  if (value !== undefined) all.set(key, value);
  return all;
}

/** The answers of the drawn path, then those given out of turn. */
function allAnswers(answers: Answers, trail: readonly TrailEntry[]): TrailEntry[] {
  const told = new Set(trail.map(({ key }) => key));
  const rest = [...answers].filter(([key]) => !told.has(key));
  return [...trail, ...rest.map(([key, value]) => ({ step: '', key, value }))];
}

/** The name of the section at which the drawn path stands; none where it has no way on. */
function partOnPath(standing: Replay['standing']): string | undefined {
  if (standing.kind === 'at') return `step ${standing.step}`;
  return standing.kind === 'proven' ? `proof ${standing.cause}` : undefined;
}

/** As replaceChildren, but what stays is not taken out and put in again. */
function keepChildren(place: HTMLElement, wanted: readonly Node[]): void {
  for (const child of [...place.childNodes]) if (!wanted.includes(child)) child.remove();
  for (const [at, child] of wanted.entries()) {
    const there = place.childNodes[at];
    if (there !== child) place.insertBefore(child, there ?? null);
  }
}

/** The work is done when its result is first wanted, and then once. */
function once<T>(work: () => T): () => T {
  let made: { result: T } | undefined;
  return () => {
    made ??= { result: work() };
    return made.result;
  };
}

customElements.define('ht-walk', Walk);
