/** The shelf, read once for the whole build. A shelf with errors does not build. */
import { resolve } from 'node:path';
import { readShelf } from '../../library/read-shelf.ts';
import { reportText } from '../../library/report/text.ts';

const read = await readShelf(resolve('content'));
const errors = read.findings.filter((finding) => finding.level === 'error');
if (errors.length > 0) {
  throw new Error(`The shelf has faults.\n\n${reportText(errors)}`);
}

export const shelf = read.shelf;
