/** The command itself, as a person runs it. */
import { spawnSync } from 'node:child_process';
import { cpSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test, vi } from 'vitest';

vi.setConfig({ testTimeout: 60_000 });

const scratch = mkdtempSync(join(tmpdir(), 'shelf-'));
afterAll(() => rmSync(scratch, { recursive: true }));

function check(args: string[], env: Record<string, string> = {}) {
  const { stdout, stderr, status } = spawnSync(process.execPath, ['src/cli/check.ts', ...args], {
    encoding: 'utf8',
    env: { ...process.env, GITHUB_ACTIONS: '', ...env },
  });
  return { stdout, stderr, status };
}

/** The sound shelf with one faulty record laid over it. */
function faulty(name: string): string {
  const folder = join(scratch, name);
  cpSync('tests/library/sound', folder, { recursive: true });
  cpSync(join('tests/library/faulty', name), folder, {
    recursive: true,
    filter: (path) => !path.endsWith('.txt'),
  });
  return folder;
}

test('a sound shelf gives one line and no error', () => {
  const { stdout, status } = check(['tests/library/sound']);
  expect(stdout).toMatch(/^15 records checked, nothing to mend\. \d+\.\d s\n$/);
  expect(status).toBe(0);
});

test('a faulty one gives its finding, the counts and an error', () => {
  const { stdout, status } = check([faulty('bad-date')]);
  expect(stdout).toContain('tools/thermometer.yaml:8:11  error  bad-date');
  expect(stdout).toMatch(/\n1 error in 1 of 15 records\. \d+\.\d s\n$/);
  expect(status).toBe(1);
});

test('a warning is no error', () => {
  const { stdout, status } = check([faulty('unused-record')]);
  expect(stdout).toContain('1 warning in 1 of 16 records');
  expect(status).toBe(0);
});

test('what can be mended is mended, and the shelf checked again', () => {
  const folder = faulty('unknown-reference');
  const { stdout, status } = check([folder, '--mend']);
  expect(stdout).toMatch(/^1 mended; /);
  expect(stdout).toContain('15 records checked, nothing to mend.');
  expect(status).toBe(0);
});

test('what is meant for tools is JSON and nothing else, mended or not', () => {
  for (const form of ['--json', '--quality']) {
    const { stdout } = check([faulty('misspelt-field'), '--mend', form]);
    expect(() => JSON.parse(stdout), `${form}: ${stdout}`).not.toThrow();
  }
});

test('on the host the annotations come as well', () => {
  const { stdout } = check([faulty('wrong-word')], { GITHUB_ACTIONS: 'true' });
  expect(stdout).toMatch(/^::error file=.*hose-watch\.yaml,line=5,col=9,title=wrong-word::/m);
  expect(stdout).toContain('  error  wrong-word\n');
});

test('for tools the findings come as data', () => {
  const { stdout, status } = check([faulty('wrong-unit'), '--json']);
  const { records, findings } = JSON.parse(stdout) as { records: number; findings: { rule: string }[] };
  expect(records).toBe(15);
  expect(findings.map((finding) => finding.rule)).toEqual(['wrong-unit']);
  expect(status).toBe(1);
});

test('a folder that is not there, or an option that is not known, is said in a sentence', () => {
  expect(check(['no-such-folder'])).toMatchObject({
    stderr: 'There is no folder "no-such-folder". Give the folder of a shelf, such as content.\n',
    status: 2,
  });
  expect(check(['--fast'])).toMatchObject({
    stderr: "Unknown option '--fast'.\nnpm run check -- [folder] [--short] [--mend] [--json] [--quality]\n",
    status: 2,
  });
});
