import { type Fields, fieldsOf, type Tag } from './fields';

/** How a file's pixels are packed. Source: TIFF 6.0, sections 9 and 13; 7 and 8 from its Technical Notes 2 and 1. */
type Packing = 'none' | 'lzw' | 'jpeg' | 'deflate' | 'packbits';
const packings: Readonly<Record<number, Packing>> = {
  1: 'none',
  5: 'lzw',
  7: 'jpeg',
  8: 'deflate',
  32773: 'packbits',
  32946: 'deflate',
};

/** What the samples of a pixel mean. Source: TIFF 6.0, PhotometricInterpretation; YCbCr is read out of JPEGs alone. */
export type Meaning = 'white-is-zero' | 'grey' | 'rgb' | 'palette' | 'cmyk' | 'ycbcr';
const meanings: Readonly<Record<number, Meaning>> = {
  0: 'white-is-zero',
  1: 'grey',
  2: 'rgb',
  3: 'palette',
  5: 'cmyk',
  6: 'ycbcr',
};
/** Samples that a pixel has at least; what it has beside them is alpha, or nothing that is seen. */
export const leastSamples: Readonly<Record<Meaning, number>> = {
  'white-is-zero': 1,
  grey: 1,
  rgb: 3,
  palette: 1,
  cmyk: 4,
  ycbcr: 3,
};

/** What an alpha sample does: nothing, or colours that it was multiplied into already, or not yet. */
type Alpha = 'none' | 'in-colours' | 'beside';

/** All that the pixels of a file's first picture are read by. Sides in stored pixels; pieces are its strips or tiles. */
export interface TiffLayout {
  width: number;
  height: number;
  /** Which side is up, 1 to 8, as in EXIF. */
  orientation: number;
  packing: Packing;
  meaning: Meaning;
  bits: 1 | 2 | 4 | 8 | 16;
  samples: number;
  alpha: Alpha;
  /** Samples lie plane by plane, each in pieces of its own, and not pixel by pixel. */
  isPlanar: boolean;
  isDifferences: boolean;
  isLittle: boolean;
  colours: readonly number[];
  jpegTables: readonly number[];
  pieceWidth: number;
  pieceHeight: number;
  /** Left of the picture's right edge a tile may go on; a strip ends with the picture's last row. */
  isTiled: boolean;
  offsets: readonly number[];
  lengths: readonly number[];
}

/**
 * How the first picture of a TIFF file is laid out; 'cut' where the file ends before it says so, null for files that are
 * no TIFF, for raw files of cameras, which begin in the same way and hold a small preview first, and for the rarer forms.
 */
export function tiffLayout(bytes: Uint8Array): TiffLayout | 'cut' | null {
  const fields = fieldsOf(bytes);
  if (fields === null || fields === 'cut') return fields;
  const one = (tag: Tag, otherwise: number): number => fields.get(tag)?.[0] ?? otherwise;
  const [width, height] = [one('width', 0), one('height', 0)];
  const packing = packings[one('compression', 1)];
  const meaning = meanings[one('photometric', -1)];
  const bits = bitsOf(fields);
  const samples = one('samples', 1);
  const isPreview = (one('subfile', 0) & 1) === 1;
  if (packing === undefined || meaning === undefined || bits === null || isPreview) return null;
  if (samples < leastSamples[meaning] || samples > 8 || fields.get('format')?.some((format) => format !== 1))
    return null;
  if (packing === 'jpeg' ? bits !== 8 || meaning === 'cmyk' || meaning === 'palette' : meaning === 'ycbcr') return null;
  if (bits < 8 && samples > 1) return null;
  const pieces = piecesOf(fields, width, height);
  if (pieces === null) return null;
  const colours = fields.get('colours') ?? [];
  if (meaning === 'palette' && (bits > 8 || colours.length < 3 << bits)) return null;
  const isPlanar = one('planar', 1) === 2 && samples > 1;
  if (isPlanar && packing === 'jpeg') return null;
  return {
    width,
    height,
    orientation: one('orientation', 1),
    packing,
    meaning,
    bits,
    samples,
    alpha: samples > leastSamples[meaning] ? alphaOf(one('extra', 0)) : 'none',
    isPlanar,
    isDifferences: one('predictor', 1) === 2 && bits >= 8,
    isLittle: bytes[0] === 0x49,
    colours,
    jpegTables: fields.get('jpegTables') ?? [],
    ...pieces,
  };
}

function bitsOf(fields: Fields): TiffLayout['bits'] | null {
  const all = fields.get('bits') ?? [1];
  const first = all[0];
  const isOne = first === 1 || first === 2 || first === 4 || first === 8 || first === 16;
  return isOne && all.every((bits) => bits === first) ? first : null;
}

/** Source: TIFF 6.0, ExtraSamples. */
const alphaOf = (extra: number): Alpha => (extra === 1 ? 'in-colours' : extra === 2 ? 'beside' : 'none');

type Pieces = Pick<TiffLayout, 'pieceWidth' | 'pieceHeight' | 'isTiled' | 'offsets' | 'lengths'>;

function piecesOf(fields: Fields, width: number, height: number): Pieces | null {
  const isTiled = fields.has('tileOffsets');
  const offsets = fields.get(isTiled ? 'tileOffsets' : 'stripOffsets');
  const lengths = fields.get(isTiled ? 'tileBytes' : 'stripBytes');
  const pieceWidth = isTiled ? (fields.get('tileWidth')?.[0] ?? 0) : width;
  const rows = isTiled ? (fields.get('tileHeight')?.[0] ?? 0) : (fields.get('stripRows')?.[0] ?? height);
  if (offsets === undefined || lengths === undefined || offsets.length !== lengths.length) return null;
  return { isTiled, offsets, lengths, pieceWidth, pieceHeight: isTiled ? rows : Math.min(rows, height) };
}
