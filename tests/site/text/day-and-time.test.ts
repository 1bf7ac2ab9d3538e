import { expect, test } from 'vitest';
import { dayText } from '../../../src/model/day.ts';
import { dayAndTimeText, timeText } from '../../../src/site/text/day-and-time.ts';

// Written without an offset a moment is local, so these hold wherever the test runs.
test('the day is the one here, year first, and the clock has 24 hours', () => {
  expect(dayText('2026-11-05T00:05')).toBe('2026-11-05');
  expect(timeText('2026-11-05T17:08')).toBe('17:08');
  expect(timeText('2026-11-05T00:00')).toBe('00:00');
  expect(dayAndTimeText(new Date(2026, 0, 9, 9, 4))).toBe('2026-01-09 09:04');
});
