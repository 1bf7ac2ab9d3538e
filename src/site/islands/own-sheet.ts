/** The chosen vehicle is this device's alone: its sheet is made of what was typed, each time it is chosen. */
import { isText } from '../browser/guards.ts';
import { loadScript } from '../browser/load-script.ts';
import '../browser/page-globals.ts';
import { kept } from '../browser/storage.ts';
import { ownSheetOf } from '../vehicle/own-sheet.ts';
import { ownVehicle } from '../vehicle/page/own-vehicles.ts';

async function receive(): Promise<void> {
  const { headertank } = window;
  const id = kept('vehicle', isText) ?? '';
  if (!headertank.ownCautions) {
    headertank.receiveOwnCautions = (cautions) => {
      headertank.ownCautions = cautions;
    };
    await loadScript('../data/own-cautions');
  }
  // Another may have been chosen meanwhile.
  if (kept('vehicle', isText) !== id) return;
  const typed = ownVehicle(id);
  if (!typed) {
    headertank.chooseVehicle(undefined);
    return;
  }
  headertank.receiveVehicle(ownSheetOf(typed, headertank.ownCautions ?? []));
  // What it has no figure of is asked where one is wanted; without a connection the general range stands.
  await loadScript('own-asks').catch(() => undefined);
}

void receive().catch(() => {
  document
    .querySelector('ht-vehicle')
    ?.append(' The chosen vehicle’s cautions cannot be fetched just now, so it is not used.');
});
