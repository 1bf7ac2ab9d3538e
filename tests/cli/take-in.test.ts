/** Notes come onto the shelf whole, checked and on a branch of their own, or not at all. */
import { spawnSync } from 'node:child_process';
import {
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import type { JobCards } from '../../src/model/job.ts';
import type { Note } from '../../src/model/note.ts';
import { noteText } from '../../src/model/note-file.ts';

const NOTE: Note = {
  title: 'Second bleed screw behind the head',
  by: 'AW',
  date: '2026-11-25',
  vehicle: 'tarn',
  text: 'Look behind the coil pack.',
  status: 'proposed',
  sources: [{ measured: 'One car, November 2026' }],
  reviewed: '2026-11-25',
};
const PATH = 'content/notes/2026/second-bleed-screw.yaml';

let home: string;
let downloads: string;

beforeEach(() => {
  home = mkdtempSync(join(tmpdir(), 'take-in-'));
  downloads = join(home, 'downloads');
  mkdirSync(downloads);
  cpSync(join(import.meta.dirname, '../library/sound'), join(home, 'content'), { recursive: true });
  for (const words of [
    ['init', '--quiet', '--initial-branch=main'],
    ['config', 'user.name', 'Somebody'],
    ['config', 'user.email', 'somebody@example.org'],
    ['config', 'commit.gpgsign', 'false'],
    ['add', 'content'],
    ['commit', '--quiet', '-m', 'The shelf'],
  ])
    git(...words);
});
afterEach(() => rmSync(home, { recursive: true }));

function git(...words: string[]): string {
  const { stdout, stderr, status } = spawnSync('git', words, { cwd: home, encoding: 'utf8' });
  if (status !== 0) throw new Error(stderr);
  return stdout.trim();
}

function take(...words: string[]) {
  return spawnSync(process.execPath, [resolve('src/cli/take-in.ts'), ...words], {
    cwd: home,
    encoding: 'utf8',
  });
}

function saved(name: string, content: string | Uint8Array): string {
  const file = join(downloads, name);
  writeFileSync(file, content);
  return file;
}

test('a saved note becomes a file on a branch, committed; what else was changed stays uncommitted', () => {
  writeFileSync(
    join(home, 'content/shop.yaml'),
    `${readFileSync(join(home, 'content/shop.yaml'), 'utf8')}# mine\n`,
  );
  writeFileSync(join(home, 'staged.txt'), 'mine');
  git('add', 'staged.txt');
  const { stdout, stderr, status } = take(saved('second-bleed-screw.yaml', noteText(NOTE)));
  expect(stderr).toBe('');
  expect(status).toBe(0);
  expect(stdout).toContain(`Taken in: ${PATH}`);
  expect(stdout).toContain('git push -u origin note/second-bleed-screw');
  expect(readFileSync(join(home, PATH), 'utf8')).toBe(noteText(NOTE));
  expect(git('branch', '--show-current')).toBe('note/second-bleed-screw');
  expect(git('show', '--name-only', '--format=%s', 'HEAD')).toBe(
    `[second-bleed-screw] Second bleed screw behind the head\n\n${PATH}`,
  );
  expect(git('status', '--porcelain', '--untracked-files=no')).toBe('M content/shop.yaml\nA  staged.txt');
  const check = spawnSync(process.execPath, [resolve('src/cli/check.ts')], { cwd: home, encoding: 'utf8' });
  expect(check.status).toBe(0);
}, 60_000);

test('a shelf in another folder than the one at hand is branched and committed there', () => {
  const file = saved('second-bleed-screw.yaml', noteText(NOTE));
  const { stderr, status } = spawnSync(
    process.execPath,
    [resolve('src/cli/take-in.ts'), file, '--shelf', join(home, 'content')],
    { cwd: tmpdir(), encoding: 'utf8' },
  );
  expect(stderr).toBe('');
  expect(status).toBe(0);
  expect(git('show', '--name-only', '--format=%s', 'HEAD')).toBe(
    `[second-bleed-screw] Second bleed screw behind the head\n\n${PATH}`,
  );
}, 60_000);

test('a download numbered by the browser keeps its name; the same note again is known and changes nothing', () => {
  expect(take(saved('second-bleed-screw (1).yaml', noteText(NOTE))).status).toBe(0);
  expect(existsSync(join(home, PATH))).toBe(true);
  const again = take(saved('second-bleed-screw (2).yaml', noteText(NOTE)));
  expect(again.stdout).toContain(`on the shelf already, word for word: notes/2026/second-bleed-screw.yaml`);
  expect(again.status).toBe(0);
  expect(git('branch', '--list')).not.toContain('screw-2');
}, 60_000);

test('an export of job cards gives its notes', () => {
  const cards: JobCards = {
    form: 'headertank job cards',
    version: 1,
    exported: '2026-11-25T10:00:00.000Z',
    jobs: [],
    notes: [
      { id: 'second-bleed-screw', note: NOTE },
      { id: 'third-screw', note: { ...NOTE, title: 'Third', symptom: 'runs-cold' } },
    ],
  };
  const { stdout, stderr, status } = take(saved('job-cards.json', JSON.stringify(cards)));
  expect(stderr).toBe('');
  expect(status).toBe(0);
  expect(stdout).toContain('content/notes/2026/third-screw.yaml');
  expect(git('branch', '--show-current')).toBe('notes/second-bleed-screw-and-1-more');
}, 60_000);

const text = noteText(NOTE);
test.each<[string, string, string | Uint8Array, RegExp]>([
  ['a name that climbs out', '..yaml', text, /is no name for a note/],
  [
    'a name that is a command',
    '--upload-pack=x.yaml',
    text,
    /is no name for a note|There is no file|ERR|Unknown option/,
  ],
  ['a note that is on the shelf otherwise', 'slow-opening.yaml', text, /Another note has this name/],
  [
    'a field that no note has',
    'new-note.yaml',
    `${text}admin: true\n`,
    /new-note\.yaml:\d+:1 {2}error {2}unknown-field/,
  ],
  [
    'a vehicle that is not there',
    'new-note.yaml',
    text.replace('tarn', 'tarm'),
    /No vehicle has the id "tarm"/,
  ],
  [
    'a note that has accepted itself',
    'new-note.yaml',
    text.replace('proposed', 'accepted'),
    /comes in as proposed/,
  ],
  ['no YAML', 'new-note.yaml', 'title: [', /YAML cannot read it/],
  ['another kind of file', 'new-note.docx', text, /neither a note/],
  ['an export cut short', 'cards.json', '{"form": "headertank job', /cut short/],
  ['an export of something else', 'cards.json', '{"jobs": []}', /no export of job cards/],
])(
  '%s is refused in words, and nothing is written',
  (_what, name, content, why) => {
    const { stderr, status } = take(saved(name, content));
    expect(stderr).toMatch(why);
    expect(stderr).not.toMatch(/\n\s+at /);
    expect(status).toBeGreaterThan(0);
    expect(git('status', '--porcelain', 'content')).toBe('');
    expect(git('branch', '--show-current')).toBe('main');
  },
  60_000,
);

test('one bad note among good ones: none is taken in', () => {
  const good = saved('second-bleed-screw.yaml', text);
  const bad = saved('other.yaml', text.replace('AW', 'anybody'));
  expect(take(good, bad).stderr).toContain('Nothing was taken in: 1 of the notes');
  expect(existsSync(join(home, PATH))).toBe(false);
}, 60_000);

test('a link, a folder, a file that is not there', () => {
  symlinkSync('/etc/hostname', join(downloads, 'linked.yaml'));
  expect(take(join(downloads, 'linked.yaml')).stderr).toContain('is no plain file');
  expect(take(downloads).stderr).toContain('is no plain file');
  expect(take('nowhere.yaml').stderr).toContain('There is no file "nowhere.yaml"');
  expect(take().stderr).toContain('npm run take-in <note.yaml');
}, 60_000);

test('where the second of two notes cannot be written the first is taken back, and the branch is told of', () => {
  // A file in the way of the folder of 2025.
  writeFileSync(join(home, 'content/notes/2025'), '');
  const first = saved('second-bleed-screw.yaml', noteText(NOTE));
  const older = { ...NOTE, title: 'An older note', date: '2025-11-25' };
  const { stderr, status } = take(first, saved('older-note.yaml', noteText(older)));
  expect(stderr).toMatch(/^The notes could not be written, and none was: /);
  expect(stderr).toMatch(/git switch -\n$/);
  expect(status).toBe(2);
  expect(existsSync(join(home, PATH))).toBe(false);
  expect(git('log', '--format=%s')).toBe('The shelf');
}, 60_000);

test('an export of thousands of notes is committed whole, and nothing is left beside them', () => {
  const notes = Array.from({ length: 3_000 }, (_, at) => ({
    id: `screw-with-a-name-long-enough-to-fill-a-command-line-${at}`,
    note: { ...NOTE, title: `Screw with a name long enough to fill a command line ${at}` },
  }));
  const cards: JobCards = {
    form: 'headertank job cards',
    version: 1,
    exported: '2026-11-25T08:00:00.000Z',
    jobs: [],
    notes,
  };
  const { status, stderr } = take(saved('job-cards.json', JSON.stringify(cards)));
  expect(stderr).toBe('');
  expect(status).toBe(0);
  expect(git('show', '--name-only', '--format=%s').split('\n').filter(Boolean)).toHaveLength(3_001);
  expect(git('log', '-1', '--format=%s').length).toBeLessThanOrEqual(120);
  expect(git('status', '--porcelain', '--ignored', '--', 'content')).toBe('');
});

test('a repository that git does not accept is told of, and nothing is written', () => {
  writeFileSync(join(home, '.git/HEAD'), 'ref: ');
  const { status, stderr } = take(saved('second-bleed-screw.yaml', noteText(NOTE)));
  expect(status).not.toBe(0);
  expect(stderr).not.toMatch(/ {4}at /);
  expect(existsSync(join(home, PATH))).toBe(false);
});
