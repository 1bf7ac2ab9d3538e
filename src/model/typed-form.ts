/**
 * Forms in which a figure is typed at a bench and that are no number with a unit: `2k5`, `1h30`, `50/50`, `8-10 Nm`,
 * `2.5 kΩ ± 10 %`, `12 x 8 cm`. Turned into the plain form or refused with what would be read; a record on the shelf has the plain form.
 */
import type { Dimension } from './units.ts';

/** A form that cannot be taken, with what would be. */
export interface FormFault {
  found: string;
  expected: string;
}

const NUMBER = '(?:\\d+(?:\\.\\d+)?|\\.\\d+)';
const LETTER_AS_POINT = /^(\d+)([kKRrM])(\d+)\s*(?:Ω|ohms?)?$/i;
const HOURS_AND_MINUTES = /^(\d+)\s*(?:h|hrs?|hours?|:)\s*([0-5]?\d)\s*(?:m|mins?|minutes?)?$/i;
const MINUTES_AND_SECONDS = /^(\d+)\s*(?:m|mins?|minutes?)\s*([0-5]?\d)\s*(?:s|secs?|seconds?)$/i;
const RATIO = new RegExp(`^(${NUMBER})\\s*[:/]\\s*(${NUMBER})$`);
const HYPHEN_RANGE = new RegExp(`^(${NUMBER})\\s*[-‑]\\s*(${NUMBER})(\\s*(?:\\D.*)?)$`);
const SIDES = new RegExp(`^(${NUMBER})\\s*(mm|cm|in)?\\s*[x×*]\\s*(${NUMBER})\\s*(mm|cm|in)?$`, 'i');
const PLUS_ANGLE = new RegExp(
  `^(${NUMBER}[^+\\d]*?)\\s*(?:\\+|then|plus)\\s*(?:${NUMBER})\\s*(?:°|deg\\w*)\\.?$`,
  'i',
);

/** A manual's tolerance as a share of the figure; of a temperature or of a share itself that would be a riddle. */
const TOLERANCE = new RegExp(`^(${NUMBER})(\\s*[^\\d±+]+?)\\s*(?:±|\\+/-)\\s*(${NUMBER})\\s*%$`);
/** The unit behind both numbers. */
const UNIT_TWICE = new RegExp(
  `^(${NUMBER})\\s*([^\\d\\s±]+)\\s*(to|[-‑–—±]|\\+/-)\\s*(${NUMBER})\\s*([^\\d\\s]+)$`,
);

const LETTER_UNITS: Readonly<Record<string, string>> = { k: 'kΩ', r: 'Ω', m: 'MΩ' };

/**
 * The plain form of what was typed; the text itself where it is one already.
 * @param text decimal commas already points
 * @param areaUnit unit of a bare product of two sides
 */
export function plainForm(text: string, dimension: Dimension, areaUnit = 'cm²'): string | FormFault {
  const angle = PLUS_ANGLE.exec(text);
  if (angle && dimension === 'torque')
    return {
      found: `"${text}" is a torque and then an angle.`,
      expected: `the torque alone, ${angle[1]}; the angle is turned after it and has no torque that could be judged`,
    };
  if (dimension !== 'share' && dimension !== 'temperature') {
    const within = withinShare(text);
    if (within !== text) return within;
  }
  if (dimension === 'resistance') return letterAsPoint(text);
  if (dimension === 'time') return timeInParts(text);
  if (dimension === 'share') return ratio(text);
  if (dimension === 'area') return product(text, areaUnit);
  return ranged(text);
}

/** "2k5" on a meter or a circuit: the letter stands where the point would. */
function letterAsPoint(text: string): string {
  const parts = LETTER_AS_POINT.exec(text);
  // A small m would be a milli to one and a mega to another.
  if (!parts || parts[2] === 'm') return ranged(text);
  return `${parts[1]}.${parts[3]} ${LETTER_UNITS[(parts[2] ?? '').toLowerCase()]}`;
}

function timeInParts(text: string): string {
  const hours = HOURS_AND_MINUTES.exec(text);
  if (hours) return `${60 * Number(hours[1]) + Number(hours[2])} min`;
  const minutes = MINUTES_AND_SECONDS.exec(text);
  if (minutes) return `${60 * Number(minutes[1]) + Number(minutes[2])} s`;
  return ranged(text);
}

/** Parts of concentrate to parts of water: "1:1" and "50/50" are half. */
function ratio(text: string): string {
  const parts = RATIO.exec(text);
  const [one, other] = [Number(parts?.[1]), Number(parts?.[2])];
  if (!parts || !(one + other > 0)) return ranged(text);
  return `${Number(((100 * one) / (one + other)).toFixed(1))} %`;
}

/** Length by width, as a bottle is measured: "12 x 8 cm". */
function product(text: string, areaUnit: string): string {
  const sides = SIDES.exec(text);
  if (!sides) return ranged(text);
  const unit = sides[4] ?? sides[2];
  const size = Number((Number(sides[1]) * Number(sides[3])).toFixed(3));
  return `${size} ${unit === undefined ? areaUnit : `${unit.toLowerCase()}²`}`;
}

/** "8-10 Nm": a stroke between two numbers is no minus sign. */
function ranged(text: string): string {
  const twice = UNIT_TWICE.exec(text);
  if (twice?.[2] !== undefined && twice[2] === twice[5]) {
    const link = /^[-‑–—]$/.test(twice[3] ?? '') ? 'to' : twice[3];
    return `${twice[1]} ${link} ${twice[4]} ${twice[2]}`;
  }
  const range = HYPHEN_RANGE.exec(text);
  return range ? `${range[1]} to ${range[2]}${range[3]}` : text;
}

/** "2.5 kΩ ± 10 %" is 2.25 to 2.75 kΩ; the digits of the share are kept, as they were meant. */
function withinShare(text: string): string {
  const parts = TOLERANCE.exec(text);
  if (!parts) return text;
  const [middle, share] = [Number(parts[1]), Number(parts[3]) / 100];
  const end = (factor: number) => Number((middle * factor).toPrecision(6));
  return `${end(1 - share)} to ${end(1 + share)}${parts[2]}`;
}
