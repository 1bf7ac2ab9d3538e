/**
 * The metric figures of a running text in the units a reader has: `15 K or more below`, `0.1 to 0.5 l`, `two millimetres`.
 * Records write differences in K and temperatures in °C, so each is turned as what it is.
 */
import type { Habit } from './habit.ts';
import { decimalsIn, readersUnit } from './readers-unit.ts';
import { showNumber } from './show-quantity.ts';
import { findUnit, fromSI, toSI, type Unit } from './units.ts';

/** The word of a unit: the unit it names, and the word a reader of other units has for it. */
interface UnitWord {
  symbol: string;
  /** For one and for several. */
  other: readonly [string, string];
  /** About as large: `two litres` are two quarts. The number then stays. */
  isAsLarge?: true;
}

const UNIT_WORDS: Readonly<Record<string, UnitWord>> = {
  litre: { symbol: 'l', other: ['quart', 'quarts'], isAsLarge: true },
  millilitre: { symbol: 'ml', other: ['fl oz', 'fl oz'] },
  kelvin: { symbol: 'K', other: ['°F', '°F'] },
  millimetre: { symbol: 'mm', other: ['in', 'in'] },
  centimetre: { symbol: 'cm', other: ['in', 'in'] },
  metre: { symbol: 'm', other: ['ft', 'ft'] },
  kilometre: { symbol: 'km', other: ['mile', 'miles'] },
  kilogram: { symbol: 'kg', other: ['pounds', 'pounds'] },
  bar: { symbol: 'bar', other: ['psi', 'psi'] },
};

const SYMBOLS =
  '°C|K|bar|mbar|kPa|N·m|Nm|N·cm|mm|cm²|cm|km/h|km|m|ml/min|ml|cc|l/min|l/h|l|kg|litres?|millilitres?|kelvin|millimetres?|centimetres?|metres?|kilometres?|kilograms?';
const NUMBER = '[−-]?(?:\\d{1,3}(?:,\\d{3})+|\\d+)(?:\\.\\d+)?';
const BETWEEN = ' to | x | and | or |, and |, or |, | against |[ \\u00a0\\u2009]?[–±][ \\u00a0\\u2009]?|-';
const PARTS = new RegExp(`(${NUMBER})(${BETWEEN})?`, 'gy');
/** One number or several with one unit. A unit with a stroke or a power behind it is another one: W/(m·K), mm². */
const FIGURE = new RegExp(
  `(?<![\\p{L}\\d.,"]|\\d[-−])(± ?)?(${NUMBER}(?:(?:${BETWEEN})${NUMBER})*)([ \\u00a0\\u2009-]?)(${SYMBOLS})(?![\\p{L}\\d·²³]|/(?!min|s\\b|h\\b))`,
  'gu',
);

/** What is called by its metric size, whoever reads it: a tool, the head of a bolt, an engine. */
const NAME_OF_A_SIZE =
  /^(?:[-\s](?:flange |hexagon |small )*(?:heads?|sockets?|spanners?|hex\b|hexagon|keys?|Allen|drill|bit)\b|(?:,? (?:turbo )?(?:petrol|diesel|engine|hybrid)\b))/;
const SIZED_SYMBOLS = ['mm', 'l'];

const WORD_NUMBERS: Readonly<Record<string, number>> = {
  a: 1,
  an: 1,
  one: 1,
  two: 2,
  three: 3,
  four: 4,
  five: 5,
  six: 6,
  seven: 7,
  eight: 8,
  nine: 9,
  ten: 10,
  eleven: 11,
  twelve: 12,
  fifteen: 15,
  eighteen: 18,
  twenty: 20,
  'twenty-five': 25,
  thirty: 30,
  forty: 40,
  fifty: 50,
  hundred: 100,
  'a hundred': 100,
  thousand: 1000,
  'a thousand': 1000,
  'two thousand': 2000,
  'half a': 0.5,
  'a tenth of a': 0.1,
  'tenth of a': 0.1,
  'a quarter of a': 0.25,
};
const WORDS = Object.keys(WORD_NUMBERS)
  .sort((a, b) => b.length - a.length)
  .join('|');
const IN_WORDS = new RegExp(
  `(?<![\\p{L}\\d-])(?:(${WORDS})( to | or ))?(${WORDS})( and a half)?( |-)(kelvin|millilitres?|millimetres?|centimetres?|metres?|kilometres?|kilograms?|bar)(?![\\p{L}-])`,
  'giu',
);
/** Of a bar only parts are written in words; "a bar" is a piece of metal. */
const PARTS_OF_A_BAR = /^(?:half a|(?:a )?tenth of a|a quarter of a)$/i;

const FEW_KELVIN = /\b(few|some|several|many) kelvin\b/gi;
const FEW_MILLIMETRES = /\ba few millimetres\b/gi;
/** A unit without a number; a conductivity stays in the centimetres of its own unit, a torque in the words of its own. */
const BARE =
  /(?<!newton |force |micro)\b(millilitre|litre|kilometre|metre)(s?)\b(?! ?\/)|\b(in )(kelvin|millimetres)\b/gi;
const BARE_WORDS: Readonly<Record<string, readonly [string, string]>> = {
  litre: ['quart', 'quarts'],
  millilitre: ['fluid ounce', 'fluid ounces'],
  kilometre: ['mile', 'miles'],
  metre: ['yard', 'yards'],
  kelvin: ['°F', '°F'],
  millimetres: ['inches', 'inches'],
};

