/** Tags that a picture's pixels are read by. Source: TIFF 6.0, appendix A; 347 from its Technical Note 2. */
export const tags = {
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

const known = new Map<number, Tag>(Object.entries(tags).map(([name, tag]) => [tag, name as Tag]));

/** Bytes of a whole number by its type: BYTE, SHORT, LONG and UNDEFINED. Source: TIFF 6.0, section 2. */
const widths: Readonly<Record<number, 1 | 2 | 4>> = { 1: 1, 3: 2, 4: 4, 7: 1 };
/** A field of more values is none that a photo has: strips of one row each of the tallest picture, in four planes. */
const mostValues = 1 << 17;

/**
 * The fields of a TIFF file's first picture; 'cut' where the file ends before them, null where it is no TIFF of this form.
 * Source: TIFF 6.0, section 2.
 */
export function fieldsOf(bytes: Uint8Array): Fields | 'cut' | null {
  if (bytes.length < 4) return null;
  const order = (bytes[0]! << 8) | bytes[1]!;
  if (order !== 0x4949 && order !== 0x4d4d) return null;
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const isLittle = order === 0x4949;
  if (view.getUint16(2, isLittle) !== 42) return null;
  if (bytes.length < 8) return 'cut';
  const first = view.getUint32(4, isLittle);
  // A file of nothing but its head has no directory there.
  if (first < 8) return null;
  if (first + 2 > bytes.length) return 'cut';
  const count = view.getUint16(first, isLittle);
  if (first + 2 + 12 * count > bytes.length) return 'cut';
  const fields = new Map<Tag, readonly number[]>();
  for (let entry = 0; entry < count; entry++) {
    const at = first + 2 + 12 * entry;
    const tag = known.get(view.getUint16(at, isLittle));
    if (tag === undefined || fields.has(tag)) continue;
    const numbers = numbersAt(view, at, isLittle);
    if (numbers === 'cut') return 'cut';
    if (numbers !== null) fields.set(tag, numbers);
  }
  return fields;
}

function numbersAt(view: DataView, at: number, isLittle: boolean): number[] | 'cut' | null {
  const width = widths[view.getUint16(at + 2, isLittle)];
  const count = view.getUint32(at + 4, isLittle);
  if (width === undefined || count > mostValues) return null;
  // What takes more than four bytes stands elsewhere.
  const from = count * width <= 4 ? at + 8 : view.getUint32(at + 8, isLittle);
  if (from + count * width > view.byteLength) return 'cut';
  return Array.from({ length: count }, (_, index) => {
    const place = from + index * width;
    if (width === 1) return view.getUint8(place);
    return width === 2 ? view.getUint16(place, isLittle) : view.getUint32(place, isLittle);
  });
}
