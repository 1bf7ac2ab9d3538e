/** What every page has and none needs at first: it is fetched when the page is there. */
import './offline.ts';
import './paper-line.ts';
import './units-choice.ts';
