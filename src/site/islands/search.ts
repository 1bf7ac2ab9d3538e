/** <ht-search>: results as one types, on the front page and on the search page. Without it the form leads to search.html. */

import { KINDS } from '../../model/kinds.ts';
import { button, element } from '../browser/element.ts';
import { keepSearched } from '../browser/searched.ts';
import type { PartingQuestion } from '../search/complaint-data.ts';
import type { SearchAnswer } from '../search/page/engine.ts';
import { kindOptions } from '../search/page/kind-choice.ts';
import { openComplaints, type ShowComplaints, type ShownFirst } from '../search/page/open-complaints.ts';
import { openSearch } from '../search/page/open-search.ts';
import { resultItem } from '../search/page/results-list.ts';
import { sayFound, unknownCodes } from '../search/page/say-found.ts';
import { wordsOf } from '../search/words.ts';

/** While letters come one by one, in milliseconds; pasted, spoken or suggested words come whole and are looked for at once. */
const PAUSE = 120;
/** Before the full text is fetched for the first time: who types on may have his complaint before it is needed. */
const FIRST_PAUSE = 700;
/** A letter alone is on every page. */
const LEAST_LETTERS = 2;
/** Results shown at once: each fetches a piece of the index, and six are a phone's first screen and a half. */
const FEW = 6;
/** Those that come with each “Show more”. */
const MANY = 10;

const NOTHING_FIRST: ShownFirst = { parts: [], isSettled: false };

class Search extends HTMLElement {
  private state = element('p', { role: 'status', class: 'search-state' });
  private kinds = element('select', { id: 'search-kind' });
  private kindLine = element(
    'p',
    { class: 'search-kind', hidden: true },
    element('label', { for: 'search-kind' }, 'Show'),
    this.kinds,
  );
  private codes = element(
    'p',
    { hidden: true },
    element(
      'a',
      { href: new URL('codes/index.html', window.headertank.root).href },
      'The codes on this shelf',
    ),
  );
  /** Complaints, and what comes before them: at once, while the other pages are still looked for. */
  private first = element('div', { class: 'recognised' });
  private list = element('ol', { class: 'search-results' });
  private more = button('Show more', () => this.showMore(), 'quiet');
  /** Where the answer stands above, the full text is fetched for who wants it: four fifths of a first search's bytes. */
  private others = button('Other pages with these words', () => this.search(true), 'quiet');
  private input: HTMLInputElement | null = null;
  /** The whole search page: kinds to choose, the query in the address. */
  private whole = false;
  private kind = '';
  private limit = FEW;
  private answered = false;
  private showComplaints: ShowComplaints | undefined;
  /** What stands above needs no list under it. */
  private isSettled = false;
  /** Questions that were answered, as long as the words stay. */
  private answers = new Map<string, string>();
  private answersTo = '';
  /** Only the answer to the last question asked may be shown. */
  private asked = 0;
  private timer = 0;

  connectedCallback() {
    const form = this.querySelector('form');
    this.input = this.querySelector('input');
    if (!form || !this.input) return;
    this.whole = this.hasAttribute('whole');
    this.more.hidden = this.others.hidden = true;
    this.append(this.first, this.state, this.codes, this.kindLine, this.list, this.more, this.others);
    this.kinds.addEventListener('change', () => this.choose(this.kinds.value));
    let length = 0;
    this.input.addEventListener('input', () => {
      // What is found stands under the field, and on a phone the keyboard has the lower half.
      if (matchMedia('(max-width: 40rem)').matches) this.scrollIntoView();
      const now = this.input?.value.length ?? 0;
      const isTyping = Math.abs(now - length) <= 1;
      length = now;
      keepSearched(this.input?.value ?? '');
      this.recognise();
      clearTimeout(this.timer);
      const pause = this.answered ? PAUSE : FIRST_PAUSE;
      this.timer = window.setTimeout(() => this.search(), isTyping ? pause : 0);
    });
    // Who goes to the field will type: by then it is there.
    this.input.addEventListener('focus', () => this.fetchComplaints(), { once: true });
    document.addEventListener('headertank:change', () => this.recognise());
    if (this.whole) form.addEventListener('submit', (event) => this.submit(event));
    this.addEventListener('keydown', (event) => this.move(event));
    if (this.whole) this.readAddress(this.input);
  }

  private readAddress(input: HTMLInputElement) {
    const asked = new URLSearchParams(location.search);
    input.value = asked.get('q') ?? '';
    this.kind = asked.get('kind') ?? '';
    if (location.hash === '#q') input.focus();
    if (input.value === '') return;
    this.recognise();
    // An address with words was asked for: as with Enter, the list of pages comes with it.
    this.search(true);
    // The form of the front page led here: keys go on where they were. On a phone the keyboard would cover the results.
    if (matchMedia('(hover: hover)').matches) input.focus({ preventScroll: true });
  }

  /** Shows the complaints that the words are about, in the same frame as the key once the recogniser is there. */
  private recognise() {
    const text = this.input?.value ?? '';
    if (!this.showComplaints) {
      // Without it the other pages are still found.
      if (text !== '') this.fetchComplaints();
      return;
    }
    if (text.trim() !== this.answersTo) {
      this.answersTo = text.trim();
      this.answers.clear();
    }
    const isWanted = this.kind === '' || this.kind === KINDS.symptom.one;
    const isQuery = wordsOf(text).some((word) => word.length >= LEAST_LETTERS);
    const { parts, isSettled } =
      isWanted && isQuery
        ? this.showComplaints(text, this.answers, (question, means) => this.answer(question, means))
        : NOTHING_FIRST;
    this.isSettled = isSettled;
    this.first.replaceChildren(...parts);
    this.leaveOutShown();
  }

