import type { Measurement, StampLine } from '../stamp/types';
import { orCopied, readAsGiven } from './copies';
import { practice } from './frame';
import { commonAsks } from './wording';
import { defineWritten, type WrittenSpeech } from './written';

/**
 * From these shares on a stamp counts as uneven: depth between its ends, and the pitch of its characters.
 * Common practice, no source. Stamps struck by hand, one character after another, are uneven and sound, and a slanting
 * light makes an even stamp look uneven: no more than an open point, until it is known how the maker struck its codes.
 */
const unevenDepth = 0.6;
const unevenPitch = 0.35;

export const stampEvenness = defineWritten({
  id: 'stamp-evenness',
  family: 'code',
  title: 'The stamp is even in depth and spacing',
  failureTitle: 'The stamp looks uneven in depth or spacing',
  kinds: ['gap'],
  basis: 'Characters of one die are struck together, at one pitch; characters struck by hand one by one are not.',
  innocent:
    'Many sound stamps are struck by hand, and worn or curved leather and light from one side make an even stamp look uneven.',
  settles: 'Two photos of the stamp with light from different sides.',
  source: practice,
  needs: { decodings: true, photos: 'read' },
  run({ decodings, photos, photoWords }) {
    const lines = new Map(readAsGiven(photos).flatMap((photo) => photo.lines.map((line) => [line.id, line] as const)));
    const codes = decodings.filter(({ accepted, from }) => accepted && from.kind === 'photo');
    if (codes.length === 0) return { cannotTell: 'no stamp was read from a photo' };
    const found = codes.flatMap(({ from, id }): WrittenSpeech[] => {
      const line = from.kind === 'photo' ? lines.get(from.lineId) : undefined;
      if (!line) return [];
      const faults = [
        surely(line, 'depth-slope', unevenDepth) ? 'its depth changes from one end to the other' : '',
        surely(line, 'pitch-spread', unevenPitch) ? 'its characters are unevenly spaced' : '',
      ].filter(Boolean);
      if (faults.length === 0) return [];
      const statement = `The stamp in ${photoWords(line.photoId)} looks uneven: ${faults.join(' and ')}. One photo cannot tell whether that is the light, wear or the way it was struck.`;
      return [{ kind: 'gap', key: id, statement, photos: [line.photoId], asks: [commonAsks.stampPhoto] }];
    });
    return orCopied(
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
