/** What the reader took the file for, as fields: whatever is wrong can be put right, and the log is read again. */
import type { Choice, Column, Layout } from '../../../trace/read/layout.ts';
import { ROLE_KINDS, ROLES, type Role, unitsFor } from '../../../trace/read/roles.ts';
import { element } from '../../browser/element.ts';

/** Takes what makes a new choice out of the current one. */
type Change = (from: (choice: Choice) => Choice) => void;

/** Value of "not in this log". */
const NONE = '';

/**
 * @param change called after each change; it is made to the choice as it stands then, which may be a later one
 * @returns a table of fields; a column is named with a few of its cells
 */
export function columnFields(
  columns: readonly Column[],
  layout: Layout | Omit<Layout, 'columns'> | undefined,
  change: Change,
): HTMLElement {
  const rows = ROLES.map((role) => {
    const taken = layout?.roles[role];
    const id = `trace-column-${role}`;
    const select = element('select', { id });
    select.append(new Option('not in this log', NONE, false, taken === undefined));
    for (const column of columns) {
      const samples = column.samples.length > 0 ? `: ${column.samples.join(', ')} …` : '';
      select.append(
        new Option(`${column.name}${samples}`, String(column.index), false, taken?.column === column.index),
      );
    }
    select.onchange = () => {
      const column = select.value === NONE ? null : Number(select.value);
      change((choice) => {
        // What was said of the unit was said of the other column.
        const units = { ...choice.units };
        delete units[role];
        return { ...choice, columns: { ...choice.columns, [role]: column }, units };
      });
    };
    const row = element(
      'div',
      { class: 'column-row' },
      element('label', { for: id }, ROLE_KINDS[role].label),
      select,
    );
    const unit = taken && unitField(role, layout, change);
    if (unit) row.append(unit);
    return row;
  });
  return element('div', { class: 'column-rows no-print' }, ...rows);
}

function unitField(
  role: Role,
  layout: Layout | Omit<Layout, 'columns'> | undefined,
  change: Change,
): HTMLElement | undefined {
  const { kind, label } = ROLE_KINDS[role];
  const units = unitsFor(kind);
  const isCount = role !== 'time' || layout?.clock?.kind === 'count';
  if (units.length < 2 || !isCount) return undefined;
  const current =
    role === 'time' && layout?.clock?.kind === 'count' ? layout.clock.unit : layout?.roles[role]?.unit;
  const select = element('select', { 'aria-label': `Unit of: ${label}` });
  for (const { symbol } of units)
    select.append(new Option(symbol, symbol, false, symbol === current?.symbol));
  select.onchange = () =>
    change((choice) => ({ ...choice, units: { ...choice.units, [role]: select.value } }));
  return select;
}
