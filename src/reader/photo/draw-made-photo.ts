/** Longest side in pixels of a picture that is drawn: what the reader reads of a photo is no larger. */
const longestSide = 4_000;

/**
 * A picture that the page shows, drawn again from the page: one that it made itself, when its address was withdrawn or
 * does not answer; one whose address leads on to another that the extension does not follow. Null
 * when the page does not show it, or the canvas is tainted: a picture with parts of another site must not be looked
 * into, and the browser does not let us.
 */
export async function drawMadePhoto(url: string): Promise<Blob | null> {
  const image = [...document.images].find(({ currentSrc, src }) => currentSrc === url || src === url);
  if (!image?.complete || image.naturalWidth === 0) return null;
  const shrink = Math.min(1, longestSide / Math.max(image.naturalWidth, image.naturalHeight));
  const canvas = document.createElement('canvas');
  canvas.width = Math.max(1, Math.round(image.naturalWidth * shrink));
  canvas.height = Math.max(1, Math.round(image.naturalHeight * shrink));
  try {
    canvas.getContext('2d')?.drawImage(image, 0, 0, canvas.width, canvas.height);
    return await new Promise((resolve) => canvas.toBlob(resolve, 'image/png'));
  } catch {
    return null;
  }
}
