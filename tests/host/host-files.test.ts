/** The files that the repository's hosts read: they can be read, and what they call is there. */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { checkFiles } from '../../src/library/check-files.ts';
import { reportQuality } from '../../src/library/report/quality.ts';
import { faultyShelf } from '../library/shelves.ts';

const read = (path: string) => readFileSync(path, 'utf8');

/** Every command line of a file of steps. */
function commandsIn(value: unknown): string[] {
  if (Array.isArray(value))
    return value.flatMap((each) => (typeof each === 'string' ? [each] : commandsIn(each)));
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) =>
    key === 'run' ? [String(inner)] : commandsIn(inner),
  );
}

test.each(['.github/workflows/check.yml', '.gitlab-ci.yml'])(
  '%s calls only commands that are there',
  (path) => {
    const lines = commandsIn(parse(read(path))).flatMap((each) => each.split('\n'));
    const scripts = Object.keys(JSON.parse(read('package.json')).scripts);
    const called = lines.flatMap((line) => /npm run ([\w-]+)/.exec(line)?.[1] ?? []);
    const files = lines.flatMap((line) => /(?:node |^)(src\/\S+\.ts|\.ci\/run)/.exec(line.trim())?.[1] ?? []);
    expect(called.length + files.length).toBeGreaterThan(3);
    for (const name of called) expect(scripts).toContain(name);
    for (const file of files) expect(existsSync(file), file).toBe(true);
  },
);

test('the workflow can only read, whoever proposes the change', () => {
  const { on, permissions } = parse(read('.github/workflows/check.yml'));
  expect(permissions).toEqual({ contents: 'read' });
  expect(Object.keys(on)).not.toContain('pull_request_target');
  expect(read('.github/workflows/check.yml')).not.toMatch(/\$\{\{[^}]*(?:title|body|head_ref|secrets)/);
});

test('what others wrote and the workflow runs is pinned to the very commit', () => {
  const uses = [...read('.github/workflows/check.yml').matchAll(/uses: (\S+)/g)].map(
    ([, action = '']) => action,
  );
  expect(uses.length).toBeGreaterThan(3);
  for (const action of uses) expect(action).toMatch(/@[0-9a-f]{40}$/);
});

test('the hosts’ copies are alike', () => {
  expect(read('.gitlab/CODEOWNERS')).toBe(read('.github/CODEOWNERS'));
  expect(read('.gitlab/merge_request_templates/Default.md')).toBe(read('.github/pull_request_template.md'));
});

test('every path that somebody is asked about is there', () => {
  const paths = [...read('.github/CODEOWNERS').matchAll(/^\/(\S+)/gm)].map(([, path = '']) => path);
  expect(paths.length).toBeGreaterThan(5);
  for (const path of paths) expect(existsSync(path), path).toBe(true);
});

describe('issue forms', () => {
  test.each(readdirSync('.github/ISSUE_TEMPLATE').filter((name) => name !== 'config.yml'))('%s', (name) => {
    const form = parse(read(`.github/ISSUE_TEMPLATE/${name}`));
    expect(form.name).toMatch(/\w/);
    expect(form.description).toMatch(/\w/);
    for (const { type, id, attributes } of form.body) {
      expect(['input', 'textarea', 'dropdown']).toContain(type);
      expect(id).toMatch(/^[a-z]+$/);
      expect(attributes.label).toMatch(/\w/);
    }
  });
});

test('findings as a code quality report: one issue each, on its line, with a name that stays', () => {
  const { findings } = checkFiles('content', faultyShelf('unknown-reference'));
  const issues = JSON.parse(reportQuality(findings));
  expect(issues).toHaveLength(findings.length);
  expect(issues[0]).toMatchObject({
    check_name: 'unknown-reference',
    severity: 'major',
    location: { path: 'content/tests/hose-watch.yaml', lines: { begin: findings[0]?.place.line } },
  });
  expect(issues[0].description).toContain('To mend:');
  const moved = findings.map((finding) => ({
    ...finding,
    place: { ...finding.place, line: finding.place.line + 7 },
  }));
  expect(JSON.parse(reportQuality(moved))[0].fingerprint).toBe(issues[0].fingerprint);
});
