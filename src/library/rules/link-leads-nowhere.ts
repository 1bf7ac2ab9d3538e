import { CALCULATOR_IDS } from '../../model/calculator-ids.ts';
import { KIND_NAMES, KINDS } from '../../model/kinds.ts';
import type { DraftShelf } from '../draft.ts';
import type { Fault } from '../finding.ts';
import { nearestOf } from '../nearest.ts';
import type { ShelfRule } from '../rule.ts';

/** Links of Markdown, `](/notes/x.html#part)`, and of elements, `href="/notes/x.html"`. */
const LINK = /(?:\]\(|href=["'])\/([a-z-]+)\/([^)"'#\s]+?)(?:\.html)?(?:#[^)"'\s]*)?["')\s]/g;

/** A guide's link to a page of a record, a guide or a calculator that is not there: the build would stop at it. */
export const linkLeadsNowhere: ShelfRule = {
  id: 'link-leads-nowhere',
  level: 'error',
  on: 'shelf',
  check: (shelf) => {
    const pages = pagesOf(shelf);
    return [...shelf.files.values()].flatMap(({ role, file, text }) =>
      role.is !== 'guide'
        ? []
        : [...text.matchAll(LINK)].flatMap(({ 0: whole, 1: folder = '', 2: id = '', index }): Fault[] => {
            const there = pages.get(folder);
            if (!there || id === 'index' || there.has(id)) return [];
            const start = index + whole.indexOf('/');
            const nearest = nearestOf(id, [...there])?.word;
            return [
              {
                at: { file, start, end: start + whole.slice(whole.indexOf('/')).search(/["')\s]/) },
                found: `This link leads to no page: there is no "${id}" in ${folder}.`,
                ...(nearest !== undefined && { expected: `Nearest: "${nearest}".` }),
                byHand: 'lead it to a page that is there, or take the link out',
              },
            ];
          }),
    );
  },
};

/** Ids that have a page, by the folder of their address. */
function pagesOf({ ids, moved, guides }: DraftShelf): Map<string, ReadonlySet<string>> {
  const pages = new Map<string, ReadonlySet<string>>(
    KIND_NAMES.filter((kind) => kind !== 'case').map((kind) => [
      KINDS[kind].folder,
      new Set([...ids[kind], ...moved.filter((each) => each.kind === kind).map(({ id }) => id)]),
    ]),
  );
  pages.set('guides', new Set(guides));
  pages.set('calculators', new Set(CALCULATOR_IDS));
  pages.set('walks', ids.symptom);
  return pages;
}
