/** The source of a figure said in one press: of the same source, the same page, as sure as the one before. Nothing is taken without the press. */

/** What is said of a figure's source. */
const PARTS = ['from', 'page', 'sure'] as const;

type Fields = Readonly<Record<string, string>>;

/** Says one source for several figures of the form in one press. */
export class SameSource {
  /** Row whose source was said last. */
  private before: string;

  /** @param fields of a draft, in the order in which they were typed */
  constructor(fields: Fields) {
    const last = Object.keys(fields)
      .filter((name) => name.endsWith('/from'))
      .at(-1);
    this.before = last?.replace(/\/from$/, '') ?? '';
  }

  /** A part of a row's source was typed. */
  said(row: HTMLElement, field: HTMLElement, value: string): void {
    if (value !== '' && PARTS.some((part) => part === field.dataset.part))
      this.before = row.dataset.entry ?? '';
  }

  /** Offered in an open row until its own source is said, once one of another row has been. */
  offer(row: HTMLElement, fields: Fields): void {
    const press = row.querySelector<HTMLElement>('.as-before');
    if (!press) return;
    const says = PARTS.flatMap((part) => fields[`${this.before}/${part}`] || []);
    const isSaid = PARTS.some((part) => (fields[`${row.dataset.entry}/${part}`] ?? '') !== '');
    press.hidden = isSaid || says.length === 0 || this.before === row.dataset.entry;
    press.textContent = `As the one before: ${says.join(', ')}`;
  }

  /** What the press says, by the part of the row it is of. */
  values(fields: Fields): [part: string, value: string][] {
    return PARTS.map((part) => [part, fields[`${this.before}/${part}`] ?? '']);
  }
}
