/** A vehicle as the file it becomes: the same from the form and in npm run take-in. */
import { yamlQuoted, yamlScalar } from './yaml-text.ts';

/** Plain data of a record: texts, true and false, lists and groups of them. */
export type PlainData = string | boolean | readonly PlainData[] | { readonly [name: string]: PlainData };

/** Where a vehicle lies on the shelf, from the shelf's folder. */
export function vehiclePath(id: string): string {
  return `vehicles/${id}.yaml`;
}

/** The text of a vehicle's file, its fields in the order they have in the data; a figure or a torque is a line. */
export function vehicleText(data: Readonly<Record<string, PlainData>>): string {
  const lines = Object.entries(data).flatMap(([name, value]) => fieldLines(name, value, ''));
  return `${lines.join('\n')}\n`;
}

function fieldLines(name: string, value: PlainData, indent: string): string[] {
  if (typeof value === 'string' || typeof value === 'boolean')
    return [`${indent}${name}: ${inBraces(value)}`];
  if (isList(value)) {
    if (value.length === 0) return [`${indent}${name}: []`];
    return [`${indent}${name}:`, ...value.map((each) => `${indent}  - ${inBraces(each)}`)];
  }
  const entries = Object.entries(value);
  if (entries.length === 0) return [`${indent}${name}: {}`];
  const isFlat = entries.every(([, each]) => typeof each !== 'object');
  if (indent !== '' && isFlat) return [`${indent}${name}: ${inBraces(value)}`];
  return [`${indent}${name}:`, ...entries.flatMap(([key, each]) => fieldLines(key, each, `${indent}  `))];
}

/** On one line, as within braces: there a comma parts what is written without quotes. */
export function inBraces(value: PlainData): string {
  if (typeof value === 'boolean') return String(value);
  if (typeof value === 'string') return value.includes(',') ? yamlQuoted(value) : yamlScalar(value);
  if (isList(value)) return `[${value.map(inBraces).join(', ')}]`;
  const inner = Object.entries(value).map(([name, each]) => `${name}: ${inBraces(each)}`);
  return `{ ${inner.join(', ')} }`;
}

function isList(value: PlainData): value is readonly PlainData[] {
  return Array.isArray(value);
}
