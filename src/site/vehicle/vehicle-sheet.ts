/** A vehicle as the page scripts need it: layout and figures, small, one file each under /data/vehicles/. */
import type { CircuitPlace } from '../../model/circuit-places.ts';
import type { Layout } from '../../model/layout.ts';
import type { Quantity } from '../../model/quantity.ts';
import type { TorqueStage } from '../../model/torque-stages.ts';

export interface SheetFigure {
  quantity: Quantity;
  /** Where it is from and how far to trust it, a line. */
  origin: string;
  /** What stands beside it wherever it is shown, where it is no record's. */
  mark?: string;
}

/** A line of the vehicle's record, and the places of the circuit that it is about. */
export interface OwnWords {
  is: string;
  at: CircuitPlace[];
}

interface AnySheet {
  id: string;
  title: string;
  /** What it is called where there is little room. */
  short: string;
  /** Ids it had before it was renamed, or of records that are merged into it; left out where there are none. */
  was?: string[];
  /** By figure path; torques as `torque.<joint>`. */
  figures: Record<string, SheetFigure>;
  /** Figures and torques that a vehicle of this layout cannot have: no general range stands in for them. */
  without: string[];
  /** What an ordinary engine does not have and can hurt: every walk on this vehicle opens with it. */
  stops: Stop[];
  /** Bolt of each torque: thread, property class, tapped material, further stages, whether it is used once. */
  bolts: Record<
    string,
    {
      bolt: string;
      class?: string | undefined;
      into: string;
      stages?: readonly TorqueStage[] | undefined;
      'one-use'?: boolean | undefined;
    }
  >;
  /** The coolant of each loop that states one, in a line. */
  coolants: Record<string, string>;
}

/** A vehicle of the shelf. */
export interface ShelfSheet extends AnySheet {
  own?: undefined;
  layout: Layout;
  /** How to get at things on it, and where its air hides; figures of it in braces. */
  access: OwnWords[];
  /** Where fuses, relays and sensors of it sit, and which pin of a plug does what. */
  sits: OwnWords[];
  bleeding: string;
  /** Whole minutes to book by complaint: mean, and within which nine in ten are found. */
  bookings: Record<string, [expected: number, nineInTen: number]>;
  /** Whole minutes of repair, and of what follows it, by cause; a cause that it cannot have or that has no repair is not there. */
  repairs: Record<string, [repair: number, extra: number]>;
}

/** A vehicle of this device alone, from what was typed here. Its minutes are not known: the page's own stand. */
export interface OwnSheet extends AnySheet {
  own: true;
  /** What was said and what follows from it; all else stays open. */
  layout: Partial<Layout>;
  bookings?: undefined;
  repairs?: undefined;
}

export type VehicleSheet = ShelfSheet | OwnSheet;

/** A caution that a walk opens with, and where the work stops for who is not trained for it. */
export interface Stop {
  id: string;
  title: string;
  short: string;
  /** What is not to be opened, and what the caution asks first. */
  before: string;
}
