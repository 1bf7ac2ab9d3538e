/**
 * Codes of practice cases: six letters and digits that say nothing of the fault, and lists of them in an address. A code follows
 * from the id of its case, so it stays the same as long as the case does, on every device.
 */

/** Without what is easily taken for something else when it is read aloud or off a board: 0 and o, 1, i and l, u and v. */
const LETTERS = '23456789abcdefghjkmnpqrstwxyz';
const LENGTH = 6;

/** 53 bits from a text, evenly spread: not secret, only the same everywhere. */
export function mixed(text: string): number {
  let [one, two] = [0xdeadbeef, 0x41c6ce57];
  for (const letter of text) {
    const point = letter.codePointAt(0) ?? 0;
    one = Math.imul(one ^ point, 2654435761);
    two = Math.imul(two ^ point, 1597334677);
  }
  one = Math.imul(one ^ (one >>> 16), 2246822507) ^ Math.imul(two ^ (two >>> 13), 3266489909);
  two = Math.imul(two ^ (two >>> 16), 2246822507) ^ Math.imul(one ^ (one >>> 13), 3266489909);
  return 4294967296 * (2097151 & two) + (one >>> 0);
}

function written(value: number, length: number): string {
  let [text, left] = ['', value];
  for (let at = 0; at < length; at++) {
    text += LETTERS[left % LETTERS.length];
    left = Math.floor(left / LETTERS.length);
  }
  return text;
}

/** Code of a case. @param id of its record */
export function codeOf(id: string): string {
  return written(mixed(`case ${id}`), LENGTH);
}

/** Codes that stand one after the other, such as those of a complaint. */
export function codesIn(text: string): string[] {
  return Array.from({ length: Math.floor(text.length / LENGTH) }, (_, at) =>
    text.slice(at * LENGTH, (at + 1) * LENGTH),
  );
}

/** The most cases in one list: an address that a message does not cut. */
export const LONGEST_LIST = 40;

/** A list of cases as it stands in an address: the codes, and two letters that tell a slip of the pen. */
export function writeList(codes: readonly string[]): string {
  const text = codes.join('');
  return text + written(mixed(`list ${text}`), 2);
}

/** @returns the codes; undefined when the text is no list, or one that was cut or mistyped */
export function readList(text: string): string[] | undefined {
  const small = text.trim().toLowerCase();
  const codes = codesIn(small);
  const isWhole =
    codes.length > 0 && codes.length <= LONGEST_LIST && small.length === codes.length * LENGTH + 2;
  return isWhole && writeList(codes) === small ? codes : undefined;
}

/**
 * The case of a day, the same for everybody who has the same cases. A case added later changes few of the days to come.
 * @param day such as 2026-11-30
 */
export function codeOfDay(codes: readonly string[], day: string): string | undefined {
  return inOrderOf(codes, day)[0];
}

/** The same codes in an order that only `purpose` decides. */
export function inOrderOf(codes: readonly string[], purpose: string): string[] {
  return codes
    .map((code) => ({ code, place: mixed(`${purpose} ${code}`) }))
    .sort((a, b) => a.place - b.place)
    .map(({ code }) => code);
}
