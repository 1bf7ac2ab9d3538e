/** What stands under and beside the questions of a walk: fetched once somebody comes near an answer. */
import '../browser/page-globals.ts';
import { Beside } from '../walk/page/beside.ts';

window.headertank.walkBeside = (host, texts) => new Beside(host, texts);
