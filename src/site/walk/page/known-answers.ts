import { causeOfRecheck, RECHECK_OUTCOMES } from '../../../model/recheck.ts';
import { isNoFinding, isReadingKey, READING_LENGTH, TOLD_LENGTH, toldKey } from '../answers.ts';
import type { WalkData } from '../walk-data.ts';

/**
 * Whether a key and value are an answer of this walk. Only a walk's own names count: every object also has names that
 * nobody gave it, such as "constructor", and an address may hold anything.
 */
export function knownIn({
  symptom,
  model,
  tree,
  causeLayouts,
  testLayouts,
}: Pick<WalkData, 'symptom' | 'model' | 'tree' | 'causeLayouts' | 'testLayouts'>): (
  key: string,
  value: string,
) => boolean {
  const tests = new Map(model.tests.map(({ id, outcomes = RECHECK_OUTCOMES }) => [id, outcomes]));
  const causes = new Set<string>(model.causes.map(({ id }) => id));
  const layouts = new Map<string, Set<string>>();
  const allow = (feature: string, values: readonly string[]) => {
    const known = layouts.get(feature) ?? new Set();
    for (const value of values) known.add(value);
    layouts.set(feature, known);
  };
  for (const step of Object.values(tree.steps))
    if (step.kind === 'layout') allow(step.feature, Object.keys(step.on));
  // Another walk may have asked it and handed it on; here it rules out causes and tests.
  for (const condition of [...Object.values(causeLayouts), ...Object.values(testLayouts)])
    for (const [feature, values] of Object.entries(condition)) allow(feature, values ?? []);
  const ownTold = toldKey(symptom, '');
  return (key, value) => {
    // The questions come later; what is none of their answers moves nothing.
    if (key.startsWith(ownTold)) return value.length <= TOLD_LENGTH;
    if (key.startsWith('layout.')) return layouts.get(key.slice('layout.'.length))?.has(value) ?? false;
    // Plain characters of a number and its unit, no more than the field takes.
    if (isReadingKey(key)) return value.length <= READING_LENGTH && /^[-−\d.,\s\p{L}°·%/²³]+$/u.test(value);
    const cause = causeOfRecheck(key);
    if (cause !== undefined)
      return causes.has(cause) && (isNoFinding(value) || RECHECK_OUTCOMES.some((one) => one === value));
    const outcomes = tests.get(key);
    return outcomes !== undefined && (isNoFinding(value) || outcomes.some((one) => one === value));
  };
}
