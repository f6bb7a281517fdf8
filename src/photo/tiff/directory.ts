import { ascii } from '../ascii';

/** Bytes that hold a TIFF: a file of its own, or what a camera wrote into a JPEG. */
interface TiffBytes {
  bytes: Uint8Array;
  view: DataView;
  /** Where it begins in the bytes; offsets in it count from there. */
  start: number;
  isLittle: boolean;
  /** The offset of its first directory. */
  first: number;
}

/** One entry of a directory; `at` is where it lies in the bytes. */
interface Entry {
  type: number;
  count: number;
  at: number;
}

/** Entries by their tag, the first where two have the same; not whole where the bytes end before its last one. */
interface Directory {
  entries: ReadonlyMap<number, Entry>;
  isWhole: boolean;
}

/** Bytes of a whole number by its type: BYTE, SHORT, LONG, UNDEFINED, IFD. Source: TIFF 6.0, section 2; IFD: Technical Note 1. */
const widths: Readonly<Record<number, 1 | 2 | 4>> = { 1: 1, 3: 2, 4: 4, 7: 1, 13: 4 };
const asciiType = 2;
const headLength = 8;
/** A field of more values is none that a photo has: strips of one row each of the tallest picture, in four planes. */
const mostValues = 1 << 17;

/** The TIFF that begins at `start`; 'cut' where the bytes end within its head, null where there is none. Source: TIFF 6.0, section 2. */
export function tiffAt(bytes: Uint8Array, start: number): TiffBytes | 'cut' | null {
  const order = ascii(bytes, start, 2);
  if (bytes.length < start + 4 || (order !== 'II' && order !== 'MM')) return null;
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const isLittle = order === 'II';
  if (view.getUint16(start + 2, isLittle) !== 42) return null;
  if (bytes.length < start + headLength) return 'cut';
  return { bytes, view, start, isLittle, first: view.getUint32(start + 4, isLittle) };
}

/** The directory at an offset, as far as the bytes hold it; within the head there is none, so it is empty. */
export function directoryAt({ view, start, isLittle }: TiffBytes, offset: number): Directory {
  const from = start + offset;
  const entries = new Map<number, Entry>();
  if (offset < headLength) return { entries, isWhole: true };
  if (from + 2 > view.byteLength) return { entries, isWhole: false };
  const said = view.getUint16(from, isLittle);
  const held = Math.min(said, Math.floor((view.byteLength - from - 2) / 12));
  for (let index = 0; index < held; index++) {
    const at = from + 2 + 12 * index;
    const tag = view.getUint16(at, isLittle);
    if (entries.has(tag)) continue;
    entries.set(tag, { type: view.getUint16(at + 2, isLittle), count: view.getUint32(at + 4, isLittle), at });
  }
  return { entries, isWhole: held === said };
}

/** An entry's whole numbers; 'cut' where the bytes end before them, null where there is none, or it holds others, or more than a photo has. */
export function numbersOf(tiff: TiffBytes, entry: Entry | undefined): number[] | 'cut' | null {
  if (entry === undefined) return null;
  const { type, count, at } = entry;
  const width = widths[type];
  if (width === undefined || count > mostValues) return null;
  const { view, isLittle } = tiff;
  const from = valuesFrom(tiff, at, count * width);
  if (from + count * width > view.byteLength) return 'cut';
  return Array.from({ length: count }, (_, index) => {
    const place = from + index * width;
    if (width === 1) return view.getUint8(place);
    return width === 2 ? view.getUint16(place, isLittle) : view.getUint32(place, isLittle);
  });
}

/** An entry's text up to its end sign, of at most so many characters; empty where there is none, or the bytes end before. */
export function textOf(tiff: TiffBytes, entry: Entry | undefined, most: number): string {
  if (entry?.type !== asciiType) return '';
  const { count, at } = entry;
  const length = Math.min(count, most);
  const from = valuesFrom(tiff, at, count);
  if (from + length > tiff.bytes.length) return '';
  return ascii(tiff.bytes, from, length).split('\0', 1)[0]!;
}

/** What takes more than four bytes stands elsewhere than in its entry. */
const valuesFrom = ({ view, start, isLittle }: TiffBytes, at: number, length: number): number =>
  length <= 4 ? at + 8 : start + view.getUint32(at + 8, isLittle);
