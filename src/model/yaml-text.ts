/**
 * Texts as YAML, written without a YAML library so that the forms stay light. A text that is plain words is written as it is,
 * every other one in double quotes, where YAML reads JSON's escapes.
 */

/** Words that YAML reads as themselves: letter first, nothing that could be taken for a mark, a number, or yes and no. */
const PLAIN = /^\p{L}[\p{L}\p{N} .,()/°%·–’-]*[\p{L}\p{N}.)%]$/u;
const NOT_TEXT = /^(?:true|false|yes|no|on|off|null|y|n|nan|inf)$/i;
/** A day, which this project reads as text. */
const DAY = /^\d{4}-\d{2}-\d{2}$/;

/** A text as one value. */
export function yamlScalar(text: string): string {
  if ((PLAIN.test(text) && !NOT_TEXT.test(text)) || DAY.test(text)) return text;
  return yamlQuoted(text);
}

/** Characters that an editor does not show, or that a YAML reader may take for something else. */
export const UNSEEN = /[\p{Cc}\p{Cs}\p{Cf}\p{Zl}\p{Zp}\u{fff0}-\u{ffff}]/gu;

/** In double quotes, with everything unseen escaped. */
export function yamlQuoted(text: string): string {
  return JSON.stringify(text).replace(UNSEEN, (character) =>
    character
      .split('')
      .map((unit) => `\\u${unit.charCodeAt(0).toString(16).padStart(4, '0')}`)
      .join(''),
  );
}
