import * as z from 'zod';
import { type Measurement, type StampLine, stampLinesOf } from '../stamp/types';
import { askFor } from './asks';
import { orWhyCopied, readAsGiven } from './copies';
import { defineCheck, practice } from './frame';
import { because } from './reasons';
import { photoNumber } from './types';

/**
 * From these shares on a stamp counts as uneven: depth between its ends, and the pitch of its characters.
 * Common practice, no source. Stamps struck by hand, one character after another, are uneven and sound, and a slanting
 * light makes an even stamp look uneven: no more than an open point, until it is known how the maker struck its codes.
 */
const unevenDepth = 0.6;
const unevenPitch = 0.35;

export const stampEvenness = defineCheck({
  id: 'stamp-evenness',
  family: 'code',
  kinds: ['gap'],
  source: practice,
  data: z.strictObject({ photo: photoNumber, faults: z.array(z.enum(['depth', 'pitch'])).min(1) }),
  limits: { unevenDepth, unevenPitch },
  needs: { decodings: true, photos: 'read' },
  run({ decodings, photos, photoNumber: number }) {
    const lines = new Map(
      readAsGiven(photos).flatMap((photo) => stampLinesOf(photo).map((line) => [line.id, line] as const)),
    );
    const codes = decodings.filter(({ accepted, from }) => accepted && from.kind === 'photo');
    if (codes.length === 0) return { cannotTell: because('no-stamp-read', {}) };
    const found = codes.flatMap(({ from, id }) => {
      const line = from.kind === 'photo' ? lines.get(from.lineId) : undefined;
      if (!line) return [];
      const faults: ('depth' | 'pitch')[] = [
        ...(surely(line, 'depth-slope', unevenDepth) ? (['depth'] as const) : []),
        ...(surely(line, 'pitch-spread', unevenPitch) ? (['pitch'] as const) : []),
      ];
      if (faults.length === 0) return [];
      const data = { photo: number(line.photoId), faults };
      return [{ kind: 'gap' as const, key: id, data, photos: [line.photoId], asks: [askFor('stamp-photo', {})] }];
    });
    return orWhyCopied(
      found,
      photos.filter(({ photoId }) => codes.some(({ from }) => from.kind === 'photo' && from.photoId === photoId)),
    );
  },
});

/** Whether a measurement lies above the limit by more than twice its uncertainty. */
function surely(line: StampLine, what: Measurement['what'], limit: number): boolean {
  const found = line.measurements.find((measurement) => measurement.what === what && measurement.unit === 'share');
  return found !== undefined && Math.abs(found.value) - 2 * found.uncertainty > limit;
}
