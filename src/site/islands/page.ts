/**
 * On every page. One script: what could wait until the page is there is so little that a request of its own and what both need
 * twice weighed a third of it more.
 */
import '../every-page/top-line.ts';
import '../every-page/offline.ts';
import '../every-page/paper-line.ts';
import '../every-page/search-key.ts';
import '../every-page/timers.ts';
import '../every-page/units-choice.ts';
