/** A card as codes. Base45 against the examples of RFC 9285, section 4.3 and 4.4. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { codesOf, fromBase45, ReadCodes, readCode, toBase45 } from '../../../src/site/job/codes.ts';

const bytes = (text: string) => new TextEncoder().encode(text);

test.each([
  ['AB', 'BB8'],
  ['Hello!!', '%69 VD92EX0'],
  ['base-45', 'UJCLQE7W581'],
  ['ietf!', 'QED8WEX0'],
])('RFC 9285: %s is %s', (text, letters) => {
  expect(toBase45(bytes(text))).toBe(letters);
  expect(fromBase45(letters)).toEqual(bytes(text));
});

// RFC 9285, section 6: what stands for more than 65535, and letters outside the alphabet, is refused.
test.each([':::', 'GGX', 'ab8', 'A', 'ZZ'])('%s stands for no bytes', (letters) => {
  expect(fromBase45(letters)).toBeUndefined();
});

test('any bytes come back from any order of their codes, some read twice', () => {
  fc.assert(
    fc.property(fc.uint8Array({ maxLength: 3000 }), fc.infiniteStream(fc.nat()), (card, picks) => {
      const codes = codesOf(card, 'A2Z');
      for (const code of codes) expect(code).toMatch(/^[0-9A-Z $%*+\-./:]+$/);
      const reader = new ReadCodes();
      for (const pick of picks) {
        reader.add(codes[pick % codes.length] ?? '');
        if (reader.bytes || reader.read === codes.length) break;
      }
      expect(reader.bytes).toEqual(card);
    }),
    { numRuns: 60 },
  );
});

test('codes of another card begin anew, and any other code is passed over', () => {
  const [first = '', second = ''] = codesOf(new Uint8Array(900).fill(7), 'AAA');
  const reader = new ReadCodes();
  expect(reader.add(first)).toBe(true);
  expect(reader.add('https://shelf.example/')).toBe(false);
  expect(reader.read).toBe(1);
  const [other = ''] = codesOf(new Uint8Array(10), 'BBB');
  reader.add(other);
  expect(reader.bytes).toEqual(new Uint8Array(10));
  expect(reader.add(second)).toBe(true);
  expect(reader.bytes).toBeUndefined();
  for (const wrong of ['HEADERTANK:AAA:0:2:XX', 'HEADERTANK:AAA:3:2:XX', 'HEADERTANK:aaa:1:2:XX'])
    expect(readCode(wrong)).toBeUndefined();
});
