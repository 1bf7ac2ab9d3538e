/**
 * Quantities as people write them: `87 °C`, `1.4 bar`, `96 to 98 °C`, `88 ± 2 °C`, `2.5 kΩ`.
 * Kept in SI inside, with the unit and the decimals as written so that they can be shown the same way.
 */
import { plainForm } from './typed-form.ts';
import { type Dimension, findUnit, toSI, type Unit, unitsOf } from './units.ts';

export interface Quantity {
  dimension: Dimension;
  /** SI. Equal for a single value; the two ends of a range otherwise. */
  low: number;
  high: number;
  /** Symbol of the unit as written. */
  unit: string;
  /** Decimals as written. */
  decimals: number;
}

/** Why a text is not a quantity. `rule` is the id the shelf check reports. */
export interface QuantityFault {
  rule: 'unreadable-quantity' | 'wrong-unit';
  /** What is wrong, a sentence. */
  found: string;
  /** What would be right. */
  expected: string;
}

export type QuantityResult = { ok: true; quantity: Quantity } | { ok: false; fault: QuantityFault };

/** No reading has more, and a number in the machine hardly. */
const MOST_DECIMALS = 15;

const NUMBER = '[-+−]?(?:\\d+(?:\\.\\d+)?|\\.\\d+)';
const FORM = new RegExp(`^(${NUMBER})\\s*(?:(to|–|—|±|\\+/-)\\s*(${NUMBER}))?\\s*(\\D.*)?$`);

/**
 * Read one quantity of a known dimension.
 * @param text as a person wrote it
 * @param dimension what the place asks for
 * @param assume unit to take when none is written (typed input); without it a missing unit is a fault. Typed input may
 * have a decimal comma as well: a keypad of another country offers no point. A record on the shelf may not.
 * @param example what would be right here; without it the usual one of the dimension
 */
export function readQuantity(
  text: string,
  dimension: Dimension,
  assume?: string,
  example = exampleOf(dimension),
): QuantityResult {
  const asWritten = text.trim();
  const form = assume === undefined ? asWritten : plainForm(withPoints(asWritten), dimension, assume);
  if (typeof form !== 'string') return unreadable(form.found, form.expected);
  const trimmed = form;
  const fault =
    faultInNumbers(asWritten, trimmed, example) ??
    (assume === undefined ? faultOfStages(asWritten, dimension) : undefined);
  if (fault) return { ok: false, fault };
  const match = FORM.exec(trimmed);
  if (!match?.[1])
    return unreadable(
      `"${asWritten}" is not a number${dimension === 'plain' ? '' : ' with a unit'}.`,
      dimension === 'plain'
        ? `a number alone, such as ${example}`
        : `a number with its unit, such as ${example}`,
    );
  const [, first, link, second, name] = match;
  const read = unitNamed(name, { asWritten, dimension, assume, example });
  if ('fault' in read) return { ok: false, fault: read.fault };
  const { unit } = read;
  const [low, high] = ends(first, link, second);
  if (!Number.isFinite(toSI(low, unit)) || !Number.isFinite(toSI(high, unit)))
    return unreadable('So large a number cannot be meant.', `a number with its unit, such as ${example}`);
  if (low > high) return unreadable(`"${asWritten}" runs downwards.`, 'the smaller end first');
  const typed = Math.max(...[first, second ?? ''].map((each) => each.split('.')[1]?.length ?? 0));
  // Of a difference in degrees Fahrenheit, kept in kelvin, whole ones would be rounded.
  const written = typed + (unit.symbol === 'K' && unit.factor !== 1 ? 1 : 0);
  return {
    ok: true,
    quantity: {
      dimension,
      low: toSI(low, unit),
      high: toSI(high, unit),
      unit: unit.symbol,
      decimals: Math.min(MOST_DECIMALS, written),
    },
  };
}

function unreadable(found: string, expected: string): { ok: false; fault: QuantityFault } {
  return { ok: false, fault: { rule: 'unreadable-quantity', found, expected } };
}

