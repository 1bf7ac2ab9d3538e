import { describe, expect, test } from 'vitest';
import { picture } from '../../../src/site/drawings/svg.ts';
import { overlapsOf } from './overlaps.ts';
import { faultsOf } from './well-formed.ts';

/** The checks the other tests lean on can fail. */
describe('the checks of drawings', () => {
  const frame = { id: 'a', kind: 'ladder', title: 'A', description: 'B', width: 10, height: 10 };

  test('a sound picture has no faults', () => {
    expect(faultsOf(picture(frame, '<path d="M0 0"/><text>hot &amp; cold</text>'))).toEqual([]);
  });

  test.each([
    ['<g>', 'never closed'],
    ['<g></text>', 'closes something else'],
    ['<text>hot & cold</text>', 'bare &'],
    ['<path d="M0 NaN"/>', 'NaN'],
    ['<path style="fill:red"/>', 'style attribute'],
    ['<path onclick="x"/>', 'onclick attribute'],
    ['<path d="M0" d="M1"/>', 'twice on'],
    ['<path id="a"/>', 'ids used twice'],
    ['<path d=M0 />', 'cannot be read'],
  ])('%s is a fault', (body, fault) => {
    expect(faultsOf(picture(frame, body)).join('; ')).toContain(fault);
  });

  test('title and description are escaped, and asked for', () => {
    expect(faultsOf(picture({ ...frame, title: 'Hot & <cold>' }, ''))).toEqual([]);
    expect(faultsOf(picture({ ...frame, description: '' }, ''))).toContain('empty title or desc');
  });

  test('boxes that overlap are named, boxes that touch are not', () => {
    const box = (name: string, x: number) => ({ name, x, y: 0, width: 10, height: 10 });
    expect(overlapsOf([box('a', 0), box('b', 9), box('c', 19)])).toEqual(['a over b']);
  });
});
