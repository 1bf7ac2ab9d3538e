import type { Path } from './finding.ts';

/** A text somewhere in a record. */
export interface FoundText {
  text: string;
  path: Path;
}

/** Every text of a record, whatever its field. */
export function textsIn(value: unknown): FoundText[] {
  const found: FoundText[] = [];
  collect(value, [], found);
  return found;
}

function collect(value: unknown, path: Path, found: FoundText[]): void {
  if (typeof value === 'string') found.push({ text: value, path });
  else if (Array.isArray(value))
    for (const [at, each] of value.entries()) collect(each, [...path, at], found);
  else if (typeof value === 'object' && value !== null)
    for (const [name, each] of Object.entries(value)) collect(each, [...path, name], found);
}
