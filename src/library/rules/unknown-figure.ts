import { FIGURE_REFERENCE } from '../../model/figure-reference.ts';
import { REFERABLE_PATHS } from '../../model/figures.ts';
import type { Fault } from '../finding.ts';
import { nearestOf } from '../nearest.ts';
import type { RecordRule } from '../rule.ts';

const KNOWN = new Set(REFERABLE_PATHS);

/** Braces in a text quote a figure of the vehicle; they are used for nothing else. */
export const unknownFigure: RecordRule = {
  id: 'unknown-figure',
  level: 'error',
  on: 'record',
  check: ({ file, texts }) => {
    const faults: Fault[] = [];
    for (const { text, path } of texts) {
      if (!/[{}]/.test(text)) continue;
      for (const [whole, inside = ''] of text.matchAll(FIGURE_REFERENCE)) {
        const wanted = inside.trim();
        if (KNOWN.has(wanted)) continue;
        const nearest = nearestOf(wanted, REFERABLE_PATHS);
        faults.push({
          at: { file, path, within: whole },
          found: `No vehicle has a figure "${wanted}".`,
          expected: nearest
            ? `Nearest: "${nearest.word}".`
            : 'The figures are listed in src/model/figures.ts.',
          byHand: 'use the path of a figure, or write the text without braces',
          ...(nearest?.sure && { replaceBy: `{${nearest.word}}` }),
        });
      }
      const alone = /[{}]/.exec(text.replace(FIGURE_REFERENCE, ''))?.[0];
      if (alone !== undefined)
        faults.push({
          at: { file, path, within: alone },
          found: `This "${alone}" has no partner.`,
          expected: 'Braces stand round the path of a figure: {thermostat.opens}.',
          byHand: 'close the braces, or take them out',
        });
    }
    return faults;
  },
};
