/** The results of practice as a code on the screen. */
import '../browser/page-globals.ts';
import { codePicture } from '../browser/code-picture.ts';

window.headertank.codePicture = codePicture;
