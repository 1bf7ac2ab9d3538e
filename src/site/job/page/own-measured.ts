/** Figures that finished jobs measured on a vehicle of this device: once, or their mean and spread; offered where it has none, else said beside it. */
import { FIGURES, type FigurePath } from '../../../model/figures.ts';
import type { Job } from '../../../model/job.ts';
import { isOfFaultyPart, measuredOnJob, measuredTogether } from '../../../model/measured-on-job.ts';
import { button, element } from '../../browser/element.ts';
import type { OfferMeasured } from '../../vehicle/offer-measured.ts';
import { MEASURED_HERE, ownField, readFigure } from '../../vehicle/own-sheet.ts';
import type { VehicleDraft } from '../../vehicle/vehicle-draft.ts';
import { jobs } from './job-store.ts';

/** Begins where a figure was read: one that jobs wrote may be written anew by the next. */
const FROM_JOBS = 'Finished jobs:';

interface Measured {
  path: FigurePath;
  mean: string;
  says: string;
  count: number;
}

export const offerMeasured: OfferMeasured = async (row, vehicle, take) => {
  await jobs.ready();
  const all = measuredOn(vehicle, jobs.list());
  if (all.length === 0) return;
  const fresh = all.filter((each) => isWanted(each, vehicle.fields));
  const offer = element(
    'div',
    { class: 'own-measured' },
    element('p', {}, 'Measured on finished jobs of it:'),
    element('ul', {}, ...all.map((each) => element('li', {}, line(each, vehicle.fields)))),
  );
  if (fresh.length > 0)
    offer.append(
      button(
        fresh.length === 1 ? 'Take it as a figure' : `Take ${fresh.length} as figures`,
        () => take({ ...vehicle.fields, ...Object.assign({}, ...fresh.map(asFields)) }),
        'quiet',
      ),
    );
  row.querySelector('.own-measured')?.remove();
  row.append(offer);
};

/** What all finished jobs of the vehicle measured, by figure; what the proven fault itself falsifies is left out. */
function measuredOn({ id, fields }: VehicleDraft, cards: readonly Job[]): Measured[] {
  const values = new Map<FigurePath, string[]>();
  for (const job of cards) {
    if (job.vehicle?.id !== id || job.finished === undefined || !job.proven) continue;
    const cause = job.proven.title;
    for (const { figure, is } of measuredOnJob(job))
      if (!isOfFaultyPart(figure, cause)) values.set(figure, [...(values.get(figure) ?? []), is]);
  }
  return [...values].flatMap(([path, some]) => {
    const typed = readFigure(path, fields[ownField(path)] ?? '');
    const together = measuredTogether(some, path, typed.ok ? typed.quantity : undefined);
    return together ? [{ path, ...together }] : [];
  });
}

/** A figure that somebody typed stays; one that jobs wrote follows them. */
function isWanted({ path, says }: Measured, fields: VehicleDraft['fields']): boolean {
  const where = fields[`figures/${path}/page`] ?? '';
  const isOurs = where.startsWith(FROM_JOBS);
  return (fields[ownField(path)] ?? '') === '' || (isOurs && where !== `${FROM_JOBS} ${says}`);
}

function line({ path, says }: Measured, fields: VehicleDraft['fields']): string {
  const stands = fields[ownField(path)] ?? '';
  const beside = stands === '' || stands === says ? '' : `; ${stands} stands there`;
  return `${FIGURES[path].label}: ${says}${beside}`;
}

/** As the form of a vehicle has them. */
function asFields({ path, mean, says, count }: Measured): Record<string, string> {
  return {
    [`figures/${path}/is`]: mean,
    [`figures/${path}/from`]: MEASURED_HERE,
    [`figures/${path}/page`]: `${FROM_JOBS} ${says}`,
    [`figures/${path}/sure`]: count === 1 ? 'measured once' : 'measured twice',
  };
}
