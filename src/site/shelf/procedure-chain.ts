/** The procedures of a job, as records follow one another. */
import { entryOf } from './record-pages.ts';

/** Ids of a procedure and of those that follow it, each once, in order; none where there is no first. */
export function procedureChain(first: string | undefined): string[] {
  const chain = new Set<string>();
  const waiting = first === undefined ? [] : [first];
  for (let next = waiting.shift(); next !== undefined; next = waiting.shift()) {
    if (chain.has(next)) continue;
    chain.add(next);
    waiting.push(...entryOf('procedure', next).data['followed-by']);
  }
  return [...chain];
}
