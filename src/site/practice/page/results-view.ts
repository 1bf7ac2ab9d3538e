/** What was answered so far, and what of it is shown to a teacher: chosen by hand, as text, file or code. */
import '../../browser/page-globals.ts';
import { button, element } from '../../browser/element.ts';
import { loadScript } from '../../browser/load-script.ts';
import { saveFile } from '../../browser/save-file.ts';
import { type CaseResult, type Practice, resultsText, shortResults } from '../results.ts';
import { keepPractice, keptPractice, today } from './kept.ts';

/** Cases of one code: more make it too fine for a phone to read. */
const MOST_IN_CODE = 10;

/** The results, the latest first, each to be ticked. */
export function resultsView({ results }: Practice): HTMLElement {
  const latest = [...results].reverse();
  if (latest.length === 0) return element('p', { class: 'soft' }, 'No case answered on this device yet.');
  const boxes = latest.map((result, at) => {
    const box = element('input', {
      type: 'checkbox',
      id: `result-${at}`,
      ...(at < MOST_IN_CODE && { checked: true }),
    });
    return { result, box, row: rowOf(result, box) };
  });
  const name = element('input', { id: 'results-name', autocomplete: 'off', maxlength: '40' });
  const text = element('textarea', {
    readonly: true,
    rows: '8',
    'aria-label': 'Results as text',
    hidden: true,
  });
  const says = element('p', { class: 'says', role: 'status' });
  const code = element('div', { class: 'practice-code' });
  const chosen = () => boxes.filter(({ box }) => box.checked).map(({ result }) => result);
  const asText = () => resultsText(chosen(), name.value.trim(), today());
  return element(
    'details',
    { class: 'practice-results' },
    element('summary', {}, `Your results (${latest.length})`),
    element('ul', { class: 'result-rows' }, ...boxes.map(({ row }) => row)),
    element(
      'div',
      { class: 'practice-row' },
      element('label', { for: 'results-name' }, 'Your name, if the results should carry it'),
      name,
    ),
    element(
      'div',
      { class: 'begin' },
      button(
        'Show as text',
        () => {
          text.value = asText();
          text.hidden = false;
          text.focus();
        },
        'quiet',
      ),
      button('Save as a file', () => saveFile(`practice-${today()}.txt`, asText(), 'text/plain'), 'quiet'),
      button('Show as a code', () => void showCode(), 'quiet'),
      button('Remove the ticked', () => remove(), 'quiet'),
    ),
    text,
    code,
    says,
  );

  async function showCode(): Promise<void> {
    const some = chosen().slice(0, MOST_IN_CODE);
    try {
      await loadScript('practice-code');
      const picture = window.headertank.codePicture?.(shortResults(some, name.value.trim(), today()));
      code.replaceChildren(...(picture ? [picture] : []));
      says.textContent = `${some.length} cases in the code, without the tests. It is read with any phone.`;
    } catch {
      says.textContent = 'There is no connection just now.';
    }
  }

  function remove(): void {
    const gone = new Set(chosen().map((result) => result.code));
    const now = keptPractice();
    const isKept = keepPractice({ ...now, results: now.results.filter((result) => !gone.has(result.code)) });
    for (const { result, row, box } of boxes) {
      if (!gone.has(result.code)) continue;
      row.remove();
      box.checked = false;
    }
    says.textContent = isKept ? `${gone.size} removed.` : 'This device keeps nothing just now.';
  }
}

function rowOf(
  { title, on, right, shown, minutes, planner, tree, named }: CaseResult,
  box: HTMLInputElement,
): HTMLLIElement {
  const verdict = right ? (shown ? 'Right' : 'Right, shown by no test') : 'Not right';
  return element(
    'li',
    {},
    box,
    element(
      'label',
      { for: box.id },
      element('b', {}, verdict),
      `: ${named}`,
      element('br'),
      element(
        'small',
        {},
        `${title}, ${on}. ${Math.round(minutes)} min; planner ${Math.round(planner)}, tree ${Math.round(tree)}`,
      ),
    ),
  );
}
