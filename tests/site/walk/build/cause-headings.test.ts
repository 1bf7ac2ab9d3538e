import { expect, test } from 'vitest';
import { causeHeadings } from '../../../../src/site/walk/build/cause-headings.ts';

test('where nothing is at fault no heading speaks of a repair or a part', () => {
  const words = Object.values(causeHeadings('nothing at fault')).join(' ');
  expect(words).not.toMatch(/repair|part/i);
  expect(Object.values(causeHeadings('thermostat')).join(' ')).toMatch(/repair.*part/is);
});
