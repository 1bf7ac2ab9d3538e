/** The way onto the job card, for a page where few take it: loaded when it is taken. */
import { putOnJobCard } from '../job/page/hand-over.ts';
import '../browser/page-globals.ts';

window.headertank.putOnJobCard = putOnJobCard;
