/**
 * “Something else was seen”: a few words about what none of the answers says. They move nothing, stay on this device with the
 * walk, go onto the job card with the answer, and can be sent to the shelf as a note.
 */
import '../../browser/page-globals.ts';
import { button, element } from '../../browser/element.ts';
import { forget, keep, kept } from '../../browser/storage.ts';
import { OTHER } from '../answers.ts';

/** A sentence or two: the card takes 400 characters with the answer before them. */
const LONGEST = 300;

const isWords = (value: unknown): value is Record<string, string> =>
  typeof value === 'object' &&
  value !== null &&
  Object.values(value).every((each) => typeof each === 'string');

/** The words of one walk, by the question they answer. */
export class OtherSeen {
  private readonly symptom: string;
  private readonly walk: HTMLElement;
  private readonly take: (key: string, value: string) => void;
  private form: HTMLFormElement | undefined;

  /** @param take takes the answer, and follows to the next question */
  constructor(symptom: string, walk: HTMLElement, take: (key: string, value: string) => void) {
    this.symptom = symptom;
    this.walk = walk;
    this.take = take;
  }

  /** What was seen at a question; undefined when nothing was written. */
  words(key: string): string | undefined {
    const words = this.all()[key];
    return words === undefined || words === '' ? undefined : words;
  }

  /** Address of the note form with what was seen, for who wants to send it. */
  noteAddress(key: string, asked: string): string {
    const fields = new URLSearchParams({
      symptom: this.symptom,
      title: `Seen at “${asked}”`.slice(0, 100),
      text: this.words(key) ?? '',
    });
    return new URL(`note.html#${fields}`, window.headertank.root).href;
  }

  private all(): Record<string, string> {
    return kept(`seen.${this.symptom}`, isWords) ?? {};
  }

  /** Asks for the words under the question that is asked now. */
  ask(key: string): void {
    this.close();
    const words = element('textarea', { id: 'other-words', rows: '2', maxlength: String(LONGEST) });
    words.value = this.words(key) ?? '';
    const form = element(
      'form',
      { class: 'other-seen no-print' },
      element('label', { for: 'other-words' }, 'What was seen, in a few words'),
      words,
      element(
        'p',
        { class: 'soft' },
        'It is kept with your answers and moves nothing; the walk finds another way.',
      ),
      element('button', { type: 'submit', class: 'main' }, 'Keep it and go on'),
      ' ',
      button('Not now', () => this.leave(), 'quiet'),
    );
    form.addEventListener('submit', (event) => {
      event.preventDefault();
      this.keepWords(key, words.value.trim());
      this.take(key, OTHER);
    });
    form.addEventListener('keydown', ({ key: pressed }) => {
      if (pressed === 'Escape') this.leave();
    });
    this.form = form;
    this.walk.querySelector('.walk-foot')?.before(form);
    words.focus({ preventScroll: true });
    form.scrollIntoView({ block: 'nearest' });
  }

  private keepWords(key: string, text: string): void {
    const { [key]: _, ...rest } = this.all();
    const words = text === '' ? rest : { ...rest, [key]: text };
    if (Object.keys(words).length === 0) forget(`seen.${this.symptom}`);
    else keep(`seen.${this.symptom}`, words);
  }

  private leave(): void {
    this.close();
    this.walk.querySelector<HTMLElement>('.walk-other')?.focus();
  }

  /** Takes the field away. */
  close(): void {
    this.form?.remove();
    this.form = undefined;
  }
}
