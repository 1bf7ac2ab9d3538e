/** What the device keeps survives full and blocked storage, a second window, and the move into the database. */
import 'fake-indexeddb/auto';
import { IDBFactory, IDBObjectStore } from 'fake-indexeddb';
import { afterAll, afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import type { StoredItem } from '../../../src/site/browser/device-store.ts';
import { newId } from '../../../src/site/browser/ids.ts';
import { Device } from '../../fuzz/device.ts';

interface Thing extends StoredItem {
  text: string;
}
const isThing = (value: unknown): value is Thing =>
  typeof value === 'object' && value !== null && 'text' in value && typeof value.text === 'string';

const start: Thing = { id: 'a', changed: '2026-11-25T08:00:00.000Z', text: '' };
const thing = (id: string, text = '', changed = start.changed): Thing => ({ id, changed, text });

/** A window that has just come to a page: it knows nothing yet. */
async function openWindow() {
  vi.resetModules();
  const { DeviceStore } = await import('../../../src/site/browser/device-store.ts');
  const { keeper, keepsAnything } = await import('../../../src/site/browser/open-keeper.ts');
  const things = new DeviceStore<Thing>('note.', isThing);
  await things.ready();
  return { things, keeper, keepsAnything };
}

/** A small storage that lets itself be listed, as a browser's does. */
function smallStorage(held: Record<string, string>): Storage {
  return new Device(held) as unknown as Storage;
}

// What is stubbed goes away with each test; to the files after this one the database does not exist.
Reflect.deleteProperty(globalThis, 'indexedDB');

beforeEach(() => {
  vi.stubGlobal('indexedDB', new IDBFactory());
  vi.stubGlobal('localStorage', smallStorage({}));
});
afterEach(() => {
  vi.unstubAllGlobals();
  vi.restoreAllMocks();
});
// The files after this one share its modules: none may find a keeper that was opened here.
afterAll(() => void vi.resetModules());

describe('in the database', () => {
  test('two windows write at once, each a hundred times, and nothing of either is lost', async () => {
    const [one, two] = [await openWindow(), await openWindow()];
    const write = ({ things }: typeof one, letter: string) =>
      Promise.all(
        Array.from({ length: 100 }, () =>
          things.change('a', start, (now) => ({ ...now, text: now.text + letter })),
        ),
      );
    await Promise.all([write(one, '1'), write(two, '2')]);
    const { things } = await openWindow();
    const text = things.get('a')?.text ?? '';
    expect([text.split('1').length - 1, text.split('2').length - 1]).toEqual([100, 100]);
    // The moment it was kept, by which lists are ordered.
    expect(Date.parse(things.get('a')?.changed ?? '')).toBeGreaterThan(Date.parse(start.changed));
  });

  test('what hangs on a thing is kept with it, and taken away with it, or not at all', async () => {
    const { things, keeper } = await openWindow();
    const place = await keeper();
    await things.change('a', start, (now) => now, new Map([['picture.p', { blob: 'x' }]]));
    expect(await place.get('picture.p')).toEqual({ blob: 'x' });
    await things.remove('a', ['picture.p']);
    expect(await place.get('picture.p')).toBeUndefined();
    expect((await openWindow()).things.list()).toEqual([]);
  });

  test('a change that fails half-way keeps the last whole state', async () => {
    const { things, keeper } = await openWindow();
    await things.change('a', start, (now) => ({ ...now, text: 'whole' }));
    const put = IDBObjectStore.prototype.put;
    vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(function (
      this: InstanceType<typeof IDBObjectStore>,
      value,
      key,
    ) {
      if (String(key).startsWith('picture.')) throw new DOMException('full', 'QuotaExceededError');
      return put.call(this, value, key);
    });
    const stays = await things.change(
      'a',
      start,
      (now) => ({ ...now, text: 'more' }),
      new Map([['picture.p', {}]]),
    );
    expect(stays).toBe(false);
    expect(await (await keeper()).get('note.a')).toMatchObject({ text: 'whole' });
    // This window has it still, says so, and keeps it once there is room.
    expect([things.hasUnkept, things.get('a')?.text]).toEqual([true, 'more']);
    vi.restoreAllMocks();
    expect(await things.change('a', start, (now) => ({ ...now, text: `${now.text}!` }))).toBe(true);
    expect([things.hasUnkept, (await openWindow()).things.get('a')?.text]).toEqual([false, 'more!']);
  });

  test('what was changed last stands first, and of one moment the order is always the same', async () => {
    const { keeper } = await openWindow();
    const place = await keeper();
    for (const each of [
      thing('b', '', '2026-11-24T08:00:00.000Z'),
      thing('c'),
      thing('a', '', '2026-11-24T08:00:00.000Z'),
      thing('d', '', '2026-11-23T08:00:00.000Z'),
    ])
      await place.change(`note.${each.id}`, () => each);
    expect((await openWindow()).things.list().map(({ id }) => id)).toEqual(['c', 'a', 'b', 'd']);
  });

  test('a thing that cannot be read is left for a rescue', async () => {
    const { keeper } = await openWindow();
    await (await keeper()).change('note.b', () => ({ half: 1 }));
    const { things } = await openWindow();
    expect([things.list(), things.unreadable()]).toEqual([[], [{ id: 'b', text: '{"half":1}' }]]);
  });
});

describe('carried over from the small storage', () => {
  const before = {
    'headertank.note.a': JSON.stringify(thing('a', 'one')),
    'headertank.note.b': '{"cut o',
    'headertank.vehicle': '"tarn"',
  };

  test('once, whole, damaged ones too; small choices stay where they are', async () => {
    vi.stubGlobal('localStorage', smallStorage(before));
    const { things } = await openWindow();
    expect(things.list()).toEqual([thing('a', 'one')]);
    expect(things.unreadable()).toEqual([{ id: 'b', text: '{"cut o' }]);
    expect(Object.keys(localStorage)).toEqual(['headertank.vehicle']);
  });

  test('stopped before it is in the database, all of it lies where it lay', async () => {
    vi.stubGlobal('localStorage', smallStorage(before));
    vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(() => {
      throw new DOMException('full', 'QuotaExceededError');
    });
    await openWindow();
    expect(Object.keys(localStorage)).toHaveLength(3);
    vi.restoreAllMocks();
    expect((await openWindow()).things.list()).toEqual([thing('a', 'one')]);
  });

  test('stopped before the old place is emptied, nothing is there twice and nothing newer is written over', async () => {
    vi.stubGlobal('localStorage', smallStorage(before));
    const { things } = await openWindow();
    // The very same lies in the old place again: as if the browser had been killed between the two.
    localStorage.setItem('headertank.note.a', before['headertank.note.a']);
    expect((await openWindow()).things.list()).toHaveLength(1);
    await things.change('a', start, (now) => ({ ...now, text: 'newer' }));
    localStorage.setItem('headertank.note.a', before['headertank.note.a']);
    const both = (await openWindow()).things.list();
    expect(both.map(({ text }) => text)).toEqual(['newer', 'one']);
    expect(new Set(both.map(({ id }) => id)).size).toBe(2);
  });
});

describe('without a database', () => {
  beforeEach(() => vi.stubGlobal('indexedDB', undefined));

  test('the small storage keeps it, and two windows write in turn', async () => {
    const [one, two] = [await openWindow(), await openWindow()];
    expect((await one.keeper()).kind).toBe('small storage');
    await one.things.change('a', start, (now) => ({ ...now, text: `${now.text}1` }));
    await two.things.change('a', start, (now) => ({ ...now, text: `${now.text}2` }));
    expect((await openWindow()).things.get('a')?.text).toBe('12');
  });

  test('a blocked device keeps nothing and breaks nothing', async () => {
    const blocked = () => {
      throw new DOMException('blocked', 'SecurityError');
    };
    vi.stubGlobal('localStorage', { getItem: blocked, setItem: blocked, removeItem: blocked });
    const { things, keepsAnything } = await openWindow();
    expect(await keepsAnything()).toBe(false);
    expect(await things.change('a', start, (now) => ({ ...now, text: 'still here' }))).toBe(false);
    expect(things.list()[0]?.text).toBe('still here');
    await things.remove('a');
    expect(things.list()).toEqual([]);
  });
});

test('words another window wrote in the same field are handed back, not lost', async () => {
  const { merged } = await import('../../../src/site/browser/device-store.ts');
  expect(merged('a', 'a', 'ab')).toEqual({ text: 'ab' });
  expect(merged('a', 'aXX', 'ab')).toEqual({ text: 'ab', other: 'aXX' });
  expect(merged('a', 'ab', 'ab')).toEqual({ text: 'ab' });
});

test('names do not meet', () => {
  expect(new Set(Array.from({ length: 5000 }, () => newId('job'))).size).toBe(5000);
});

describe('a site in a folder of its host', () => {
  const inFolder = (path: string) =>
    vi.stubGlobal('window', { addEventListener() {}, headertank: { root: new URL(`http://host${path}`) } });
  const there = async () => (await openWindow()).things.list().map(({ text }) => text);

  test('keeps its own, and reads nothing of its neighbour', async () => {
    for (const path of ['/a/', '/b/', '/']) {
      inFolder(path);
      const { things } = await openWindow();
      expect(things.list()).toEqual([]);
      await things.change('a', start, (now) => ({ ...now, text: path }));
    }
    for (const path of ['/a/', '/b/', '/']) {
      inFolder(path);
      expect(await there()).toEqual([path]);
    }
  });

  test('takes what all sites of the host shared before, and no second site takes it', async () => {
    vi.stubGlobal('localStorage', smallStorage({ 'headertank.note.c': JSON.stringify(thing('c', 'older')) }));
    // As a site wrote it that had no name of its own.
    const { keeper } = await openWindow();
    await (await keeper()).change('note.a', () => thing('a', 'shared'));
    await (await keeper()).change('site' as 'probe', () => undefined);
    inFolder('/a/');
    expect((await there()).sort()).toEqual(['older', 'shared']);
    inFolder('/b/');
    expect(await there()).toEqual([]);
    vi.stubGlobal('window', undefined);
    expect(await there()).toEqual([]);
  });

  test('leaves alone what is the site’s at the top of the host', async () => {
    const { things } = await openWindow();
    await things.change('a', start, (now) => ({ ...now, text: 'top' }));
    inFolder('/a/');
    expect(await there()).toEqual([]);
    vi.stubGlobal('window', undefined);
    expect(await there()).toEqual(['top']);
  });
});

describe('forgotten in one act', () => {
  async function parts() {
    const opened = await openWindow();
    const { forgetAll, keptHere } = await import('../../../src/site/browser/forget-all.ts');
    return { ...opened, forgetAll, keptHere };
  }

  test('cards, pictures, notes, what cannot be read, walks and choices; another site’s stay', async () => {
    vi.stubGlobal(
      'localStorage',
      smallStorage({
        'headertank.walk.x': '[]',
        'headertank.own.a': '{}',
        'headertank.units': '"US"',
        'headertank/a/.units': '"US"',
      }),
    );
    const { things, keeper, forgetAll, keptHere } = await parts();
    await things.change('a', start, (now) => ({ ...now, text: 'plate' }));
    await (await keeper()).change('note.b', () => '{"half');
    await (await keeper()).change('picture.p', () => 'x');
    expect(await keptHere()).toEqual({
      counts: { 'job.': 0, 'note.': 2, 'picture.': 1, 'vehicle-draft.': 0 },
      own: 1,
      small: 2,
    });
    const other = await openWindow();
    expect(other.things.list()).toHaveLength(1);
    vi.stubGlobal('sessionStorage', smallStorage({ 'headertank.searched': '{"text":"cold","at":1}' }));
    await forgetAll();
    expect(Object.keys(sessionStorage)).toEqual([]);
    expect(Object.values((await keptHere()).counts)).toEqual([0, 0, 0, 0]);
    expect(Object.keys(localStorage)).toEqual(['headertank/a/.units']);
    // The other window hears of it.
    await vi.waitFor(() => expect(other.things.list()).toEqual([]));
  });

  test('what cannot be read is removed, and comes back', async () => {
    const { keeper } = await openWindow();
    await (await keeper()).change('note.b', () => '{"half');
    const { things } = await openWindow();
    const back = await things.removeUnreadable('b');
    expect([things.unreadable(), await (await keeper()).get('note.b')]).toEqual([[], undefined]);
    await back();
    expect(things.unreadable()).toEqual([{ id: 'b', text: '{"half' }]);
    expect(await (await keeper()).get('note.b')).toBe('{"half');
  });
});
