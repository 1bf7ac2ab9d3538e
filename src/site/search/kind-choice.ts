/** Narrow the results to one kind of record: a row of buttons, each with its count. */
import { KINDS } from '../../model/kinds.ts';
import { button } from '../islands/element.ts';
import type { Hit } from './find.ts';

const MANY: Record<string, string> = Object.fromEntries(
  Object.values(KINDS).map(({ one, many }) => [one, many]),
);

/** @param chosen the kind in force, '' for all */
export function kindButtons(
  hits: readonly Hit[],
  chosen: string,
  choose: (kind: string) => void,
): HTMLButtonElement[] {
  const counts = new Map<string, number>();
  for (const { kind } of hits) counts.set(kind, (counts.get(kind) ?? 0) + 1);
  if (counts.size < 2) return [];
  const all: [string, number][] = [['', hits.length], ...counts];
  return all.map(([kind, count]) => {
    const name = kind === '' ? 'All' : (MANY[kind] ?? kind);
    const made = button(`${name} ${count}`, () => choose(kind), 'quiet');
    made.setAttribute('aria-pressed', String(kind === chosen));
    return made;
  });
}
