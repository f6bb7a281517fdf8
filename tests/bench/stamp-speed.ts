import { goals, listingPhotos, speedTable } from './stamp/speed';
import { speedInBrowser } from './stamp/speed-in-browser';

/** Time and memory of reading a listing's photos: each recogniser alone in fresh processes, and the extension. */
export async function bench(): Promise<void> {
  const alone = await speedTable();
  console.log('24 photos of 1200 × 900, plain WASM, one thread; in brackets the ratio to tesseract.js in this run');
  if (alone === null) console.log('skipped: memory is measured on Linux only');
  else console.table(alone);
  console.log(
    `goals: at most ${goals.photoMs} ms a photo, ${goals.readyMs} ms to start, ${goals.peakMb} MB for the listing, on two free cores`,
  );
  const inBrowser = await speedInBrowser(await listingPhotos());
  if (inBrowser !== null) console.table(inBrowser);
}
