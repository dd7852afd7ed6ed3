/** Longest side of a kept photo, px: enough to see a void, small enough to keep a class of them. */
const LONGEST = 1024;

/**
 * A photo made smaller and written anew, so that the place and time a camera puts into its files are gone.
 * @throws when the file is no picture
 */
export async function smallPhoto(file: Blob): Promise<Blob> {
  const picture = await createImageBitmap(file);
  const scale = Math.min(1, LONGEST / Math.max(picture.width, picture.height));
  const canvas = document.createElement('canvas');
  canvas.width = Math.max(1, Math.round(picture.width * scale));
  canvas.height = Math.max(1, Math.round(picture.height * scale));
  canvas.getContext('2d')?.drawImage(picture, 0, 0, canvas.width, canvas.height);
  picture.close();
  return new Promise((resolve, reject) =>
    canvas.toBlob((blob) => (blob ? resolve(blob) : reject(new Error('no picture'))), 'image/jpeg', 0.8),
  );
}
