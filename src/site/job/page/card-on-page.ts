/** The job card of the page, as its parts need it. */
import type { Job } from '../../../model/job.ts';
import type { DatabaseName } from '../../browser/storage-names.ts';
import type { VehicleSheet } from '../../vehicle/vehicle-sheet.ts';
import type { CardPlan } from '../card-parts.ts';

export interface CardOnPage extends HTMLElement {
  /** The card as this window last knew it. */
  readonly job: Job;
  /** The card's vehicle, when it is the chosen one and its figures are there. */
  readonly ownVehicle: VehicleSheet | undefined;
  /** What the proven cause asks for, once it is there. */
  readonly planned: CardPlan | undefined;
  /** A part of the page. @throws Error when it is not there */
  place(selector: string): HTMLElement;
  /** A field of the page. @throws Error when it is not there */
  input(selector: string): HTMLInputElement;
  /**
   * Reads what is kept, changes it, keeps it and shows it.
   * @param others kept in the same transaction
   * @returns whether the device took it
   */
  change(change: (job: Job) => Job, others?: ReadonlyMap<DatabaseName, unknown>): Promise<boolean>;
  say(selector: string, text: string): void;
  /** Says what is wrong with fields, or with '' that nothing is, and goes to the first of them. */
  fault(selector: string, text: string, fields: readonly HTMLElement[]): void;
  /** Goes to a card. */
  open(job: Job): void;
  /** Goes to the card the address names. */
  readAddress(): void;
  showAll(): void;
  /** Says that the device keeps nothing. */
  tellUnkept(): void;
}
