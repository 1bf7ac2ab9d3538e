/** Before the page asks for the figures of the kept vehicle: one that is no longer on the shelf is not chosen any more. */
import { isOnShelf } from '../job/on-shelf.ts';
import { forget, kept } from '../keep.ts';
import { isText } from './open-job.ts';

const chosen = kept('vehicle', isText);
if (chosen !== undefined && !isOnShelf(chosen)) forget('vehicle');