const MAYBE = /\d|kelvin|lit(?:re)|met(?:re)|kilogram|of a bar|half a bar/i;

/** The text with its metric figures turned into the reader's; unchanged for a metric reader. A step no finer than written. */
export function textFor(text: string, habit: Habit): string {
  // By what it says, not by which it is: each script of a page has a metric habit of its own.
  if (Object.keys(habit).length === 0 || !MAYBE.test(text)) return text;
  return text
    .replace(
      FIGURE,
      (whole, plusMinus: string | undefined, numbers: string, gap: string, unit: string, ...rest) => {
        const after = text.slice(Number(rest[0]) + whole.length);
        if (SIZED_SYMBOLS.includes(unit) && NAME_OF_A_SIZE.test(after)) return whole;
        const shown = inDigits(numbers, gap, unit, plusMinus !== undefined, habit);
        return shown === undefined ? whole : `${plusMinus ?? ''}${shown}`;
      },
    )
    .replace(FEW_KELVIN, '$1 degrees')
    .replace(FEW_MILLIMETRES, 'an eighth of an inch')
    .replace(IN_WORDS, (whole, low: string | undefined, to, high: string, half, _gap, word: string) =>
      word.toLowerCase() === 'bar' && !PARTS_OF_A_BAR.test(high)
        ? whole
        : (inWords(low, to, high, half !== undefined, word, habit) ?? whole),
    )
    .replace(BARE, (whole, word: string | undefined, many: string | undefined, into = '', other = '') => {
      const found = BARE_WORDS[(word ?? other).toLowerCase()]?.[many === 's' ? 1 : 0];
      return found === undefined ? whole : `${into}${likeCase(word ?? other, found)}`;
    });
}

/** Numbers with one unit; undefined where the reader has no other unit for it. */
function inDigits(
  numbers: string,
  gap: string,
  unit: string,
  isTolerance: boolean,
  habit: Habit,
): string | undefined {
  const word = UNIT_WORDS[unit.replace(/s$/, '')];
  const isWord = word !== undefined && unit !== 'bar';
  const symbol = word?.symbol ?? unit;
  // What follows ± is a difference, of temperatures too.
  const apart = isTolerance && symbol === '°C' ? 'K' : symbol;
  // Number, what stands between, number: a minus before a number is not what stands between two.
  const parts = [...numbers.matchAll(PARTS)].flatMap(([, number = '', between]) =>
    between === undefined ? [number] : [number, between],
  );
  const values = parts.filter((_, index) => index % 2 === 0);
  const ends = turned(values, apart, habit);
  if (!ends) return undefined;
  const shown = parts.map((part, index) => {
    if (index % 2 === 1) return part;
    const isOwnDifference = symbol === '°C' && parts[index - 1]?.includes('±');
    return (isOwnDifference ? turned([part], 'K', habit)?.texts[0] : ends.texts[index / 2]) ?? part;
  });
  const name = isWord ? word.other[1] : ends.unit.symbol;
  return `${shown.join('')}${gap === '-' ? '-' : '\u00a0'}${name}`;
}

function inWords(
  low: string | undefined,
  to: string | undefined,
  high: string,
  half: boolean,
  word: string,
  habit: Habit,
): string | undefined {
  const named = UNIT_WORDS[word.toLowerCase().replace(/s$/, '')];
  const numbers = [low, high].flatMap((each) =>
    each === undefined ? [] : [(WORD_NUMBERS[each.toLowerCase()] ?? Number.NaN) + (half ? 0.5 : 0)],
  );
  if (!named) return undefined;
  const ends = turned(numbers.map(String), named.symbol, habit);
  return ends && `${ends.texts.join(to ?? '')}\u00a0${named.other[1]}`;
}

/** Numbers in the reader's unit, written no finer than they were. */
function turned(
  numbers: readonly string[],
  symbol: string,
  habit: Habit,
): { texts: string[]; unit: Unit } | undefined {
  const written = findUnit(symbol);
  if (!written) return undefined;
  const values = numbers.map((text) => toSI(Number(text.replace('−', '-').replaceAll(',', '')), written));
  const unit = readersUnit(symbol, habit, Math.max(...values.map(Math.abs)));
  if (unit === written) return undefined;
  const places = decimalsIn(unit, written, finestOf(numbers, written), values);
  const texts = values.map((si) => withThousands(rounded(fromSI(si, unit), places)));
  return { texts, unit };
}

/** Decimals of the finest number; less than none where all end in noughts, as a distance or a weight does. */
function finestOf(numbers: readonly string[], { dimension }: Unit): number {
  const decimals = numbers.map((text) => {
    const point = text.indexOf('.');
    if (point >= 0) return text.length - point - 1;
    return dimension.startsWith('temperature')
      ? 0
      : -(/(?<=\d\d)0+$/.exec(text.replaceAll(',', ''))?.[0].length ?? 0);
  });
  return Math.max(...decimals);
}

function rounded(value: number, places: number): string {
  if (places >= 0) return showNumber(value, places);
  return showNumber(Math.round(value * 10 ** places) / 10 ** places, 0);
}

function withThousands(text: string): string {
  return text.replace(/^(−?\d+)(?=\d{3}$)/, '$1,');
}

function likeCase(like: string, word: string): string {
  return /^\p{Lu}/u.test(like) ? word.charAt(0).toUpperCase() + word.slice(1) : word;
}
