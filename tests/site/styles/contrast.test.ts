/**
 * Contrast of the colours of styles/tokens.css, reckoned.
 *
 * Relative luminance and contrast ratio as WCAG 2.2 defines them (https://www.w3.org/TR/WCAG22/#dfn-relative-luminance,
 * #dfn-contrast-ratio); 4.5 for text is its 1.4.3 (AA), 3 for the edge of a field its 1.4.11. 10 in the sun is our own mark.
 */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';

const css = readFileSync('src/site/styles/tokens.css', 'utf8');

/** The colours that a block sets, by name. */
function block(start: string): Map<string, string> {
  const [, after] = css.split(`${start} {`);
  if (after === undefined) throw new Error(`tokens.css has no block ${start}`);
  const [inside = ''] = after.split('}');
  return new Map(
    [...inside.matchAll(/--([a-z-]+): (#[0-9a-f]+);/g)].map(([, name = '', is = '']) => [name, is]),
  );
}

const DEVICE = ':root:where(:not([data-colours]))';
const light = block(':root');
const dark = block(':root:where([data-colours="dark"])');
const sun = block(':root:where([data-colours="sun"])');
const THEMES = {
  light,
  dark: new Map([...light, ...dark]),
  sun: new Map([...light, ...sun]),
};

function luminance(colour: string): number {
  const digits =
    colour.length === 4 ? [...colour.slice(1)].map((digit) => digit + digit) : colour.slice(1).match(/../g);
  const [red = 0, green = 0, blue = 0] = (digits ?? []).map((pair) => {
    const part = Number.parseInt(pair, 16) / 255;
    return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

/** @param stray light that the screen throws back, as a part of its white; WCAG reckons with 0.05 */
function contrast(one: string, other: string, stray = 0.05): number {
  const [darker = 0, lighter = 0] = [luminance(one), luminance(other)].sort((a, b) => a - b);
  return (lighter + stray) / (darker + stray);
}

/** The stray light of a screen of 500 cd/m² that throws back 4.5 % of 10,000 lx: E × ρ ÷ π, as from a matt surface. */
const OUTDOORS = (10_000 * 0.045) / Math.PI / 500;

const TEXT = ['ink', 'ink-soft', 'pen', 'stop'].flatMap((text) =>
  ['paper', 'sheet'].map((on) => [text, on] as const),
);
const PAIRS = [...TEXT, ['pen-ink', 'pen'] as const, ['ink', 'pen-wash'] as const];

/** What a pair of this theme reckons to. */
function of(theme: keyof typeof THEMES, [one, other]: readonly [string, string], stray?: number): number {
  const [a, b] = [THEMES[theme].get(one), THEMES[theme].get(other)];
  if (a === undefined || b === undefined) throw new Error(`${theme} has no ${one} or ${other}`);
  return contrast(a, b, stray);
}

test('the measure itself: black on white is 21 to 1 by definition, and nothing is 1 to 1', () => {
  expect(contrast('#000', '#ffffff')).toBeCloseTo(21, 10);
  expect(contrast('#8c1d18', '#8c1d18')).toBe(1);
});

describe.each(Object.keys(THEMES) as (keyof typeof THEMES)[])('%s', (theme) => {
  test.each(PAIRS)('%s on %s can be read', (...pair) => {
    expect(of(theme, pair)).toBeGreaterThanOrEqual(theme === 'sun' ? 10 : 4.5);
  });

  test('the edge of a field is seen', () => {
    expect(of(theme, ['rule-strong', 'sheet'])).toBeGreaterThanOrEqual(theme === 'sun' ? 10 : 3);
  });
});

test('outdoors the sun’s colours keep more than light ones, and soft text and lines as much as ink', () => {
  const ink = of('sun', ['ink', 'paper'], OUTDOORS);
  expect(ink).toBeGreaterThan(4.4);
  for (const pair of [
    ['ink-soft', 'paper'],
    ['rule', 'paper'],
    ['rule-strong', 'sheet'],
  ] as const)
    expect(of('sun', pair, OUTDOORS), pair.join(' on ')).toBe(ink);
  for (const pair of PAIRS)
    expect(of('sun', pair, OUTDOORS), pair.join(' on ')).toBeGreaterThan(
      Math.max(of('light', pair, OUTDOORS), of('dark', pair, OUTDOORS)),
    );
});

test('what the device asks for and what is chosen are the same colours', () => {
  const at = (wish: string) => {
    const place = css.indexOf(wish);
    const [, after = ''] = css.slice(place).split(`${DEVICE} {`);
    return after.split('}')[0]?.replace(/\s+/g, ' ').trim();
  };
  const as = (name: string) =>
    css.split(`:root:where([data-colours="${name}"]) {`)[1]?.split('}')[0]?.replace(/\s+/g, ' ').trim();
  expect(at('prefers-color-scheme: dark')).toBe(as('dark'));
  expect(at('prefers-contrast: more')).toBe(as('sun'));
});
