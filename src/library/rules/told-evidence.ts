import { describeRowFault } from '../../diagnosis/likelihood.ts';
import { type ToldAnswer, toldFaults } from '../../diagnosis/told.ts';
import type { Fault } from '../finding.ts';
import type { ShelfRule } from '../rule.ts';

/** The counter's question has answers that the walk could not reckon with. */
export const toldEvidence: ShelfRule = {
  id: 'told-evidence',
  level: 'error',
  on: 'shelf',
  check: ({ records }) =>
    [...records.symptom.values()].flatMap(({ file, data }) => {
      const ids = new Set<string>();
      return data.ask.flatMap(({ id, answers }, at): Fault[] => {
        if (answers === undefined) return [];
        const path = ['ask', at];
        if (id === undefined || ids.has(id))
          return [
            {
              at: { file, path: [...path, 'answers'], on: 'key' },
              found:
                id === undefined
                  ? 'A question with answers needs an id of its own: answers that are kept name it.'
                  : `Two questions of this symptom are called "${id}".`,
              byHand: 'give the question an id of two or three words, such as fan-heard',
            },
          ];
        ids.add(id);
        return [
          ...strangers(answers, data.causes).map(
            ({ answer, cause }): Fault => ({
              at: { file, path: [...path, 'answers', answer, 'of', cause], on: 'key' },
              found: `The answer speaks of "${cause}", which is not among the causes of this symptom.`,
              byHand: 'take the cause out of the answer, or put it among the causes',
            }),
          ),
          ...toldFaults(answers).map(
            ({ cause, fault }): Fault => ({
              at: { file, path: [...path, 'answers'], on: 'key' },
              found: `Under "${cause}": ${describeRowFault(
                fault,
                answers.map(({ is }) => is),
              )}`,
              byHand: 'choose other frequency words for this cause',
            }),
          ),
        ];
      });
    }),
};

function strangers(
  answers: readonly ToldAnswer[],
  causes: Readonly<Record<string, unknown>>,
): { answer: number; cause: string }[] {
  return answers.flatMap(({ of }, answer) =>
    Object.keys(of).flatMap((cause) => (Object.hasOwn(causes, cause) ? [] : [{ answer, cause }])),
  );
}
