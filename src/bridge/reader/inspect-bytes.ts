import { avifSize } from '../../photo';

/** Picture formats that the browser decodes, told by their first bytes; SVG is a document, not a photo. */
export type PhotoFormat = 'jpeg' | 'png' | 'gif' | 'webp' | 'avif' | 'bmp';
export interface PhotoHeader {
  format: PhotoFormat;
  /** Size in pixels before any decoding; null where the file ends before it says so. */
  size: { width: number; height: number } | null;
}

/**
 * Reads format and size from a file's head without decoding it: a small file can hold an enormous picture. Null when
 * the bytes are no photo (a web page sent instead, SVG, nothing at all). Formats: PNG (ISO/IEC 15948), JPEG
 * (ITU-T T.81 B.2.2), GIF89a, WebP (RFC 9649), AVIF (brands of ISO/IEC 23000-22), BMP.
 */
export function inspectBytes(bytes: Uint8Array): PhotoHeader | null {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const text = (at: number, length: number) => String.fromCharCode(...bytes.subarray(at, at + length));
  if (bytes.length < 16) return null;
  if (view.getUint32(0) === 0x89504e47) {
    return {
      format: 'png',
      size: bytes.length < 24 ? null : { width: view.getUint32(16), height: view.getUint32(20) },
    };
  }
  if (view.getUint16(0) === 0xffd8) return { format: 'jpeg', size: jpegSize(view) };
  if (/^GIF8[79]a/.test(text(0, 6))) {
    return { format: 'gif', size: { width: view.getUint16(6, true), height: view.getUint16(8, true) } };
  }
  if (text(0, 4) === 'RIFF' && text(8, 4) === 'WEBP') return { format: 'webp', size: webpSize(view, text(12, 4)) };
  if (text(4, 4) === 'ftyp' && /avi[fs]/.test(text(8, Math.min(48, bytes.length - 8)))) {
    return { format: 'avif', size: avifSize(bytes) };
  }
  if (text(0, 2) === 'BM' && bytes.length >= 26) {
    return {
      format: 'bmp',
      size: { width: Math.abs(view.getInt32(18, true)), height: Math.abs(view.getInt32(22, true)) },
    };
  }
  return null;
}

/** Walks the segments to the frame header (SOF0 to SOF15, without DHT, JPG and DAC). */
function jpegSize(view: DataView): PhotoHeader['size'] {
  let at = 2;
  while (at + 9 < view.byteLength) {
    if (view.getUint8(at) !== 0xff) return null;
    const marker = view.getUint8(at + 1);
    const isFrame = marker >= 0xc0 && marker <= 0xcf && marker !== 0xc4 && marker !== 0xc8 && marker !== 0xcc;
    if (isFrame) return { width: view.getUint16(at + 7), height: view.getUint16(at + 5) };
    at += marker === 0xff ? 1 : 2 + view.getUint16(at + 2);
  }
  return null;
}

function webpSize(view: DataView, chunk: string): PhotoHeader['size'] {
  if (view.byteLength < 30) return null;
  const at24 = (at: number) => view.getUint8(at) | (view.getUint8(at + 1) << 8) | (view.getUint8(at + 2) << 16);
  if (chunk === 'VP8X') return { width: at24(24) + 1, height: at24(27) + 1 };
  if (chunk === 'VP8 ') return { width: view.getUint16(26, true) & 0x3fff, height: view.getUint16(28, true) & 0x3fff };
  const packed = view.getUint32(21, true);
  return { width: (packed & 0x3fff) + 1, height: ((packed >>> 14) & 0x3fff) + 1 };
}
