/** What the practice page offers before a case is open: cases to play, results, and a list to hand out. */
import '../../browser/page-globals.ts';
import { button, element } from '../../browser/element.ts';
import { codeOfDay, codesIn, inOrderOf, writeList } from '../case-codes.ts';
import type { PracticeIndex } from '../practice-data.ts';
import { gotWrong, type Practice } from '../results.ts';
import { keptPractice, today } from './kept.ts';
import { resultsView } from './results-view.ts';

/** Cases of a list that a teacher hands out. */
const HANDED_OUT = 10;

/** Every code of an index. */
export function allCodes({ symptoms }: PracticeIndex): string[] {
  return symptoms.flatMap(([, , codes]) => codesIn(codes));
}

/** A case among these: one not answered yet, or else the one that was answered longest ago. */
export function nextOf(codes: readonly string[], { results }: Practice): string | undefined {
  const done = new Map(results.map(({ code }, at) => [code, at]));
  const open = inOrderOf(
    codes.filter((code) => !done.has(code)),
    'next',
  );
  return open[0] ?? [...codes].sort((a, b) => (done.get(a) ?? 0) - (done.get(b) ?? 0))[0];
}

/** @param play opens a case */
export function startView(index: PracticeIndex, play: (code: string) => void): HTMLElement {
  const practice = keptPractice();
  const all = allCodes(index);
  const day = today();
  const ofDay = codeOfDay(all, day);
  const isDone = practice.results.some(({ code, on }) => code === ofDay && on === day);
  const wrong = gotWrong(practice).filter((code) => all.includes(code));
  const { open } = practice;
  if (all.length === 0) return element('p', {}, 'This shelf has no cases to practise on.');
  return element(
    'div',
    { class: 'practice-start' },
    element(
      'div',
      { class: 'begin' },
      ...(open && all.includes(open.code)
        ? [button('Go on with the open case', () => play(open.code), 'main')]
        : []),
      ...(ofDay === undefined
        ? []
        : [button(isDone ? 'Case of the day again' : 'Case of the day', () => play(ofDay), 'main')]),
      ...(wrong.length > 0
        ? [button(`A case you got wrong (${wrong.length})`, () => play(wrong[0] ?? ''), 'quiet')]
        : []),
    ),
    ofSymptom(index, play),
    resultsView(practice),
    handOut(index),
  );
}

function options(index: PracticeIndex, first?: string): HTMLOptionElement[] {
  const sorted = [...index.symptoms].sort(([, a], [, b]) => a.localeCompare(b, 'en'));
  return [
    ...(first === undefined ? [] : [element('option', { value: '' }, first)]),
    ...sorted.map(([id, title]) => element('option', { value: id }, title)),
  ];
}

function codesOf(index: PracticeIndex, symptom: string): string[] {
  return codesIn(index.symptoms.find(([id]) => id === symptom)?.[2] ?? '');
}

function ofSymptom(index: PracticeIndex, play: (code: string) => void): HTMLElement {
  const choice = element('select', { id: 'practice-symptom' }, ...options(index));
  const wanted = new URLSearchParams(location.search).get('symptom');
  if (wanted !== null && index.symptoms.some(([id]) => id === wanted)) choice.value = wanted;
  return element(
    'div',
    { class: 'practice-row' },
    element('label', { for: 'practice-symptom' }, 'A case of a complaint'),
    choice,
    button(
      'Open a case',
      () => {
        const code = nextOf(codesOf(index, choice.value), keptPractice());
        if (code !== undefined) play(code);
      },
      'quiet',
    ),
  );
}

/** Ten cases by one address. */
function handOut(index: PracticeIndex): HTMLElement {
  const choice = element('select', { id: 'practice-hand-out' }, ...options(index, 'Any complaint'));
  const address = element('input', { id: 'practice-address', readonly: true, value: '' });
  const says = element('p', { class: 'says', role: 'status' });
  const out = element(
    'div',
    { class: 'practice-row', hidden: true },
    element('label', { for: 'practice-address' }, 'Address of these cases'),
    address,
    button(
      'Copy',
      async () => {
        try {
          await navigator.clipboard.writeText(address.value);
          says.textContent = 'Copied.';
        } catch {
          address.select();
          says.textContent = 'Marked: copy it with the keys or the menu of your device.';
        }
      },
      'quiet',
    ),
  );
  const make = () => {
    const codes = choice.value === '' ? allCodes(index) : codesOf(index, choice.value);
    const drawn = inOrderOf(codes, crypto.getRandomValues(new Uint32Array(2)).join(' ')).slice(0, HANDED_OUT);
    address.value = new URL(`#list=${writeList(drawn)}`, location.href.replace(/[?#].*$/, '')).href;
    out.hidden = false;
    says.textContent = `${drawn.length} cases. The address does not say what is wrong with them.`;
  };
  return element(
    'details',
    { class: 'practice-teacher' },
    element('summary', {}, 'For a teacher: hand out ten cases'),
    element(
      'p',
      {},
      'Everybody who opens the address gets the same cases with the same readings. Nothing is sent anywhere: each apprentice shows you the results he chooses, as a text, a file or a code on the screen.',
    ),
    element(
      'div',
      { class: 'practice-row' },
      element('label', { for: 'practice-hand-out' }, 'Cases of'),
      choice,
      button('Make the address', make, 'quiet'),
    ),
    out,
    says,
  );
}
