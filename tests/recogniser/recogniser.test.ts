/** The recogniser on a small shelf of its own, where what it should say can be seen by eye. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { byStem } from '../../src/recogniser/known-words.ts';
import { guessesOf, learn } from '../../src/recogniser/learn.ts';
import { pack, unpack } from '../../src/recogniser/packed.ts';
import type { SymptomTexts } from '../../src/recogniser/phrasings.ts';
import { leaveEachOut, rateOf, takenForEachOther, weakest } from '../../src/recogniser/proof.ts';
import { type Knowledge, Recogniser } from '../../src/recogniser/recogniser.ts';
import { signsOf } from '../../src/recogniser/signs.ts';
import { Thesaurus } from '../../src/recogniser/thesaurus.ts';
import { clausesOf } from '../../src/recogniser/words.ts';

const GROUPS = {
  gauge: ['gauge', 'needle', 'dial'],
  'fast-road': ['motorway', 'highway', 'open road'],
  standing: ['at the lights', 'idle'],
  lamp: ['light', 'lights'],
  fall: ['drop', 'sink', 'fall'],
  rise: ['climb', 'rise', 'goes up'],
};

const NOTHING = { weight: 1, heard: [], trade: [], slips: [], codes: [] };
const TOLD: SymptomTexts[] = [
  {
    ...NOTHING,
    id: 'low-at-cruise',
    title: 'Reads low at cruise',
    said: [
      'The needle drops on the motorway',
      'The gauge sinks on the open road',
      'It falls when I drive fast',
    ],
    codes: ['p0128'],
  },
  {
    ...NOTHING,
    id: 'hot-in-traffic',
    title: 'Hot in traffic',
    said: ['The needle climbs at the lights', 'The gauge goes up at idle', 'It rises while I stand'],
  },
  {
    ...NOTHING,
    id: 'no-heat',
    title: 'No heat',
    said: ['The heater does not get warm', 'Never any warm air', 'Cold air from the heater'],
  },
  {
    ...NOTHING,
    id: 'too-warm',
    title: 'Too warm inside',
    said: ['The heater is always warm', 'Warm air all the time', 'Hot air from the heater'],
  },
];
const ELSEWHERE = ['brakes squeal', 'the clutch slips', 'tyre is flat', 'radio has no sound'];

const learnt = learn(TOLD, { groups: GROUPS, elsewhere: ELSEWHERE });
const knowledge: Knowledge = {
  ...learnt,
  guesses: guessesOf(learnt),
  others: byStem(['bonnet', 'reset']),
  codes: new Set(['p0128']),
};
const recogniser = new Recogniser(knowledge);
const first = (text: string): string | undefined => recogniser.recognise(text).complaints[0]?.id;

describe('signs', () => {
  const thesaurus = new Thesaurus(GROUPS);
  const ids = (text: string): string[] => signsOf(clausesOf(text), thesaurus).map(({ id }) => id);

  test('a phrase stands before the words it is made of', () => {
    expect(ids('hot at the lights')).toContain('@standing');
    expect(ids('hot at the lights')).not.toContain('@lamp');
    expect(ids('the lights flash')).toContain('@lamp');
  });

  test('words of one clause pair, words of two do not', () => {
    expect(ids('the needle drops')).toContain('@fall+@gauge');
    expect(ids('drops the needle')).toContain('@fall+@gauge');
    expect(ids('look at the needle, it drops')).not.toContain('@fall+@gauge');
  });

  test('a negation turns the next telling words round', () => {
    expect(ids('it does not climb')).toContain('!@rise');
    expect(ids('it does climb')).not.toContain('!@rise');
    expect(ids('not red green blue climb')).not.toContain('!@rise');
  });
});

describe('a sentence', () => {
  test.each([
    ['my dial sinks on the highway', 'low-at-cruise'],
    ['needle rises at idle', 'hot-in-traffic'],
    ['heater never warm', 'no-heat'],
    ['heater warm always', 'too-warm'],
    ['nedle climbs at the lihgts', 'hot-in-traffic'],
  ])('“%s” is %s', (text, complaint) => {
    expect(first(text)).toBe(complaint);
  });

  test('says because of which words, as they were typed', () => {
    const [best] = recogniser.recognise('My DIAL sinks on the Open Road').complaints;
    expect(best?.because).toContain('Open Road');
    expect(best?.because).toContain('sinks');
    expect(best?.because).not.toContain('My');
  });

  test('says what was read as what', () => {
    expect(recogniser.recognise('the nedle climbs').mended).toEqual([{ from: 'nedle', to: 'needle' }]);
    // Right as they are, though no complaint has them.
    expect(recogniser.recognise('reset the bonnet').mended).toEqual([]);
  });

  test('is read while its last word still grows, and not guessed at too early', () => {
    expect(first('the need')).toBe(first('the needle'));
    expect(recogniser.recognise('the need').mended).toEqual([]);
  });

  test('of another trade sounds like none of these, and hides nothing', () => {
    const heard = recogniser.recognise('my brakes squeal');
    expect(heard.isElsewhere).toBe(true);
    expect(heard.isSure).toBe(false);
  });

  test('without one telling word has no complaint', () => {
    for (const text of ['', 'the', 'it is my own', 'qwertyuiop'])
      expect(recogniser.recognise(text)).toMatchObject({ complaints: [], isElsewhere: true, isSure: false });
  });

  test('any text at all is answered: shares of one whole, the likeliest first', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', maxLength: 80 }), (text) => {
        const { complaints } = recogniser.recognise(text);
        const shares = complaints.map(({ share }) => share);
        expect(shares).toEqual([...shares].sort((a, b) => b - a));
        for (const share of shares) expect(share).toBeGreaterThanOrEqual(0);
        expect(shares.reduce((a, b) => a + b, 0)).toBeLessThan(1 + 1e-9);
      }),
    );
  });
});

test('packed and unpacked it answers the same', () => {
  const again = new Recogniser(unpack(JSON.parse(JSON.stringify(pack(knowledge, GROUPS)))));
  const words = [
    ...new Set(TOLD.flatMap(({ said }) => said.join(' ').split(' '))),
    'not',
    'nedle',
    'brakes',
    'p0128',
  ];
  fc.assert(
    fc.property(fc.array(fc.constantFrom(...words), { maxLength: 10 }), (chosen) => {
      const text = chosen.join(' ');
      const [one, other] = [recogniser.recognise(text), again.recognise(text)];
      expect(other.complaints.map(({ id, because }) => ({ id, because }))).toEqual(
        one.complaints.map(({ id, because }) => ({ id, because })),
      );
      expect({ ...other, complaints: [] }).toEqual({ ...one, complaints: [] });
      for (const [at, { share }] of one.complaints.entries())
        expect(other.complaints[at]?.share).toBeCloseTo(share, 9);
    }),
  );
});

test('more complaints than the alphabet has letters are packed as well', () => {
  const many = Array.from({ length: 30 * 26 }, (_, at) => {
    const word = `w${String.fromCharCode(97 + Math.floor(at / 26))}${String.fromCharCode(97 + (at % 26))}q`;
    return { ...NOTHING, id: word, title: `Sound ${word}`, said: [`it goes ${word}`] };
  });
  const taught = learn(many, { groups: {}, elsewhere: [] });
  const all: Knowledge = { ...taught, guesses: guessesOf(taught), others: new Map(), codes: new Set() };
  const again = unpack(JSON.parse(JSON.stringify(pack(all, {}))));
  for (const [sign, columns] of again.counts.ofSign)
    expect([...columns].sort(), sign).toEqual([...(all.counts.ofSign.get(sign) ?? [])].sort());
  expect(new Recogniser(again).recognise('wzzq').complaints[0]?.id).toBe('wzzq');
});

describe('the proof', () => {
  const tried = leaveEachOut(learnt, new Set());

  test('tries every phrasing but titles, and leaves the counts as they were', () => {
    const before = JSON.stringify(
      [...learnt.counts.ofSign].map(([id, columns]) => [id, [...columns].sort()]).sort(),
    );
    expect(leaveEachOut(learnt, new Set())).toEqual(tried);
    const after = JSON.stringify(
      [...learnt.counts.ofSign].map(([id, columns]) => [id, [...columns].sort()]).sort(),
    );
    expect(after).toBe(before);
    expect(tried.map(({ text }) => text)).toEqual(TOLD.flatMap(({ said }) => said));
  });

  test('does not know the words of what it leaves out', () => {
    const alone = [
      { ...NOTHING, id: 'a', title: 'One', said: ['three four', 'three five'] },
      { ...NOTHING, id: 'b', title: 'Two', said: ['xylophone', 'one two'] },
    ];
    const [, , left] = leaveEachOut(learn(alone, { groups: {}, elsewhere: [] }), new Set());
    // With nothing known of it, the first of all.
    expect([left?.text, left?.first]).toEqual(['xylophone', 'a']);
  });

  test('of more phrasings than are worth the time, tries some of every part', () => {
    const many = Array.from({ length: 400 }, (_, at) => ({
      ...NOTHING,
      id: `c${at}`,
      title: `Word${at}`,
      said: ['a', 'b', 'c', 'd', 'e'].map((letter) => `word${at} ${letter}`),
    }));
    const some = leaveEachOut(learn(many, { groups: {}, elsewhere: [] }), new Set());
    expect(some.length).toBe(1_000);
    expect(new Set(some.map(({ complaint }) => complaint)).size).toBe(400);
  });

  test('counts first and first three, names the weakest and the pairs', () => {
    const made = [0, 0, 1, 3].map((before, at) => ({
      text: '',
      field: 'said' as const,
      complaint: at < 2 ? 'a' : 'b',
      before,
      first: before === 0 ? 'a' : 'c',
    }));
    expect(rateOf(made)).toEqual({ count: 4, first: 0.5, firstThree: 0.75 });
    expect(weakest(made).map(({ complaint }) => complaint)).toEqual(['b', 'a']);
    expect(takenForEachOther(made)).toEqual([{ pair: ['b', 'c'], times: 2 }]);
  });
});
