import { ascii } from './ascii';
import { jpegSegments } from './jpeg-segments';

/** What a camera wrote into a photo's file. */
export interface Exif {
  /** When it was taken by the camera's clock, which knows no time zone: "2025-03-04T10:11:12". */
  takenAt: string | null;
  /** The camera as it names itself. */
  camera: string | null;
}

/** A camera writes a few dozen entries; a file that says otherwise is not followed. */
const mostEntries = 512;
const longestName = 64;

const tags = { maker: 0x010f, model: 0x0110, exif: 0x8769, taken: 0x9003 } as const;

/**
 * What a JPEG file says of when and with what it was taken; null where it says neither. Nothing else of it is read, least of
 * all the place. Source: EXIF 2.32 (CIPA DC-008), sections 4.5 to 4.7; TIFF 6.0, section 2.
 */
export function readExif(bytes: Uint8Array): Exif | null {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const start = exifStart(view, bytes);
  if (start === null) return null;
  const fields = new Tiff(bytes, view, start);
  const first = fields.directory(fields.first());
  const inner = first.get(tags.exif);
  const second = inner === undefined ? new Map<number, number>() : fields.directory(fields.number(inner));
  const taken = second.get(tags.taken);
  const takenAt = taken === undefined ? null : momentOf(fields.text(taken));
  const camera = cameraOf(nameIn(fields, first.get(tags.maker)), nameIn(fields, first.get(tags.model)));
  return takenAt === null && camera === null ? null : { takenAt, camera };
}

/** Where the camera's fields begin; null where there are none. */
function exifStart(view: DataView, bytes: Uint8Array): number | null {
  if (view.byteLength < 4 || view.getUint16(0) !== 0xffd8) return null;
  for (const { marker, at, length } of jpegSegments(view)) {
    // The pixels begin, or the segment says an impossible length.
    if (marker === 0xda || (length !== null && length < 2)) return null;
    if (marker === 0xe1 && ascii(bytes, at + 4, 4) === 'Exif') return at + 10;
  }
  return null;
}

/** Directories of twelve bytes an entry. What lies outside the file is not there. */
class Tiff {
  private readonly little: boolean;
  constructor(
    private readonly bytes: Uint8Array,
    private readonly view: DataView,
    private readonly start: number,
  ) {
    this.little = ascii(bytes, start, 2) === 'II';
  }

  private short = (at: number): number => (this.holds(at, 2) ? this.view.getUint16(at, this.little) : 0);
  private long = (at: number): number => (this.holds(at, 4) ? this.view.getUint32(at, this.little) : 0);
  private holds = (at: number, length: number): boolean => at >= 0 && at + length <= this.view.byteLength;

  first = (): number => this.long(this.start + 4);

  /** Where each entry of a directory lies, by its tag. */
  directory(offset: number): Map<number, number> {
    const at = this.start + offset;
    const count = Math.min(mostEntries, offset === 0 ? 0 : this.short(at));
    const entries = new Map<number, number>();
    for (let entry = 0; entry < count; entry++) {
      const from = at + 2 + entry * 12;
      if (this.holds(from, 12)) entries.set(this.short(from), from);
    }
    return entries;
  }

  number = (entry: number): number => this.long(entry + 8);

  /** Text up to its end sign; of four bytes or fewer it lies in the entry itself. */
  text(entry: number): string {
    const ofText = this.short(entry + 2) === 2;
    const length = Math.min(this.long(entry + 4), 256);
    const at = length <= 4 ? entry + 8 : this.start + this.long(entry + 8);
    if (!ofText || !this.holds(at, length)) return '';
    return ascii(this.bytes, at, length).split('\0')[0] ?? '';
  }
}

const nameIn = (fields: Tiff, entry: number | undefined): string =>
  entry === undefined
    ? ''
    : fields
        .text(entry)
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
