import { nearestOf } from '../nearest.ts';
import type { ShelfRule } from '../rule.ts';
import { type StepWay, waysOf } from '../tree-ways.ts';

export const stepLeadsNowhere: ShelfRule = {
  id: 'step-leads-nowhere',
  level: 'error',
  on: 'shelf',
  check: ({ records }) =>
    [...records.tree.values()].flatMap(({ file, data }) => {
      const places = [...Object.keys(data.steps), ...Object.keys(data.ends)];
      const ways: StepWay[] = Object.entries(data.steps).flatMap(([id, step]) => waysOf(id, step));
      return [{ to: data.start, path: ['start'] }, ...ways].flatMap(({ to, path }) => {
        if (places.includes(to)) return [];
        const nearest = nearestOf(to, places);
        return [
          {
            at: { file, path },
            found: `This tree has no step and no end "${to}".`,
            ...(nearest && { expected: `Nearest: "${nearest.word}".` }),
            byHand: 'name a step or an end of this tree, or add it',
            ...(nearest?.sure && { replaceBy: nearest.word }),
          },
        ];
      });
    }),
};
