import { practice } from './frame';
import { askFact, quote } from './wording';
import { defineWritten, type WrittenSpeech } from './written';

export const authorshipPlain = defineWritten({
  id: 'authorship-plain',
  family: 'text',
  title: 'The listing says plainly who made the piece',
  failureTitle: 'The listing hedges who made the piece',
  kinds: ['doubt'],
  basis: '“Style of” or “inspired by” a maker says that another made it.',
  innocent: 'The seller may mean the cut or the period, or be careful by habit.',
  settles: 'Who made it, in writing.',
  source: practice,
  needs: { claims: ['hedged-authorship'] },
  run: ({ claims }) =>
    claims['hedged-authorship'].map(
      (claim): WrittenSpeech => ({
        kind: 'doubt',
        key: claim.id,
        statement: `The listing hedges who made it: ${quote(claim.words)}.`,
        claims: [claim.id],
        asks: [askFact('authorship', 'Could you confirm in writing who made it, and how you know?')],
      }),
    ),
});
