/**
 * The walk, one question at a time. Answers live in the address and on the device; the drawn path is followed while
 * it goes on, and the planner finds another way when a test is skipped or every named cause is ruled out.
 */
import '../browser/page-globals.ts';
// The walk says its questions with figures in them from the start; in one script the two weigh less than side by side.
import '../vehicle/page/reader-figures.ts';
import { describeContradiction } from '../../diagnosis/reason.ts';
import { causeOfRecheck } from '../../model/recheck.ts';
import { afterPaint } from '../browser/after-paint.ts';
import { button, element } from '../browser/element.ts';
import { isTexts } from '../browser/guards.ts';
import { keepChildren } from '../browser/keep-children.ts';
import { keep, kept } from '../browser/storage.ts';
import { unfetched } from '../browser/unfetched.ts';
import { type Answers, layoutKey, readAnswers, SKIPPED, withAnswer, writeAnswers } from '../walk/answers.ts';
import { notHere } from '../walk/not-here.ts';
import { Diagnoser } from '../walk/page/diagnose.ts';
import { knownIn } from '../walk/page/known-answers.ts';
import { KnownPart } from '../walk/page/known-part.ts';
import { NextQuestions } from '../walk/page/next-questions.ts';

import { Trail } from '../walk/page/trail.ts';
import { showBooking } from '../walk/page/walk-booking.ts';
import { WalkFoot } from '../walk/page/walk-foot.ts';
import { handOver } from '../walk/page/walk-hand-over.ts';
import { keepWalk, resumeOffer } from '../walk/page/walk-kept.ts';
import { likelyParts } from '../walk/page/walk-likely.ts';
import { WalkParts } from '../walk/page/walk-parts.ts';
import { answersOf, fitQuestion, partAt, stateAfter, type WalkState } from '../walk/page/walk-state.ts';
import { showStops } from '../walk/page/walk-vehicle.ts';
import { WalkWords } from '../walk/page/walk-words.ts';
import type { WalkData } from '../walk/walk-data.ts';

