/**
 * What this site calls itself in the storage of its host.
 *
 * A browser gives one storage to everything on a host, and to every page opened from a folder: sites in two folders would read
 * each other's cards. So a site in a folder has the folder in its name; one at the top of its host is plain `headertank`.
 */
export function siteName(): string {
  // Tests of the parts below have no page.
  return nameAt(typeof window === 'undefined' ? '/' : (window.headertank?.root?.pathname ?? '/'));
}

/** @param path of the site's top folder */
export const nameAt = (path: string) => (path === '/' ? PLAIN_NAME : PLAIN_NAME + path);

/** The name at the top of a host, and of every site before sites had a name of their own. */
export const PLAIN_NAME = 'headertank';
