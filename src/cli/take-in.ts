/**
 * `npm run take-in <file…>`: takes saved notes, or whole exports of job cards, onto the shelf: checked, on a branch of their
 * own, committed and ready to push. All of them or none.
 *
 *     npm run take-in ~/Downloads/second-bleed-screw.yaml
 *     npm run take-in job-cards.json other-note.yaml
 *     npm run take-in finished-jobs.json              into the counts of their years
 *     npm run take-in -- note.yaml --no-branch        onto the branch that is checked out, without a commit
 */
import { spawnSync } from 'node:child_process';
import { lstat, mkdir, readFile, rm, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { filesOf, shownName } from '../library/read-shelf.ts';
import { type HandedIn, type NewNote, takeIn } from '../library/take-in.ts';
import { Refusal, readArguments, runCommand } from './command.ts';

const USE =
  'npm run take-in <note.yaml, job-cards.json or finished-jobs.json> … [-- --no-branch] [--shelf folder]';

await runCommand(main);

async function main(): Promise<void> {
  const { values, positionals } = readArguments(
    USE,
    {
      allowPositionals: true,
      allowNegative: true,
      options: { branch: { type: 'boolean', default: true }, shelf: { type: 'string', default: 'content' } },
    },
    Number.POSITIVE_INFINITY,
  );
  if (positionals.length === 0) throw new Refusal(USE);
  const handed = await Promise.all(positionals.map(readHanded));
  const { notes, refused, known } = takeIn(shownName(values.shelf), filesOf(values.shelf), handed);
  if (refused.length > 0) {
    for (const { name, why } of refused)
      process.stderr.write(`${name}\n  ${why.replaceAll('\n', '\n  ')}\n\n`);
    process.stderr.write(
      `Nothing was taken in: ${refused.length} of the notes cannot come in as they are.\n`,
    );
    process.exitCode = 1;
    return;
  }
  for (const { name, path } of known)
    process.stdout.write(`${name}: on the shelf already, word for word: ${path}\n`);
  if (notes.length === 0) return;
  const files = notes.map(({ path }) => join(values.shelf, path));
  const branch = values.branch ? await openBranch(values.shelf, notes) : undefined;
  await writeAll(values.shelf, notes, branch);
  if (branch !== undefined) commit(values.shelf, notes);
  process.stdout.write(`Taken in: ${files.map(shownName).join(', ')}\n`);
  process.stdout.write(
    branch === undefined
      ? 'Next: commit them and open a pull request.\n'
      : `Committed on the branch ${branch}. Next: git push -u origin ${branch}, and open a pull request. Back to where you were: git switch -\n`,
  );
}

async function readHanded(name: string): Promise<HandedIn> {
  const found = await lstat(name).catch(() => undefined);
  if (!found) throw new Refusal(`There is no file "${name}".`);
  // A link could name any file of this machine, and a device never ends.
  if (!found.isFile()) throw new Refusal(`"${name}" is no plain file. Hand in the file itself.`);
  return { name, bytes: await readFile(name) };
}

/** The files, of which only counts may be there yet; a failure takes back what is already written. */
async function writeAll(shelf: string, notes: readonly NewNote[], branch: string | undefined): Promise<void> {
  const written: { file: string; before: string | undefined }[] = [];
  try {
    for (const { path, text, grows } of notes) {
      const file = join(shelf, path);
      const before = grows ? await readFile(file, 'utf8') : undefined;
      await mkdir(dirname(file), { recursive: true });
      await writeFile(file, text, { flag: grows ? 'w' : 'wx' });
      written.push({ file, before });
    }
  } catch (error) {
    for (const { file, before } of written) await (before === undefined ? rm(file) : writeFile(file, before));
    const back =
      branch === undefined
        ? ''
        : `\nThe branch ${branch} is made and empty. Back to where you were: git switch -`;
    throw new Refusal(`The notes could not be written, and none was: ${(error as Error).message}${back}`);
  }
}

/** A branch for the notes. What else is changed in the folder stays as it is. */
async function openBranch(shelf: string, notes: readonly NewNote[]): Promise<string | undefined> {
  if (git(shelf, 'rev-parse', '--is-inside-work-tree').status !== 0) {
    process.stdout.write('This folder is under no git: the notes are written, without a branch.\n');
    return undefined;
  }
  const [first] = notes;
  const kind = first?.path.startsWith('counts/') ? 'count' : first?.by === '' ? 'vehicle' : 'note';
  const stem =
    notes.length === 1 ? `${kind}/${first?.id}` : `${kind}s/${first?.id}-and-${notes.length - 1}-more`;
  for (let number = 1; number < 100; number++) {
    const name = number === 1 ? stem : `${stem}-${number}`;
    if (git(shelf, 'rev-parse', '--verify', '--quiet', `refs/heads/${name}`).status === 0) continue;
    const made = git(shelf, 'switch', '--create', name);
    if (made.status !== 0) throw new Refusal(`git could make no branch ${name}: ${made.stderr.trim()}`);
    return name;
  }
  throw new Refusal(`There are a hundred branches called ${stem} already. Delete those that are done with.`);
}

/** In the repository of the shelf, which need not be the one of the terminal's folder. */
function commit(shelf: string, notes: readonly NewNote[]): void {
  const [first] = notes;
  const subject =
    notes.length === 1
      ? `[${first?.id}] ${first?.title}`
      : `${notes.length} notes: ${notes.map(({ id }) => id).join(', ')}`;
  const by = [...new Set(notes.map((each) => each.by).filter((each) => each !== ''))];
  const body = by.length === 0 ? 'Proposed from the site.' : `Proposed by ${by.join(', ')}.`;
  const paths = notes.map(({ path }) => path);
  const steps = [
    ['add', '--', ...paths],
    ['commit', '--quiet', '-m', subject, '-m', body, '--', ...paths],
  ];
  for (const step of steps) {
    const { status, stderr } = git(shelf, ...step);
    if (status !== 0)
      throw new Refusal(
        `The notes are written and the branch is made, but git did not commit them: ${stderr.trim()}\nThen, in ${shownName(shelf) || '.'}: git add -- ${paths.join(' ')}; git commit -m "[${first?.id}]" -- ${paths.join(' ')}`,
      );
  }
}

function git(folder: string, ...words: string[]) {
  return spawnSync('git', words, { cwd: folder, encoding: 'utf8' });
}
