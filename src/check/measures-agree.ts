import type { Measure } from '../listing/types';
import { mmWords } from './sizes';
import { commonAsks, quote } from './wording';
import { defineWritten, type WrittenSpeech } from './written';

/** What two people measure apart on a soft piece. Common practice, no source. */
const tapeMm = 10;

export const measuresAgree = defineWritten({
  id: 'measures-agree',
  family: 'size',
  title: 'A measurement stated twice is the same in both units',
  failureTitle: 'One measurement is stated twice with different sizes',
  kinds: ['doubt'],
  basis: '1 inch is 25.4 mm; the same side has one length.',
  innocent: 'One of the two may be measured at the top and one at the base, or converted in the head.',
  settles: 'The side with the tape in the photo.',
  source: {
    kind: 'memory',
    text: 'international yard and pound agreement of 1959: 1 inch = 25.4 mm',
  },
  needs: { claims: ['measure'], listing: ['measures'] },
  run({ claims, listing }) {
    const measures = [...listing.measures.map(({ value }) => value), ...claims.measure.map(({ measure }) => measure)];
    const speeches: WrittenSpeech[] = [];
    for (const dimension of ['width', 'height', 'depth', 'strap'] as const) {
      const pair = farthest(measures.filter((one) => one.dimension === dimension));
      if (!pair) continue;
      const [a, b] = pair;
      const ids = claims.measure.filter(({ measure }) => measure.dimension === dimension).map(({ id }) => id);
      const statement = `The ${dimension} is stated as ${quote(a.words)} = ${mmWords(a.mm)} and as ${quote(b.words)} = ${mmWords(b.mm)}.`;
      speeches.push({ kind: 'doubt', key: dimension, statement, claims: ids, asks: [commonAsks.measures] });
    }
    return speeches;
  },
});

/** The two measures that differ by more than rounding and tape explain; null when all agree. */
function farthest(measures: Measure[]): [Measure, Measure] | null {
  const sorted = [...measures].sort((a, b) => a.mm - b.mm);
  const [a, b] = [sorted[0], sorted.at(-1)];
  return a && b && b.mm - a.mm > a.precisionMm + b.precisionMm + tapeMm ? [a, b] : null;
}
