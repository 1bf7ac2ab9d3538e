/**
 * A host answers any address it does not know with 404.html, also deep in folders, where that page's relative addresses
 * lead astray. This finds the top of the site and goes to the page's own place. It stands in the page itself, since no
 * file could be found from there.
 */
const OWN = '404.html';

async function findTop(): Promise<URL | undefined> {
  let folder = new URL('.', location.href);
  for (let depth = 0; depth < 12; depth++) {
    const answer = await fetch(new URL('headertank.webmanifest', folder), { method: 'HEAD' }).catch(
      () => undefined,
    );
    // Some hosts answer everything with a page.
    if (answer?.ok && !answer.headers.get('content-type')?.startsWith('text/html')) return folder;
    if (folder.pathname === '/') return undefined;
    folder = new URL('..', folder);
  }
  return undefined;
}

if (!location.pathname.endsWith(`/${OWN}`))
  findTop().then((top) => {
    if (top) location.replace(new URL(OWN, top));
  });
