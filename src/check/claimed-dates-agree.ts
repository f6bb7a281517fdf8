import { isExact, roomDays } from '../evidence';
import { claimWords, daysApart, distinctDates } from './dates';
import { practice } from './frame';
import { commonAsks } from './wording';
import { defineWritten, type WrittenSpeech } from './written';

export const claimedDatesAgree = defineWritten({
  id: 'claimed-dates-agree',
  family: 'time',
  title: 'The dates that the listing gives agree',
  failureTitle: 'The listing gives dates that do not agree',
  kinds: ['doubt', 'agreement'],
  basis: 'One piece has one date of making.',
  innocent: 'One of the dates may be that of a similar piece, or a slip of the pen.',
  settles: 'Which date the seller means, and how it is known.',
  source: practice,
  needs: { claims: ['made'] },
  run({ claims }) {
    const made = distinctDates(claims.made);
    if (made.length < 2) return { notApplicable: 'the listing gives fewer than two dates' };
    const pairs = made.flatMap((first, index) => made.slice(index + 1).map((second) => ({ first, second })));
    const off = pairs.find(({ first, second }) => {
      const apart = daysApart(first.span, second.span);
      return apart > (isExact(first.span) && isExact(second.span) ? 0 : roomDays.looseDates);
    });
    const ids = off ? [off.first.id, off.second.id] : made.map(({ id }) => id);
    if (off) {
      const statement = `The listing says ${claimWords(off.first)} and also ${claimWords(off.second)}.`;
      return [{ kind: 'doubt', statement, claims: ids, asks: [commonAsks.madeDate] }];
    }
    const together = pairs.every(({ first, second }) => daysApart(first.span, second.span) === 0);
    const different = new Set(made.map(({ words }) => words.toLowerCase())).size > 1;
    if (!together || !different) return [];
    const said = made.slice(0, 3).map(claimWords).join(', ');
    const speech: WrittenSpeech = {
      kind: 'agreement',
      statement: `The dates of the listing agree: ${said}.`,
      claims: ids,
    };
    return [speech];
  },
});
