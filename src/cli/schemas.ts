/**
 * `npm run schemas`: writes what is made from the schemas: the editors' files and the field tables in src/model/FIELDS.md.
 *
 *     npm run schemas              writes what has changed
 *     npm run schemas -- --check   writes nothing; fails and names what is out of date
 */
import { mkdir, readFile, writeFile } from 'node:fs/promises';
import { dirname } from 'node:path';
import { FIELD_TABLES, fieldTables } from '../library/field-tables.ts';
import { editorFiles } from '../library/schema-files.ts';
import { readArguments, runCommand } from './command.ts';

const USE = 'npm run schemas [-- --check]';

await runCommand(schemas);

async function schemas(): Promise<void> {
  const { values } = readArguments(USE, { options: { check: { type: 'boolean' } } });
  const wanted = editorFiles();
  wanted.set(FIELD_TABLES, fieldTables());
  const stale: string[] = [];
  for (const [path, text] of wanted) if ((await textOf(path)) !== text) stale.push(path);

  if (values.check && stale.length > 0) {
    process.stderr.write(
      `Out of date: ${stale.join(', ')}. The schemas in src/model have changed.\nTo mend: npm run schemas\n`,
    );
    process.exitCode = 1;
  } else if (!values.check) {
    for (const path of stale) {
      await mkdir(dirname(path), { recursive: true });
      await writeFile(path, wanted.get(path) ?? '');
    }
  }
  if (process.exitCode === undefined)
    process.stdout.write(stale.length === 0 ? 'All as the schemas say.\n' : `Written: ${stale.join(', ')}\n`);
}

async function textOf(path: string): Promise<string | undefined> {
  try {
    return await readFile(path, 'utf8');
  } catch {
    return undefined;
  }
}
