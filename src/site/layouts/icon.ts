/** The site's sign, in the page itself: a file would be asked for with every page that is opened. */
import { readFileSync } from 'node:fs';

const drawn = readFileSync('public/icon.svg', 'utf8').trim();

// Written out but for what an address or a tag would end at, it packs better than with a percent sign for every mark.
export const ICON = `data:image/svg+xml,${drawn.replaceAll('"', "'").replace(/[#<>]/g, encodeURIComponent)}`;
