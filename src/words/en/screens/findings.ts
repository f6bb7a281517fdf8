import type { FindingKind } from '../../../check/types';

/** What was found, and how it is told. */
export const findingsStrings = {
  title: 'Findings',
  against: 'What speaks against it',
  contradictions: 'What cannot both be true',
  doubts: 'What is unusual',
  gaps: 'What is still open',
  agreements: 'What fits',
  fitsNote:
    'Only what could have come out otherwise. That things fit is what an honest listing shows, and what a careful copy shows too.',
  little: 'What fits but says little',
  basis: 'Rests on',
  tells: 'Why it tells something',
  innocent: 'Ordinary reason',
  settles: 'Would clear it up',
  source: 'Source',
  weight: 'How sure is this?',
  aside: {
    title: 'Set aside by you',
    note: 'It is asked of nobody and judged no more. It comes back by itself when it is found otherwise.',
    action: 'Set aside',
    actionOf: (statement: string) => `Set aside: ${statement}`,
    why: 'Why do you set it aside?',
    done: 'Set it aside',
    leave: 'Leave it',
    because: (reason: string) => `Your reason: ${reason}`,
    undoOf: (statement: string) => `Undo setting aside: ${statement}`,
  },
  hardness: { contradiction: 'Both cannot be true.', doubt: 'Unusual.', gap: '', agreement: '' } satisfies Record<
    FindingKind,
    string
  >,
  cannotTell: 'What else could not be told, and why',
  failed: (check: string, message: string) =>
    `${check}: this check failed here, which says nothing of the listing. All others stand. (${message})`,
} as const;
