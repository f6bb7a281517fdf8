import type { PartOfFile } from '../open';
import type { PixelImage } from '../types';
import { wholeJpeg } from './jpeg-piece';
import { type TiffLayout, tiffLayout } from './layout';
import { addDifferences, colourOf, sampleOf } from './pixels';
import { type Shrunk, shrunk } from './shrunk';
import { fromLzw, fromPackBits } from './unpack';

// Our own and no library: of geotiff 3.0, utif2 4.1 and tiff 7.1, tried on the files of its tests, none bounds what a strip
// unpacks to (geotiff takes 2.5 GB for a file of 1.2 MB); utif2 reads cut files as empty, tiff knows neither JPEG nor PackBits.

/** What the place where the program runs brings: both null where the bytes do not hold it whole. */
interface TiffPorts {
  /** Bytes out of a zlib stream (RFC 1950), at most so many. */
  inflate(packed: Uint8Array<ArrayBuffer>, most: number): Promise<Uint8Array | null>;
  jpeg(file: Uint8Array<ArrayBuffer>): Promise<PixelImage | null>;
}

/**
 * The first picture of a TIFF file: upright, on white, at most so many pixels. Null where the file does not hold it whole,
 * or is of a form that is not read. Source: TIFF 6.0.
 */
export async function decodeTiff(
  bytes: Uint8Array<ArrayBuffer>,
  mostPixels: number,
  ports: TiffPorts,
): Promise<PixelImage | null> {
  const layout = tiffLayout(bytes);
  if (layout === null || layout === 'cut') return null;
  const { width, height } = uprightSize(layout);
  const by = Math.ceil(Math.sqrt((width * height) / mostPixels));
  const whole = shrunk({ left: 0, top: 0, width, height, by });
  return (await readInto([whole], bytes, layout, ports)) ? whole.image() : null;
}

/** Parts of the first picture of a TIFF file in its own pixels, upright; null for one that holds none. */
export async function cutTiff(
  bytes: Uint8Array<ArrayBuffer>,
  parts: readonly PartOfFile[],
  ports: TiffPorts,
): Promise<(PixelImage | null)[]> {
  const layout = tiffLayout(bytes);
  const none = parts.map(() => null);
  if (layout === null || layout === 'cut') return none;
  const { width, height } = uprightSize(layout);
  const windows = parts.map(({ x0: left, y0: top, x1, y1 }) => {
    const [across, down] = [Math.min(x1, width) - left, Math.min(y1, height) - top];
    return across < 1 || down < 1 ? null : shrunk({ left, top, width: across, height: down, by: 1 });
  });
  const isWhole = await readInto(
    windows.filter((one) => one !== null),
    bytes,
    layout,
    ports,
  );
  return isWhole ? windows.map((one) => one?.image() ?? null) : none;
}

function uprightSize(layout: TiffLayout): { width: number; height: number } {
  const { width, height } = layout;
  return liesOnSide(layout) ? { width: height, height: width } : { width, height };
}

const liesOnSide = ({ orientation }: TiffLayout): boolean => orientation >= 5 && orientation <= 8;

/** Where a stored pixel lies upright. Source: TIFF 6.0, Orientation: where the first row and the first column stand. */
function uprightPlace(layout: TiffLayout, x: number, y: number): [x: number, y: number] {
  const { width, height, orientation } = layout;
  const isMirrored = orientation === 2 || orientation === 3 || orientation === 7 || orientation === 8;
  const isOver = orientation === 3 || orientation === 4 || orientation === 6 || orientation === 7;
  const [u, v] = [isMirrored ? width - 1 - x : x, isOver ? height - 1 - y : y];
  return liesOnSide(layout) ? [v, u] : [u, v];
}

/** Whether all pieces were there. */
async function readInto(
  targets: readonly Shrunk[],
  bytes: Uint8Array<ArrayBuffer>,
  layout: TiffLayout,
  ports: TiffPorts,
): Promise<boolean> {
  const { width, height, pieceWidth, pieceHeight, isPlanar, samples, offsets } = layout;
  if (pieceWidth < 1 || pieceHeight < 1) return false;
  const [across, down] = [Math.ceil(width / pieceWidth), Math.ceil(height / pieceHeight)];
  const planes = isPlanar ? samples : 1;
  if (offsets.length < across * down * planes) return false;
  for (let piece = 0; piece < across * down; piece++) {
    const [left, top] = [(piece % across) * pieceWidth, Math.floor(piece / across) * pieceHeight];
    const rows = layout.isTiled ? pieceHeight : Math.min(pieceHeight, height - top);
    const unpacked: Uint8Array[] = [];
    for (let plane = 0; plane < planes; plane++) {
      const one = await unpack(bytes, layout, piece + plane * across * down, rows, ports);
      if (one === null) return false;
      unpacked.push(one);
    }
    addPiece(targets, layout, unpacked, left, top);
  }
  return true;
}

