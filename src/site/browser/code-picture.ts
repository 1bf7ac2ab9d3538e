import encodeQR from 'qr';
import { element } from './element.ts';

/**
 * A code as a picture: drawn, so that nothing in it becomes markup.
 * @param encoding the letters of the text, where it has only those of one mode
 */
export function codePicture(text: string, encoding?: 'alphanumeric'): HTMLCanvasElement {
  const dots = encodeQR(text, 'raw', { ecc: 'low', border: 4, ...(encoding && { encoding }) });
  const scale = Math.max(3, Math.floor(900 / dots.length));
  const canvas = element('canvas', {
    width: String(dots.length * scale),
    height: String(dots.length * scale),
  });
  const pen = canvas.getContext('2d');
  if (!pen) return canvas;
  // Black on white whatever the theme: cameras read no other.
  pen.fillStyle = '#fff';
  pen.fillRect(0, 0, canvas.width, canvas.height);
  pen.fillStyle = '#000';
  for (const [y, row] of dots.entries())
    for (const [x, dark] of row.entries()) if (dark) pen.fillRect(x * scale, y * scale, scale, scale);
  return canvas;
}
