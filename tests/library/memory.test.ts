import { expect, test, vi } from 'vitest';
import { checkFiles } from '../../src/library/check-files.ts';
import type { Memory } from '../../src/library/memory.ts';
import { reportText } from '../../src/library/report/text.ts';
import { faultyNames, faultyShelf, soundShelf } from './shelves.ts';

vi.setConfig({ testTimeout: 60_000 });

function memoryOf(kept: Map<string, string>): Memory & { asked: number; known: number } {
  return {
    asked: 0,
    known: 0,
    recall(content) {
      this.asked += 1;
      const text = kept.get(content);
      if (text === undefined) return undefined;
      this.known += 1;
      return JSON.parse(text) as unknown;
    },
    remember: (content, value) => void kept.set(content, JSON.stringify(value)),
  };
}

test('a second check of the same shelf is answered from memory', () => {
  const kept = new Map<string, string>();
  checkFiles('content', soundShelf(), { memory: memoryOf(kept) });
  const second = memoryOf(kept);
  expect(checkFiles('content', soundShelf(), { memory: second }).findings).toEqual([]);
  expect(second.known).toBe(second.asked);
  expect(second.asked).toBeGreaterThan(14);
});

test('no finding is lost by remembering', () => {
  const kept = new Map<string, string>();
  for (const name of faultyNames()) {
    const fresh = reportText(checkFiles('content', faultyShelf(name)).findings);
    for (const _ of [1, 2])
      expect(reportText(checkFiles('content', faultyShelf(name), { memory: memoryOf(kept) }).findings)).toBe(
        fresh,
      );
  }
});
