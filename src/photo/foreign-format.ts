import type { ProblemData } from '../problem';
import { ascii } from './ascii';

/** A photo format that is known by its first bytes and not read here. */
export type ForeignFormat = ProblemData['photo-foreign-format']['format'];

/**
 * The brands of an ISO base media file that holds HEVC pictures. Source: ISO/IEC 23008-12, annex B, for heic to hevs;
 * mif1 and msf1 say only that a picture is in it (section 10), and AVIF names its own brand beside them.
 */
const hevc = /heic|heix|heim|heis|hevc|hevx|hevm|hevs|mif1|msf1/;

/** Names the formats that sellers do send and browsers do not decode; null for anything else. */
export function foreignFormat(bytes: Uint8Array): ForeignFormat | null {
  if (bytes.length < 12) return null;
  if (ascii(bytes, 4, 4) === 'ftyp') {
    const length = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength).getUint32(0);
    const brands = ascii(bytes, 8, Math.max(0, Math.min(length, 64, bytes.length) - 8));
    if (/avif|avis/.test(brands)) return null;
    if (hevc.test(brands)) return 'HEIC';
    if (brands.startsWith('crx ')) return 'CR3';
    return null;
  }
  // Source: TIFF 6.0, section 2. Raw files of many cameras begin in the same way.
  const opening = ascii(bytes, 0, 4);
  // Source: ISO 32000-1, section 7.5.2.
  if (opening === '%PDF') return 'PDF';
  if (opening === 'II*\0' || opening === 'MM\0*') {
    return 'TIFF';
  }
  // Source: ISO/IEC 18181-2: a bare codestream, or the signature box.
  const isStream = bytes[0] === 0xff && bytes[1] === 0x0a;
  if (isStream || ascii(bytes, 4, 4) === 'JXL ') return 'JPEG XL';
  if (ascii(bytes, 4, 4) === 'jP  ') return 'JPEG 2000';
  return null;
}
