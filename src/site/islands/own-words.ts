/** What the chosen vehicle's record says of getting at things and of its air: asked for where a page has room for it. */
import '../browser/page-globals.ts';
import { showOwnWords } from '../vehicle/page/own-words.ts';

const show = () => showOwnWords(document, window.headertank.vehicle, window.headertank.habit);
document.addEventListener('headertank:change', show);
show();
