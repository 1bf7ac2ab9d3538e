import type { Path } from './finding.ts';

/** A text somewhere in a record. */
export interface FoundText {
  text: string;
  path: Path;
}

/** Every text of a record, whatever its field. */
export function* textsIn(value: unknown, path: Path = []): Generator<FoundText> {
  if (typeof value === 'string') yield { text: value, path };
  else if (Array.isArray(value))
    for (const [at, each] of value.entries()) yield* textsIn(each, [...path, at]);
  else if (typeof value === 'object' && value !== null)
    for (const [name, each] of Object.entries(value)) yield* textsIn(each, [...path, name]);
}
