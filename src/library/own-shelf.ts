/** The demonstration shelf as the start of a shop's own: what goes, and the workshop's file as it is then. Writes nothing. */
import { parseDocument } from 'yaml';
import { KINDS } from '../model/kinds.ts';
import { type Shop, shopSchema } from '../model/shop.ts';
import type { Shelf } from './shelf.ts';

/** What a shop has to say of itself; the other fields of its file stay as they are. */
export interface OwnShop {
  name: string;
  units: Shop['units'];
  currency: string;
  'labour-rate': number;
  repository?: string | undefined;
}

/** What is removed, by number, and the paths from the shelf's folder. */
export interface OwnShelf {
  vehicles: number;
  notes: number;
  cases: number;
  paths: string[];
  /** The text of shop.yaml. */
  shop: string;
}

/**
 * Invented vehicles go, every note of the invented workshop, and the cases that are told of those vehicles. Complaints,
 * causes, tests, procedures and guides are the trade's and stay.
 * @param shelf as it was read
 * @param shelfName how its folder is shown, such as content
 * @param shopText what stands in shop.yaml now
 * @throws Error when the shelf is a shop's own already, or when what the shop says of itself does not fit
 */
export function ownShelf(shelf: Shelf, shelfName: string, shopText: string, own: OwnShop): OwnShelf {
  if (!shelf.shop.invented)
    throw new Error(
      `This is the shelf of ${shelf.shop.name} already: "invented: false" stands in shop.yaml. Nothing was touched.`,
    );
  const vehicles = [...shelf.records.vehicle.values()].filter(({ data }) => data.invented);
  const gone = new Set(vehicles.map(({ id }) => id));
  const notes = [...shelf.records.note.values()];
  const cases = [...shelf.records.case.values()].filter(({ data }) => gone.has(data.vehicle));
  const inShelf = (file: string) => (shelfName === '' ? file : file.slice(shelfName.length + 1));
  const moved = shelf.moved
    .filter(({ kind, to }) => kind === 'vehicle' && gone.has(to))
    .map(({ id }) => `${KINDS.vehicle.folder}/${id}.yaml`);
  return {
    vehicles: vehicles.length,
    notes: notes.length,
    cases: cases.length,
    paths: [...[...vehicles, ...notes, ...cases].map(({ file }) => inShelf(file)), ...moved],
    shop: shopFile(shopText, own),
  };
}

/** Comments and what is not asked stay; what speaks of the invented workshop does not. */
function shopFile(text: string, own: OwnShop): string {
  const document = parseDocument(text);
  const fields = {
    name: own.name,
    invented: false,
    units: own.units,
    currency: own.currency,
    'labour-rate': own['labour-rate'],
    repository: own.repository,
    host: undefined,
    branch: undefined,
    hours: undefined,
    'sheet-footer': `${own.name}. Readings were taken on the day shown; the maker’s procedure and local rules stand above this sheet.`,
  };
  for (const [name, value] of Object.entries(fields)) {
    if (value === undefined) document.delete(name);
    else document.set(name, value);
  }
  const fits = shopSchema.safeParse(document.toJS());
  const [issue] = fits.error?.issues ?? [];
  if (issue) throw new Error(`${issue.path.join('.')}: ${issue.message}`);
  return document.toString({ lineWidth: 110 });
}