  private async fetchComplaints() {
    if (this.showComplaints) return;
    try {
      const show = await openComplaints();
      if (this.showComplaints) return;
      this.showComplaints = show;
    } catch {
      return;
    }
    this.recognise();
  }

  private answer({ ask }: PartingQuestion, means: string) {
    this.answers.set(ask, means);
    this.recognise();
    this.first.querySelector<HTMLElement>('.complaints a')?.focus();
  }

  /** What stands above is not found once more below. */
  private leaveOutShown() {
    const above = new Set([...this.first.querySelectorAll('a')].map(({ href }) => href));
    for (const item of this.list.children) {
      if (!(item instanceof HTMLElement)) continue;
      const address = item.querySelector('a')?.href;
      item.hidden = address !== undefined && above.has(address);
    }
  }

  private submit(event: Event) {
    event.preventDefault();
    this.search(true);
  }

  /** @param isAsked somebody asked for every page; until then an answer that needs no list stands alone */
  private async search(isAsked = false) {
    clearTimeout(this.timer);
    const query = this.input?.value.trim() ?? '';
    this.limit = FEW;
    this.others.hidden = true;
    this.standAlone(query !== '');
    if (!wordsOf(query).some((word) => word.length >= LEAST_LETTERS)) {
      this.showNone(query, query === '' ? '' : 'Type at least two letters or digits.');
      return;
    }
    if (!isAsked && !this.answered && this.kind === '') {
      const turn = ++this.asked;
      this.setAttribute('aria-busy', 'true');
      // The complaint first: what comes after it must not take the line from it.
      await this.fetchComplaints();
      if (turn !== this.asked) return;
      if (this.isSettled) {
        this.showNone(query, '');
        this.others.hidden = false;
        return;
      }
    }
    await this.show();
  }

  /** No list, and why. */
  private showNone(query: string, why: string) {
    this.keepInAddress(query);
    this.asked += 1;
    this.removeAttribute('aria-busy');
    this.state.textContent = why;
    this.kindLine.hidden = this.more.hidden = this.codes.hidden = true;
    this.list.replaceChildren();
  }

  /** While somebody searches, the lists of the search page would only stand under the results. */
  private standAlone(isSearching: boolean) {
    if (!this.whole) return;
    for (const part of document.querySelectorAll<HTMLElement>('[data-without-search]'))
      part.hidden = isSearching;
  }

  private async show() {
    const turn = ++this.asked;
    const query = this.input?.value.trim() ?? '';
    if (!this.answered) this.state.textContent = 'Fetching the search…';
    this.setAttribute('aria-busy', 'true');
    try {
      const engine = await openSearch();
      const answer = await engine.ask({ query, kind: this.kind, limit: this.limit });
      if (turn !== this.asked) return;
      this.answered = true;
      this.put(answer);
    } catch {
      if (turn !== this.asked) return;
      this.list.replaceChildren();
      this.kindLine.hidden = this.codes.hidden = true;
      this.standAlone(false);
      this.state.textContent =
        'The search cannot be fetched: no connection, and this device does not hold the shelf yet. The lists below still lead everywhere.';
    } finally {
      if (turn === this.asked) {
        this.keepInAddress(query);
        this.removeAttribute('aria-busy');
      }
    }
  }

  private put(answer: SearchAnswer) {
    const { results, count, kinds } = answer;
    this.kind = answer.kind;
    this.state.textContent = sayFound(answer, results.length);
    this.codes.hidden = unknownCodes(answer).length === 0;
    // Who has walked into the list already stays at that place when a late answer comes.
    const links: (Element | null)[] = this.links();
    const at = links.indexOf(document.activeElement);
    this.list.replaceChildren(...results.map(resultItem));
    this.leaveOutShown();
    if (at >= 0) (this.links()[at] ?? this.input)?.focus();
    this.more.hidden = results.length === count;
    this.kindLine.hidden = !this.whole || kinds.get('') === 0;
    this.kinds.replaceChildren(...kindOptions(kinds, this.kind));
  }

  private async choose(kind: string) {
    this.kind = kind;
    this.limit = FEW;
    this.recognise();
    await this.show();
  }

  private async showMore() {
    const before = this.limit;
    this.limit += MANY;
    await this.show();
    this.links()[before]?.focus();
  }

  /** Down and up walk from the field through the results, Escape returns to the field. */
  private move(event: KeyboardEvent) {
    const stops = [this.input, ...this.links()];
    const at = stops.indexOf(document.activeElement as HTMLInputElement | HTMLAnchorElement | null);
    if (at < 0) return;
    const to =
      event.key === 'ArrowDown' ? at + 1 : event.key === 'ArrowUp' ? at - 1 : event.key === 'Escape' ? 0 : at;
    if (to === at || to < 0 || to >= stops.length) return;
    event.preventDefault();
    stops[to]?.focus();
  }

  private links(): HTMLAnchorElement[] {
    return [...this.querySelectorAll<HTMLAnchorElement>('.search-results > li:not([hidden]) > a')];
  }

  private keepInAddress(query: string) {
    if (!this.whole) return;
    const address = new URL(location.href);
    address.search = '';
    if (query !== '') address.searchParams.set('q', query);
    if (query !== '' && this.kind !== '') address.searchParams.set('kind', this.kind);
    history.replaceState(null, '', address);
  }
}

customElements.define('ht-search', Search);
