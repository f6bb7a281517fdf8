import * as z from 'zod';
import type { Claim } from '../claim/types';
import { askFor, type ChangedSubject } from './asks';
import { defineCheck, practice } from './frame';

/** What a claim says, in a form that can be compared between two looks; null for kinds that may change freely. */
function meaning(claim: Claim): string | null {
  switch (claim.kind) {
    case 'made':
      return JSON.stringify([claim.span.from, claim.span.to, claim.span.about ?? false]);
    case 'origin':
      return claim.place;
    case 'condition':
      return claim.condition;
    case 'code':
      return claim.code;
    case 'model':
      return claim.model;
    case 'maker':
      return claim.maker;
    default:
      return null;
  }
}

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
      if (!was || !is) return [];
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
function bySubject(claims: Claim[]): Map<ChangedSubject, Meant[]> {
  const subjects = new Map<ChangedSubject, Meant[]>();
  for (const claim of claims) {
    const says = meaning(claim);
    if (says === null) continue;
    const subject = claim.kind as ChangedSubject;
    subjects.set(subject, [...(subjects.get(subject) ?? []), { id: claim.id, words: claim.words, says }]);
  }
  return subjects;
}
