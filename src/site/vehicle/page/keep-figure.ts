/** A figure typed at the work goes onto the chosen vehicle of this device, and from there into every page. */
import '../../browser/page-globals.ts';
import { ownField, readFigure, withTyped } from '../own-sheet.ts';
import { keepOwnVehicle, ownVehicle } from './own-vehicles.ts';

/**
 * @param path of a figure, or `torque.<joint>`
 * @returns what is wrong, in words; undefined once it is kept
 */
export function keepFigure(path: string, typed: string): string | undefined {
  const { vehicle } = window.headertank;
  const draft = vehicle?.own && ownVehicle(vehicle.id);
  if (!draft) return 'No vehicle of your own is chosen any more.';
  const read = readFigure(path, typed);
  if (!read.ok) return read.says;
  const changed = new Date().toISOString();
  const fields = withTyped(draft.fields, ownField(path), typed.trim());
  if (!keepOwnVehicle({ ...draft, changed, fields }))
    return 'This device does not keep it: its storage is full or blocked.';
  window.headertank.chooseVehicle(draft.id);
  return undefined;
}
