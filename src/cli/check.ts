/**
 * `npm run check`: reads the whole shelf and says everything that is wrong with it.
 *
 *     npm run check                      content/, in full sentences
 *     npm run check -- --short           one line for each finding
 *     npm run check -- --mend            mends what has one right answer, then checks again
 *     npm run check -- --json            for tools
 *     npm run check -- --quality         for GitLab, as a code quality report
 *     npm run check -- <folder>          another shelf
 */

import { physicsFindings } from '../library/against-physics/findings.ts';
import { mendFiles } from '../library/mend.ts';
import { readShelf } from '../library/read-shelf.ts';
import { reportHost } from '../library/report/host.ts';
import { reportJson } from '../library/report/json.ts';
import { reportQuality } from '../library/report/quality.ts';
import { reportShort, reportText, summary } from '../library/report/text.ts';
import { readArguments, runCommand } from './command.ts';

const USE = 'npm run check -- [folder] [--short] [--mend] [--json] [--quality]';

// `check | head` closes the pipe early: that is no fault.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code !== 'EPIPE') throw error;
});

await runCommand(check);

async function check(): Promise<void> {
  const { values, positionals } = readArguments(USE, {
    allowPositionals: true,
    options: {
      short: { type: 'boolean' },
      mend: { type: 'boolean' },
      json: { type: 'boolean' },
      quality: { type: 'boolean' },
    },
  });
  const folder = positionals[0] ?? 'content';
  const began = performance.now();
  let { shelf, findings, count } = await readShelf(folder);
  if (values.mend) {
    const mended = await mendFiles(findings);
    ({ shelf, findings, count } = await readShelf(folder));
    if (!values.json && !values.quality) process.stdout.write(`${mended} mended; what is left:\n\n`);
  }
  const seconds = (performance.now() - began) / 1000;
  if (values.json) process.stdout.write(reportJson(findings, count));
  else if (values.quality)
    process.stdout.write(reportQuality([...findings, ...physicsFindings(shelf.records)]));
  else {
    if (process.env.GITHUB_ACTIONS === 'true') process.stdout.write(reportHost(findings));
    if (values.short) process.stdout.write(reportShort(findings));
    else if (findings.length > 0) process.stdout.write(`${reportText(findings)}\n`);
    process.stdout.write(`${summary(findings, { records: count, seconds })}\n`);
  }
  process.exitCode = findings.some((finding) => finding.level === 'error') ? 1 : 0;
}
