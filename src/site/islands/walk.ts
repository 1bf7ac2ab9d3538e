/**
 * The walk, one question at a time. Answers live in the address and on the device; the drawn path is followed while
 * it goes on, and the planner finds another way when a test is skipped or every named cause is ruled out.
 */
import '../browser/page-globals.ts';
// The walk says its questions with figures in them from the start; in one script the two weigh less than side by side.
import '../vehicle/page/reader-figures.ts';
import { causeOfRecheck } from '../../model/recheck.ts';
import { afterPaint } from '../browser/after-paint.ts';
import { button, element } from '../browser/element.ts';
import { isTexts } from '../browser/guards.ts';
import { loadScript } from '../browser/load-script.ts';
import { notFetched } from '../browser/not-fetched.ts';
import { reconcileChildren } from '../browser/reconcile-children.ts';
import { keep, kept } from '../browser/storage.ts';
import {
  type Answers,
  isToldKey,
  layoutKey,
  readAnswers,
  SKIPPED,
  withAnswer,
  writeAnswers,
} from '../walk/answers.ts';
import { Cautions } from '../walk/page/cautions-seen.ts';
import { Diagnoser } from '../walk/page/diagnose.ts';
import { knownIn } from '../walk/page/known-answers.ts';
import { loadBeside } from '../walk/page/load-beside.ts';
import { NextQuestions } from '../walk/page/next-questions.ts';
import { OtherVersion } from '../walk/page/other-version.ts';
import { rankingParts } from '../walk/page/ranking-list.ts';
import type { WalkBeside } from '../walk/page/walk-beside.ts';
import { showBooking, showEstimate, vehicleMinutes } from '../walk/page/walk-booking.ts';
import { WalkFoot } from '../walk/page/walk-foot.ts';
import { keepWalk, resumeOffer } from '../walk/page/walk-kept.ts';
import { WalkParts } from '../walk/page/walk-parts.ts';
import { fitQuestion, partAt, stateAfter, type WalkState } from '../walk/page/walk-state.ts';
import { nameVehicle, showNotHere, showStops } from '../walk/page/walk-vehicle.ts';
import type { WalkData } from '../walk/walk-data.ts';

class Walk extends HTMLElement {
  private data!: WalkData;
  private diagnoser!: Diagnoser;
  private answers = new Map<string, string>();
  private missing = new Set<string>();
  /** What is asked out of turn, until it is answered. */
  private detour: string | undefined;
  private foot!: WalkFoot;
  private state: WalkState | undefined;
  /** What each row that can be pressed now leads to, worked out while the reader still reads. */
  private readonly ahead = new Map<HTMLElement, WalkState>();
  private readonly afterPaint = afterPaint();
  /** What is due stays so when a newer picture takes the turn of the one it was for. */
  private isFocusDue = false;
  private isKeepingDue = false;
  private parts!: WalkParts;
  private next!: NextQuestions;
  private readonly cautions = new Cautions();
  private keeps = true;
  /** There once somebody has come near an answer. */
  private beside: WalkBeside | undefined;
  private loading: Promise<WalkBeside> | undefined;
  /** The answer that was pressed last, and the line there that says what is awaited. */
  private pressed: HTMLElement | undefined;
  private fetching: HTMLElement | undefined;

  connectedCallback() {
    const source = this.querySelector('.walk-data');
    if (!source?.textContent) return;
    this.data = JSON.parse(source.textContent);
    this.diagnoser = new Diagnoser(this.data);
    this.parts = new WalkParts(this.data.symptom, this.data.stamp, this.place('.steps'));
    this.next = new NextQuestions(this.parts);
    this.missing = new Set(kept('tools-missing', isTexts) ?? []);
    this.foot = new WalkFoot(this.place('.walk-foot'), {
      skip: () => {
        const asked = this.state && this.testAskedNow(this.state);
        if (asked) this.give(asked, SKIPPED, { follow: true });
      },
      other: () => void this.withBeside((beside) => this.askOther(beside)),
      back: () => {
        const last = [...this.answers.keys()].at(-1);
        if (last !== undefined) this.askAgain(last);
      },
      startAgain: () => this.startAgain(),
      toJobCard: () =>
        void this.withBeside(async (beside) => {
          if (this.state) this.foot.sayOnCard(await beside.toJobCard(this.state));
        }),
    });
    this.dataset.live = '';
    document
      .querySelector('.take-told')
      ?.append(button('Note the answers', () => void this.withBeside((beside) => beside.takeTold())));
    // Whoever comes near an answer is about to give it: the other questions are fetched by then.
    for (const sign of ['pointerover', 'touchstart', 'focusin'])
      this.addEventListener(sign, () => void this.loadAhead(), {
        once: true,
        passive: true,
      });
    this.addEventListener('toggle', () => void this.loadAhead(), { capture: true, once: true });
    this.addEventListener('headertank:reading', (event) => {
      if (!(event instanceof CustomEvent)) return;
      const { test, outcome, reading } = event.detail;
      this.give(test, outcome, { follow: true, reading });
    });
    this.addEventListener('click', (event) => this.press(event));
    this.addEventListener('keydown', (event) => {
      if (event.key === 'Enter' || event.key === ' ') this.press(event);
      else this.pressNumber(event);
    });
    window.addEventListener('popstate', () => this.followAddress());
    window.addEventListener('pagehide', () => this.keepAnswers());
    document.addEventListener('headertank:change', () => {
      this.showVehicle();
      this.show();
    });
    this.showVehicle();
    this.readAddress();
  }

