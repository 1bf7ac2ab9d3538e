/** Before the page asks for the figures of the kept vehicle: one that is no longer on the shelf is not chosen any more. */

import { forget, kept } from '../browser/storage.ts';
import { isOnShelf } from '../job/page/on-shelf.ts';
import { isText } from '../job/page/open-job.ts';

const chosen = kept('vehicle', isText);
if (chosen !== undefined && !isOnShelf(chosen)) forget('vehicle');
