/**
 * A card as codes on a screen: packed, written in the letters that a code holds best, and cut into as many codes as it takes.
 * Base45 is RFC 9285.
 */

const LETTERS = '0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ $%*+-./:';

/** Bytes in the letters of a code's alphanumeric mode. */
export function toBase45(bytes: Uint8Array): string {
  let text = '';
  for (let at = 0; at < bytes.length; at += 2) {
    const [high = 0, low] = bytes.subarray(at, at + 2);
    let value = low === undefined ? high : high * 256 + low;
    for (let letter = 0; letter < (low === undefined ? 2 : 3); letter++) {
      text += LETTERS[value % 45];
      value = Math.floor(value / 45);
    }
  }
  return text;
}

/** The bytes again; undefined when the letters stand for none. */
export function fromBase45(text: string): Uint8Array | undefined {
  if (text.length % 3 === 1) return undefined;
  const bytes: number[] = [];
  for (let at = 0; at < text.length; at += 3) {
    const values = [...text.slice(at, at + 3)].map((letter) => LETTERS.indexOf(letter));
    if (values.includes(-1)) return undefined;
    const [first = 0, second = 0, third] = values;
    const value = first + second * 45 + (third ?? 0) * 45 * 45;
    if (value > (third === undefined ? 0xff : 0xffff)) return undefined;
    if (third !== undefined) bytes.push(value >> 8);
    bytes.push(value & 0xff);
  }
  return Uint8Array.from(bytes);
}

/** Letters of one code: more make a code that a phone reads badly off another screen. */
const LONGEST = 600;
const START = 'HEADERTANK';

/** One code of several. */
export interface CodePart {
  /** The same in all codes of one card. */
  set: string;
  /** From 1. */
  number: number;
  of: number;
  letters: string;
}

/**
 * The codes of a card, in order.
 * @param set three letters or digits, the same in all of them
 */
export function codesOf(bytes: Uint8Array, set: string): string[] {
  const letters = toBase45(bytes);
  const of = Math.max(1, Math.ceil(letters.length / LONGEST));
  return Array.from(
    { length: of },
    (_, at) => `${START}:${set}:${at + 1}:${of}:${letters.slice(at * LONGEST, (at + 1) * LONGEST)}`,
  );
}

/** What a read code is; undefined when it is none of a card's. */
export function readCode(text: string): CodePart | undefined {
  const groups = /^HEADERTANK:(?<set>[A-Z0-9]{3}):(?<number>\d{1,3}):(?<of>\d{1,3}):(?<letters>.*)$/s.exec(
    text,
  )?.groups;
  if (!groups) return undefined;
  const { set = '', letters = '' } = groups;
  const [number, of] = [Number(groups.number), Number(groups.of)];
  return number >= 1 && number <= of ? { set, number, of, letters } : undefined;
}

/** The codes read so far: one of another card begins anew. */
export class ReadCodes {
  private parts = new Map<number, CodePart>();

  /** Takes a code. @returns whether it was one of a card's */
  add(text: string): boolean {
    const part = readCode(text);
    if (!part) return false;
    const [first] = this.parts.values();
    if (first && (first.set !== part.set || first.of !== part.of)) this.parts = new Map();
    this.parts.set(part.number, part);
    return true;
  }

  get read(): number {
    return this.parts.size;
  }

  get of(): number {
    return [...this.parts.values()][0]?.of ?? 0;
  }

  /** The card's bytes once all are there; undefined before that, or when they are no card's. */
  get bytes(): Uint8Array | undefined {
    if (this.of === 0 || this.read < this.of) return undefined;
    const sorted = [...this.parts.values()].sort((a, b) => a.number - b.number);
    return fromBase45(sorted.map(({ letters }) => letters).join(''));
  }
}
