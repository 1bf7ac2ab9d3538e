/** A vehicle of this device: what was said stands in its sheet, and nothing else. */
import { array, assert, constantFrom, dictionary, property, record, string, tuple } from 'fast-check';
import { describe, expect, test } from 'vitest';
import { FIGURE_PATHS, FIGURES } from '../../../src/model/figures.ts';
import { LAYOUT, LAYOUT_FEATURES, withImplied } from '../../../src/model/layout.ts';
import { OWN_FIGURES, ownSheetOf, readFigure } from '../../../src/site/vehicle/own-sheet.ts';
import { DONT_KNOW } from '../../../src/site/vehicle/vehicle-draft.ts';

const HIGH_VOLTAGE = {
  id: 'high-voltage',
  title: 'high voltage',
  short: 'Orange cables.',
  on: { power: ['hybrid', 'battery electric'] },
  avoid: 'Leave it shut.',
} as const;
const cautions = [{ ...HIGH_VOLTAGE, on: { power: [...HIGH_VOLTAGE.on.power] } }];

const draft = (fields: Record<string, string>) => ({
  id: 'own-vehicle-abcdefgh',
  changed: '2026-11-30T10:00:00.000Z',
  fields,
});

const answers = array(
  constantFrom(...LAYOUT_FEATURES).chain((feature) =>
    tuple(constantFrom(`layout/${feature}`), constantFrom(...LAYOUT[feature], DONT_KNOW, '', 'made up')),
  ),
).map((pairs) => Object.fromEntries(pairs));
const figures = array(
  constantFrom(...FIGURE_PATHS).chain((path) =>
    tuple(
      constantFrom(`figures/${path}/is`),
      constantFrom(...FIGURES[path].plausible, FIGURES[path].general, '', '87', 'hot'),
    ),
  ),
).map((pairs) => Object.fromEntries(pairs));

describe('the sheet of a vehicle of this device', () => {
  test('has nothing that was not said or does not follow', () => {
    assert(
      property(record({ answers, figures, more: dictionary(string(), string()) }), (typed) => {
        const fields = { ...typed.more, ...typed.figures, ...typed.answers };
        const sheet = ownSheetOf(draft(fields), cautions);
        const said = LAYOUT_FEATURES.flatMap((feature) => {
          const values: readonly string[] = LAYOUT[feature];
          const value = fields[`layout/${feature}`] ?? '';
          return values.includes(value) ? [[feature, value] as const] : [];
        });
        expect(sheet.layout).toEqual(withImplied(Object.fromEntries(said)));
        for (const path of Object.keys(sheet.figures)) {
          expect(fields[`figures/${path}/is`]?.trim()).toBeTruthy();
          expect(sheet.without).not.toContain(path);
        }
        expect([sheet.bolts, sheet.coolants]).toEqual([{}, {}]);
        expect([sheet.bookings, sheet.repairs]).toEqual([undefined, undefined]);
      }),
    );
  });

  test('with a name alone it leaves everything open', () => {
    const sheet = ownSheetOf(draft({ title: ' Ash 1.4 ', 'layout/heater': DONT_KNOW }), cautions);
    expect(sheet).toMatchObject({ own: true, title: 'Ash 1.4', short: 'Ash 1.4 (your own)', layout: {} });
    expect([sheet.figures, sheet.without, sheet.stops]).toEqual([{}, [], []]);
  });

  test('keeps a figure with its unit and says where it is from', () => {
    const { figures: own } = ownSheetOf(draft({ 'figures/cap.opens/is': ' 16 psi ' }), []);
    expect(own['cap.opens']?.origin).toBe('typed by you on this device, 2026-11-30; not checked');
    expect(own['cap.opens']?.quantity.unit).toBe('psi');
  });

  test('has no pressure cap on a battery electric car, and its cautions', () => {
    const fields = { 'layout/power': 'battery electric', 'figures/cap.opens/is': '1.4 bar' };
    const sheet = ownSheetOf(draft(fields), cautions);
    expect(sheet.figures).toEqual({});
    expect(sheet.without).toContain('cap.opens');
    expect(sheet.stops.map(({ id }) => id)).toEqual(['high-voltage']);
  });
});

test('every figure that is asked is read as its general range is written', () => {
  for (const path of OWN_FIGURES)
    expect(readFigure(path, FIGURES[path].general), path).toMatchObject({ ok: true });
});

test('no unit is taken for granted, a decimal comma is read, and what cannot be meant is not taken', () => {
  expect(readFigure('cap.opens', '16').ok).toBe(false);
  expect(readFigure('cap.opens', '1,4 bar').ok).toBe(true);
  expect(readFigure('thermostat.opens', '20 °C')).toEqual({
    ok: false,
    says: expect.stringMatching(/^20 °C cannot be meant here\. Usually 82\s–\s92\s°C\.$/),
  });
});
