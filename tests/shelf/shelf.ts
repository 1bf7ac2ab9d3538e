/** The shelf of this repository, read once for the tests that hold it to what it promises. */
import { resolve } from 'node:path';
import { readShelf } from '../../src/library/read-shelf.ts';

export const { shelf, findings } = await readShelf(resolve('content'));

/**
 * Whether the demonstration vehicles, notes and cases are there. A shop's own shelf (`npm run own-shelf`) has none of them: what
 * a test promises of them is passed over there, everything else holds for it too.
 */
export const isDemonstration = shelf.shop.invented;
