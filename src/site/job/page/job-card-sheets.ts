/** The sheets a card becomes, on its page: links to them, and the one that is shown or printed. */

import type { CardOnPage } from './card-on-page.ts';
import { cardPaper, customerPaper, type Letterhead, partsPaper } from './paper.ts';

const SHEETS = ['card', 'customer', 'parts'] as const;
export type Sheet = (typeof SHEETS)[number];

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
export function showSheet(card: CardOnPage, sheet: Sheet | undefined): void {
  card.dataset.view = sheet ?? 'form';
  if (sheet === undefined) return;
  layOut(card, sheet);
  card.querySelector<HTMLAnchorElement>('.back')?.setAttribute('href', `#${card.job.id}`);
  card.querySelector<HTMLElement>('.paper h2')?.focus({ preventScroll: true });
  window.scrollTo(0, 0);
}

/** Writes a sheet anew from the card as it is. */
export function layOut(card: CardOnPage, sheet: Sheet): void {
  const head = letterhead(card);
  const papers = {
    customer: () => customerPaper(card.job, head),
    card: () => cardPaper(card.job, head),
    parts: () => partsPaper(card.job, head, card.planned?.parts ?? []),
  };
  card.place('.paper').replaceChildren(...papers[sheet]());
}

function letterhead(card: CardOnPage): Letterhead {
  const { shop = '', hours = '', footer = '' } = card.dataset;
  return { shop, hours, footer };
}
