/** Pixels of the longer side: enough to read a stamp, and forty of them in the room of one from the camera. */
const LONGEST_SIDE = 1280;
const QUALITY = 0.8;

/**
 * A picture from the camera made smaller; what the camera wrote into it, such as the place, is left behind.
 * @throws when the file is no picture
 */
export async function smallerPicture(file: Blob): Promise<{ blob: Blob; wide: number; high: number }> {
  const picture = await createImageBitmap(file, { imageOrientation: 'from-image' });
  const scale = Math.min(1, LONGEST_SIDE / Math.max(picture.width, picture.height));
  const [wide, high] = [picture.width, picture.height].map((side) => Math.max(1, Math.round(side * scale)));
  const canvas = document.createElement('canvas');
  canvas.width = wide ?? 1;
  canvas.height = high ?? 1;
  canvas.getContext('2d')?.drawImage(picture, 0, 0, canvas.width, canvas.height);
  picture.close();
  const blob = await new Promise<Blob | null>((resolve) => canvas.toBlob(resolve, 'image/jpeg', QUALITY));
  if (!blob) throw new Error('The picture cannot be made smaller');
  return { blob, wide: canvas.width, high: canvas.height };
}
