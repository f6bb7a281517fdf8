import { evidenceId, isExact, isSure } from '../evidence';
import { spanWords } from '../span';
import { claimWords, daysApart } from './dates';
import { practice } from './frame';
import { datedMarks, markWords, oncePerMark } from './marks';
import { commonAsks, sentence } from './wording';
import { defineWritten, type WrittenSpeech } from './written';

export const markAgainstClaimedDate = defineWritten({
  id: 'mark-against-claimed-date',
  family: 'time',
  title: "The marks' dates allow the claimed date",
  failureTitle: "A mark's date does not allow the claimed date",
  kinds: ['contradiction', 'doubt', 'agreement'],
  basis: 'A patent number, registered design or hallmark dates a piece whoever made it.',
  innocent: 'The marked part (a zip, a lock, a label) may have been replaced later, or the number misread.',
  settles: 'A sharp photo of the mark and the part it is on.',
  source: practice,
  needs: { marks: true, claims: ['made', 'replaced'] },
  run({ marks, claims, photoWords }) {
    if (claims.made.length === 0) return { notApplicable: 'the listing claims no date' };
    const dated = datedMarks(marks, claims.replaced);
    if (dated.length === 0) return { notApplicable: 'no public mark that dates was found' };
    const said = dated.flatMap((mark) =>
      claims.made.flatMap((claim): { mark: typeof mark; against: string; speech: WrittenSpeech }[] => {
        const about = { mark, against: claim.id };
        const apart = Math.min(...mark.spans.map((span) => daysApart(span, claim.span)));
        const shown = `${sentence(markWords(mark, photoWords))}: ${mark.spans.map(spanWords).join(' or ')}`;
        const common = {
          key: `${mark.id}/${claim.id}`,
          photos: mark.photoId ? [mark.photoId] : [],
          claims: [claim.id],
          evidence: [evidenceId.mark(mark.id)],
          source: mark.source,
        };
        if (apart === 0) {
          // A mark that only bounds one end agrees with too much to be worth saying.
          if (mark.spans.some(({ from, to }) => from === null || to === null)) return [];
          const statement = `${shown}, which allows the listing's ${claimWords(claim)}.`;
          return [{ ...about, speech: { kind: 'agreement', statement, ...common } }];
        }
        const firm = mark.strength === 'hard' && mark.verified && mark.foundIn === 'photo';
        const hard = firm && isSure(claim) && isExact(claim.span);
        const statement = `${shown}. The listing says ${claimWords(claim)}.`;
        const kind = hard ? 'contradiction' : 'doubt';
        return [{ ...about, speech: { kind, statement, ...common, asks: [commonAsks.madeDate] } }];
      }),
    );
    return oncePerMark(said);
  },
});
