/**
 * On every page. One script: what could wait until the page is there is so little that a request of its own and what both need
 * twice weighed a third of it more.
 */
import './top-line.ts';
import './offline.ts';
import './paper-line.ts';
import './units-choice.ts';
