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
}

declare global {
  interface Window {
    headertank: PageGlobals;
  }
  interface DocumentEventMap {
    /** The vehicle or the units have changed; read them from window.headertank. */
    'headertank:change': CustomEvent<undefined>;
  }
}
