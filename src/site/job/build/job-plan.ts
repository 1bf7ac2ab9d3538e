/** What a proven cause asks for, from the repair to the hand-back: small, one file each under /data/plans/. */
import { FIGURE_REFERENCE } from '../../../model/figure-reference.ts';
import type { Joint } from '../../../model/figures.ts';
import type { LayoutCondition } from '../../../model/layout.ts';
import { entryOf } from '../../shelf/record-pages.ts';
import { generalRange } from '../../text/figure-html.ts';
import { inSentence } from '../../text/in-sentence.ts';
import { packQuantity } from '../../text/packed-quantity.ts';

/** One procedure of a job. Its texts may quote figures in braces. */
export interface PlannedWork {
  id: string;
  title: string;
  minutes: number;
  layout?: LayoutCondition | undefined;
  parts: string[];
  consumables: string[];
  /** Those that stand at its steps and above them; `layout` where only such a drive has the danger. */
  cautions: { id: string; title: string; layout?: LayoutCondition | undefined }[];
  /** Joints tightened in it. */
  joints: { joint: Joint; layout?: LayoutCondition | undefined }[];
  /** Whether it fills or proves, so that the repair is over where it begins. */
  finishes: boolean;
  /** Whether coolant is filled in it. */
  fills: boolean;
  followedBy: string[];
}

export interface JobPlan {
  id: string;
  title: string;
  mechanism: string;
  comesBack: string;
  parts: string[];
  consumables: string[];
  /** The repair first; empty when the cause has none on this shelf. */
  work: PlannedWork[];
  /** General range, packed, of each figure the texts quote. */
  general: Record<string, string>;
}

/** A procedure and those that follow it, each once, in order. */
function chainFrom(first: string | undefined): string[] {
  const chain: string[] = [];
  const waiting = first === undefined ? [] : [first];
  for (let next = waiting.shift(); next !== undefined; next = waiting.shift()) {
    if (chain.includes(next)) continue;
    chain.push(next);
    waiting.push(...entryOf('procedure', next).data['followed-by']);
  }
  return chain;
}

function workOf(id: string): PlannedWork {
  const { data } = entryOf('procedure', id);
  const asks = new Set(data.steps.flatMap(({ calculator }) => calculator ?? []));
  const cautions = [...new Set([...data.cautions, ...data.steps.flatMap(({ caution }) => caution ?? [])])];
  return {
    id,
    title: data.title,
    minutes: data.minutes,
    layout: data.layout,
    parts: data.parts,
    consumables: data.consumables,
    cautions: cautions.map((each) => {
      const { title, 'on-vehicle': on } = entryOf('caution', each).data;
      return { id: each, title: inSentence(title), layout: on?.power && { power: on.power } };
    }),
    joints: data.steps.flatMap(({ torque, layout }) => (torque ? [{ joint: torque, layout }] : [])),
    finishes: asks.has('fill-account') || asks.has('level'),
    fills: asks.has('fill-account'),
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
    work: chainFrom(data.repair).map(workOf),
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
