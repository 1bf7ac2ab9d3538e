/** The whole shelf as the text of one file, made once for the file and for the page that says how large it is. */

import project from '../../../package.json';
import { wholeShelf } from '../../library/whole-shelf.ts';
import { shelf } from '../shelf/shelf.ts';

export const SHELF_FILE = `${JSON.stringify(wholeShelf(shelf, project))}\n`;
