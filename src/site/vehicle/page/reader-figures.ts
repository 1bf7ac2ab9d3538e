/** The figures of a page in the values of the chosen vehicle and in the reader's units; no other page needs the tables of units. */
import { layoutAllows } from '../../../model/layout.ts';
import { loadScript } from '../../browser/load-script.ts';
import '../../browser/page-globals.ts';
import { showCoolants, showFigures, showReadings, withFigures } from './figures.ts';
import { fitNotes } from './fit-notes.ts';
import { foldOtherSteps } from './other-steps.ts';

window.headertank.figures = {
  fill(part) {
    const { vehicle, habit } = window.headertank;
    showFigures(part, vehicle, habit);
    showReadings(part, habit);
    showCoolants(part, vehicle);
    // What the record says is plain to read on the vehicle's page; without a connection it is not repeated here.
    if (document.querySelector('[data-own]')) loadScript('own-words').catch(() => undefined);
    for (const each of part.querySelectorAll<HTMLElement>('[data-layout]')) {
      const fits = layoutAllows(JSON.parse(each.dataset.layout ?? '{}'), vehicle?.layout ?? {});
      each.classList.toggle('not-this-vehicle', !fits);
    }
    for (const list of part.querySelectorAll<HTMLElement>('ol.work')) foldOtherSteps(list);
    fitNotes(part, vehicle?.id);
  },
  say: (text, general) => withFigures(text, general, window.headertank.vehicle, window.headertank.habit),
};
