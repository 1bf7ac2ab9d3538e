/** What a hostile file costs: it is refused in a sentence, however large, and a report cannot be turned into commands. */
import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { checkFiles } from '../../src/library/check-files.ts';
import { filesOf } from '../../src/library/read-shelf.ts';
import { reportHost } from '../../src/library/report/host.ts';
import { reportShort, reportText } from '../../src/library/report/text.ts';
import { soundShelf } from './shelves.ts';

const THERMOMETER = 'tools/thermometer.yaml';

function findingsWith(change: (text: string) => string) {
  const files = soundShelf().map((file) =>
    file.path === THERMOMETER
      ? { path: file.path, bytes: new TextEncoder().encode(change(new TextDecoder().decode(file.bytes))) }
      : file,
  );
  return checkFiles('content', files).findings;
}

test.each([
  ['4 MB of opening brackets', () => '['.repeat(4_000_000)],
  ['100,000 unknown fields', (text: string) => `${text}${'unknown-field-x: 1\n'.repeat(100_000)}`],
  ['1 MB of empty lines', (text: string) => text + '\n'.repeat(1_000_000)],
])('%s: one finding, too large', (_name, change) => {
  expect(findingsWith(change).map(({ rule }) => rule)).toEqual(['too-large']);
});

test('of many faults of one kind in one file fifty are shown, and the rest counted', () => {
  const many = Array.from({ length: 1_000 }, (_, at) => `zq${at}x: 1\n`).join('');
  const findings = findingsWith((text) => text + many);
  expect(new Set(findings.map(({ rule }) => rule))).toEqual(new Set(['unknown-field']));
  expect(findings).toHaveLength(51);
  expect(findings.filter(({ found }) => /^\d+ more of "unknown-field"/.test(found))).toHaveLength(1);
});

test('an image is found in a text of half-written ones', () => {
  const flood = '![]'.repeat(40_000);
  const rulesWith = (care: string) =>
    findingsWith((text) => text.replace('Keep it dry.', care)).map(({ rule }) => rule);
  expect(rulesWith(`"${flood}"`)).toEqual([]);
  expect(rulesWith(`"${flood}(b)"`)).toEqual(['image-in-text']);
});

test('links, their circles and what lies behind them are named and never read', () => {
  const folder = mkdtempSync(join(tmpdir(), 'shelf-'));
  try {
    mkdirSync(join(folder, 'tools'));
    mkdirSync(join(folder, '.notes-of-the-editor'));
    writeFileSync(join(folder, '.notes-of-the-editor', 'x.yaml'), 'secret: 1');
    writeFileSync(join(folder, 'tools', 'plain.yaml'), 'title: Plain');
    symlinkSync('..', join(folder, 'tools', 'round'));
    symlinkSync('/etc/hosts', join(folder, 'tools', 'hosts.yaml'));
    symlinkSync('nowhere', join(folder, 'tools', 'dangling.yaml'));
    const files = filesOf(folder).sort((a, b) => (a.path < b.path ? -1 : 1));
    expect(files.map(({ path, unread, bytes }) => [path, unread, bytes.length])).toEqual([
      ['tools/dangling.yaml', 'link', 0],
      ['tools/hosts.yaml', 'link', 0],
      ['tools/plain.yaml', undefined, 12],
      ['tools/round', 'link', 0],
    ]);
  } finally {
    rmSync(folder, { recursive: true });
  }
});

test('a report is one line where it says so, whatever a record holds', () => {
  const hostile = 'zq\n::error file=src/cli/check.ts::forged\u001b[2J\u202e';
  const findings = findingsWith((text) => `${text}${JSON.stringify(hostile)}: 1\n`);
  expect(findings.length).toBeGreaterThan(0);
  for (const report of [reportText(findings), reportShort(findings), reportHost(findings)]) {
    expect(report).not.toMatch(/^::error file=src/m);
    expect(report.replaceAll('\n', '')).not.toMatch(/[\p{Cc}\p{Cf}]/u);
  }
});

test('a tree of three thousand steps in a row is refused in its place, and breaks no rule', () => {
  const row = Array.from({ length: 3_000 }, (_, at) => {
    const next = at === 2_999 ? 'thermostat' : `s${at + 1}`;
    return `  s${at}: { test: hose-watch, on: { warm-early: ${next}, warm-late: sensor } }\n`;
  });
  const files = soundShelf().map((file) =>
    file.path === 'trees/runs-cold.yaml'
      ? {
          path: file.path,
          bytes: new TextEncoder().encode(
            new TextDecoder()
              .decode(file.bytes)
              .replace('start: where', 'start: s0')
              .replace(/^steps:\n(?: .*\n)+/m, `steps:\n${row.join('')}`),
          ),
        }
      : file,
  );
  const { findings } = checkFiles('content', files);
  const ofTree = findings.filter(({ place }) => place.file.endsWith('trees/runs-cold.yaml'));
  expect(ofTree.map(({ found }) => found)).toEqual([expect.stringMatching(/^A tree has 160 steps at most/)]);
  expect(findings.filter(({ rule }) => rule === 'rule-broke')).toEqual([]);
});
