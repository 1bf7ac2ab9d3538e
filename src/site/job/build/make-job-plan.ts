/** Makes the plan of a cause from its records. */
import { FIGURE_REFERENCE } from '../../../model/figure-reference.ts';
import { procedureChain } from '../../shelf/procedure-chain.ts';
import { entryOf } from '../../shelf/record-pages.ts';
import { generalRange } from '../../text/figure-html.ts';
import { inSentence } from '../../text/in-sentence.ts';
import { packQuantity } from '../../text/packed-quantity.ts';
import type { JobPlan, PlannedWork } from '../job-plan.ts';

function workOf(id: string): PlannedWork {
  const { data } = entryOf('procedure', id);
  const cautions = [...new Set([...data.cautions, ...data.steps.flatMap(({ caution }) => caution ?? [])])];
  return {
    id,
    title: data.title,
    minutes: data.minutes,
    layout: data.layout,
    parts: data.parts,
    consumables: data.consumables,
    coolant: data.coolant,
    cautions: cautions.map((each) => {
      const { title, 'on-vehicle': on } = entryOf('caution', each).data;
      return { id: each, title: inSentence(title), layout: on?.power && { power: on.power } };
    }),
    joints: data.steps.flatMap(({ torque, layout }) => (torque ? [{ joint: torque, layout }] : [])),
    stage: data.stage,
    followedBy: data['followed-by'],
  };
}

/**
 * What a proven cause asks for.
 * @throws Error when the shelf has no such cause
 */
export function planOf(cause: string): JobPlan {
  const { data } = entryOf('cause', cause);
  const plan = {
    id: cause,
    title: data.title,
    mechanism: data.mechanism,
    comesBack: data['comes-back'],
    parts: data.parts,
    consumables: data.consumables,
    coolant: data.coolant,
    work: procedureChain(data.repair).map(workOf),
  };
  return { ...plan, general: generalRangesIn(JSON.stringify(plan)) };
}

function generalRangesIn(text: string): Record<string, string> {
  const paths = new Set([...text.matchAll(FIGURE_REFERENCE)].flatMap(([, path]) => path ?? []));
  for (const always of ['coolant.capacity', 'coolant.drain', 'coolant.mixture']) paths.add(always);
  return Object.fromEntries(
    [...paths].flatMap((path) => {
      const general = generalRange(path);
      return general ? [[path, packQuantity(general.quantity)]] : [];
    }),
  );
}