class Walk extends HTMLElement {
  private data!: WalkData;
  private diagnoser!: Diagnoser;
  private answers = new Map<string, string>();
  private missing = new Set<string>();
  /** What is asked out of turn, until it is answered. */
  private detour: string | undefined;
  private known!: KnownPart;
  private words!: WalkWords;
  private foot!: WalkFoot;
  private state: WalkState | undefined;
  /** What each row that can be pressed now leads to, worked out while the reader still reads. */
  private readonly ahead = new Map<HTMLElement, WalkState>();
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
        const asked = this.state && this.testAskedNow(this.state);
        if (asked) this.give(asked, SKIPPED, { follow: true });
      },
      back: () => {
        const last = [...this.answers.keys()].at(-1);
        if (last !== undefined) this.askAgain(last);
      },
      startAgain: () => this.startAgain(),
      toJobCard: () => {
        if (this.state) void this.toJobCard(this.state);
      },
    });
    this.trail = new Trail(this.words, (key) => this.askAgain(key));
    this.place('.walk-foot').after(this.trail.root, this.known.root);
    this.dataset.live = '';
    // Whoever comes near an answer is about to give it: the other questions are fetched by then.
    for (const sign of ['pointerover', 'touchstart', 'focusin'])
      this.addEventListener(sign, () => void this.loadAhead(), {
        once: true,
        passive: true,
      });
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
    window.addEventListener('popstate', () => this.readAddress());
    window.addEventListener('pagehide', () => this.keepAnswers());
    const chosen = () => {
      this.isFocusDue = true;
    };
    document.addEventListener('headertank:change', () => {
      showBooking(this.data.symptom);
      showStops(this.place('.walk-stops'), chosen);
      this.show();
    });
    showBooking(this.data.symptom);
    showStops(this.place('.walk-stops'), chosen);
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
    this.answers = withAnswer(this.answers, key, value, reading);
    if (key === this.detour) this.detour = undefined;
    this.isKeepingDue = true;
    this.show(follow, state);
  }

  /** Takes an answer back; what the walk would go on without is asked for all the same. */
  private askAgain(key: string): void {
    this.give(key, undefined, { follow: true });
    if (this.state && this.testAskedNow(this.state) === key) return;
    this.detour = key;
    this.show(true);
  }

  /** Both are slow, so they come after the question they are about, or before the page goes. */
  private keepAnswers(): void {
    if (!this.isKeepingDue) return;
    this.isKeepingDue = false;
    const fragment = writeAnswers(this.answers);
    history.pushState(null, '', fragment === '' ? `${location.pathname}${location.search}` : `#${fragment}`);
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
    this.give(key, value, { follow: true, state: this.ahead.get(row) });
  }

  /**
   * What is asked now comes at once; what the numbers say beside it after that is on the screen.
   * @param follow the reader is taken to the question, with the next words a screen reader says
   */
  private show(follow = false, state = this.stateAfter(this.answers)): void {
    this.ahead.clear();
    const notThis = notHere(this.data.needs, window.headertank.vehicle?.layout ?? {});
    this.toggleAttribute('data-not-here', notThis !== undefined);
    if (notThis !== undefined) {
      keepChildren(this.place('.walk-top'), [element('p', {}, element('b', {}, notThis))]);
      // In the turn of what was to be drawn before the vehicle was known.
      this.afterPaint(() => document.querySelector('[data-start-ranking]')?.replaceChildren());
      return;
    }
    this.state = state;
    const { standing } = state.place;
    const part = this.partNow(state);
    const wanted = part === undefined ? undefined : this.parts.section(part);
    // What was asked stays in sight until the next can be shown.
    const before = this.querySelector<HTMLElement>('.step[data-now]') ?? undefined;
    const now = wanted === 'to be loaded' ? before : wanted;
    if (before && before !== now) {
      this.next.setAside(before);
      before.removeAttribute('data-now');
    }
    now?.setAttribute('data-now', '');
    if (now) this.fit(now, state);
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
          isProven: standing.kind === 'proven',
        });
        this.trail.show(answersOf(state));
        // Links that go on elsewhere take the answers along.
        for (const link of now?.querySelectorAll<HTMLAnchorElement>('a[data-carry]') ?? [])
          link.hash = writeAnswers(state.answers);
        if (this.isFocusDue) now?.querySelector('h3')?.focus({ preventScroll: true });
        this.isFocusDue = false;
      },
      () => {
        const { keeps } = this;
        this.keepAnswers();
        if (this.keeps !== keeps) this.showTop(state);
      },
      state.diagnose,
      () => this.showNumbers(state),
      () => this.makeReady(),
    );
  }

  private stateAfter(answers: Answers): WalkState {
    return stateAfter(answers, this.data, this.diagnoser, this.missing);
  }

  private fit(section: HTMLElement, state: WalkState): void {
    fitQuestion(section, state, this.diagnoser, this.data, (test) => this.ask(test));
  }

  /** Asks a test out of turn. */
  private ask(test: string): void {
    this.detour = test;
    this.show(true);
  }

  /** The name of the section that is asked now. The planner is asked only where the drawn path ends. */
  private partNow(state: WalkState): string | undefined {
    if (this.detour) return this.partOf(this.detour);
    const { standing } = state.place;
    if (standing.kind === 'ask' && standing.step === undefined && state.place.end === undefined)
      return this.partOf(standing.test);
    if (standing.kind !== 'off-tree') return partAt(state);
    const { action } = state.diagnose().step.best;
    if (action.kind === 'test') return this.partOf(action.test);
    if (action.kind === 'pass-on') return undefined;
    const proof = this.diagnoser.nextProof(action.cause, state.answers, state.layout, state.missing);
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

  private async loadAhead(): Promise<void> {
    this.parts.startReadings();
    try {
      await this.parts.load();
      this.makeReady();
    } catch {
      // Said when an answer needs them; a sign of one is no reason for a message.
    }
  }

  /** What each answer leads to on the drawn path is made ready; what the planner would ask is not worked out ahead. */
  private makeReady(): void {
    const now = this.state && this.partNow(this.state);
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

  /** The answers are kept already, so nothing is lost when the questions cannot be had. */
  private fetchQuestions(follow: boolean): void {
    const line = element('p', { class: 'note-line' }, 'Fetching the questions.');
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

  private resumeOffer(): Node[] {
    const goOn = (fragment: string) => {
      location.hash = fragment;
      this.readAddress(true);
    };
    return resumeOffer(this.data.symptom, goOn, () => this.show());
  }

  private showTop(state: WalkState): void {
    const {
      place: { standing, belief },
      diagnose,
    } = state;
    const parts: Node[] = answersOf(state).length === 0 ? this.resumeOffer() : [];
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
          element('b', {}, `Found: ${this.words.cause(cause)}. `),
          'Now what made it.',
        ),
      );
    if (standing.kind === 'off-tree') {
      const { step, reason } = diagnose();
      const { action } = step.best;
      const sentence =
        action.kind === 'pass-on'
          ? 'Nothing left here is quicker than passing the car on, with this sheet and the likeliest causes in the list.'
          : `The drawn path ends here; quickest by the numbers: ${reason.sentence}`;
      parts.push(element('p', { class: 'note-line' }, sentence));
    }
    keepChildren(this.place('.walk-top'), parts);
  }

  private async toJobCard(state: WalkState): Promise<void> {
    this.foot.sayOnCard(await handOver(this.data.symptom, state, this.words));
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
    this.show(true);
  }

  private showNumbers(state: WalkState): void {
    const { answers, layout, diagnose } = state;
    const diagnosis = diagnose();
    this.place('.walk-fights').replaceChildren(
      ...diagnosis.conflicts.map((found) =>
        element(
          'p',
          { class: 'caution' },
          element('b', {}, 'These findings conflict. '),
          describeContradiction(found, this.diagnoser.titles),
        ),
      ),
    );
    this.known.show(answers, this.missing, layout);
    const place = document.querySelector<HTMLElement>('[data-start-ranking]');
    if (!place) return;
    const isProven = state.place.standing.kind === 'proven';
    const likely = { diagnosis, isStart: answers.size === 0, isProven, asked: this.testAskedNow(state) };
    place.replaceChildren(
      ...likelyParts(likely, this.data.titles.causes, this.words, (test) => this.ask(test)),
    );
  }
}

customElements.define('ht-walk', Walk);
