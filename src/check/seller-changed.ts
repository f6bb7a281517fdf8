import { practice } from './frame';
import { askFact, quote } from './wording';
import { defineWritten } from './written';

export const sellerChanged = defineWritten({
  id: 'seller-changed',
  family: 'changes',
  title: 'The seller is the same',
  failureTitle: 'The listing has another seller than at the last look',
  kinds: ['doubt'],
  basis: 'A listing stays with the one who sells.',
  innocent: 'The seller may have changed the name of the account, or sold on to another.',
  settles: 'Whether the piece changed hands.',
  source: practice,
  needs: { previous: true, listing: ['seller'] },
  run({ previous, listing }) {
    const now = listing.seller.name[0]?.value;
    if (!previous.seller || !now) return { cannotTell: 'the page does not name the seller at both looks' };
    if (now.trim().toLowerCase() === previous.seller.trim().toLowerCase()) return [];
    const statement = `On ${previous.readAt.slice(0, 10)} the seller was ${quote(previous.seller)}; now it is ${quote(now)}.`;
    return [
      {
        kind: 'doubt',
        statement,
        asks: [askFact('changes', 'Has the piece changed hands since it was first listed?')],
      },
    ];
  },
});
