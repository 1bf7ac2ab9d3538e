/** How a cause is proven, as records say it. */
import { SOMETHING_ELSE } from '../../../model/kinds.ts';
import { recheckOf } from '../../../model/recheck.ts';
import { entryOf } from '../../shelf/record-pages.ts';

export interface Proof {
  /** Its confirming test; without one the recheck proves it. */
  test: string | undefined;
  outcome: string | undefined;
  minutes: number | undefined;
  /** What that test then shows. */
  reading: string | undefined;
  recheck: string | undefined;
}

/** What confirms a cause: test, reading that shows it, minutes. */
export function proofOf(cause: string): Proof {
  const { confirm } = entryOf('cause', cause).data;
  const test = confirm?.test === undefined ? undefined : entryOf('test', confirm.test).data;
  const reading = confirm?.outcome === undefined ? undefined : test?.outcomes[confirm.outcome]?.reading;
  return {
    test: confirm?.test,
    outcome: confirm?.outcome,
    minutes: confirm?.minutes ?? test?.minutes,
    reading,
    recheck: recheckOf(entryOf('cause', cause).data)?.do,
  };
}

/** What is done at an end of the walk: one test that tells between causes, or the proof of one. */
export interface EndAct {
  /** With two causes or more. */
  test?: string;
  causes: string[];
}

/** The causes of an end by what proves them: those that one test tells apart stand together, in the place of the first. */
export function actsOf(causes: readonly string[]): EndAct[] {
  const acts = new Map<string, EndAct>();
  for (const cause of causes) {
    const test = cause === SOMETHING_ELSE ? undefined : proofOf(cause).test;
    const act = acts.get(test ?? cause);
    if (act) act.causes.push(cause);
    else acts.set(test ?? cause, { ...(test !== undefined && { test }), causes: [cause] });
  }
  return [...acts.values()].map((act) => (act.causes.length > 1 ? act : { causes: act.causes }));
}
