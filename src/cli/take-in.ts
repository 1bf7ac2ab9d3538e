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
import { existsSync } from 'node:fs';
import { lstat, mkdir, readFile, rename, rm, writeFile } from 'node:fs/promises';
import { basename, dirname, join, resolve } from 'node:path';
import { filesOf, shownName } from '../library/read-shelf.ts';
import { type NewNote, type Submission, takeIn } from '../library/take-in.ts';
import { LARGEST_EXPORT } from '../model/job-limits.ts';
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

async function readHanded(name: string): Promise<Submission> {
  const found = await lstat(name).catch(() => undefined);
  if (!found) throw new Refusal(`There is no file "${name}".`);
  // A link could name any file of this machine, and a device never ends.
  if (!found.isFile()) throw new Refusal(`"${name}" is no plain file. Hand in the file itself.`);
  if (found.size > LARGEST_EXPORT)
    throw new Refusal(`"${name}" is larger than ${LARGEST_EXPORT / 1e6} MB. Export fewer cards at a time.`);
  return { name, bytes: await readFile(name) };
}

/**
 * The files, of which only counts may be there yet; a failure takes back what is already written. Each is written beside its
 * place, under a name that the shelf passes over, and put there whole: whoever stops it leaves no half of a note.
 */
async function writeAll(shelf: string, notes: readonly NewNote[], branch: string | undefined): Promise<void> {
  const beside: { file: string; part: string; before: string | undefined }[] = [];
  const written: typeof beside = [];
  try {
    for (const { path, text, grows } of notes) {
      const file = join(shelf, path);
      const part = join(dirname(file), `.${basename(file)}.part`);
      const before = grows ? await readFile(file, 'utf8') : undefined;
      if (!grows && (await lstat(file).catch(() => undefined))) throw new Error(`${file} is there already`);
      await mkdir(dirname(file), { recursive: true });
      beside.push({ file, part, before });
      await writeFile(part, text);
    }
    for (const each of beside) {
      await rename(each.part, each.file);
      written.push(each);
    }
  } catch (error) {
    for (const { part } of beside) await rm(part, { force: true });
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
  const { error, status, stderr } = git(shelf, ['rev-parse', '--is-inside-work-tree']);
  if (error || (status !== 0 && !hasRepository(resolve(shelf)))) {
    const why = error ? 'git is not to be had here' : 'This folder is under no git';
    process.stdout.write(`${why}: the notes are written, without a branch.\n`);
    return undefined;
  }
  if (status !== 0)
    throw new Refusal(`git does not work in this folder, so nothing was taken in: ${stderr.trim()}`);
  const [first] = notes;
  const kind = first?.path.startsWith('counts/') ? 'count' : first?.by === '' ? 'vehicle' : 'note';
  const stem =
    notes.length === 1 ? `${kind}/${first?.id}` : `${kind}s/${first?.id}-and-${notes.length - 1}-more`;
  for (let number = 1; number < 100; number++) {
    const name = number === 1 ? stem : `${stem}-${number}`;
    if (git(shelf, ['rev-parse', '--verify', '--quiet', `refs/heads/${name}`]).status === 0) continue;
    const made = git(shelf, ['switch', '--create', name]);
    if (made.status !== 0) throw new Refusal(`git could make no branch ${name}: ${made.stderr.trim()}`);
    return name;
  }
  throw new Refusal(`There are a hundred branches called ${stem} already. Delete those that are done with.`);
}

/** Whether a repository lies here or above, sound or not. */
function hasRepository(folder: string): boolean {
  return existsSync(join(folder, '.git')) || (dirname(folder) !== folder && hasRepository(dirname(folder)));
}

/** In the repository of the shelf, which need not be the one of the terminal's folder. */
function commit(shelf: string, notes: readonly NewNote[]): void {
  const [first] = notes;
  const subject =
    notes.length === 1 ? `[${first?.id}] ${first?.title}` : `${notes.length} notes, the first ${first?.id}`;
  const by = [...new Set(notes.map((each) => each.by).filter((each) => each !== ''))];
  const body = by.length === 0 ? 'Proposed from the site.' : `Proposed by ${by.join(', ')}.`;
  const paths = notes.map(({ path }) => path);
  const list = paths.length === 1 ? '' : notes.map(({ id }) => `- ${id}`).join('\n');
  const message = ['-m', subject, '-m', body];
  // Names of many files are more than a command line holds.
  const these = ['--pathspec-from-file=-', '--pathspec-file-nul'];
  const steps = [
    ['add', ...these],
    [
      'commit',
      '--quiet',
      ...message,
      ...(list.length > 0 && list.length < 20_000 ? ['-m', list] : []),
      ...these,
    ],
  ];
  for (const step of steps) {
    const { error, status, stderr } = git(shelf, step, paths.join('\0'));
    if (error || status !== 0)
      throw new Refusal(
        `The notes are written and the branch is made, but git did not commit them: ${error?.message ?? stderr.trim()}\nThen, in ${shownName(shelf) || '.'}: git add -- ${paths.join(' ')}; git commit -m "[${first?.id}]" -- ${paths.join(' ')}`,
      );
  }
}

/** @param input what git reads, if it reads anything */
function git(folder: string, words: readonly string[], input = '') {
  return spawnSync('git', words, { cwd: folder, encoding: 'utf8', input });
}
