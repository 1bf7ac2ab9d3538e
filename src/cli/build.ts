/**
 * `npm run site`: builds the site beside `dist/` and puts it there when it is complete. A build that fails or is cut off
 * leaves the last good site as it was.
 */
import './without-telemetry.ts';
import { rmSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { readArguments, runCommand } from './command.ts';
import { headerFiles } from './response-headers.ts';
import { nextFolder, prepareSwap, swapIn } from './swap-folder.ts';

const USE = 'npm run site';

await runCommand(build);

async function build(): Promise<void> {
  readArguments(USE, {});
  const folder = resolve('dist');
  prepareSwap(folder);
  const next = nextFolder(folder);
  const astro = await import('astro');
  try {
    await astro.build({ outDir: next });
  } catch (error) {
    process.stderr.write(`\n${wordsOf(error)}\nThe site was not built; what is in dist is as it was.\n`);
    rmSync(next, { recursive: true, force: true });
    // Pages that are still being made would only fail in turn, each with a message of its own.
    process.exit(1);
  }
  // Read by hosts alone: no device keeps them.
  for (const [name, text] of Object.entries(headerFiles())) writeFileSync(join(next, name), text);
  swapIn(folder);
}

/** What went wrong and, where Astro knows it, in which file and line. */
function wordsOf(error: unknown): string {
  if (!(error instanceof Error)) return String(error);
  const { loc, hint } = error as Error & {
    loc?: { file?: string; line?: number; column?: number };
    hint?: string;
  };
  const place = loc?.file === undefined ? '' : `${loc.file}:${loc.line ?? 1}:${loc.column ?? 1}\n`;
  return `${place}${error.message}${hint === undefined ? '' : `\n${hint}`}`;
}