  private showVehicle(): void {
    // Where a test is done is said of a vehicle, and only of one.
    if (window.headertank.vehicle) void loadScript('where-on-car').catch(() => undefined);
    nameVehicle(this.place('.walk-title'));
    showStops(this.place('.walk-stops'), () => {
      this.isFocusDue = true;
    });
  }

  private place(selector: string): HTMLElement {
    const found = this.querySelector<HTMLElement>(selector);
    if (!found) throw new Error(`The walk has no ${selector}`);
    return found;
  }

  /** A question or answer with the chosen vehicle's figures written in. */
  private say(text: string): string {
    return window.headertank.figures?.say(text, this.beside?.texts.general ?? {}) ?? text;
  }

  /** A link to a place on this page changes the address, and is no answer: the answers stay and go back into it. */
  private followAddress(): void {
    const place = location.hash.slice(1);
    if (place === '' || !document.getElementById(place)) {
      this.readAddress();
      return;
    }
    history.replaceState(null, '', this.addressNow());
  }

  private readAddress(follow = false): void {
    this.answers = readAnswers(location.hash, knownIn(this.data));
    this.detour = undefined;
    // An answer of this very moment that is not in the address yet is gone with the way back.
    this.isKeepingDue = false;
    if (this.answers.size > 0) void this.loadAhead();
    this.show(follow);
  }

  /**
   * Take an answer, whichever way it was given.
   * @param value undefined takes it back
   * @param state what it leads to, where that is known already
   */
  private give(
    key: string,
    value: string | undefined,
    {
      follow = false,
      state,
      reading,
    }: { follow?: boolean; state?: WalkState | undefined; reading?: string } = {},
  ): void {
    if (follow) this.cautions.passed();
    this.answers = withAnswer(this.answers, key, value, reading);
    if (key === this.detour) this.detour = undefined;
    this.isKeepingDue = true;
    this.show(follow, state);
  }

  /** Takes an answer back; what the walk would go on without is asked for all the same. */
  private askAgain(key: string): void {
    this.give(key, undefined, { follow: true });
    // What the customer told is taken at its own place.
    if (isToldKey(key) || (this.state && this.testAskedNow(this.state)) === key) return;
    this.detour = key;
    this.show(true);
  }

  private askOther(beside: WalkBeside): void {
    const asked = this.state && this.testAskedNow(this.state);
    if (asked) beside.askOther(asked);
  }

  private addressNow(): string {
    const fragment = writeAnswers(this.answers);
    return fragment === '' ? `${location.pathname}${location.search}` : `#${fragment}`;
  }

  /** Both are slow, so they come after the question they are about, or before the page goes. */
  private keepAnswers(): void {
    if (!this.isKeepingDue) return;
    this.isKeepingDue = false;
    history.pushState(null, '', this.addressNow());
    this.keeps = keepWalk(this.data.symptom, this.answers);
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
    this.pressed = row;
    this.give(key, value, { follow: true, state: this.ahead.get(row) });
  }

