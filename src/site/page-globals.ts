/** The little that the scripts of one page share. Each island is a script of its own; this hangs on the window. */
import type { Habit } from '../model/show-quantity.ts';
import type { VehicleSheet } from './vehicle-sheet.ts';

export interface PageGlobals {
  /** Address of the site's top folder, wherever the page lies. */
  root: URL;
  /** The chosen vehicle once its figures are there. */
  vehicle: VehicleSheet | undefined;
  /** Units the reader wants to see. */
  habit: Habit;
  /** Called by a vehicle's data script. */
  receiveVehicle(sheet: VehicleSheet): void;
  /** Called by the script that holds the sections of a walk, by what they are. */
  receiveWalkParts(parts: Readonly<Record<string, string>>): void;
  /** Writes the vehicle's figures and the reader's units into a part that came onto the page later. */
  fill(part: ParentNode): void;
  /**
   * A text with its figures written in, for what is no markup: an option, a label read aloud.
   * @param general packed general ranges by path
   */
  say(text: string, general: Readonly<Record<string, string>>): string;
}

declare global {
  interface Window {
    headertank: PageGlobals;
  }
  interface DocumentEventMap {
    /** The vehicle or the units have changed; read them from window.headertank. */
    'headertank:change': CustomEvent<undefined>;
    /** Its target came onto the page after the page's own scripts had started. */
    'headertank:added': CustomEvent<undefined>;
  }
}
