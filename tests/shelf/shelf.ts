/** The demonstration shelf, read once for the tests that hold it to what it promises. */
import { resolve } from 'node:path';
import { readShelf } from '../../src/library/read-shelf.ts';

export const { shelf, findings } = await readShelf(resolve('content'));
