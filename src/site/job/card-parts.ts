/** Parts of the job card that come when they are wanted: what its page asks of scripts that are loaded later. */
import type { Joint } from '../../model/figures.ts';
import type { Job } from '../../model/job.ts';
import type { VehicleSheet } from '../vehicle/vehicle-sheet.ts';
import type { PartsOf } from './planned.ts';

/** Words for the customer that the site has drafted. */
export type Draft = NonNullable<Job['drafted-words']>;

/** What a proven cause asks for, in the figures of one vehicle or in general ones. */
export interface CardPlan {
  readonly joints: readonly Joint[];
  readonly parts: readonly PartsOf[];
  /** Words for the customer, to be changed to this car. */
  readonly drafts: Draft;
  /** The same words in every way they may have been drafted on a card: whose figures, which units. */
  readonly wordings: readonly Draft[];
  show(job: Job): Node[];
}

/** Makes it for a vehicle, or for none. */
export type MakeCardPlan = (vehicle: VehicleSheet | undefined) => CardPlan;

export const SHEETS = ['customer', 'card', 'intake', 'parts'] as const;
export type Sheet = (typeof SHEETS)[number];

/** What every sheet of this workshop carries. */
export interface Letterhead {
  shop: string;
  hours: string;
  footer: string;
}

/** A picture of a card, ready to be shown. */
export interface KeptPicture {
  id: string;
  /** `data:`; the policy of the pages lets no other through. */
  address: string;
}

/** Lays out a sheet from the card as it is. */
export type LayOutSheet = (
  sheet: Sheet,
  job: Job,
  head: Letterhead,
  more: { parts: readonly PartsOf[]; pictures: readonly KeptPicture[] },
) => Node[];

/** The page's card as its torques need it. */
export interface TorqueCard {
  readonly job: Job;
  readonly ownVehicle: VehicleSheet | undefined;
  readonly planned: CardPlan | undefined;
  place(selector: string): HTMLElement;
  change(change: (job: Job) => Job): Promise<boolean>;
}

export type ShowTorques = (card: TorqueCard) => void;
