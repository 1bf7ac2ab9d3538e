/** Running text in the reader's units: loaded once other units than metric are chosen. */
import '../every-page/texts-in-units.ts';
