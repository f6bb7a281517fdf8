import * as z from 'zod';
import { askFor } from './asks';
import { photoChange } from './changes';
import { defineCheck, practice } from './frame';

export const photosChanged = defineCheck({
  id: 'photos-changed',
  family: 'changes',
  kinds: ['doubt'],
  source: practice,
  data: z.strictObject({ gone: z.number(), of: z.number(), left: z.number(), readAt: z.string() }),
  needs: { previous: true, listing: ['photos'] },
  run({ previous, listing }) {
    const [change] = photoChange(previous, listing);
    // Without addresses that stay, nobody can tell which photos are gone.
    if (!change?.added || change.gone === 0 || change.now >= change.of) return [];
    const { of, now: left } = change;
    const data = { gone: change.gone, of, left, readAt: previous.readAt };
    return [{ kind: 'doubt', data, asks: [askFor('gone-photos', {})] }];
  },
});
