/** What the device keeps survives full and blocked storage and a second window. */
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import {
  DeviceStore,
  type Kept,
  keepsAnything,
  merged,
  newId,
} from '../../../src/site/browser/device-store.ts';

interface Thing extends Kept {
  text: string;
}
const isThing = (value: unknown): value is Thing =>
  typeof value === 'object' && value !== null && 'text' in value && typeof value.text === 'string';

/** A device with room for so many characters; Infinity for a large one, -1 for one that is blocked. */
function device(room: number): Storage {
  const held = new Map<string, string>();
  const blocked = () => {
    if (room < 0) throw new DOMException('blocked', 'SecurityError');
  };
  const storage = {
    getItem(name: string) {
      blocked();
      return held.get(name) ?? null;
    },
    setItem(name: string, value: string) {
      blocked();
      const used = [...held].reduce((sum, [key, each]) => sum + (key === name ? 0 : each.length), 0);
      if (used + value.length > room) throw new DOMException('full', 'QuotaExceededError');
      held.set(name, value);
      Object.assign(storage, { [name]: value });
    },
    removeItem(name: string) {
      blocked();
      held.delete(name);
      delete (storage as Record<string, unknown>)[name];
    },
  };
  return storage as unknown as Storage;
}

beforeEach(() => vi.stubGlobal('localStorage', device(Number.POSITIVE_INFINITY)));
afterEach(() => vi.unstubAllGlobals());

const start: Thing = { id: 'a', changed: '2026-11-25T08:00:00.000Z', text: '' };
const store = () => new DeviceStore<Thing>('note.', isThing);

test('two windows change one thing in turn, and both changes stay', () => {
  const [one, two] = [store(), store()];
  one.change('a', start, (now) => ({ ...now, text: `${now.text}1` }));
  two.change('a', start, (now) => ({ ...now, text: `${now.text}2` }));
  one.change('a', start, (now) => ({ ...now, text: `${now.text}3` }));
  expect(store().get('a')?.text).toBe('123');
  // The moment it was kept, by which lists are ordered.
  expect(Date.parse(store().get('a')?.changed ?? '')).toBeGreaterThan(Date.parse(start.changed));
});

test('what was changed last stands first, and of one moment the order is always the same', () => {
  const put = (id: string, changed: string) =>
    localStorage.setItem(`headertank.note.${id}`, JSON.stringify({ id, changed, text: '' }));
  put('b', '2026-11-24T08:00:00.000Z');
  put('c', '2026-11-25T08:00:00.000Z');
  put('a', '2026-11-24T08:00:00.000Z');
  put('d', '2026-11-23T08:00:00.000Z');
  expect(
    store()
      .list()
      .map(({ id }) => id),
  ).toEqual(['c', 'a', 'b', 'd']);
});

test('a full device: what was typed stays in this window, and goes to the device once there is room', () => {
  vi.stubGlobal('localStorage', device(60));
  const things = store();
  expect(things.change('a', start, (now) => ({ ...now, text: 'x'.repeat(100) }))).toBe(false);
  expect(things.hasUnkept).toBe(true);
  expect(things.get('a')?.text).toHaveLength(100);
  expect(things.list()).toHaveLength(1);
  vi.stubGlobal('localStorage', device(1000));
  expect(things.change('a', start, (now) => ({ ...now, text: `${now.text}y` }))).toBe(true);
  expect(things.hasUnkept).toBe(false);
  expect(store().get('a')?.text).toHaveLength(101);
});

test('a blocked device keeps nothing and breaks nothing', () => {
  vi.stubGlobal('localStorage', device(-1));
  expect(keepsAnything()).toBe(false);
  const things = store();
  expect(things.change('a', start, (now) => ({ ...now, text: 'still here' }))).toBe(false);
  expect(things.list()[0]?.text).toBe('still here');
  things.remove('a');
  expect(things.list()).toEqual([]);
});

test('a thing that cannot be read is left for a rescue', () => {
  localStorage.setItem('headertank.note.b', '{"half": 1}');
  expect(store().list()).toEqual([]);
  expect(store().unreadable()).toEqual([{ id: 'b', text: '{"half": 1}' }]);
  localStorage.setItem('headertank.note.b', '{"cut o');
  expect(store().unreadable()).toEqual([{ id: 'b', text: '{"cut o' }]);
});

test('words another window wrote in the same field are handed back, not lost', () => {
  expect(merged('a', 'a', 'ab')).toEqual({ text: 'ab' });
  expect(merged('a', 'aXX', 'ab')).toEqual({ text: 'ab', other: 'aXX' });
  expect(merged('a', 'ab', 'ab')).toEqual({ text: 'ab' });
});

test('names do not meet', () => {
  expect(new Set(Array.from({ length: 5000 }, () => newId('job'))).size).toBe(5000);
});
