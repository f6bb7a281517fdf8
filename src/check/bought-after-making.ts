import { isExact, roomDays } from '../evidence';
import { claimWords, daysBefore, distinctDates } from './dates';
import { practice } from './frame';
import { commonAsks } from './wording';
import { defineWritten, type WrittenSpeech } from './written';

export const boughtAfterMaking = defineWritten({
  id: 'bought-after-making',
  family: 'time',
  title: 'It was bought after it was made',
  failureTitle: 'It is said to be bought before it was made',
  kinds: ['doubt', 'agreement'],
  basis: 'A piece is bought when it has been made.',
  innocent: 'One of the two years may be a slip of memory.',
  settles: 'The receipt, or how the year of making is known.',
  source: practice,
  needs: { claims: ['made', 'bought'] },
  run({ claims: all }) {
    const made = distinctDates(all.made);
    const bought = distinctDates(all.bought);
    if (made.length === 0 || bought.length === 0)
      return { notApplicable: 'the listing does not give both a making and a purchase' };
    return bought.flatMap((purchase) =>
      made.flatMap((making): WrittenSpeech[] => {
        const early = daysBefore(purchase.span, making.span);
        const claims = [making.id, purchase.id];
        const key = `${making.id}/${purchase.id}`;
        const said = `The listing says ${claimWords(making)} and ${claimWords(purchase)}`;
        if (early > (making.span.about ? roomDays.hedgedMaking : 0))
          return [
            {
              kind: 'doubt',
              key,
              statement: `${said}: bought before it was made.`,
              claims,
              asks: [commonAsks.madeDate],
            },
          ];
        const soon = early === 0 && isExact(making.span) && daysBefore(making.span, purchase.span) < roomDays.boughtNew;
        return soon ? [{ kind: 'agreement', key, statement: `${said}, which go together.`, claims }] : [];
      }),
    );
  },
});
