/** The colours chosen on this device; styles/tokens.css has them. */
import { nameAt } from '../../browser/site-name.ts';

/** Read without the helpers of storage.ts: the page's first script, on which they hang, is not there yet. */
export function showColours(): void {
  const { dataset } = document.documentElement;
  try {
    const first = document.querySelector<HTMLScriptElement>('script[src]');
    const { pathname } = new URL('..', first?.src);
    dataset.colours = JSON.parse(localStorage.getItem(`${nameAt(pathname)}.colours`) ?? '');
  } catch {
    // Nothing is chosen, or storage is blocked: the colours are the device's.
    delete dataset.colours;
  }
}
