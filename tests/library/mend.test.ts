import { mkdir, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import fc from 'fast-check';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { applyEdits } from '../../src/library/apply-edits.ts';
import { mendFiles } from '../../src/library/mend.ts';
import { readShelf } from '../../src/library/read-shelf.ts';
import { faultyShelf } from './shelves.ts';

describe('edits on a text', () => {
  test('are made by the offsets of the text as it was', () => {
    const edits = [
      { start: 4, end: 7, text: 'opens late' },
      { start: 0, end: 3, text: 'It' },
    ];
    expect(applyEdits('one two three', edits)).toBe('It opens late three');
  });

  test('of two that overlap the later is left for another run', () => {
    const edits = [
      { start: 0, end: 5, text: 'a' },
      { start: 3, end: 8, text: 'b' },
    ];
    expect(applyEdits('0123456789', edits)).toBe('a56789');
  });

  test('none leave it as it is', () => {
    fc.assert(fc.property(fc.string(), (text) => applyEdits(text, []) === text));
  });
});

describe('files on the disk', () => {
  let folder: string;

  async function lay(name: string): Promise<void> {
    for (const { path, bytes } of faultyShelf(name)) {
      await mkdir(dirname(join(folder, path)), { recursive: true });
      await writeFile(join(folder, path), bytes);
    }
  }

  beforeEach(async () => {
    folder = await mkdtemp(join(tmpdir(), 'shelf-'));
  });
  afterEach(() => rm(folder, { recursive: true }));

  test('are mended where one answer is right, and only there', async () => {
    await lay('misspelt-field');
    const before = await readFile(join(folder, 'tests/hose-watch.yaml'), 'utf8');
    expect(await mendFiles((await readShelf(folder)).findings)).toBe(1);
    const after = await readFile(join(folder, 'tests/hose-watch.yaml'), 'utf8');
    expect(after).toBe(before.replace('setles:', 'settles:'));
    expect((await readShelf(folder)).findings).toEqual([]);
  });

  test('lose a byte-order mark and nothing else', async () => {
    await lay('byte-order-mark');
    const before = await readFile(join(folder, 'tools/thermometer.yaml'));
    await mendFiles((await readShelf(folder)).findings);
    expect(await readFile(join(folder, 'tools/thermometer.yaml'))).toEqual(before.subarray(3));
  });

  test('stay as they are where the author has to choose', async () => {
    await lay('leading-zero');
    const before = await readFile(join(folder, 'symptoms/runs-cold.yaml'));
    expect(await mendFiles((await readShelf(folder)).findings)).toBe(0);
    expect(await readFile(join(folder, 'symptoms/runs-cold.yaml'))).toEqual(before);
  });
});
