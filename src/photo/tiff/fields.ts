import { directoryAt, numbersOf, tiffAt } from './directory';

/** Tags that a picture's pixels are read by. Source: TIFF 6.0, appendix A; 347 from its Technical Note 2. */
const tags = {
  subfile: 254,
  width: 256,
  height: 257,
  bits: 258,
  compression: 259,
  photometric: 262,
  stripOffsets: 273,
  orientation: 274,
  samples: 277,
  stripRows: 278,
  stripBytes: 279,
  planar: 284,
  predictor: 317,
  colours: 320,
  tileWidth: 322,
  tileHeight: 323,
  tileOffsets: 324,
  tileBytes: 325,
  extra: 338,
  format: 339,
  jpegTables: 347,
} as const;
export type Tag = keyof typeof tags;

/** Whole numbers of the first directory's fields; a field that is not there, or holds none, is not in it. */
export type Fields = ReadonlyMap<Tag, readonly number[]>;

/**
 * The fields of a TIFF file's first picture; 'cut' where the file ends before them, null where it is no TIFF of this form.
 */
export function fieldsOf(bytes: Uint8Array): Fields | 'cut' | null {
  const tiff = tiffAt(bytes, 0);
  if (tiff === null || tiff === 'cut') return tiff;
  const { entries, isWhole } = directoryAt(tiff, tiff.first);
  if (!isWhole) return 'cut';
  const fields = new Map<Tag, readonly number[]>();
  for (const [name, tag] of Object.entries(tags)) {
    const numbers = numbersOf(tiff, entries.get(tag));
    if (numbers === 'cut') return 'cut';
    if (numbers !== null) fields.set(name as Tag, numbers);
  }
  return fields;
}
