/** The sheets a card becomes, fetched once the card stands. */
import { layOutSheet } from '../job/page/paper.ts';
import '../browser/page-globals.ts';

window.headertank.layOutSheet = layOutSheet;
