/** Longest side kept, in pixels: enough to count cells on a frame. */
const LONGEST = 1600;
const QUALITY = 0.82;

/**
 * A photograph small enough to keep by the hundred. Drawn anew, it loses what the camera wrote into the file, the
 * place above all. A picture that cannot be drawn is kept as it is.
 */
export async function smaller(file: Blob): Promise<Blob> {
  try {
    const picture = await createImageBitmap(file);
    const scale = Math.min(1, LONGEST / Math.max(picture.width, picture.height));
    const canvas = document.createElement('canvas');
    canvas.width = Math.round(picture.width * scale);
    canvas.height = Math.round(picture.height * scale);
    canvas.getContext('2d')?.drawImage(picture, 0, 0, canvas.width, canvas.height);
    picture.close();
    const drawn = await new Promise<Blob | null>((done) => canvas.toBlob(done, 'image/jpeg', QUALITY));
    return drawn ?? file;
  } catch {
    return file;
  }
}
