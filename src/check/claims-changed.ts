import * as z from 'zod';
import type { Claim } from '../claim/types';
import { askFor, type ChangedSubject } from './asks';
import { statementOf } from './changes';
import { defineCheck, practice } from './frame';

export const claimsChanged = defineCheck({
  id: 'claims-changed',
  family: 'changes',
  kinds: ['doubt'],
  source: practice,
  data: z.strictObject({
    subject: z.enum(['made', 'origin', 'condition', 'code', 'model', 'maker']),
    before: z.string(),
    now: z.string(),
    readAt: z.string(),
  }),
  needs: { previous: true, claims: ['made', 'origin', 'condition', 'code', 'model', 'maker'] },
  run({ previous, claims }) {
    const now = Object.values(claims).flat();
    const before = bySubject(previous.claims);
    const after = bySubject(now);
    return [...before].flatMap(([subject, old]) => {
      const fresh = after.get(subject);
      if (!fresh || fresh.some(({ says }) => old.some((one) => one.says === says))) return [];
      const [was, is] = [old[0], fresh[0]];
      return [
        {
          kind: 'doubt' as const,
          key: subject,
          data: { subject, before: was.words, now: is.words, readAt: previous.readAt },
          claims: [is.id],
          asks: [askFor('why-changed', { subject })],
        },
      ];
    });
  },
});

interface Meant {
  id: string;
  words: string;
  says: string;
}
function bySubject(claims: Claim[]): Map<ChangedSubject, [Meant, ...Meant[]]> {
  const subjects = new Map<ChangedSubject, [Meant, ...Meant[]]>();
  for (const claim of claims) {
    const says = statementOf(claim);
    if (says === null) continue;
    const subject = claim.kind as ChangedSubject;
    const meant: Meant = { id: claim.id, words: claim.words, says };
    const others = subjects.get(subject);
    subjects.set(subject, others ? [...others, meant] : [meant]);
  }
  return subjects;
}
