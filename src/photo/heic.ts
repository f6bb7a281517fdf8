import type { PixelImage } from './types';

/** One picture of a file, as libheif's own interface for JavaScript gives it. Source: libheif 1.23, post.js. */
interface HeifPicture {
  get_width(): number;
  get_height(): number;
  is_primary(): boolean;
  /** Writes red, green, blue and alpha, turned as the file says; null where it cannot be decoded. */
  display(into: PixelImage, done: (image: PixelImage | null) => void): void;
}

/** What of libheif is used. One serves one photo: its memory never shrinks, and goes with it. */
export interface HeifLibrary {
  HeifDecoder: new () => { decode(bytes: Uint8Array): HeifPicture[] };
}

/** What libheif's script gives: the library, usable when it is ready. */
export type StartHeif = (options: {
  wasmBinary: ArrayBuffer | Uint8Array;
  print: () => void;
  printErr: () => void;
}) => HeifLibrary & { ready: Promise<unknown> };

/** A library for one photo, from its script and its WASM. It says nothing on the console: what it cannot read is null here. */
export async function startedHeif(start: StartHeif, wasmBinary: ArrayBuffer | Uint8Array): Promise<HeifLibrary> {
  const silent = (): void => {};
  const library = start({ wasmBinary, print: silent, printErr: silent });
  await library.ready;
  return library;
}

/**
 * The main picture of a HEIC or HEIF file: upright, in its own size, as far see-through as it is; null where it does not hold
 * one whole.
 */
export async function decodeHeic(bytes: Uint8Array, library: HeifLibrary): Promise<PixelImage | null> {
  const pictures = new library.HeifDecoder().decode(bytes);
  const picture = pictures.find((one) => one.is_primary()) ?? pictures[0];
  if (picture === undefined) return null;
  const [width, height] = [picture.get_width(), picture.get_height()];
  const data = new Uint8ClampedArray(width * height * 4);
  const shown = await new Promise<PixelImage | null>((done) => picture.display({ width, height, data }, done));
  return shown && { width, height, data };
}
