import '../../browser/page-globals.ts';

/** Address of the site's top folder: as the page knows it; in a worker, the folder above that of this script. */
export const ROOT = typeof window === 'undefined' ? new URL('..', location.href) : window.headertank.root;
