/** What the jobs of this device measured on a vehicle of its own. */
import '../browser/page-globals.ts';
import { offerMeasured } from '../job/page/own-measured.ts';

window.headertank.offerMeasured = offerMeasured;
