import { pricedTrees } from '../judge.ts';
import type { ShelfRule } from '../rule.ts';
import { soundnessFaults } from '../soundness-faults.ts';

/** A tree well above the best that was found, without a reason given. */
export const dearerThanBestFound: ShelfRule = {
  id: 'dearer-than-best-found',
  level: 'warning',
  on: 'shelf',
  check: (shelf) => {
    // The reason may stand at the very step that costs the minutes.
    const withoutReason = pricedTrees(shelf).map(({ tree, layouts }) => ({
      tree,
      layouts: layouts.map((each) => ({
        ...each,
        findings: each.findings.filter((finding) => {
          const step = finding.rule === 'dearer-than-best-found' ? finding.move?.step : undefined;
          return step === undefined || tree.data.steps[step]?.because === undefined;
        }),
      })),
    }));
    return soundnessFaults(
      withoutReason,
      'dearer-than-best-found',
      () => ['start'],
      'change that step, or write why it stands there',
    );
  },
};
