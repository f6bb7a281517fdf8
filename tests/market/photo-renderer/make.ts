import { mkdirSync, writeFileSync } from 'node:fs';
import { photoSpecs } from '../photo-specs';
import { jpegOf, photograph } from './photograph';

/** Writes the demo marketplace's photographs; names given as arguments (parts of file names) limit which. */
const folder = new URL('../site/photos/', import.meta.url);
mkdirSync(folder, { recursive: true });
const wanted = process.argv.slice(2);
let bytes = 0;
for (const spec of photoSpecs) {
  if (wanted.length > 0 && !wanted.some((part) => spec.file.includes(part))) continue;
  const jpeg = await jpegOf(photograph(spec), spec.quality);
  writeFileSync(new URL(spec.file, folder), jpeg);
  bytes += jpeg.length;
  console.log(`${spec.file} ${Math.round(jpeg.length / 1024)} KB`);
}
console.log(`${Math.round(bytes / 1024)} KB in all`);
