import { ascii } from './ascii';
import { jpegSegments } from './jpeg-segments';
import { directoryAt, numbersOf, textOf, tiffAt } from './tiff/directory';

/** What a camera wrote into a photo's file. */
export interface Exif {
  /** When it was taken by the camera's clock, which knows no time zone: "2025-03-04T10:11:12". */
  takenAt: string | null;
  /** The camera as it names itself. */
  camera: string | null;
}

const longestText = 256;
const longestName = 64;

const tags = { maker: 0x010f, model: 0x0110, exif: 0x8769, taken: 0x9003 } as const;

/**
 * What a JPEG file says of when and with what it was taken; null where it says neither. Nothing else of it is read, least of
 * all the place. Source: EXIF 2.32 (CIPA DC-008), sections 4.5 to 4.7.
 */
export function readExif(bytes: Uint8Array): Exif | null {
  const start = exifStart(bytes);
  const tiff = start === null ? null : tiffAt(bytes, start);
  if (tiff === null || tiff === 'cut') return null;
  const first = directoryAt(tiff, tiff.first).entries;
  const inner = numbersOf(tiff, first.get(tags.exif));
  const second = inner === null || inner === 'cut' ? null : directoryAt(tiff, inner[0] ?? 0).entries;
  const takenAt = momentOf(textOf(tiff, second?.get(tags.taken), longestText));
  const nameIn = (tag: number): string => printedName(textOf(tiff, first.get(tag), longestText));
  const camera = cameraOf(nameIn(tags.maker), nameIn(tags.model));
  return takenAt === null && camera === null ? null : { takenAt, camera };
}

/** Where the camera's fields begin; null where there are none. */
function exifStart(bytes: Uint8Array): number | null {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  if (view.byteLength < 4 || view.getUint16(0) !== 0xffd8) return null;
  for (const { marker, at, length } of jpegSegments(view)) {
    // The pixels begin, or the segment says an impossible length.
    if (marker === 0xda || (length !== null && length < 2)) return null;
    if (marker === 0xe1 && ascii(bytes, at + 4, 4) === 'Exif') return at + 10;
  }
  return null;
}

const printedName = (text: string): string =>
  text
    .replace(/[^\x20-\x7e]/g, '')
    .trim()
    .slice(0, longestName);

/** Most models are named with their maker already. */
const cameraOf = (maker: string, model: string): string | null => {
  const named = model.toLowerCase().startsWith(maker.toLowerCase()) ? model : `${maker} ${model}`;
  return named.trim() === '' ? null : named.trim();
};

/** "2025:03:04 10:11:12"; a clock that was never set writes zeros or spaces. */
function momentOf(text: string): string | null {
  const told = /^(\d{4}):(\d\d):(\d\d) (\d\d:\d\d:\d\d)$/.exec(text);
  if (!told) return null;
  const moment = `${told[1]}-${told[2]}-${told[3]}T${told[4]}`;
  return Number.isNaN(Date.parse(`${moment}Z`)) || told[1] === '0000' ? null : moment;
}
