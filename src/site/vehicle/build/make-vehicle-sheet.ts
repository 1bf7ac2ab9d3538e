/** Makes the sheet of a vehicle from its record, and says where its figures are from. */
import type { Entry } from '../../../library/shelf.ts';
import { asAccess } from '../../../model/access.ts';
import { boltText } from '../../../model/bolt-text.ts';
import { FIGURE_PATHS, JOINT_NAMES } from '../../../model/figures.ts';
import { pageText } from '../../../model/page-text.ts';
import { idsBefore } from '../../shelf/record-pages.ts';
import { pathsWithout } from '../paths-without.ts';
import type { ShelfSheet } from '../vehicle-sheet.ts';
import { stopsFor } from '../vehicle-stops.ts';
import { coolantsOf } from './coolant-line.ts';
import { vehicleCautions } from './vehicle-cautions.ts';
import { whereItSits } from './where-it-sits.ts';

interface Provenance {
  from: string;
  page?: string | undefined;
  checked: string;
  sure: string;
}

/** "manual, page 3-14, read off the source, checked 2026-10-02" */
export function originText({ from, page, checked, sure }: Provenance): string {
  return [from, page && pageText(page), sure, `checked ${checked}`]
    .filter((part) => part !== undefined)
    .join(', ');
}

export type Usual = Pick<Provenance, 'from' | 'sure' | 'checked'>;

/** Where most figures of a vehicle are from, so that it is said once and each figure says only what is otherwise. */
export function usualOrigin({ figures, torques }: Entry<'vehicle'>['data']): Usual | undefined {
  const counted = new Map<string, { usual: Usual; count: number }>();
  for (const each of [...Object.values(figures), ...Object.values(torques)]) {
    if (!each) continue;
    const { from, sure, checked } = each;
    const key = originText({ from, sure, checked });
    counted.set(key, { usual: { from, sure, checked }, count: (counted.get(key)?.count ?? 0) + 1 });
  }
  const [most] = [...counted.values()].sort((a, b) => b.count - a.count);
  return most && most.count > 1 ? most.usual : undefined;
}

/** What a figure has to say of itself beside the usual: its page, or all of it when anything is otherwise. */
export function ownOrigin(figure: Provenance, usual: Usual | undefined): string {
  const isUsual =
    figure.from === usual?.from && figure.sure === usual.sure && figure.checked === usual.checked;
  return isUsual ? pageText(figure.page ?? '') : originText(figure);
}

/** All but the minutes, which the whole shelf is needed for. */
export function sheetOf(entry: Entry<'vehicle'>): Omit<ShelfSheet, 'bookings' | 'repairs'> {
  const { data, id } = entry;
  const figures: ShelfSheet['figures'] = {};
  const bolts: ShelfSheet['bolts'] = {};
  for (const path of FIGURE_PATHS) {
    const figure = data.figures[path];
    if (figure) figures[path] = { quantity: figure.is, origin: originText(figure) };
  }
  for (const joint of JOINT_NAMES) {
    const torque = data.torques[joint];
    if (!torque) continue;
    figures[`torque.${joint}`] = {
      quantity: torque.is,
      origin: `${boltText(torque)}; ${originText(torque)}`,
    };
    bolts[joint] = {
      bolt: torque.bolt,
      ...(torque.class && { class: torque.class }),
      into: torque.into,
      ...(torque.stages && { stages: torque.stages }),
      ...(torque['one-use'] && { 'one-use': true }),
    };
  }
  const was = idsBefore('vehicle', id);
  return {
    id,
    title: data.title,
    short: data.model,
    ...(was.length > 0 && { was }),
    layout: data.layout,
    figures,
    without: pathsWithout(figures, data.layout),
    stops: stopsFor(vehicleCautions(), data.layout),
    bolts,
    coolants: coolantsOf(data.loops),
    access: data.access.map(asAccess),
    sits: whereItSits(data),
    bleeding: data.bleeding,
  };
}
