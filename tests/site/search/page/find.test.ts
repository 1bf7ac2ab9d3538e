import { describe, expect, test } from 'vitest';
import { find, type Index, type WordHit } from '../../../../src/site/search/page/find.ts';

/** A shelf of four pages: id -> field -> words. */
const PAGES: Record<string, { kind: string; fields: Record<string, string> }> = {
  'no-heat': {
    kind: 'symptom',
    fields: { title: 'no cabin heat', said: 'heater blows cold', slips: 'heeter' },
  },
  'heater-core': { kind: 'cause', fields: { title: 'heater core blocked', body: 'cold air' } },
  fan: { kind: 'cause', fields: { title: 'fan relay', body: 'blows a fuse' } },
  p0128: { kind: 'trouble code', fields: { title: 'p0128', body: 'cold coolant by-pass' } },
};

function lookUp(matches: (word: string) => boolean): WordHit[] {
  return Object.entries(PAGES).flatMap(([id, { fields }]) => {
    const matched = Object.entries(fields).filter(([, text]) => text.split(/[ -]/).some(matches));
    if (matched.length === 0) return [];
    const names = matched.map(([field]) => field).filter((field) => field !== 'body');
    return [
      { id, score: 1 + 4 * names.length, fields: names, locations: names.length < matched.length ? [0] : [] },
    ];
  });
}

const index: Index = {
  size: 4,
  kindOf: (id) => PAGES[id]?.kind ?? 'page',
  exactly: async (word) => lookUp((own) => own === word),
  beginning: async (word) => lookUp((own) => own.startsWith(word)),
  names: ['heater', 'heat', 'blows', 'cold', 'relay', 'p0128', 'cabin', 'core'],
};

const idsOf = async (query: string) => (await find(query, index)).hits.map(({ id }) => id);

describe('a customer’s sentence', () => {
  test('finds the page that answers most of it, though no page has every word', async () => {
    expect((await idsOf('my heater blows cold air now'))[0]).toBe('no-heat');
  });
  test('names the words nobody knows', async () => {
    const { unknown, words } = await find('heater zzzzzz', index);
    expect(unknown).toEqual(['zzzzzz']);
    expect(words).toEqual(['heater']);
  });
  test('pages that answer little of it are left out', async () => {
    expect(await idsOf('heater blows cold')).not.toContain('fan');
  });
});

describe('one word', () => {
  test('its beginning is enough', async () => {
    expect(await idsOf('rel')).toEqual(['fan']);
  });
  test('a misspelt one is mended, and said', async () => {
    const { hits, mended } = await find('heatr', index);
    expect(mended).toEqual([{ from: 'heatr', to: 'heater' }]);
    expect(hits.map(({ id }) => id)).toEqual(['no-heat', 'heater-core']);
  });
  test('a listed slip leads to its page, and the right word to the others', async () => {
    const { hits, mended } = await find('heeter', index);
    expect(mended).toEqual([{ from: 'heeter', to: 'heater' }]);
    expect(hits.map(({ id }) => id)).toEqual(['no-heat', 'heater-core']);
  });
  test('one with a hyphen is looked for in its parts when it is not known whole', async () => {
    expect(await idsOf('by-pass')).toEqual(['p0128']);
  });
  test('nothing gives nothing', async () => {
    expect(await find('', index)).toEqual({ hits: [], words: [], mended: [], unknown: [] });
  });
});

test('equal scores are ordered by the page, the same everywhere', async () => {
  const first = await idsOf('cold');
  expect(await idsOf('cold')).toEqual(first);
  expect(first.slice(1)).toEqual([...first.slice(1)].sort());
});
