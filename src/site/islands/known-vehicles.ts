/** Before the page asks for the figures of the kept vehicle: one that is no longer on the shelf is not chosen any more. */

import { isFilledText } from '../browser/guards.ts';
import { forget, kept } from '../browser/storage.ts';
import { isOnShelf } from '../job/page/on-shelf.ts';

const chosen = kept('vehicle', isFilledText);
if (chosen !== undefined && !isOnShelf(chosen)) forget('vehicle');
