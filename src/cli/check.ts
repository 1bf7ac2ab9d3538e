/** `npm run check`: reads the whole shelf and says everything that is wrong with it. */
import { parseArgs } from 'node:util';
import { readShelf } from '../library/read-shelf.ts';
import { reportShort, reportText, summary } from '../library/report/text.ts';

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: { short: { type: 'boolean' } },
});
const began = performance.now();
const { findings, count } = await readShelf(positionals[0] ?? 'content');
const seconds = (performance.now() - began) / 1000;
if (values.short) process.stdout.write(reportShort(findings));
else if (findings.length > 0) process.stdout.write(`${reportText(findings)}\n`);
process.stdout.write(`${summary(findings, { records: count, seconds })}\n`);
if (findings.some((finding) => finding.level === 'error')) process.exitCode = 1;
