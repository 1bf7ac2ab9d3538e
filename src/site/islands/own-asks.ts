/** A vehicle of this device is chosen: a figure that it has not is asked where a step, the work of a record or a calculator wants it. */
import '../browser/page-globals.ts';
import { askInCalculator } from '../vehicle/page/ask-in-calculator.ts';
import { OwnAsks } from '../vehicle/page/own-asks.ts';

const asks = new OwnAsks();
document.addEventListener('headertank:change', () => asks.show());
document.addEventListener('headertank:added', () => asks.show());
document.addEventListener('change', ({ target }) => askInCalculator(target));
const walk = document.querySelector('ht-walk');
// A walk shows one question at a time, all in the page.
if (walk)
  new MutationObserver(() => asks.show()).observe(walk, { subtree: true, attributeFilter: ['data-now'] });
asks.show();
