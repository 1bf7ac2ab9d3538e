/** The whole shelf as the text of one file, made once for the file and for the page that says how large it is. */
import { readFileSync } from 'node:fs';
import { z } from 'zod';
import { wholeShelf } from '../../library/whole-shelf.ts';
import { shelf } from '../shelf/shelf.ts';

const project = z
  .object({ name: z.string(), version: z.string(), license: z.string() })
  .parse(JSON.parse(readFileSync('package.json', 'utf8')));

export const SHELF_FILE = `${JSON.stringify(wholeShelf(shelf, project))}\n`;
