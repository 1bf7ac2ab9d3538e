/** Calculators folded into a page: the arithmetic is fetched when the first one is opened, or at once for one that stands open. */
import { loadScript } from '../browser/load-script.ts';

function prepare(within: ParentNode): void {
  for (const part of within.querySelectorAll<HTMLElement>('.calculator')) {
    const start = () => {
      loadScript('calculator-live').catch(() => {
        const example = part.querySelector('.example');
        if (example)
          example.textContent =
            'The fields could not be started. Open this page again, or the calculator’s own page.';
      });
    };
    if (!(part instanceof HTMLDetailsElement)) start();
    else part.addEventListener('toggle', start, { once: true });
  }
}

prepare(document);
// A walk brings its questions as they are asked.
document.addEventListener('headertank:added', ({ target }) => {
  if (target instanceof Element) prepare(target);
});