/** What is wrong with the writing of the numbers, whatever they measure. @param pointed with decimal commas as points */
function faultInNumbers(asWritten: string, pointed: string, example: string): QuantityFault | undefined {
  if (pointed === '')
    return unreadable('Nothing is written here.', `a number with its unit, such as ${example}`).fault;
  if (UNSEEN.test(asWritten))
    return unreadable(
      `A character that cannot be seen stands in "${asWritten.replace(new RegExp(UNSEEN, 'g'), '·')}", at the dot.`,
      'the same typed again',
    ).fault;
  if (GAPPED.test(pointed))
    return unreadable(
      `"${asWritten}" has a gap in the number.`,
      `the number without it: ${pointed.replace(new RegExp(GAPPED, 'g'), '$1$2')}`,
    ).fault;
  if (/\de[-+]?\d/i.test(pointed))
    return unreadable(`"${asWritten}" has a power of ten in it.`, `the number in full, such as ${example}`)
      .fault;
  if (/\d,\d/.test(pointed)) return faultOfComma(asWritten, pointed);
  if (/(^|[^\d.])0\d/.test(pointed))
    return unreadable(
      `"${asWritten}" starts a number with a zero.`,
      `the number without it, such as ${pointed.replace(/(^|[^\d.])0+(\d)/g, '$1$2')}`,
    ).fault;
  return undefined;
}

/** Of no width, or only a direction: pasted from elsewhere, they make 25 of 8 and a unit of none. */
const UNSEEN = /[\u00AD\u200B-\u200F\u202A-\u202E\u2060-\u2064\uFEFF]/;
/** Thousands parted by a blank, however narrow. */
const GAPPED = /(\d)[ \u00A0\u2009\u202F](\d{3}(?!\d))/;

/** A torque and an angle are two stages, and a figure holds one. */
function faultOfStages(asWritten: string, dimension: Dimension): QuantityFault | undefined {
  if (dimension !== 'torque' || !/\+\s*\d+(?:\.\d+)?\s*(?:°|deg)/i.test(asWritten)) return undefined;
  return unreadable(
    `"${asWritten}" holds two stages.`,
    'the torque here, and the angle in the file as a stage of it: stages: [{ turn: 90° }]',
  ).fault;
}

function faultOfComma(asWritten: string, trimmed: string): QuantityFault {
  const pointed = trimmed.replace(/(\d),(\d)/g, '$1.$2');
  if (GROUPED.test(trimmed))
    return unreadable(
      `"${asWritten}" may be read in two ways.`,
      `${pointed} or ${trimmed.replace(GROUPED, '$1$2')}, whichever is meant`,
    ).fault;
  if (NUMBERS_ONCE_POINTED.test(pointed))
    return unreadable(`"${asWritten}" has a comma in the number.`, `a point for decimals: ${pointed}`).fault;
  return unreadable(
    `"${asWritten}" has more than one sign in a number.`,
    'the number with a point before its decimals and nothing between its thousands',
  ).fault;
}

/** What a place takes, and the text that stands there. */
interface QuantityField {
  asWritten: string;
  dimension: Dimension;
  assume: string | undefined;
  example: string;
}

/** The unit that is written, or the one to be taken where none is. */
function unitNamed(
  name: string | undefined,
  { asWritten, dimension, assume, example }: QuantityField,
): { unit: Unit } | { fault: QuantityFault } {
  const known = unitsOf(dimension).map(({ symbol }) => symbol);
  const wrong = (found: string, expected: string) => ({
    fault: { rule: 'wrong-unit' as const, found, expected },
  });
  if (name === undefined && assume === undefined && dimension !== 'plain')
    return wrong(`"${asWritten}" has no unit.`, `the unit behind it, such as ${example}`);
  const unit = findUnit(name ?? assume ?? known[0] ?? '');
  if (dimension === 'plain' && name !== undefined)
    return wrong(
      `"${asWritten}" has a unit, and this place takes none.`,
      `the number alone, such as ${example}`,
    );
  // Typed of a difference, degrees are its size: 9 °F apart is 5 K.
  if (assume !== undefined && dimension === 'temperature difference' && unit?.dimension === 'temperature')
    return { unit: { symbol: 'K', dimension, factor: unit.factor } };
  if (!unit) return wrong(`"${(name ?? '').trim()}" is not a unit known here.`, `one of ${known.join(', ')}`);
  if (unit.dimension !== dimension)
    return wrong(
      `"${asWritten}" is ${article(unit.dimension)}, and this place takes ${article(dimension)}.`,
      `one of ${known.join(', ')}, such as ${example}`,
    );
  return { unit };
}

