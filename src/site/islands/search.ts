/** <ht-search>: results as one types, on the front page and on the search page. Without it the form leads to search.html. */
import { loadScript } from '../browser/load-script.ts';
import type { Found } from '../search/find.ts';
import { kindOptions } from '../search/kind-choice.ts';
import { resultItem } from '../search/results-list.ts';
import { sayFound } from '../search/say-found.ts';
import type { Result } from '../search/start.ts';
import { button, element } from './element.ts';

const PAUSE = 120;
/** Results shown at once: each fetches a piece of the index, and six are a phone's first screen and a half. */
const FEW = 6;
/** Those that come with each “Show more”. */
const MANY = 10;

class Search extends HTMLElement {
  #state = element('p', { role: 'status', class: 'search-state' });
  #kinds = element('select', { id: 'search-kind' });
  #kindLine = element(
    'p',
    { class: 'search-kind', hidden: true },
    element('label', { for: 'search-kind' }, 'Show'),
    this.#kinds,
  );
  #list = element('ol', { class: 'search-results' });
  #more = button('Show more', () => this.#showMore(), 'quiet');
  #input: HTMLInputElement | null = null;
  /** The whole search page: kinds to choose, the query in the address. */
  #whole = false;
  #kind = '';
  #limit = FEW;
  #found: Found | undefined;
  /** Only the answer to the last question asked may be shown. */
  #asked = 0;
  #timer = 0;

  connectedCallback() {
    const form = this.querySelector('form');
    this.#input = this.querySelector('input');
    if (!form || !this.#input) return;
    this.#whole = this.hasAttribute('whole');
    this.#more.hidden = true;
    this.append(this.#state, this.#kindLine, this.#list, this.#more);
    this.#kinds.addEventListener('change', () => this.#choose(this.#kinds.value));
    this.#input.addEventListener('input', () => {
      clearTimeout(this.#timer);
      this.#timer = window.setTimeout(() => this.#search(), PAUSE);
    });
    if (this.#whole) form.addEventListener('submit', (event) => this.#submit(event));
    this.addEventListener('keydown', (event) => this.#move(event));
    if (this.#whole) this.#readAddress(this.#input);
  }

  #readAddress(input: HTMLInputElement) {
    const asked = new URLSearchParams(location.search);
    input.value = asked.get('q') ?? '';
    this.#kind = asked.get('kind') ?? '';
    if (input.value !== '') this.#search();
  }

  #submit(event: Event) {
    event.preventDefault();
    clearTimeout(this.#timer);
    this.#search();
  }

  async #search() {
    const query = this.#input?.value.trim() ?? '';
    const turn = ++this.#asked;
    this.#limit = FEW;
    this.#keepInAddress(query);
    if (query === '') {
      this.#found = undefined;
      this.#state.textContent = '';
      this.#kindLine.hidden = true;
      this.#list.replaceChildren();
      this.#more.hidden = true;
      return;
    }
    if (!globalThis.headertankSearch) this.#state.textContent = 'Fetching the search…';
    this.setAttribute('aria-busy', 'true');
    try {
      if (!globalThis.headertankSearch) await loadScript('search-start');
      const found = await globalThis.headertankSearch?.find(query);
      if (!found || turn !== this.#asked) return;
      this.#found = found;
      await this.#show(turn);
    } catch {
      if (turn !== this.#asked) return;
      this.#list.replaceChildren();
      this.#kindLine.hidden = true;
      this.#state.textContent =
        'The search cannot be fetched: no connection, and this device does not hold the shelf yet. The lists below still lead everywhere.';
    } finally {
      if (turn === this.#asked) this.removeAttribute('aria-busy');
    }
  }

  async #show(turn = ++this.#asked) {
    const engine = globalThis.headertankSearch;
    const found = this.#found;
    if (!found || !engine) return;
    const inKind = found.hits.filter(({ kind }) => this.#kind === '' || kind === this.#kind);
    const hits = inKind.length > 0 ? inKind : found.hits;
    if (inKind.length === 0) this.#kind = '';
    const shown = hits.slice(0, this.#limit);
    const results: Result[] = await Promise.all(shown.map((hit) => engine.show(hit, found.words)));
    if (turn !== this.#asked) return;
    this.#state.textContent = sayFound({ ...found, hits }, shown.length);
    // Who has walked into the list already stays at that place when a late answer comes.
    const links: (Element | null)[] = this.#links();
    const at = links.indexOf(document.activeElement);
    this.#list.replaceChildren(...results.map(resultItem));
    if (at >= 0) (this.#links()[at] ?? this.#input)?.focus();
    this.#more.hidden = shown.length === hits.length;
    this.#kindLine.hidden = !this.#whole || found.hits.length === 0;
    this.#kinds.replaceChildren(...kindOptions(found.hits, this.#kind));
  }

  async #choose(kind: string) {
    this.#kind = kind;
    this.#limit = FEW;
    this.#keepInAddress(this.#input?.value.trim() ?? '');
    await this.#show();
  }

  async #showMore() {
    const before = this.#limit;
    this.#limit += MANY;
    await this.#show();
    this.#links()[before]?.focus();
  }

  /** Down and up walk from the field through the results, Escape returns to the field. */
  #move(event: KeyboardEvent) {
    const stops = [this.#input, ...this.#links()];
    const at = stops.indexOf(document.activeElement as HTMLInputElement | HTMLAnchorElement | null);
    if (at < 0) return;
    const to =
      event.key === 'ArrowDown' ? at + 1 : event.key === 'ArrowUp' ? at - 1 : event.key === 'Escape' ? 0 : at;
    if (to === at || to < 0 || to >= stops.length) return;
    event.preventDefault();
    stops[to]?.focus();
  }

  #links(): HTMLAnchorElement[] {
    return [...this.#list.querySelectorAll<HTMLAnchorElement>('li > a')];
  }

  #keepInAddress(query: string) {
    if (!this.#whole) return;
    const address = new URL(location.href);
    address.search = '';
    if (query !== '') address.searchParams.set('q', query);
    if (query !== '' && this.#kind !== '') address.searchParams.set('kind', this.#kind);
    history.replaceState(null, '', address);
  }
}

customElements.define('ht-search', Search);
