/** The little that the scripts of one page share. Each island is a script of its own; this hangs on the window. */
import type { Habit } from '../../model/habit.ts';
import type { DrawPlaces } from '../drawings/circuit-places.ts';
import type { LayOutSheet, MakeCardPlan, ShowTorques } from '../job/card-parts.ts';
import type { HandedOver } from '../job/handed-over.ts';
import type { JobPlan } from '../job/job-plan.ts';
import type { JobDesk, JobTransfer } from '../job/job-transfer.ts';
import type { NoteCheck } from '../note/note-check.ts';
import type { Moves } from '../practice/moves.ts';
import type { PracticeIndex, PracticePack } from '../practice/practice-data.ts';
import type { PracticeCar } from '../practice/simulated.ts';
import type { OfferMeasured } from '../vehicle/offer-measured.ts';
import type { VehicleCheck } from '../vehicle/vehicle-check.ts';
import type { VehicleSheet } from '../vehicle/vehicle-sheet.ts';
import type { VehicleCaution } from '../vehicle/vehicle-stops.ts';
import type { CallQuestions } from '../walk/call-questions.ts';
import type { MakeKnownList } from '../walk/known-list.ts';
import type { WalkTexts } from '../walk/walk-data.ts';
import type { codePicture } from './code-picture.ts';
import type { button, element } from './element.ts';
import type { KnownItems } from './known.ts';

/** Figures in the values of the chosen vehicle and in the reader's units. */
export interface ReaderFigures {
  /** Writes them into a part of the page, and marks in it what is not of this vehicle's layout. */
  fill(part: ParentNode): void;
  /**
   * A text with its figures written in, for what is no markup: an option, a label read aloud.
   * @param general packed general ranges by path
   */
  say(text: string, general: Readonly<Record<string, string>>): string;
}

export interface PageGlobals {
  /** Hung here for the scripts after the page's first, so that none brings them again (src/site/after-build/scripts.ts). */
  element: typeof element;
  button: typeof button;
  loadScript: (name: string) => Promise<void>;
  /** Address of the site's top folder, wherever the page lies. */
  root: URL;
  /** The chosen vehicle once its figures are there. */
  vehicle: VehicleSheet | undefined;
  /** What this page has read of what the device keeps, by the start of its names: its scripts share it. */
  known?: Map<string, KnownItems>;
  /** Units the reader wants to see. */
  habit: Habit;
  /**
   * Makes this the chosen vehicle, or none.
   * @returns whether the device keeps it
   */
  chooseVehicle(id: string | undefined): boolean;
  /** Shows every figure in these units from now on. */
  showUnits(name: 'metric' | 'US'): void;
  /** Called by a vehicle's data script. */
  receiveVehicle(sheet: VehicleSheet): void;
  /** Called by the script that lists the vehicles, where a choice of them waits for it. */
  receiveVehicles?(vehicles: readonly (readonly [id: string, title: string])[]): void;
  /** Called by the script of the cautions, where a vehicle of this device waits for them. */
  receiveOwnCautions?(cautions: readonly VehicleCaution[]): void;
  ownCautions?: readonly VehicleCaution[];
  /** Called by the script of a complaint's questions, where the job card waits for them. */
  receiveCall?(call: CallQuestions): void;
  /** Called by the script of a cause's plan, where the job card waits for it. */
  receivePlan?(plan: JobPlan): void;
  /** Called by the script that holds the sections of a walk, by what they are. */
  receiveWalkParts(parts: Readonly<Record<string, string>>): void;
  /** Called by the script that holds the texts of a walk, where the walk waits for it. */
  receiveWalkTexts?(texts: WalkTexts): void;
  /** Called by the script that lists the cases to practise, where the practice page waits for it. */
  receivePracticeIndex?(index: PracticeIndex): void;
  /** Called by the script of a complaint's cases, where the practice page waits for it. */
  receivePractice?(pack: PracticePack): void;
  /** There once scripts/practice-car.js is loaded. */
  practiceCar?: PracticeCar;
  /** There once scripts/practice-code.js is loaded: a text as a code that a camera reads. */
  codePicture?: typeof codePicture;
  /** There once scripts/timers.js is loaded: starts the time of a step, or stops the one that runs; none where a page only shows what runs. */
  startTimer?(start: HTMLElement | undefined): void;
  /** There once scripts/mark-circuit.js is loaded. */
  drawPlaces?: DrawPlaces;
  /** There once scripts/see-it-move.js is loaded. */
  moves?: Moves;
  /** There once what is known so far is opened under a walk. */
  knownSoFar?: MakeKnownList;
  /**
   * There once scripts/vehicle-chosen.js is loaded: says that a vehicle is chosen, puts it on the open card, leads back.
   * @param stays whether the device keeps it
   */
  sayChosen?(after: Element, vehicle: { id: string; title: string }, stays: boolean): void;
  /**
   * There once scripts/new-version.js is loaded: offers the newer version of the shelf.
   * @param waiting its worker; none once it has taken over
   */
  offerVersion?(place: Element, waiting: ServiceWorker | undefined): void;
  /** There once scripts/job-plan.js is loaded: what a cause asks for, or undefined when this shelf has no plan for it. */
  cardPlanOf?(cause: string): Promise<MakeCardPlan | undefined>;
  /** There once scripts/job-plan.js is loaded: the joints of the card's vehicle, to be ticked. */
  showTorques?: ShowTorques;
  /** There once scripts/job-papers.js is loaded. */
  layOutSheet?: LayOutSheet;
  /** There once scripts/job-pictures.js is loaded: the picture made smaller. @throws when it is no picture */
  smallerPicture?(file: Blob): Promise<{ blob: Blob; wide: number; high: number }>;
  /** There once scripts/job-transfer.js is loaded. */
  jobTransfer?: JobTransfer;
  /** There once scripts/job-desk.js is loaded. */
  jobDesk?: JobDesk;
  /** There once scripts/own-measured.js is loaded: what finished jobs measured on a vehicle of this device, offered in its row. */
  offerMeasured?: OfferMeasured;
  /** There once scripts/note-check.js is loaded. */
  noteCheck?: NoteCheck;
  /** There once scripts/vehicle-check.js is loaded. */
  vehicleCheck?: VehicleCheck;
  /** There once scripts/hand-over.js is loaded. */
  putOnJobCard?: (handed: HandedOver) => HTMLElement;
  /** There with it: what the open card has measured off the jug, litres. */
  litresOnCard?: () => Promise<{ drained: number; filled: number } | undefined>;
  /** There once a vehicle or other units are chosen; on a page with a walk, from the start. */
  figures: ReaderFigures | undefined;
}

declare global {
  interface Window {
    headertank: PageGlobals;
  }
  interface DocumentEventMap {
    /** The vehicle or the units have changed; read them from window.headertank. */
    'headertank:change': CustomEvent<undefined>;
    /** Another card is open, or the open one is called otherwise. */
    'headertank:job': CustomEvent<undefined>;
    /** A reading has chosen the answer of a test. */
    'headertank:reading': CustomEvent<{ test: string; outcome: string; reading: string }>;
    /** Its target came onto the page after the page's own scripts had started. */
    'headertank:added': CustomEvent<undefined>;
  }
}
