/** In the head of every page, and the only script that a page waits for: other colours would flash before the chosen ones. */
import { showColours } from '../about/page/colours.ts';

showColours();
// Chosen on the page from which the browser leads back.
window.onpageshow = showColours;
