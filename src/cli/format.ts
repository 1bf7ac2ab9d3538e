/**
 * `npm run format`: the shelf's YAML in the project's way of writing. Meaning, comments and line breaks stay.
 *
 *     npx node src/cli/format.ts              writes what changes
 *     npx node src/cli/format.ts --check      writes nothing; fails and names the files
 *     npx node src/cli/format.ts <folder>     another shelf
 */
import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { formatYaml } from '../library/format-yaml.ts';
import { filesOf, shownName } from '../library/read-shelf.ts';
import { readArguments, runCommand } from './command.ts';

const USE = 'npm run format; or: npx node src/cli/format.ts [folder] [--check]';

await runCommand(format);

async function format(): Promise<void> {
  const { values, positionals } = readArguments(USE, {
    allowPositionals: true,
    options: { check: { type: 'boolean' } },
  });
  const folder = positionals[0] ?? 'content';
  const changed: string[] = [];
  for (const { path, bytes } of filesOf(folder)) {
    if (!/\.ya?ml$/.test(path)) continue;
    const file = join(folder, path);
    const text = textOf(bytes);
    if (text === undefined) {
      process.stdout.write(`${shownName(file)}: left as it is; it is not UTF-8.\n`);
      continue;
    }
    const { text: formatted, ok } = formatYaml(text);
    if (!ok) process.stdout.write(`${shownName(file)}: left as it is; npm run check says why.\n`);
    if (formatted === text) continue;
    if (!values.check) await writeFile(file, formatted);
    changed.push(shownName(file));
  }
  for (const file of changed) process.stdout.write(`${file}\n`);
  if (values.check && changed.length > 0) {
    process.stderr.write(`${changed.length} not in the project's way of writing. To mend: npm run format\n`);
    process.exitCode = 1;
  } else process.stdout.write(`${changed.length} ${values.check ? 'to change' : 'changed'}.\n`);
}

function textOf(bytes: Uint8Array): string | undefined {
  try {
    return new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    return undefined;
  }
}
