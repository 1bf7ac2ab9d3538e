/** Which kind each page of the index is: far smaller beside the index than a filter in it, which slows every query. */
import { gunzipSync } from 'node:zlib';
import { z } from 'zod';
import type { KindsOfPages } from '../search/kinds-of-pages.ts';
import type { IndexFiles } from './search-index.ts';

/** As the page's marks call it; a page without one is just a page. */
const Fragment = z.object({ meta: z.object({ kind: z.string().default('page') }) });

/** What pagefind puts before the text of a file. */
const SIGNATURE = 'pagefind_dcd';
const FRAGMENT = /^fragment\/(.+)\.pf_fragment$/;

/**
 * Kinds of all pages of the index, in the order of their ids.
 * @param files the index, by name
 */
export function kindsOfPages(files: IndexFiles): KindsOfPages {
  const pages = [...files].flatMap(([name, bytes]) => {
    const id = FRAGMENT.exec(name)?.[1];
    return id === undefined ? [] : [{ id, kind: kindOf(bytes) }];
  });
  pages.sort((a, b) => (a.id < b.id ? -1 : 1));
  const kinds = [...new Set(pages.map(({ kind }) => kind))].sort();
  return { kinds, ofPages: pages.map(({ kind }) => kinds.indexOf(kind)) };
}

function kindOf(fragment: Uint8Array): string {
  const text = gunzipSync(fragment).toString().slice(SIGNATURE.length);
  return Fragment.parse(JSON.parse(text)).meta.kind;
}
