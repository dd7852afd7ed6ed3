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

/** A photo as base64, for a file. */
export async function photoText(photo: Blob): Promise<string> {
  const bytes = new Uint8Array(await photo.arrayBuffer());
  let binary = '';
  // A call takes only so many arguments.
  for (let at = 0; at < bytes.length; at += 8192) binary += String.fromCharCode(...bytes.subarray(at, at + 8192));
  return btoa(binary);
}

/** The photo that a file holds as base64; always called a JPEG, so that no browser takes it for a page. */
export const photoFromText = (text: string | undefined): Blob | null =>
  text === undefined
    ? null
    : new Blob([Uint8Array.from(atob(text), (letter) => letter.charCodeAt(0))], { type: 'image/jpeg' });
