/** The sheet of a vehicle of this device: what was typed and nothing else. */
import { dayText } from '../../model/day.ts';
import { generalRange } from '../../model/figure-lookup.ts';
import {
  FIGURES,
  type FigurePath,
  figureFits,
  isFigurePath,
  jointOf,
  REFERABLE_PATHS,
} from '../../model/figures.ts';
import { type Quantity, readQuantity, shelfSpelling } from '../../model/quantity.ts';
import { quantityText } from '../../model/show-quantity.ts';
import type { Dimension } from '../../model/units.ts';
import { pathsWithout } from './paths-without.ts';
import { saidLayout, type VehicleDraft } from './vehicle-draft.ts';
import type { OwnSheet, SheetFigure } from './vehicle-sheet.ts';
import { stopsFor, type VehicleCaution } from './vehicle-stops.ts';

/** Letters of a name that fit into the top line of a phone. */
const SHORT = 22;

/** Lowest and highest torque that can be meant, as in the model of a torque. */
const TORQUE_PLAUSIBLE = ['0.5 N·m', '250 N·m'] as const;

/** As a record says that a job measured it. */
export const MEASURED_HERE = 'measured here';

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

/** The field of a figure or of `torque.<joint>` in a draft. */
export function ownField(path: string): string {
  const joint = jointOf(path);
  return joint ? `torques/${joint}/is` : `figures/${path}/is`;
}

/** The fields with one that somebody typed: where an earlier figure in its place came from goes with that. */
export function withTyped(
  fields: VehicleDraft['fields'],
  name: string,
  text: string,
): VehicleDraft['fields'] {
  const row = name.replace(/\/is$/, '');
  const gone = row === name ? [] : [`${row}/from`, `${row}/page`, `${row}/sure`];
  const rest = Object.entries(fields).filter(([each]) => !gone.includes(each));
  return { ...Object.fromEntries(rest), [name]: text };
}

/** What a figure or a torque measures, and what can be meant; undefined for an unknown path. */
function kindOf(path: string): { dimension: Dimension; plausible: readonly [string, string] } | undefined {
  if (isFigurePath(path)) return FIGURES[path];
  return jointOf(path) && { dimension: 'torque', plausible: TORQUE_PLAUSIBLE };
}

/** A figure as it was typed, with its unit: a stamp of 16 may be psi or hundreds of kPa, so no unit is taken for granted. */
export function readFigure(path: string, typed: string): ReadFigure {
  const kind = kindOf(path);
  const general = generalRange(path);
  if (!kind || !general) return { ok: false, says: 'No vehicle has such a figure.' };
  const { dimension, plausible } = kind;
  const result = readQuantity(
    shelfSpelling(typed, dimension),
    dimension,
    undefined,
    quantityText(general.quantity),
  );
  if (!result.ok) return { ok: false, says: `${result.fault.found} Expected ${result.fault.expected}` };
  const { quantity } = result;
  const [lowest, highest] = plausible.map((each) => readQuantity(each, dimension));
  if (
    lowest?.ok &&
    highest?.ok &&
    (quantity.low < lowest.quantity.low || quantity.high > highest.quantity.high)
  )
    return {
      ok: false,
      says: `${typed.trim()} cannot be meant here. Usually ${quantityText(general.quantity)}.`,
    };
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
  for (const path of REFERABLE_PATHS) {
    const typed = fields[ownField(path)] ?? '';
    if (typed.trim() === '' || !figureFits(path, layout)) continue;
    const read = readFigure(path, typed);
    const isMeasured = fields[`figures/${path}/from`] === MEASURED_HERE;
    if (read.ok)
      figures[path] = {
        quantity: read.quantity,
        origin: `${isMeasured ? 'measured on a job' : 'typed by you'} on this device, ${dayText(changed)}; not checked`,
        mark: isMeasured ? 'measured on a job' : 'typed by you',
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
