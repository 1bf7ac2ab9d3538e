/** Characters that are not seen or that turn what is seen: they make a text read otherwise than it was written. */

/**
 * Control characters but line feed and tab, formatting characters (direction, joiners, zero width, tags), lone surrogates,
 * line and paragraph separators, and noncharacters. The soft hyphen stays: it only breaks a word. Categories Cc, Cf, Cs,
 * Zl, Zp of the Unicode Standard, chapter 4; noncharacters chapter 23.7.
 */
const UNSEEN = /(?![\n\t\u00AD])[\p{Cc}\p{Cf}\p{Cs}\p{Zl}\p{Zp}\p{Noncharacter_Code_Point}\uFFFD]/u;

/** The first such character of a text with its place; undefined when there is none. */
export function firstUnseen(text: string): { at: number; name: string; length: number } | undefined {
  const found = UNSEEN.exec(text);
  if (!found) return undefined;
  const [character] = found;
  return { at: found.index, name: codeOf(character), length: character.length };
}

/**
 * A text for a report or a terminal, in one line: what is not seen stands as its number, so that no record can clear the
 * screen, hide what follows or begin a line of its own.
 */
export function printable(text: string): string {
  return text
    .replace(new RegExp(UNSEEN, 'gu'), (character) => `<${codeOf(character)}>`)
    .replaceAll('\n', '<U+000A>')
    .replaceAll('\t', ' ');
}

/** A text as long as it was, with a sign in place of what is not seen: what is underlined stays below its place. */
export function withoutUnseen(text: string): string {
  return text.replace(new RegExp(UNSEEN, 'gu'), (character) => '\uFFFD'.repeat(character.length));
}

function codeOf(character: string): string {
  return `U+${(character.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0')}`;
}