/** Samples of a pixel that lie beside each other. */
const samplesTogether = ({ isPlanar, samples }: TiffLayout): number => (isPlanar ? 1 : samples);

/** Bytes of a row of an unpacked piece. */
const rowLengthOf = (layout: TiffLayout): number =>
  Math.ceil((layout.pieceWidth * samplesTogether(layout) * layout.bits) / 8);

/** A piece's samples, row by row, each row on a byte of its own; null where they are not all there. */
async function unpack(
  bytes: Uint8Array<ArrayBuffer>,
  layout: TiffLayout,
  piece: number,
  rows: number,
  ports: TiffPorts,
): Promise<Uint8Array | null> {
  const { packing, bits, isDifferences, isLittle } = layout;
  const [offset, length] = [layout.offsets[piece]!, layout.lengths[piece]!];
  if (offset + length > bytes.length) return null;
  const packed = bytes.subarray(offset, offset + length);
  if (packing === 'jpeg') return samplesOfJpeg(packed, layout, rows, ports);
  const rowLength = rowLengthOf(layout);
  const wanted = rowLength * rows;
  const samples = await plainSamples(packed, packing, wanted, ports);
  if (samples === null || samples.length < wanted) return null;
  if (!isDifferences) return samples;
  // What was not packed lies in the file itself, which stays as it is.
  const own = packing === 'none' ? samples.slice() : samples;
  for (let row = 0; row < rows; row++) {
    addDifferences(
      own.subarray(row * rowLength, (row + 1) * rowLength),
      bits as 8 | 16,
      samplesTogether(layout),
      isLittle,
    );
  }
  return own;
}

async function plainSamples(
  packed: Uint8Array<ArrayBuffer>,
  packing: Exclude<TiffLayout['packing'], 'jpeg'>,
  wanted: number,
  { inflate }: TiffPorts,
): Promise<Uint8Array | null> {
  switch (packing) {
    case 'none':
      return packed;
    case 'lzw':
      return fromLzw(packed, wanted);
    case 'packbits':
      return fromPackBits(packed, wanted);
    case 'deflate':
      return inflate(packed, wanted);
  }
}

/** A JPEG's pixels as samples; a decoder gives grey ones as three that are the same. */
async function samplesOfJpeg(
  packed: Uint8Array,
  { jpegTables, meaning, samples, pieceWidth }: TiffLayout,
  rows: number,
  { jpeg }: TiffPorts,
): Promise<Uint8Array | null> {
  const image = await jpeg(wholeJpeg(packed, jpegTables, meaning));
  if (image === null || image.width < pieceWidth || image.height < rows) return null;
  const out = new Uint8Array(pieceWidth * rows * samples).fill(255);
  for (let row = 0; row < rows; row++) {
    for (let column = 0; column < pieceWidth; column++) {
      const from = (row * image.width + column) * 4;
      const to = (row * pieceWidth + column) * samples;
      for (let sample = 0; sample < Math.min(3, samples); sample++) out[to + sample] = image.data[from + sample]!;
    }
  }
  return out;
}

function addPiece(
  targets: readonly Shrunk[],
  layout: TiffLayout,
  planes: readonly Uint8Array[],
  left: number,
  top: number,
): void {
  const { width, height, pieceWidth, samples, isPlanar } = layout;
  const sample = sampleOf(layout);
  const toColour = colourOf(layout);
  const rowLength = rowLengthOf(layout);
  const [pixel, colour] = [new Float32Array(samples), new Float32Array(3)];
  const rows = Math.min(height - top, Math.floor(planes[0]!.length / rowLength));
  const columns = Math.min(width - left, pieceWidth);
  for (let row = 0; row < rows; row++) {
    const own = planes.map((plane) => plane.subarray(row * rowLength, (row + 1) * rowLength));
    for (let column = 0; column < columns; column++) {
      for (let at = 0; at < samples; at++) {
        pixel[at] = isPlanar ? sample(own[at]!, column) : sample(own[0]!, column * samples + at);
      }
      toColour(pixel, colour);
      const [x, y] = uprightPlace(layout, left + column, top + row);
      for (const target of targets) target.add(x, y, colour);
    }
  }
}
