/** The whole shelf as plain data, for scripts that know nothing of this program: `shelf.json` of the site. */
import { createHash } from 'node:crypto';
import { KIND_NAMES, KINDS, type Kind, SOMETHING_ELSE } from '../model/kinds.ts';
import type { Quantity } from '../model/quantity.ts';
import type { Limit } from '../model/scale.ts';
import { SCHEMAS } from '../model/schemas.ts';
import { quantityText } from '../model/show-quantity.ts';
import { coherent, dimensionOf, SI_SYMBOLS } from '../model/si-units.ts';
import { findUnit, fromSI } from '../model/units.ts';
import { referencesIn } from './schema-tree.ts';
import type { Shelf } from './shelf.ts';

/** Raised when a field goes away or changes what it means. */
export const SHELF_FORM = { form: 'headertank shelf', 'form-version': 2 } as const;
/** Name of the schema's file, which lies beside the shelf's. */
export const SHELF_SCHEMA = 'shelf.schema.json';

type Plain = string | number | boolean | null | Plain[] | { [key: string]: Plain };

interface PlainRecord {
  /** Of its page, from the root of the site; a case has none. */
  address?: string;
  /** File it is written in. */
  file: string;
  record: Plain;
  /** Every record it names: kind, id, address; null where no page is meant, as of something else. */
  links: Partial<Record<Kind, Record<string, string | null>>>;
}

export interface WholeShelf {
  $schema: string;
  form: string;
  'form-version': number;
  /** Changes when a record does. */
  version: string;
  software: string;
  licence: string;
  shop: Plain;
  records: Record<Kind, Record<string, PlainRecord>>;
  moved: { kind: Kind; id: string; to: string }[];
  guides: { id: string; address: string }[];
  words: Plain;
  learning: Plain;
  counts: Plain;
}

/**
 * @param shelf read and checked
 * @param from the project’s package.json, as far as the shelf says it
 */
export function wholeShelf(
  shelf: Shelf,
  { name, version, license }: { name: string; version: string; license: string },
): WholeShelf {
  const records = Object.fromEntries(
    KIND_NAMES.map((kind) => [
      kind,
      Object.fromEntries([...shelf.records[kind].values()].map((entry) => [entry.id, plainRecord(entry)])),
    ]),
  ) as WholeShelf['records'];
  return {
    $schema: SHELF_SCHEMA,
    ...SHELF_FORM,
    version: createHash('sha256').update(JSON.stringify(records)).digest('hex').slice(0, 16),
    software: `${name} ${version}`,
    licence: license,
    shop: plain(shelf.shop),
    records,
    moved: shelf.moved,
    guides: shelf.guides.map((id) => ({ id, address: `guides/${id}.html` })),
    words: plain(shelf.words),
    learning: plain(shelf.learning),
    counts: plain(shelf.counts),
  };
}

function plainRecord(entry: { kind: Kind; id: string; file: string; data: unknown }): PlainRecord {
  const links: PlainRecord['links'] = {};
  for (const { to, id } of referencesIn(SCHEMAS[entry.kind], entry.data)) {
    const ofKind = links[to] ?? {};
    links[to] = ofKind;
    ofKind[id] = addressOf(to, id) ?? null;
  }
  const address = addressOf(entry.kind, entry.id);
  return { ...(address !== undefined && { address }), file: entry.file, record: plain(entry.data), links };
}

function addressOf(kind: Kind, id: string): string | undefined {
  return kind !== 'case' && id !== SOMETHING_ELSE ? `${KINDS[kind].folder}/${id}.html` : undefined;
}

/** Data as it goes into JSON: what a text was read as is written out with its text. */
function plain(value: unknown): Plain {
  if (typeof value === 'string' || typeof value === 'boolean') return value;
  // JSON has no number that is none.
  if (typeof value === 'number') return Number.isFinite(value) ? value : null;
  if (Array.isArray(value)) return value.map(plain);
  if (typeof value !== 'object' || value === null) return null;
  if (isQuantity(value)) return plainQuantity(value);
  if (isLimit(value)) return plainLimit(value);
  return Object.fromEntries(
    Object.entries(value).flatMap(([key, each]) => (each === undefined ? [] : [[key, plain(each)]])),
  );
}

function isQuantity(value: object): value is Quantity {
  return 'dimension' in value && 'low' in value && 'high' in value && 'decimals' in value;
}

function isLimit(value: object): value is Limit {
  return 'text' in value && 'times' in value && 'plus' in value;
}

function plainQuantity(quantity: Quantity): Plain {
  const { dimension, low, high, unit, decimals } = quantity;
  const written = findUnit(unit);
  const inUnit = (inside: number) =>
    written === undefined ? inside : Number(fromSI(inside, written).toFixed(decimals));
  return {
    // No-break and thin spaces are for pages.
    text: quantityText(quantity).replace(/[\u00a0\u2009]/g, ' '),
    measures: dimension,
    unit,
    low: inUnit(low),
    high: inUnit(high),
    si: { unit: SI_SYMBOLS[dimension], low: coherent(low, dimension), high: coherent(high, dimension) },
  };
}

function plainLimit({ text, figure, times, plus, unit }: Limit): Plain {
  const dimension = dimensionOf(unit);
  return {
    text,
    ...(figure !== undefined && { figure }),
    times,
    plus: coherent(plus, dimension),
    // A figure by itself has the unit of that figure.
    ...(unit !== undefined && { unit: SI_SYMBOLS[dimension] }),
  };
}
