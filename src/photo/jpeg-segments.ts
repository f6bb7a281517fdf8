/** One segment of a JPEG: its marker, where it begins, and the length that it says; null where it holds nothing. */
interface JpegSegment {
  marker: number;
  at: number;
  length: number | null;
}

/** The segments of a JPEG, up to where no further one stands. Source: ITU-T T.81, table B.1 and section B.1.1.2. */
export function* jpegSegments(view: DataView): Generator<JpegSegment> {
  let at = 2;
  while (at + 9 < view.byteLength && view.getUint8(at) === 0xff) {
    const marker = view.getUint8(at + 1);
    if (marker === 0xff) {
      at++;
      continue;
    }
    const standsAlone = marker === 0x01 || (marker >= 0xd0 && marker <= 0xd8);
    const length = standsAlone ? null : view.getUint16(at + 2);
    yield { marker, at, length };
    at += 2 + (length ?? 0);
  }
}
