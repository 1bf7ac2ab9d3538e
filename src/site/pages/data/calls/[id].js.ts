/** What the counter asks about one complaint, as a classic script, for the job card. */
import type { APIRoute } from 'astro';
import { type ToldAnswer, toldFactors } from '../../../../diagnosis/told.ts';
import type { Entry } from '../../../../library/shelf.ts';
import { dataPaths } from '../../../shelf/record-pages.ts';
import { plainText } from '../../../text/render-text.ts';
import type { CallQuestions } from '../../../walk/call-questions.ts';

export const getStaticPaths = () => dataPaths('symptom');

export const GET: APIRoute<{ entry: Entry<'symptom'> }> = ({ props: { entry } }) => {
  const call: CallQuestions = {
    id: entry.id,
    title: entry.data.title,
    ask: entry.data.ask.map(({ question, tells, id, answers }) => ({
      question: plainText(question),
      tells: plainText(tells),
      ...(id !== undefined && answers && { id, answers: withFactors(answers) }),
    })),
  };
  return new Response(`headertank.receiveCall(${JSON.stringify(call)});\n`, {
    headers: { 'content-type': 'text/javascript; charset=utf-8' },
  });
};

function withFactors(answers: readonly ToldAnswer[]): NonNullable<CallQuestions['ask'][number]['answers']> {
  const factors = toldFactors(answers);
  return answers.map(({ is }, at) => ({ is, factors: factors[at] ?? {} }));
}
