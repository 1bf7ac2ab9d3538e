/** A drawing told in steps is the drawing that was told in places. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { scan } from '../../../src/site/after-build/scanned.ts';
import { shortenPaths, shortPath } from '../../../src/site/after-build/short-paths.ts';

/** Every place a path of capital or small letters comes to, corners of curves included. An own reading, by the SVG standard. */
function places(data: string): number[][] {
  const found: number[][] = [];
  let [x, y, sx, sy] = [0, 0, 0, 0];
  for (const [, letter = '', rest = ''] of data.matchAll(/([a-z])([^a-z]*)/gi)) {
    const numbers = (rest.match(/-?[\d.]+/g) ?? []).map(Number);
    const [ox, oy] = letter === letter.toLowerCase() ? [x, y] : [0, 0];
    const at = (index: number) => [(numbers[index] ?? 0) + ox, (numbers[index + 1] ?? 0) + oy];
    const reach: Record<string, () => number[][]> = {
      m: () => [at(0)],
      l: () => [at(0)],
      h: () => [[(numbers[0] ?? 0) + ox, y]],
      v: () => [[x, (numbers[0] ?? 0) + oy]],
      q: () => [at(0), at(2)],
      c: () => [at(0), at(2), at(4)],
      a: () => [numbers.slice(0, 5), at(5)],
      z: () => [[sx, sy]],
    };
    const reached = reach[letter.toLowerCase()]?.() ?? [];
    found.push(...reached);
    [x = 0, y = 0] = reached.at(-1) ?? [];
    if (letter.toLowerCase() === 'm') [sx, sy] = [x, y];
  }
  return found;
}

test('ribs become one step said again and again', () => {
  expect(shortPath('M34 193H84M34 200H84M34 207H84')).toBe('M34 193h50m-50 7h50m-50 7h50');
  expect(shortPath('M86 334H91L104 339.3H108')).toBe('M86 334h5l13 5.3h4');
});

test('what is told in steps already stays, and a closed line goes on from its beginning', () => {
  expect(shortPath('M238 298H213a16 16 0 1 0 16 16l0 -4H238')).toBe('M238 298h-25a16 16 0 1 0 16 16l0 -4h9');
  expect(shortPath('M10 10L20 10L20 20zM12 12H14')).toBe('M10 10l10 0l0 10zm2 2h2');
  expect(shortPath('M1 2 3 4 5 6')).toBe('M1 2l2 2l2 2');
});

test('a command it does not know is refused, not guessed', () => {
  expect(() => shortPath('M1 2T3 4')).toThrow('"T"');
});

test('any path comes to the same places', () => {
  const tenths = fc.integer({ min: -9999, max: 9999 }).map((tenth) => tenth / 10);
  const command = fc
    .constantFrom('M2', 'L2', 'H1', 'V1', 'Q4', 'C6', 'A', 'Z0', 'm2', 'l2', 'h1', 'v1', 'q4', 'z0')
    .chain((kind) =>
      kind === 'A'
        ? fc.tuple(tenths, tenths).map(([x, y]) => `A8 9 0 1 0 ${x} ${y}`)
        : fc
            .array(tenths, { minLength: Number(kind[1]), maxLength: Number(kind[1]) })
            .map((numbers) => kind[0] + numbers.join(' ')),
    );
  fc.assert(
    fc.property(tenths, tenths, fc.array(command, { maxLength: 40 }), (x, y, rest) => {
      const data = `M${x} ${y}${rest.join('')}`;
      const [wanted, found] = [places(data), places(shortPath(data))];
      expect(found.length).toBe(wanted.length);
      for (const [index, place] of wanted.entries())
        for (const [axis, value] of place.entries()) expect(found[index]?.[axis]).toBeCloseTo(value, 1);
    }),
  );
});

test('only paths are touched, in their place', () => {
  const page = '<svg><path class="thin" d="M5 5H9"/><text d="M5 5H9">M5 5H9</text></svg>';
  const { edits } = shortenPaths(scan({ folder: '', pages: new Map([['a.html', page]]), others: new Set() }));
  expect(edits.get('a.html')).toEqual([
    { start: page.indexOf('"M5'), end: page.indexOf('/>'), text: '"M5 5h4"' },
  ]);
});
