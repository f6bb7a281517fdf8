import { sinceSpan } from '../span';
import { defineMark, rowSource } from './define';
import { convention } from './hallmarks';

const pattern =
  /\bcommon\s+control\s+mark\b|\bconvention\s+(?:hall)?mark\b|\b(?:balance\s+)?scales\s+(?:hall)?mark\b|\b(?:hall)?mark\s+with\s+(?:a\s+)?(?:pair\s+of\s+|balance\s+)?scales\b/giu;

export const conventionMark = defineMark({
  id: 'convention-mark',
  title: 'Convention mark on precious metal',
  says: 'The scales of the Hallmarking Convention: not before 27 June 1975.',
  find: (text) =>
    [...text.matchAll(pattern)].map((match) => ({
      start: match.index,
      end: match.index + match[0].length,
      spans: [sinceSpan(convention.inForce)],
      strength: 'hard' as const,
      verified: true,
      source: rowSource(convention.source, true),
      statement: 'The common control mark with the scales exists since 27 June 1975',
      caution: 'It dates the metal: a lock or a mount may have been replaced.',
    })),
});
