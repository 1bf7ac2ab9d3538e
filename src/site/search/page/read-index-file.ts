/** Stands in for `fetch` inside pagefind's client: its files come with the script, from the site, or from the stick's copy. */
import core from 'pagefind-core';
import { loadScript } from '../../browser/load-script.ts';
import { ROOT } from './root.ts';

declare global {
  var headertankIndexFiles: Record<string, string> | undefined;
}

/** The made-up folder the client believes its files are in. */
export const INDEX_FOLDER = '/pagefind/';

/** @param address what the client asks for: the made-up folder, a name, sometimes a time */
export async function readIndexFile(address: string): Promise<Response> {
  const name = address.slice(INDEX_FOLDER.length).replace(/\?.*$/, '');
  const travelling = core[name];
  if (travelling !== undefined) return answer(travelling);
  if (location.protocol !== 'file:') return globalThis.fetch(new URL(`pagefind/${name}`, ROOT));
  if (!globalThis.headertankIndexFiles) await loadScript('search-files');
  const copy = globalThis.headertankIndexFiles?.[name];
  return copy === undefined ? new Response(null, { status: 404 }) : answer(copy);
}

function answer(base64: string): Response {
  return new Response(Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0)));
}