/** Both ends of what is written: the same for one number, either side of it with a tolerance. */
function ends(first: string, link: string | undefined, second: string | undefined): [number, number] {
  const a = toNumber(first);
  if (second === undefined) return [a, a];
  const b = toNumber(second);
  return link === '±' || link === '+/-' ? [a - Math.abs(b), a + Math.abs(b)] : [a, b];
}

/** A run of digits, points and commas. */
const RUN = /[\d.,]+/g;
/** One comma that can only stand before decimals: one or two of them, or any number behind a nought. */
const DECIMAL_COMMA = /^(?:\d*,\d{1,2}|0,\d+)$/;
/** One comma with three digits behind it: decimals to one reader, thousands to another. */
const GROUPED = /(?<![\d.,])([1-9]\d*),(\d{3})(?![\d.,])/;
/** No number with two points. */
const NUMBERS_ONCE_POINTED = /^(?!.*\d\.\d*\.)/s;

/** Commas that can only be decimal ones as points; any other stays and is refused. Thousands are never guessed. */
export function withPoints(text: string): string {
  return text.replace(RUN, (run) => (DECIMAL_COMMA.test(run) ? run.replace(',', '.') : run));
}

/**
 * What a typed text was taken for where that is not what stands there: a decimal comma, `2k5`, `1h30`, `50/50`. Undefined
 * where it is read as it stands or is refused.
 */
export function takenFor(text: string, dimension: Dimension, assume: string): string | undefined {
  const asTyped = text.trim();
  const form = plainForm(withPoints(asTyped), dimension, assume);
  return typeof form !== 'string' || form === asTyped || form.includes(',') ? undefined : form;
}

/**
 * A figure written with its unit in an ordinary way, in the shelf's spelling: `50/50` as `50 %`, `1,4 bar` as `1.4 bar`. What is
 * spelled so already, or cannot be read, stays as it is.
 */
export function shelfSpelling(text: string, dimension: Dimension): string {
  const pointed = withPoints(text.trim());
  const form = plainForm(pointed, dimension);
  return typeof form === 'string' && readQuantity(form, dimension).ok ? form : pointed;
}

function toNumber(text: string): number {
  return Number(text.replace('−', '-').replace('+', ''));
}

/** How a quantity of this dimension is usually written, for messages. */
export function exampleOf(dimension: Dimension): string {
  return EXAMPLES[dimension];
}

const EXAMPLES: Record<Dimension, string> = {
  temperature: '87 °C',
  'temperature difference': '8 K',
  pressure: '1.4 bar',
  torque: '10 N·m',
  volume: '4.6 l',
  length: '8 mm',
  area: '4 mm²',
  resistance: '2.5 kΩ',
  voltage: '0.1 V',
  current: '30 A',
  power: '12 W',
  time: '15 min',
  angle: '90°',
  flow: '60 l/min',
  speed: '90 km/h',
  rotation: '2000 rpm',
  share: '50 %',
  mass: '6.4 kg',
  plain: '3',
};

function article(dimension: Dimension): string {
  return dimension === 'area' || dimension === 'angle'
    ? `an ${dimension}`
    : dimension === 'plain'
      ? 'a plain number'
      : `a ${dimension}`;
}
