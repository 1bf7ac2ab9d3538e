/** The same record as anybody would write it down: headings, paragraphs and lists, with links to other records. */
import { KINDS } from '../../../../src/model/kinds.ts';
import type { MadeRecord } from './shelf.ts';

/** A run of text, or a link. */
export type Piece = string | { text: string; path: string };

export interface Section {
  heading: string;
  /** One paragraph, or a list. */
  items: readonly Piece[][];
  isList: boolean;
}

export interface Document {
  /** Where it stands: causes/crack-left-heater-pipe. */
  path: string;
  title: string;
  /** For the page's head. */
  description: string;
  sections: Section[];
}

/** Fields that the page's head says already. */
const IN_HEAD = new Set(['title']);

export function documentsOf(records: readonly MadeRecord[]): Document[] {
  const links = new Map(records.map((record) => [record.id, { text: record.title, path: pathOf(record) }]));
  return records.map((record) => ({
    path: pathOf(record),
    title: record.title,
    description: descriptionOf(record),
    sections: Object.entries(record.data).flatMap(([name, value]) =>
      IN_HEAD.has(name) ? [] : [sectionOf(name, value, links)],
    ),
  }));
}

/** One list of all records for each kind, as every site has them. */
export function listsOf(records: readonly MadeRecord[]): Document[] {
  return FOLDERS.map(({ folder, many }) => ({
    path: `${folder}/index`,
    title: many,
    description: `${many} of the workshop.`,
    sections: [
      {
        heading: 'All',
        isList: true,
        items: records
          .filter(({ kind }) => KINDS[kind].folder === folder)
          .map((record) => [{ text: record.title, path: pathOf(record) }]),
      },
    ],
  }));
}

/** The kinds as every site's menu shows them. */
export const FOLDERS = Object.values(KINDS).map(({ folder, many }) => ({ folder, many }));

/** Path of a record's page from the root, without an ending. */
export function pathOf({ kind, id }: Pick<MadeRecord, 'kind' | 'id'>): string {
  return `${KINDS[kind].folder}/${id}`;
}

/** The first whole sentences of a record. */
function descriptionOf({ title, data }: MadeRecord): string {
  const texts = Object.values(data).filter((value) => typeof value === 'string');
  return texts.find((text) => text.endsWith('.')) ?? title;
}

type Links = ReadonlyMap<string, { text: string; path: string }>;

function sectionOf(name: string, value: unknown, links: Links): Section {
  const isList = typeof value === 'object' && value !== null;
  const items = Array.isArray(value)
    ? value.map((each) => piecesOf(each, links))
    : isList
      ? Object.entries(value).map(([key, each]) => [linked(key, links), ': ', ...piecesOf(each, links)])
      : [piecesOf(value, links)];
  return { heading: headingOf(name), items, isList };
}

function piecesOf(value: unknown, links: Links): Piece[] {
  if (Array.isArray(value)) return joined(value.map((each) => piecesOf(each, links)));
  if (typeof value === 'object' && value !== null)
    return joined(
      Object.entries(value).map(([key, each]) => [linked(key, links), ': ', ...piecesOf(each, links)]),
    );
  return [linked(String(value), links)];
}

function joined(parts: Piece[][]): Piece[] {
  return parts.flatMap((part, at) => (at === 0 ? part : [' · ', ...part]));
}

function linked(text: string, links: Links): Piece {
  return links.get(text) ?? text;
}

function headingOf(name: string): string {
  return `${name[0]?.toUpperCase() ?? ''}${name.slice(1).replaceAll('-', ' ')}`;
}
