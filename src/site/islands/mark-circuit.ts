/** The drawing of a vehicle's circuit with the places of a test: fetched when somebody wants to see where it is. */
import '../browser/page-globals.ts';
import { drawPlaces } from '../drawings/circuit-places.ts';

window.headertank.drawPlaces = drawPlaces;
