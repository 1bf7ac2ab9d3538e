/** Job cards as a file and back: loaded when the first are exported or imported, since the checker weighs more than all the rest. */
import '../browser/page-globals.ts';
import { exported, imported } from '../job/page/transfer.ts';

window.headertank.jobTransfer = { exported, imported };
