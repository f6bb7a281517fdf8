import { evidenceId } from '../evidence';
import { spanWords } from '../span';
import { readingsWords, settledCodes } from './codes';
import { daysApart } from './dates';
import { practice } from './frame';
import { datedMarks, markWords, oncePerMark } from './marks';
import { commonAsks, sentence } from './wording';
import { defineWritten, type WrittenSpeech } from './written';

export const markAgainstCodeDate = defineWritten({
  id: 'mark-against-code-date',
  family: 'time',
  title: "The marks' dates allow the code's date",
  failureTitle: "A mark's date does not allow the code's date",
  kinds: ['contradiction', 'doubt', 'agreement'],
  basis: 'The code and the public marks of a piece date the same making.',
  innocent: 'The marked part may have been replaced later, or one of the two misread.',
  settles: 'Sharp photos of the stamp and of the mark.',
  source: practice,
  needs: { marks: true, claims: ['replaced'], maker: ['codeSystems'], decodings: true, photos: 'any' },
  run(facts) {
    const dated = datedMarks(facts.marks, facts.claims.replaced);
    if (dated.length === 0) return { notApplicable: 'no public mark that dates was found' };
    const settled = settledCodes(facts, facts.maker.name);
    if (!('codes' in settled)) return settled;
    const said = settled.codes.flatMap((code) => {
      const spans = code.readings.flatMap(({ span }) => (span ? [span] : []));
      if (spans.length === 0) return [];
      return dated.flatMap((mark): { mark: typeof mark; against: string; speech: WrittenSpeech }[] => {
        const about = { mark, against: code.decoding.id };
        const apart = Math.min(...spans.flatMap((span) => mark.spans.map((one) => daysApart(span, one))));
        const statement = `${sentence(code.words)}: ${readingsWords(code.readings)}; ${markWords(mark, facts.photoWords)}: ${mark.spans.map(spanWords).join(' or ')}.`;
        const common = {
          key: `${code.decoding.id}/${mark.id}`,
          photos: [...code.photos, ...(mark.photoId ? [mark.photoId] : [])],
          evidence: [evidenceId.reading(code.decoding.id), evidenceId.mark(mark.id)],
          source: mark.source,
        };
        if (apart === 0)
          return mark.spans.some(({ from, to }) => from === null || to === null)
            ? []
            : [{ ...about, speech: { kind: 'agreement', statement, ...common } }];
        const hard = code.hard && mark.strength === 'hard' && mark.verified && mark.foundIn === 'photo';
        const kind = hard ? 'contradiction' : 'doubt';
        return [{ ...about, speech: { kind, statement, ...common, asks: [commonAsks.stampPhoto] } }];
      });
    });
    return oncePerMark(said);
  },
});
