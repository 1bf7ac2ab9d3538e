/** The sheet of a vehicle of this device: what was typed and nothing else. */
import { dayText } from '../../model/day.ts';
import { FIGURE_PATHS, FIGURES, type FigurePath, figureFits } from '../../model/figures.ts';
import { type Quantity, readQuantity, shelfSpelling } from '../../model/quantity.ts';
import { pathsWithout } from './paths-without.ts';
import { saidLayout, type VehicleDraft } from './vehicle-draft.ts';
import type { OwnSheet, SheetFigure } from './vehicle-sheet.ts';
import { stopsFor, type VehicleCaution } from './vehicle-stops.ts';

/** Letters of a name that fit into the top line of a phone. */
const SHORT = 22;

/** The figures that are asked: what stands on the car, or what most jobs come to. */
export const OWN_FIGURES = [
  'thermostat.opens',
  'cap.opens',
  'coolant.capacity',
  'fan.on',
  'fan.off',
  'fan.fast',
  'fan.fuse',
] as const satisfies readonly FigurePath[];

type ReadFigure = { ok: true; quantity: Quantity } | { ok: false; says: string };

/** A figure as it was typed, with its unit: a stamp of 16 may be psi or hundreds of kPa, so no unit is taken for granted. */
export function readFigure(path: FigurePath, typed: string): ReadFigure {
  const { dimension, plausible, general } = FIGURES[path];
  const result = readQuantity(shelfSpelling(typed, dimension), dimension);
  if (!result.ok) return { ok: false, says: `${result.fault.found} Expected ${result.fault.expected}` };
  const { quantity } = result;
  const [lowest, highest] = plausible.map((each) => readQuantity(each, dimension));
  if (
    lowest?.ok &&
    highest?.ok &&
    (quantity.low < lowest.quantity.low || quantity.high > highest.quantity.high)
  )
    return { ok: false, says: `${typed.trim()} cannot be meant here. Usually ${general}.` };
  return { ok: true, quantity };
}

/**
 * What was typed as a page reads a vehicle. A figure that cannot be read, or that such a layout cannot have, is left out.
 * @param draft fields by their way in a record, as the form of a vehicle has them
 */
export function ownSheetOf(
  { id, fields, changed }: VehicleDraft,
  cautions: readonly VehicleCaution[],
): OwnSheet {
  const layout = saidLayout(fields);
  const title = fields.title?.trim() ?? '';
  const figures: Record<string, SheetFigure> = {};
  for (const path of FIGURE_PATHS) {
    const typed = fields[`figures/${path}/is`] ?? '';
    if (typed.trim() === '' || !figureFits(path, layout)) continue;
    const read = readFigure(path, typed);
    if (read.ok)
      figures[path] = {
        quantity: read.quantity,
        origin: `typed on this device, ${dayText(changed)}; not checked`,
      };
  }
  return {
    own: true,
    id,
    title,
    short: `${title.length > SHORT ? `${title.slice(0, SHORT - 1).trimEnd()}…` : title} (your own)`,
    layout,
    figures,
    without: pathsWithout(figures, layout),
    // A drive that nobody named rules no caution out: all of them would stand there, as on no vehicle of the shelf.
    stops: layout.power === undefined ? [] : stopsFor(cautions, layout),
    bolts: {},
    coolants: {},
  };
}
