/**
 * The last words typed on a card, until the database has them: a page that is left at once takes its unfinished transactions
 * with it. The small storage is written before the key is up.
 */
import { isText } from '../../browser/guards.ts';
import { forget, keep, kept } from '../../browser/storage.ts';

export interface TypedField {
  id: string;
  field: string;
  /** What this window last saw kept in the field. */
  seen: string;
  text: string;
}

/** Holds it until the database has it. */
export function holdTyped(typed: TypedField): void {
  keep('job-typed', typed);
}

/** The database has it: it is let go, unless something else was typed since. */
export function releaseTyped({ id, field, text }: TypedField): void {
  const held = heldTyped();
  if (held?.id === id && held.field === field && held.text === text) forget('job-typed');
}

/** What a page that was left has not brought to the database. */
export function heldTyped(): TypedField | undefined {
  return kept('job-typed', isTyped);
}

function isTyped(value: unknown): value is TypedField {
  if (typeof value !== 'object' || value === null) return false;
  const fields: Record<string, unknown> = { ...value };
  return ['id', 'field', 'seen', 'text'].every((name) => isText(fields[name]));
}
