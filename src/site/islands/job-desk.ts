/** From device to device, fetched when a card goes over. */
import { desk } from '../job/page/desk.ts';
import '../browser/page-globals.ts';

window.headertank.jobDesk = desk;
