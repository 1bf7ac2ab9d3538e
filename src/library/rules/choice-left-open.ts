import { isLayoutFeature } from '../../model/layout.ts';
import { layoutQuestion } from '../../model/layout-questions.ts';
import type { RecordRule } from '../rule.ts';

/** `npm run new` and the form write down what nobody has said as still to write; nothing on the site may rest on it. */
export const choiceLeftOpen: RecordRule = {
  id: 'choice-left-open',
  level: 'error',
  on: 'record',
  check: ({ file, faults }) =>
    faults.flatMap((fault) => {
      if (fault.is !== 'open') return [];
      const [group, feature] = fault.path;
      const question = group === 'layout' && isLayoutFeature(feature) ? layoutQuestion(feature) : undefined;
      const words = fault.words.map((word) => `"${word}"${told(question?.tell[word])}`);
      return [
        {
          at: { file, path: fault.path },
          found: question ? `Nobody has said yet: ${question.asks}` : 'Nobody has said this yet.',
          expected: words.length > 0 ? `It is one of ${words.join(', ')}.` : fault.says,
          byHand: 'look at the vehicle and write what is there; nothing is taken for granted',
        },
      ];
    }),
};

function told(tell: string | undefined): string {
  return tell === undefined
    ? ''
    : ` (${tell.replace(/\.$/, '').replace(/^\w/, (first) => first.toLowerCase())})`;
}
