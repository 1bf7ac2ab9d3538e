/** The sheets a card becomes, on its page: links to them, and the one that is shown or printed. */
import '../../browser/page-globals.ts';
import { loadScript } from '../../browser/load-script.ts';
import { notFetched } from '../../browser/not-fetched.ts';
import { SHEETS, type Sheet } from '../card-parts.ts';
import type { CardOnPage } from './card-on-page.ts';
import { picturesOf, readPictures } from './card-pictures.ts';

/** What a sheet is called where its file is named after the page. */
const TITLES: Record<Sheet, string> = {
  customer: 'What we did',
  card: 'Job card',
  intake: 'Taken in',
  parts: 'Parts list',
};

/** The sheet an address asks for by its name, if there is one. */
export function sheetCalled(name: string | undefined): Sheet | undefined {
  return SHEETS.find((each) => each === name);
}

/** The links to the sheets, at the top and at the foot of the card. */
export function sheetLinks(card: CardOnPage): [Sheet, HTMLAnchorElement][] {
  return SHEETS.flatMap((sheet): [Sheet, HTMLAnchorElement][] => {
    const links = card.querySelectorAll<HTMLAnchorElement>(`a[data-sheet="${sheet}"]`);
    return [...links].map((link) => [sheet, link]);
  });
}

/** Shows a sheet in place of the form; without one the form. */
export async function showSheet(card: CardOnPage, sheet: Sheet | undefined): Promise<void> {
  card.dataset.view = sheet ?? 'form';
  // A sheet that is saved is found again by it.
  document.title = [TITLES[sheet ?? 'card'], card.job.plate || card.job.name].filter(Boolean).join(' ');
  if (sheet === undefined) return;
  await Promise.all([loadScript('job-papers').catch(() => undefined), picturesOf(card.job)]);
  // Meanwhile the reader may have gone back.
  if (card.dataset.view !== sheet) return;
  layOut(card, sheet);
  card.querySelector<HTMLAnchorElement>('.back')?.setAttribute('href', `#${card.job.id}`);
  card.querySelector<HTMLElement>('.paper h2')?.focus({ preventScroll: true });
  window.scrollTo(0, 0);
}

/** Writes a sheet anew from the card as it is. */
export function layOut(card: CardOnPage, sheet: Sheet): void {
  const { shop = '', hours = '', footer = '' } = card.dataset;
  const more = { parts: card.planned?.parts ?? [], pictures: readPictures(card.job) };
  const nodes = window.headertank.layOutSheet?.(sheet, card.job, { shop, hours, footer }, more);
  card.place('.paper').replaceChildren(...(nodes ?? [notFetched('The sheets')]));
}
