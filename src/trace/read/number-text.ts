/** Numbers as log files write them: either decimal mark, thousands between, a unit stuck to them, or a word for nothing. */

export type DecimalMark = '.' | ',';

const PLAIN = /^[-+]?(?:\d+\.?\d*|\.\d+)(?:e[-+]?\d+)?$/i;
const WITH_UNIT =
  /^([-+\u2212]?\s*(?:\d[\d.,\u00a0\u202f' ]*|[.,]\d+)(?:e[-+]?\d+)?)\s*(?:[°º\ufffd]?\s*[a-z%/°·\ufffd][a-z0-9%/·.-]*)?$/i;

/** @returns NaN when it is no number */
export function readNumber(text: string, mark: DecimalMark): number {
  const trimmed = text.trim();
  if (mark === '.' && PLAIN.test(trimmed)) return Number(trimmed);
  const found = WITH_UNIT.exec(trimmed)?.[1];
  if (found === undefined) return Number.NaN;
  const close = found.replace(/[\s\u00a0\u202f']/g, '').replace('\u2212', '-');
  const other = mark === '.' ? ',' : '.';
  const whole = close.split(other).join('');
  // Separators of thousands stand before the decimal mark and three digits apart; anything else is not a number.
  if (close.includes(other) && !thousandsAreSound(close, mark, other)) return Number.NaN;
  const point = whole.replace(mark, '.');
  return PLAIN.test(point) ? Number(point) : Number.NaN;
}

function thousandsAreSound(text: string, mark: DecimalMark, other: string): boolean {
  const [front = '', ...rest] = text.split(mark);
  if (rest.some((part) => part.includes(other))) return false;
  const [, ...groups] = front.split(other);
  return groups.every((group) => /^\d{3}$/.test(group));
}

const ON = /^(on|yes|true|active|run|running|ein|an|oui|si|ja|high|low|slow|fast|stage ?[12]|req(uested)?)$/i;
const OFF = /^(off|no|false|inactive|stop|stopped|aus|non|nein|nee|none|not req(uested)?)$/i;

/** A fan column: a number as it stands, or a word. @returns NaN when it is neither */
export function readSwitch(text: string, mark: DecimalMark): number {
  const trimmed = text.trim();
  if (ON.test(trimmed)) return 1;
  if (OFF.test(trimmed)) return 0;
  return readNumber(trimmed, mark);
}

/** Which decimal mark most of these cells use. A column separator cannot be one outside quotes, but inside it can. */
export function decimalMarkOf(cells: readonly string[]): DecimalMark {
  let commas = 0;
  let points = 0;
  for (const cell of cells) {
    const text = cell.trim();
    if (/^[-+\u2212]?\d+,\d+\D{0,6}$/.test(text)) commas++;
    else if (/^[-+\u2212]?\d*\.\d+\D{0,6}$/.test(text)) points++;
  }
  return commas > points ? ',' : '.';
}
