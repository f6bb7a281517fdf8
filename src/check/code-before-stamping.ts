import { evidenceId, isExact, isSure, roomDays } from '../evidence';
import { periodSpan, spanWords } from '../span';
import { settledCodes } from './codes';
import { claimWords, daysBefore } from './dates';
import { fromMakerFile, makerFileSource } from './frame';
import { commonAsks, sentence } from './wording';
import { defineWritten, type WrittenSpeech } from './written';

export const codeBeforeStamping = defineWritten({
  id: 'code-before-stamping',
  family: 'code',
  title: 'The maker stamped at the claimed time',
  failureTitle: 'The piece carries a code from before the maker stamped any',
  kinds: ['contradiction', 'doubt'],
  basis: 'A piece from before a maker’s first stamps carries no code.',
  innocent: 'The seller may have guessed the year, or the mark is of a later repair by the maker.',
  settles: 'How the year is known, and a photo of the whole stamp.',
  source: makerFileSource,
  needs: { maker: ['stamped'], claims: ['made'], decodings: true, photos: 'any' },
  run(facts) {
    const { stamped, name } = facts.maker;
    const period = periodSpan([stamped.from, stamped.to]);
    const early = facts.claims.made.filter((claim) => period && daysBefore(claim.span, period) > 0);
    // Where the listing also gives a later date, its dates disagree: another check's doubt.
    if (!period || early.length === 0 || early.length < facts.claims.made.length)
      return { notApplicable: `the listing claims no date before ${name} stamped` };
    const settled = settledCodes(facts, name);
    if (!('codes' in settled)) return settled;
    return settled.codes.flatMap((code) =>
      early.map((claim): WrittenSpeech => {
        const sure =
          code.hard && isSure(claim) && isExact(claim.span) && daysBefore(claim.span, period) > roomDays.makerPeriod;
        return {
          kind: sure ? 'contradiction' : 'doubt',
          key: `${code.decoding.id}/${claim.id}`,
          statement: `${sentence(code.words)}, but the listing says ${claimWords(claim)} and ${name} stamped only ${spanWords(period)}.`,
          photos: code.photos,
          claims: [claim.id],
          evidence: [evidenceId.reading(code.decoding.id)],
          source: fromMakerFile(name, stamped.source),
          asks: [commonAsks.madeDate],
        };
      }),
    );
  },
});
