/** Reads codes where the browser has no reader of its own; fetched when the first is to be read. */
import decodeQR from 'qr/decode.js';

/** Pixels of the longer side that are looked at. */
const LONGEST_SIDE = 1200;

window.codeReader = {
  async detect(source) {
    const picture = await createImageBitmap(source);
    const scale = Math.min(1, LONGEST_SIDE / Math.max(picture.width, picture.height));
    const canvas = document.createElement('canvas');
    canvas.width = Math.round(picture.width * scale);
    canvas.height = Math.round(picture.height * scale);
    const pen = canvas.getContext('2d', { willReadFrequently: true });
    if (!pen) return [];
    pen.drawImage(picture, 0, 0, canvas.width, canvas.height);
    try {
      return [{ rawValue: decodeQR(pen.getImageData(0, 0, canvas.width, canvas.height)) }];
    } catch {
      return [];
    }
  },
};