  /**
   * What is asked now comes at once; what the numbers say beside it after that is on the screen.
   * @param follow the reader is taken to the question, with the next words a screen reader says
   */
  private show(follow = false, state = this.stateAfter(this.answers)): void {
    this.ahead.clear();
    if (showNotHere(this, this.data.needs)) {
      // In the turn of what was to be drawn before the vehicle was known.
      this.afterPaint(() => undefined);
      return;
    }
    this.state = state;
    const wanted = this.sectionFor(state);
    // What was asked stays in sight until the next can be shown.
    const before = this.querySelector<HTMLElement>('.step[data-now]') ?? undefined;
    const now = wanted === 'to be loaded' ? before : wanted;
    if (before && before !== now) {
      this.next.setAside(before);
      before.removeAttribute('data-now');
    }
    now?.setAttribute('data-now', '');
    if (now) {
      this.fit(now, state);
      this.cautions.show(now);
    }
    this.showTop(state);
    if (wanted === 'to be loaded') this.fetchQuestions(follow);
    if (follow && wanted !== 'to be loaded') {
      this.place('.walk-title').scrollIntoView({ block: 'start' });
      this.isFocusDue = true;
    }
    this.afterPaint(
      () => {
        this.foot.show({
          isTest: this.testAskedNow(state) !== undefined,
          isAnswered: this.answers.size > 0,
          isProven: state.place.standing.kind === 'proven',
        });
        // Links that go on elsewhere take the answers along.
        for (const link of now?.querySelectorAll<HTMLAnchorElement>('a[data-carry]') ?? [])
          link.hash = writeAnswers(state.answers);
        // Each question is a place of its own in the browser's history.
        const complaint = document.querySelector('h1')?.textContent ?? '';
        document.title = [
          ...(state.answers.size > 0 ? [now?.querySelector('h3')?.textContent ?? ''] : []),
          complaint,
          'Headertank',
        ].join(' · ');
        if (this.isFocusDue) now?.querySelector('h3')?.focus({ preventScroll: true });
        this.isFocusDue = false;
      },
      () => {
        const { keeps } = this;
        this.keepAnswers();
        if (this.keeps !== keeps) this.showTop(state);
      },
      () => this.showRanking(state),
      () => this.showBeside(state),
      () => this.makeReady(),
    );
  }

  private stateAfter(answers: Answers): WalkState {
    return stateAfter(answers, this.data, this.diagnoser, this.missing);
  }

  private fit(section: HTMLElement, state: WalkState): void {
    fitQuestion(section, state, this.diagnoser, this.beside?.texts.goesOn ?? {}, (test) => this.ask(test));
  }

  /** Asks a test out of turn. */
  private ask(test: string): void {
    this.detour = test;
    this.show(true);
  }

  private sectionFor(state: WalkState): HTMLElement | undefined | 'to be loaded' {
    const isPlanned = !this.detour && state.place.standing.kind === 'off-tree';
    if (isPlanned && !this.beside) return 'to be loaded';
    const part = this.partNow(state);
    return part === undefined ? undefined : this.parts.section(part);
  }

  /** The name of the section that is asked now. The planner is asked only where the drawn path ends. */
  private partNow(state: WalkState): string | undefined {
    if (this.detour) return this.partOf(this.detour);
    const { standing } = state.place;
    if (standing.kind === 'ask' && standing.step === undefined && state.place.end === undefined)
      return this.partOf(standing.test);
    if (standing.kind !== 'off-tree') return partAt(state);
    const { test, cause } = this.beside?.quickest(state) ?? {};
    if (test !== undefined) return this.partOf(test);
    if (cause === undefined) return undefined;
    const proof = this.diagnoser.nextProof(cause, state.answers, state.layout, state.missing);
    return proof === undefined ? undefined : this.partOf(proof);
  }

  /** A test or layout is asked as its step where the tree has it. */
  private partOf(key: string): string {
    const rechecked = causeOfRecheck(key);
    if (rechecked !== undefined) return `proof ${rechecked}`;
    const own = Object.entries(this.data.tree.steps).find(
      ([, node]) =>
        (node.kind === 'test' ? node.test : node.kind === 'layout' && layoutKey(node.feature)) === key,
    );
    return own ? `step ${own[0]}` : `spare ${key}`;
  }

  /** All that the walk wants from the first answer on. */
  private load(): Promise<WalkBeside> {
    this.loading ??= Promise.all([
      loadBeside({
        diagnoser: this.diagnoser,
        walk: this,
        say: (text) => this.say(text),
        ask: (test) => this.ask(test),
        askAgain: (key) => this.askAgain(key),
        give: (key, value) => this.give(key, value),
        answer: (key, value) => this.give(key, value, { follow: true }),
        missing: (tools) => this.setMissing(tools),
        again: () => this.show(),
      }),
      this.parts.load(),
    ]).then(
      ([beside]) => {
        this.beside = beside;
        if (this.state) {
          this.showBeside(this.state);
          this.makeReady();
        }
        return beside;
      },
      (error: unknown) => {
        this.loading = undefined;
        throw error;
      },
    );
    return this.loading;
  }

  private async loadAhead(): Promise<void> {
    this.parts.startReadings();
    await this.withBeside(() => undefined);
  }

