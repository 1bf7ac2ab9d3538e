/** A time at a step: its script comes with the first press, and on every page as long as one runs. */
import { loadScript } from '../browser/load-script.ts';
import { storedText } from '../browser/storage.ts';
import '../browser/page-globals.ts';

const load = (start?: HTMLElement) =>
  loadScript('timers').then(
    () => window.headertank.startTimer?.(start),
    () => start?.after(' There is no connection just now.'),
  );
if (storedText('timers')) load();
document.addEventListener('click', ({ target }) => {
  const start = target instanceof Element && target.closest<HTMLElement>('[data-wait]');
  if (start) load(start);
});
