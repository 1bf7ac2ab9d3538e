/** A reader's words made into the words of the index: codes, units, hyphens and apostrophes written one way. */

import { keepDecimals } from './decimals.ts';

/** P 0128, p-0128, P01 28: letter, first digit 0 to 3, three more (the form of SAE J2012, from memory). */
const CODE = /\b([pbcu])[\s.-]{0,2}([0-3][0-9a-f])[\s.-]?([0-9a-f]{2})\b/g;
/** As people say it: P128, the nought before a maker-independent code left out. */
const SHORT_CODE = /\bp[\s.-]?(\d{3})\b/g;
const UNIT =
  /(\d)\s*(bar|psi|kpa|mbar|°c|°f|ml|l|nm|mm|min|km\/h|mph|kω|kohm|ohm|ω|mv|v|a|kw|w|%)(?![\p{L}\p{N}])/gu;
/** 1,500 is a thousand and a half; the index drops the comma too. */
const THOUSANDS = /(\d),(?=\d{3}(?!\d))/g;
/** 1,4 as the continent writes it. */
const DECIMAL_COMMA = /(\d),(?=\d{1,2}(?!\d))/g;
/** Degrees without their sign. */
const DEGREES = /(\d)\s*(?:deg(?:rees)?\s*)?([cf])(?![\p{L}\p{N}])/gu;

/** The words of a query or title, lower case, in their order, without repeats. */
export function wordsOf(text: string): string[] {
  const plain = keepDecimals(text.replace(THOUSANDS, '$1').replace(DECIMAL_COMMA, '$1.'))
    .normalize('NFC')
    .toLowerCase()
    .replace(/['’‘`]/g, '')
    .replace(/º/g, '°')
    .replace(/n[·.*⋅ ]m\b/g, 'nm')
    .replace(CODE, '$1$2$3')
    .replace(SHORT_CODE, 'p0$1')
    .replace(DEGREES, '$1 °$2')
    .replace(UNIT, '$1 $2');
  const words = plain
    .split(/[\s/,;:!?"“”()[\]{}·|]+/u)
    .map((word) => word.replace(/^[.\-–—]+|[.\-–—]+$/g, ''));
  return [...new Set(words.filter((word) => /[\p{L}\p{N}]/u.test(word)))];
}

/** Words that tell nothing about a cooling system; a negation is in every second complaint. */
const STOP_WORDS = new Set(
  `a an and any are arent as at be been but by can cant car cars couldnt do does doesnt dont for forever from get gets getting got had has
   hasnt have havent he hello her hi his however i ill im in is isnt it its ive just mate me my not of on or our please really she so some
   than thanks that the their them then there they this to too truck us van very was wasnt we what when while why will with wont
   wouldnt you your`.split(/\s+/),
);

/** The words that tell something; all of them when none does. */
export function tellingWords(text: string): string[] {
  const words = wordsOf(text);
  const telling = words.filter((word) => !STOP_WORDS.has(word));
  return telling.length > 0 ? telling : words;
}
