/** The two cars on the page: a slider over the half hour, and a button that runs it. */
import '../../browser/page-globals.ts';
import { button, element } from '../../browser/element.ts';
import { drawMoment, PICTURES, phaseAt } from '../draw-moves.ts';
import type { TwoRuns } from '../two-runs.ts';

/** Milliseconds a picture stands while it runs: half an hour in nine seconds. */
const STANDS = 150;

/**
 * Fills a place with the two cars.
 * @param id unique on the page
 * @param fault title of what the second car has
 */
export function showMoves(place: HTMLElement, id: string, fault: string, runs: TwoRuns): void {
  const views = [element('div'), element('div'), element('div')];
  const [sound = element('div'), faulty = element('div'), curve = element('div')] = views;
  const slider = element('input', {
    type: 'range',
    id: `${id}-minute`,
    min: '0',
    max: String(PICTURES - 1),
    value: String(PICTURES - 1),
  });
  const says = element('output', { for: slider.id });
  let timer: ReturnType<typeof setInterval> | undefined;
  const show = () => {
    const at = Number(slider.value);
    const drawn = drawMoment({ id, fault, runs, at, habit: window.headertank.habit });
    // Drawn by our own code from numbers; the title of the fault is the shelf's, and escaped there.
    for (const [index, view] of views.entries()) view.innerHTML = drawn[index] ?? '';
    says.textContent = phaseAt(at);
    slider.setAttribute('aria-valuetext', phaseAt(at));
  };
  const stop = () => {
    clearInterval(timer);
    timer = undefined;
    run.textContent = 'Run the half hour';
  };
  const run = button('Run the half hour', () => {
    if (timer !== undefined) return stop();
    if (Number(slider.value) >= PICTURES - 1) slider.value = '0';
    run.textContent = 'Stop';
    timer = setInterval(() => {
      slider.value = String(Number(slider.value) + 1);
      show();
      if (Number(slider.value) >= PICTURES - 1 || !place.isConnected) stop();
    }, STANDS);
  });
  slider.addEventListener('input', () => {
    stop();
    show();
  });
  place.classList.add('moves');
  place.replaceChildren(
    element(
      'div',
      { class: 'beside' },
      element('div', {}, element('p', { class: 'name' }, 'Sound'), sound),
      element('div', {}, element('p', { class: 'name' }, fault), faulty),
    ),
    element(
      'div',
      { class: 'moves-controls' },
      element('label', { for: slider.id }, 'Time since the cold start: '),
      says,
      slider,
      run,
    ),
    curve,
  );
  show();
}
