/** Pictures for the card, fetched when the first is taken. */
import { smallerPicture } from '../job/page/smaller-picture.ts';
import '../browser/page-globals.ts';

window.headertank.smallerPicture = smallerPicture;