  /** Does it once the rest of the walk is there. */
  private async withBeside(then: (beside: WalkBeside) => void | Promise<void>): Promise<void> {
    const beside = await this.load().catch(() => undefined);
    // Said when an answer needs it; a sign of one is no reason for a message.
    if (beside) await then(beside);
  }

  /** What each answer leads to on the drawn path is made ready; what the planner would ask is not worked out ahead. */
  private makeReady(): void {
    const now = this.state && this.sectionNameNow(this.state);
    this.next.prepare(
      this.rowsNow().flatMap((row) => {
        const { key, value } = row.dataset;
        if (key === undefined || value === undefined) return [];
        const state = this.stateAfter(withAnswer(this.answers, key, value));
        this.ahead.set(row, state);
        const name = state.place.standing.kind === 'off-tree' ? undefined : this.partNow(state);
        // A recheck and the proof it leads to are one section: what is asked now stays as it is until it is answered.
        return name === undefined || name === now
          ? []
          : [{ name, fit: (section: HTMLElement) => this.fit(section, state) }];
      }),
    );
  }

  private sectionNameNow(state: WalkState): string | undefined {
    return state.place.standing.kind === 'off-tree' && !this.beside ? undefined : this.partNow(state);
  }

  /** The answers are kept already, so nothing is lost when the questions cannot be had. */
  private fetchQuestions(follow: boolean): void {
    const line = element('p', { class: 'note-line', role: 'status' });
    this.fetching?.remove();
    this.fetching = line;
    // Beside the finger: what stands above the question is off a phone's screen.
    if (this.pressed?.isConnected) this.pressed.after(line);
    else this.place('.walk-top').append(line);
    line.textContent = 'Fetching the questions.';
    // Says so to who listens too: what is on the page is about to change.
    this.ariaBusy = 'true';
    const again = () => {
      line.remove();
      this.show(follow);
    };
    this.load()
      .finally(() => {
        this.ariaBusy = null;
      })
      .then(again, (error: unknown) =>
        error instanceof OtherVersion
          ? line.replaceChildren(
              'The site has changed since this page was opened, or something else answers in its place. Your answers are kept. ',
              button('Reload', () => location.reload()),
            )
          : line.replaceChildren(notFetched('The questions'), button('Try again', again)),
      );
  }

  private resumeOffer(): Node[] {
    const goOn = (fragment: string) => {
      location.hash = fragment;
      this.readAddress(true);
    };
    return resumeOffer(this.data.symptom, goOn, () => this.show());
  }

  private showTop(state: WalkState): void {
    const { standing, belief } = state.place;
    const parts: Node[] = state.answers.size === 0 && state.trail.length === 0 ? this.resumeOffer() : [];
    if (!this.keeps)
      parts.push(
        element(
          'p',
          { class: 'note-line' },
          'This device keeps nothing (its storage is full or blocked). The link holds the answers: copy it to continue later.',
        ),
      );
    for (const cause of belief.found)
      parts.push(
        element(
          'p',
          { class: 'note-line' },
          element('b', {}, `Found: ${this.data.causes[cause]}. `),
          'Now what made it.',
        ),
      );
    if (standing.kind === 'off-tree' && this.beside)
      parts.push(element('p', { class: 'note-line' }, this.beside.quickest(state).sentence));
    reconcileChildren(this.place('.walk-top'), parts);
  }

  private testAskedNow({ place: { standing } }: WalkState): string | undefined {
    if (standing.kind === 'proven' && !this.detour) return undefined;
    const asked = this.querySelector<HTMLElement>('.step[data-now] .answers > li > .answer')?.dataset.key;
    return asked?.startsWith('layout.') ? undefined : asked;
  }

  private startAgain(): void {
    this.answers = new Map();
    this.detour = undefined;
    this.isKeepingDue = true;
    this.cautions.forget();
    this.show(true);
  }

  private showRanking({ answers, place: { belief, standing } }: WalkState): void {
    const { vehicle } = window.headertank;
    if (!this.beside) {
      const minutes = vehicleMinutes(this.data.symptom);
      showBooking(minutes, standing.kind === 'proven');
      showEstimate(belief.ranked, this.data.causes, vehicle?.repairs, minutes);
    }
    document
      .querySelector('[data-start-ranking]')
      ?.replaceChildren(...rankingParts(belief.ranked, answers.size === 0, this.data.causes));
  }

  private showBeside(state: WalkState): void {
    this.beside?.show(state, { asked: this.testAskedNow(state) });
  }
}

customElements.define('ht-walk', Walk);
