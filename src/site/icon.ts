/** The site's sign, in the page itself: a file would be asked for with every page that is opened. */
import { readFileSync } from 'node:fs';

export const ICON = `data:image/svg+xml,${encodeURIComponent(readFileSync('public/icon.svg', 'utf8'))}`;
