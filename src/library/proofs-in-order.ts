import { type PriorWord, weightOf } from '../diagnosis/words.ts';
import { SOMETHING_ELSE } from '../model/kinds.ts';

/**
 * Steps and ends of the plainest sound tree of a complaint: its causes proven one after the other, the commonest
 * first. A start for the author, who puts tests before.
 * @param causes candidate causes with how often each is behind it
 */
export function proofsInOrder(causes: Readonly<Record<string, PriorWord | number>>) {
  const order = Object.entries(causes)
    .sort(([, a], [, b]) => weightOf(b) - weightOf(a))
    .map(([cause]) => cause);
  const step = (cause: string) => `prove-${cause}`;
  return {
    start: step(order[0] ?? SOMETHING_ELSE),
    steps: Object.fromEntries(
      order.map((cause, at) => {
        const next = order[at + 1];
        return [step(cause), { prove: cause, otherwise: next === undefined ? 'pass-on' : step(next) }];
      }),
    ),
    ends: {
      'pass-on': { causes: [SOMETHING_ELSE], says: 'To write: what is left when none of these was it.' },
    },
  };
}
