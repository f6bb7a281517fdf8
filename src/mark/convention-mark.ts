import { sinceSpan } from '../span';
import { defineMark, rowSource } from './define';
import { convention } from './hallmarks';

const pattern =
  /\bcommon\s+control\s+mark\b|\bconvention\s+(?:hall)?mark\b|\b(?:balance\s+)?scales\s+(?:hall)?mark\b|\b(?:hall)?mark\s+with\s+(?:a\s+)?(?:pair\s+of\s+|balance\s+)?scales\b/giu;

/** The scales of the Hallmarking Convention: not before 27 June 1975. */
export const conventionMark = defineMark({
  id: 'convention-mark',
  find: (text) =>
    [...text.matchAll(pattern)].map((match) => ({
      start: match.index,
      end: match.index + match[0].length,
      spans: [sinceSpan(convention.inForce)],
      strength: 'hard' as const,
      verified: true,
      source: rowSource(convention.source, true),
      says: { kind: 'convention-mark' as const },
      cautions: [{ kind: 'dates-metal' as const }],
    })),
});
