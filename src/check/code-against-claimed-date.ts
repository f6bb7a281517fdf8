import type { Reading } from '../code/types';
import { claimedDates, evidenceId, hardReachOf, reachOf } from '../evidence';
import { type Span, spanHolds, spansMeet, spanWords } from '../span';
import { datingReadings, readingsWords, type SettledCode, settledCodes } from './codes';
import { claimWords, type DatedClaim } from './dates';
import { fromMakerFile, makerFileSource } from './frame';
import { commonAsks, sentence } from './wording';
import { defineWritten, type WrittenSpeech } from './written';

const dated = (readings: Reading[]): Span[] => readings.flatMap(({ span }) => (span ? [span] : []));

export const codeAgainstClaimedDate = defineWritten({
  id: 'code-against-claimed-date',
  family: 'code',
  title: "The code's date is the claimed date",
  failureTitle: "The code's date is not the claimed date",
  kinds: ['contradiction', 'doubt', 'agreement'],
  basis: 'A piece was made when its code says, and not before.',
  innocent: 'The seller may give the year of purchase, repeat what an earlier seller said, or have misread the code.',
  settles: 'The seller’s own reading of the code, and how the year is known.',
  source: makerFileSource,
  needs: { maker: ['codeSystems'], claims: ['made', 'bought'], decodings: true, photos: 'any' },
  run(facts) {
    const claims: DatedClaim[] = [...facts.claims.made, ...facts.claims.bought];
    if (claims.length === 0) return { notApplicable: 'the listing claims no date' };
    const settled = settledCodes(facts, facts.maker.name);
    if (!('codes' in settled)) return settled;
    const readable = settled.codes
      .map((code) => ({ ...code, readings: datingReadings(code) }))
      .filter(({ readings }) => dated(readings).length > 0);
    if (readable.length === 0) return { cannotTell: 'no code gives a date under the systems of the maker' };
    return readable.flatMap((code) => {
      const spans = dated(code.readings);
      const source = fromMakerFile(facts.maker.name, 'code systems', code.readings[0]?.system.source);
      const agreeing = facts.claims.made.some((claim) => kindOf(code, claim) === 'agreement');
      return claims.flatMap((claim) => {
        const alone = kindOf(code, claim);
        if (!alone) return [];
        // A listing that also gives the code's own date contradicts itself before it contradicts the stamp.
        const kind = alone === 'contradiction' && agreeing ? 'doubt' : alone;
        const within = spans.every((span) => spanHolds(claim.span, span)) ? 'inside' : 'which allows';
        const tail =
          kind === 'agreement'
            ? `, ${within} the listing's ${claimWords(claim)}.`
            : `. The listing says ${claimWords(claim)}.`;
        const speech: WrittenSpeech = {
          kind,
          key: `${code.decoding.id}/${claim.id}`,
          statement: `${sentence(code.words)}: ${readingsWords(code.readings)}${tail}`,
          basis: [
            `${code.readings[0]?.system.id}: ${spanWords(spans[0] as Span)}`,
            `the listing's words ${claimWords(claim)}`,
          ],
          photos: code.photos,
          claims: [claim.id],
          evidence: [evidenceId.reading(code.decoding.id)],
          source,
          asks: [commonAsks.madeDate],
        };
        return [speech];
      });
    });
  },
});

/**
 * Agreement when a reading shares a day with the claim, silence where the claim's room holds it. Else a contradiction
 * only when the code was seen and every reading lies beyond the dates that the claim can mean.
 */
function kindOf({ readings, hard }: SettledCode, claim: DatedClaim): WrittenSpeech['kind'] | null {
  const spans = dated(readings);
  const claimed = claimedDates(claim);
  const meets = (dates: readonly Span[]) => spans.some((span) => dates.some((date) => spansMeet(span, date)));
  if (meets(claimed.spans)) {
    // A purchase allows all that is older: no news.
    if (claim.kind === 'bought') return null;
    return spans.every((span) => spanHolds(claim.span, span) || spanHolds(span, claim.span)) ? 'agreement' : null;
  }
  if (meets(reachOf(claimed))) return null;
  const beyond = hardReachOf(claimed);
  return hard && beyond !== null && !meets(beyond) ? 'contradiction' : 'doubt';
}
