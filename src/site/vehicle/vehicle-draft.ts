/** A vehicle as it is being written: the fields of the form by their way in the record, `figures/cap.opens/is`. */
import { isOfLayout, LAYOUT_FEATURES, type Layout, withImplied } from '../../model/layout.ts';
import type { PlainData } from '../../model/vehicle-file.ts';

export interface VehicleDraft {
  id: string;
  /** A moment in ISO form; '' before the first key. */
  changed: string;
  fields: Readonly<Record<string, string>>;
}

/** Enough of a draft to be shown. */
export function isVehicleDraft(value: unknown): value is VehicleDraft {
  if (typeof value !== 'object' || value === null) return false;
  const { id, changed, fields } = value as Record<string, unknown>;
  return (
    typeof id === 'string' &&
    typeof changed === 'string' &&
    typeof fields === 'object' &&
    fields !== null &&
    Object.values(fields).every((each) => typeof each === 'string')
  );
}

/** Answer to a question of the layout by somebody who cannot say. */
export const DONT_KNOW = '?';

/** The layout as it was answered, and what follows from it. "Don't know" and an answer that no layout has leave the point open. */
export function saidLayout(fields: Readonly<Record<string, string>>): Partial<Layout> {
  let layout: Partial<Layout> = {};
  for (const feature of LAYOUT_FEATURES) {
    const more = { ...layout, [feature]: fields[`layout/${feature}`] };
    if (more[feature] !== undefined && isOfLayout(more)) layout = more;
  }
  return withImplied(layout);
}

/** Fields that stay together: nothing of them is written unless the first has something in it. */
const ENTRY = /^(figures|torques)\/([^/]+)\/(.+)$/;

/**
 * The record a draft makes, not yet checked. What was left empty, or answered with "don't know", is left out.
 * @param today the day as 2026-11-30: every figure was held against its source while it was typed
 */
export function recordOf(fields: Readonly<Record<string, string>>, today: string): Record<string, PlainData> {
  const said = (name: string) => fields[name]?.trim() ?? '';
  const lines = (name: string) =>
    said(name)
      .split(/\n+/)
      .map((line) => line.trim())
      .filter((line) => line !== '');
  const engine = filled({
    code: said('engine/code'),
    size: said('engine/size'),
    fuel: said('engine/fuel'),
  });
  const layout = filled(
    Object.fromEntries(
      LAYOUT_FEATURES.map((feature) => {
        const answer = said(`layout/${feature}`);
        return [feature, answer === DONT_KNOW ? '' : answer];
      }),
    ),
  );
  const known = said('known');
  const source: PlainData =
    known === 'measured' || known === 'manual' || known === 'published' ? { [known]: said('source') } : known;
  return {
    ...filled({ title: said('title') }),
    invented: false,
    ...filled({ maker: said('maker'), model: said('model'), body: said('body'), years: said('years') }),
    engine,
    layout,
    figures: entriesOf(fields, 'figures', today),
    torques: entriesOf(fields, 'torques', today),
    ...(lines('access').length > 0 && { access: lines('access') }),
    ...filled({ bleeding: said('bleeding'), gauge: said('gauge') }),
    ...(known !== '' && { sources: [source] }),
    reviewed: today,
  };
}

function entriesOf(
  fields: Readonly<Record<string, string>>,
  group: 'figures' | 'torques',
  today: string,
): Record<string, PlainData> {
  const entries: Record<string, Record<string, string>> = {};
  for (const [name, value] of Object.entries(fields)) {
    const [, of, path = '', part = ''] = ENTRY.exec(name) ?? [];
    if (of !== group || value.trim() === '') continue;
    entries[path] = { ...entries[path], [part]: value.trim() };
  }
  return Object.fromEntries(
    Object.entries(entries).flatMap(([path, entry]) =>
      entry.is === undefined ? [] : [[path, { is: entry.is, ...entry, checked: today }]],
    ),
  );
}

function filled(fields: Readonly<Record<string, string>>): Record<string, string> {
  return Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== ''));
}
