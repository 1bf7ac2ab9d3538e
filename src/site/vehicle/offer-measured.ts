/** What the page of own vehicles asks of scripts/own-measured.js. */
import type { VehicleDraft } from './vehicle-draft.ts';

/**
 * @param row of the vehicle, to which the offer is added; nothing where no finished job measured anything
 * @param take called with the vehicle's fields and the figures that it had not
 */
export type OfferMeasured = (
  row: HTMLElement,
  vehicle: VehicleDraft,
  take: (fields: VehicleDraft['fields']) => void,
) => Promise<void>;
