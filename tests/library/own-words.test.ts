/** However a record is broken, the author reads our words: never zod's, never a pattern, never a stack. */
import fc from 'fast-check';
import { describe, expect, test, vi } from 'vitest';
import { parse, stringify } from 'yaml';
import { checkFiles } from '../../src/library/check-files.ts';
import { reportText } from '../../src/library/report/text.ts';
import type { RawFile } from '../../src/library/source-file.ts';
import { soundShelf } from './shelves.ts';

// Each run checks a whole shelf.
vi.setConfig({ testTimeout: 60_000 });

const FOREIGN =
  /Invalid |Unrecognized|Too (?:small|big)|expected (?:string|number|array)|received|\/\^|\bat .*\.ts:\d|undefined|NaN|\[object/;

const sound = soundShelf();
const records = sound.filter((file) => file.path.endsWith('.yaml'));

const odd = fc.oneof(
  fc.constantFrom(null, '', ' ', 0, -1, 1e9, true, [], {}, [[]], 'x: y', '<b>', '{', '2026-13-40', '1,5 bar'),
  fc.string(),
  fc.double(),
  fc.array(fc.string(), { maxLength: 2 }),
  fc.dictionary(fc.string(), fc.string(), { maxKeys: 2 }),
);

/** One value somewhere in plain data, replaced, renamed or taken out. */
function mutate(
  data: unknown,
  way: readonly number[],
  change: 'replace' | 'rename' | 'remove',
  value: unknown,
): unknown {
  const [step, ...rest] = way;
  if (typeof data !== 'object' || data === null || step === undefined) return value;
  const names = Object.keys(data);
  const name = names[step % Math.max(names.length, 1)];
  if (name === undefined) return value;
  const copy = (Array.isArray(data) ? [...data] : { ...data }) as Record<string, unknown>;
  const inner = copy[name];
  if (rest.length > 0 && typeof inner === 'object' && inner !== null) {
    copy[name] = mutate(inner, rest, change, value);
    return copy;
  }
  if (change === 'replace' || Array.isArray(copy)) copy[name] = value;
  else {
    delete copy[name];
    if (change === 'rename') copy[`${name}x`] = inner;
  }
  return copy;
}

function withFile(changed: RawFile): RawFile[] {
  return [...sound.filter((file) => file.path !== changed.path), changed];
}

function expectOwnWords(files: RawFile[]): void {
  const { findings } = checkFiles('content', files);
  expect(findings.filter(({ rule }) => rule === 'rule-broke')).toEqual([]);
  for (const { found, expected = '', byHand = '', place } of findings) {
    // What the author wrote is quoted, and may be anything.
    const words = `${found} ${expected} ${byHand}`.replace(/"(?:[^"\\]|\\.)*"/g, '');
    expect(words).not.toMatch(FOREIGN);
    expect(place.line).toBeGreaterThan(0);
    expect(place.column).toBeGreaterThan(0);
  }
  expect(typeof reportText(findings)).toBe('string');
}

describe('a value changed anywhere in a record', () => {
  test.each(records.map((file) => file.path))('%s', (path) => {
    const file = records.find((each) => each.path === path);
    const data: unknown = parse(new TextDecoder().decode(file?.bytes));
    fc.assert(
      fc.property(
        fc.array(fc.nat(20), { minLength: 1, maxLength: 5 }),
        fc.constantFrom('replace' as const, 'rename' as const, 'remove' as const),
        odd,
        (way, change, value) => {
          const text = stringify(mutate(data, way, change, value));
          expectOwnWords(withFile({ path, bytes: new TextEncoder().encode(text) }));
        },
      ),
      { numRuns: 25 },
    );
  });
});

test('any text at all', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'binary', maxLength: 200 }), (text) => {
      expectOwnWords(withFile({ path: 'tools/thermometer.yaml', bytes: new TextEncoder().encode(text) }));
    }),
    { numRuns: 80 },
  );
});

test('any bytes at all', () => {
  fc.assert(
    fc.property(fc.uint8Array({ maxLength: 100 }), (bytes) => {
      expectOwnWords(withFile({ path: 'tools/thermometer.yaml', bytes }));
    }),
    { numRuns: 50 },
  );
});

test('characters that YAML is built of', () => {
  fc.assert(
    fc.property(fc.stringMatching(/^[a-c:{}[\]"'#&*!|>%@`,?\- \n\t]{1,60}$/), (text) => {
      expectOwnWords(withFile({ path: 'tools/thermometer.yaml', bytes: new TextEncoder().encode(text) }));
    }),
    { numRuns: 150 },
  );
});
