/** The sections of a walk that are not in its page: fetched once, put into the page as they are asked. */
import '../../browser/page-globals.ts';
import { loadScript } from '../../browser/load-script.ts';
import { OtherVersion } from './other-version.ts';

/** The other questions of a walk, fetched when first wanted. */
export class WalkParts {
  private readonly symptom: string;
  private readonly stamp: string;
  private readonly place: HTMLElement;
  private parts: Readonly<Record<string, string>> | undefined;
  private loading: Promise<void> | undefined;

  /**
   * @param stamp of this page's own walk
   * @param place where sections stand
   */
  constructor(symptom: string, stamp: string, place: HTMLElement) {
    this.symptom = symptom;
    this.stamp = stamp;
    this.place = place;
    startHelpers(place);
  }

  /** The script of the fields for a reading, once somebody comes near a question: the first page does without. */
  startReadings(): void {
    if (this.place.querySelector('ht-reading')) void loadScript('reading').catch(() => undefined);
  }

  /** @throws OtherVersion when the site has changed under the page, Error when they cannot be had */
  load(): Promise<void> {
    this.loading ??= this.fetchParts().catch((error: unknown) => {
      this.loading = undefined;
      throw error;
    });
    return this.loading;
  }

  private async fetchParts(): Promise<void> {
    if (location.protocol === 'file:') {
      window.headertank.receiveWalkParts = (parts) => this.receive(parts);
      return loadScript(`../walks/${this.symptom}`);
    }
    const name = `${this.symptom}.html`;
    const answer = await fetch(new URL(`walks/${name}`, window.headertank.root));
    if (!answer.ok) throw new Error(`${answer.url} cannot be had: ${answer.status}`);
    this.receive(sectionsIn(await answer.text(), name, this.stamp));
  }

  private receive(parts: Readonly<Record<string, string>>): void {
    this.parts = parts;
  }

  /**
   * @param part such as "step level", "spare code-read" or "proof coolant-low"
   * @returns the section; undefined when there is none; 'to be loaded' when that is not known yet
   */
  section(part: string): HTMLElement | undefined | 'to be loaded' {
    const [kind, id] = part.split(' ');
    const there = this.place.querySelector<HTMLElement>(`[data-${kind}="${id}"]`);
    if (there) return there;
    if (!this.parts) return 'to be loaded';
    const markup = this.parts[part];
    if (markup === undefined) return undefined;
    const made = document.createElement('template');
    made.innerHTML = markup;
    const section = made.content.querySelector<HTMLElement>('section');
    if (!section) return undefined;
    // Out of turn an answer leads nowhere by itself, so it is no link but can be pressed.
    for (const answer of section.querySelectorAll('.answer:not([href])')) {
      answer.setAttribute('role', 'button');
      answer.setAttribute('tabindex', '0');
    }
    this.place.append(section);
    window.headertank.figures?.fill(section);
    startHelpers(section);
    this.startReadings();
    section.dispatchEvent(new CustomEvent('headertank:added', { bubbles: true }));
    return section;
  }
}

/**
 * Few questions have a calculator or a field for a reading; their scripts come with the first. Until then the example of a calculator
 * stands and links to its page, and the answers can be pressed.
 */
function startHelpers(within: HTMLElement): void {
  if (within.querySelector('.calculator')) void loadScript('calculator').catch(() => undefined);
}

/**
 * The sections of a page that has every step of a walk, as its script has them (src/site/after-build/walk-sections.ts).
 * @param name its file name; links within the page get it
 * @throws OtherVersion when the page is of another version, or none of ours
 */
function sectionsIn(page: string, name: string, stamp: string): Record<string, string> {
  const parts: Record<string, string> = {};
  // In a template the page's own styles stay out of force, so that the policy of this page has nothing to refuse.
  const read = document.createElement('template');
  read.innerHTML = page;
  if (read.content.querySelector<HTMLElement>('[data-walk]')?.dataset.walk !== stamp)
    throw new OtherVersion();
  for (const section of read.content.querySelectorAll<HTMLElement>('section.step')) {
    for (const link of section.querySelectorAll('[href^="#"]'))
      link.setAttribute('href', `../walks/${name}${link.getAttribute('href')}`);
    const [kind, id] =
      Object.entries(section.dataset).find(([each]) => /^(?:step|spare|proof)$/.test(each)) ?? [];
    parts[`${kind} ${id}`] = section.outerHTML;
  }
  return parts;
}
