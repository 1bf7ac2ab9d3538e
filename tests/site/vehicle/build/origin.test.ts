import { expect, test } from 'vitest';
import { ownOrigin, usualOrigin } from '../../../../src/site/vehicle/build/make-vehicle-sheet.ts';
import { shelf } from '../../../shelf/shelf.ts';

const tarn = shelf.records.vehicle.get('aldermoor-tarn-16')?.data;

test('where most figures are from is said once, and a figure says only what is otherwise', () => {
  if (!tarn) throw new Error('The demonstration vehicle is gone.');
  const usual = usualOrigin(tarn);
  expect(usual).toEqual({ from: 'manual', sure: 'read off the source', checked: '2026-09-14' });
  const base = { from: 'manual', sure: 'read off the source', checked: '2026-09-14' };
  expect(ownOrigin({ ...base, page: 'cooling 12' }, usual)).toBe('cooling 12');
  expect(ownOrigin(base, usual)).toBe('');
  expect(ownOrigin({ ...base, sure: 'guess' }, usual)).toBe('manual, guess, checked 2026-09-14');
  expect(ownOrigin(base, undefined)).toBe('manual, read off the source, checked 2026-09-14');
});
