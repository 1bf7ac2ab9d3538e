/** Addresses, titles and static paths of record pages. */
import type { Entry } from '../../library/shelf.ts';
import { KINDS, type Kind } from '../../model/kinds.ts';
import { shelf } from './shelf.ts';

/** Address of a record’s page, from the root of the site. */
export function hrefOf(kind: Kind, id: string): string {
  return `/${KINDS[kind].folder}/${id}.html`;
}

/** Every step of a complaint's walk on one page. */
export function hrefOfWalk(symptom: string): string {
  return `/walks/${symptom}.html`;
}

/**
 * A record of the shelf.
 * @throws Error when there is none of this id
 */
export function entryOf<K extends Kind>(kind: K, id: string): Entry<K> {
  const entry = shelf.records[kind].get(id);
  if (!entry) throw new Error(`No ${kind} has the id ${id}`);
  return entry;
}

/** What a record is called; a code with its number before it. */
export function titleOf(kind: Kind, id: string): string {
  return kind === 'code' ? `${codeText(id)} ${entryOf(kind, id).data.title}` : entryOf(kind, id).data.title;
}

/** p0128 as the scan tool shows it. */
export function codeText(id: string): string {
  return id.toUpperCase();
}

/** All entries of a kind, by title. */
export function entriesOf<K extends Kind>(kind: K): Entry<K>[] {
  return [...shelf.records[kind].values()].sort((a, b) => a.data.title.localeCompare(b.data.title, 'en'));
}

/** What getStaticPaths of a record page returns. */
export function recordPaths<K extends Kind>(kind: K) {
  return [...shelf.records[kind].values()].map((entry) => ({ params: { id: entry.id }, props: { entry } }));
}

/** Ids under which a record stood before: its own older ones, and those of records that are merged into it. */
export function idsBefore(kind: Kind, id: string): string[] {
  return shelf.moved.filter((each) => each.kind === kind && each.to === id).map((each) => each.id);
}

/**
 * What getStaticPaths of a record's data returns: beside the record's id every one it had, since a device keeps an id and a
 * script is not sent on as a page is.
 */
export function dataPaths<K extends Kind>(kind: K) {
  return [...shelf.records[kind].values()].flatMap((entry) =>
    [entry.id, ...idsBefore(kind, entry.id)].map((id) => ({ params: { id }, props: { entry } })),
  );
}
