/** What cannot be on this car, or follows from an answer, is not asked in a form of a vehicle. */
import { type LayoutCondition, layoutAllows, layoutIsPossible } from '../../../model/layout.ts';
import { DONT_KNOW, saidLayout } from '../vehicle-draft.ts';

/** @param fields what was said, by field */
export function fitQuestions(form: ParentNode, fields: Readonly<Record<string, string>>): void {
  const layout = saidLayout(fields);
  for (const question of form.querySelectorAll<HTMLElement>('[data-feature]')) {
    const { feature = '' } = question.dataset;
    const said = fields[`layout/${feature}`] ?? '';
    const choices = [...question.querySelectorAll<HTMLInputElement>('input')].filter(
      ({ value }) => value !== DONT_KNOW,
    );
    let open = 0;
    for (const choice of choices) {
      const can = layoutIsPossible({ ...layout, [feature]: choice.value });
      open += can ? 1 : 0;
      choice.closest('label')?.toggleAttribute('hidden', !can && said !== choice.value);
    }
    question.toggleAttribute('hidden', said === '' && open < 2);
  }
  for (const row of form.querySelectorAll<HTMLElement>('[data-layout]')) {
    const condition: LayoutCondition = JSON.parse(row.dataset.layout ?? '{}');
    const has = (fields[`${row.dataset.entry}/is`] ?? '') !== '';
    const hangsOnUnknown = Object.keys(condition).some(
      (feature) => fields[`layout/${feature}`] === DONT_KNOW,
    );
    row.toggleAttribute('hidden', !has && (hangsOnUnknown || !layoutAllows(condition, layout)));
  }
}
