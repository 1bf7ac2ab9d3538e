/**
 * How walks end by the evidence: for each symptom and each layout that its records tell apart, how often the right cause is proven,
 * first, named or missed, and how often a wrong one is called proven. `--symptom <id>` for one or some, with their causes.
 */
import { parseArgs } from 'node:util';
import { compile } from '../../src/diagnosis/compiled.ts';
import { resolve } from '../../src/diagnosis/state.ts';
import { treeCost } from '../../src/diagnosis/tree-cost.ts';
import { walkFigures } from '../../src/diagnosis/walk-figures.ts';
import { layoutsOf } from '../shelf/layouts.ts';
import { findings, shelf } from '../shelf/shelf.ts';

const { values } = parseArgs({
  options: {
    symptom: { type: 'string' },
    least: { type: 'string', default: '0.0001' },
    layouts: { type: 'string', default: '3' },
  },
});
if (findings.some(({ level }) => level === 'error')) console.log(`${findings.length} findings`);
const percent = (share: number) => (share * 100).toFixed(1).padStart(5);
console.log('proven first named missed wrong | min 9/10 quest | tree min | ways cut% ms | symptom, vehicle');
for (const id of shelf.records.symptom.keys()) {
  if (values.symptom !== undefined && !values.symptom.split(',').includes(id)) continue;
  for (const { made, vehicles } of layoutsOf(id).slice(0, Number(values.layouts))) {
    const { model, tree } = made;
    const compiled = compile(model);
    const begin = performance.now();
    const all = walkFigures(compiled, tree, resolve(compiled, { evidence: [] }), Number(values.least));
    const ms = performance.now() - begin;
    const cost = treeCost(compiled, tree);
    const price = cost.ok ? cost.report.expectedMinutes : Number.NaN;
    console.log(
      [all.proven, all.first, all.named, all.missed, all.wronglyProven].map(percent).join(' '),
      '|',
      all.expectedMinutes.toFixed(0).padStart(3),
      all.nineInTen.toFixed(0).padStart(3),
      all.questions.toFixed(1).padStart(4),
      '|',
      price.toFixed(0).padStart(3),
      '|',
      String(all.ways).padStart(6),
      percent(all.notFollowed),
      ms.toFixed(0).padStart(5),
      '|',
      id,
      vehicles[0],
    );
    if (values.symptom === undefined) continue;
    for (const cause of [...all.causes].sort((a, b) => b.share - a.share))
      console.log(
        '   ',
        [cause.share, cause.proven, cause.first, cause.named, cause.missed, cause.wronglyProven]
          .map(percent)
          .join(' '),
        cause.minutes.toFixed(0).padStart(4),
        cause.cause,
      );
  }
}
