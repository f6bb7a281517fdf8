import type { Claim } from '../claim/types';
import { placeName } from '../place';
import { spanWords } from '../span';
import { practice } from './frame';
import { askFact, quote } from './wording';
import { defineWritten, type WrittenSpeech } from './written';

/** What a claim says, in a form that can be compared between two looks; null for kinds that may change freely. */
function meaning(claim: Claim): { subject: string; says: string } | null {
  switch (claim.kind) {
    case 'made':
      return { subject: 'the date of making', says: spanWords(claim.span) };
    case 'origin':
      return { subject: 'the country of making', says: placeName(claim.place) };
    case 'condition':
      return { subject: 'the condition', says: claim.condition };
    case 'code':
      return { subject: 'the code', says: claim.code };
    case 'model':
      return { subject: 'the model', says: claim.model };
    case 'maker':
      return { subject: 'the maker', says: claim.maker };
    default:
      return null;
  }
}

export const claimsChanged = defineWritten({
  id: 'claims-changed',
  family: 'changes',
  title: 'What the listing claims has not changed',
  failureTitle: 'What the listing claims has changed since the last look',
  kinds: ['doubt'],
  basis: 'A piece does not change its age, maker or country between two looks.',
  innocent: 'The seller may have corrected a mistake, perhaps after a question.',
  settles: 'What led to the change.',
  source: practice,
  needs: { previous: true, claims: ['made', 'origin', 'condition', 'code', 'model', 'maker'] },
  run({ previous, claims }) {
    const now = Object.values(claims).flat();
    const before = bySubject(previous.claims);
    const after = bySubject(now);
    return [...before].flatMap(([subject, old]): WrittenSpeech[] => {
      const fresh = after.get(subject);
      if (!fresh || fresh.some(({ says }) => old.some((one) => one.says === says))) return [];
      const [was, is] = [old[0], fresh[0]];
      if (!was || !is) return [];
      return [
        {
          kind: 'doubt',
          key: subject.replaceAll(' ', '-'),
          statement: `On ${previous.readAt.slice(0, 10)} the listing gave ${subject} as ${quote(was.words)}; now it says ${quote(is.words)}.`,
          claims: [is.id],
          asks: [askFact('changes', `Could you tell me why ${subject} was changed in the listing?`)],
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
function bySubject(claims: Claim[]): Map<string, Meant[]> {
  const subjects = new Map<string, Meant[]>();
  for (const claim of claims) {
    const meant = meaning(claim);
    if (!meant) continue;
    subjects.set(meant.subject, [
      ...(subjects.get(meant.subject) ?? []),
      { id: claim.id, words: claim.words, says: meant.says },
    ]);
  }
  return subjects;
}
