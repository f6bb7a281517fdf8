import { type Problem, problem } from '../problem';
import type { PageExtract, PageNote } from './extract-types';
import { pickProblem } from './pick-problem';

/**
 * What the page script noted, as failures: their data is told apart outside of pages, where it costs no page anything.
 * `count` is the number that a note is of.
 */
export function pageProblem({ code, where, count, field = 'title' }: PageNote): Problem {
  switch (code) {
    case 'which-product':
      return problem(code, where, { pieces: count });
    case 'pick-the-variant':
      return problem(code, where, { variants: count });
    case 'pick-not-found':
    case 'pick-unreadable':
      return pickProblem(code, field, where);
    case 'data-too-long-to-repair':
      return problem(code, where, { kilobytes: count });
    case 'data-cut':
      return problem(code, where, { levels: count > 0 ? count : null });
    case 'photo-without-address':
      return problem(code, where, { photos: count });
    default:
      return problem(code, where);
  }
}

/** What was left out of a page that is larger than the budget of one reading; none when all of it was read. */
export const cutProblems = ({ nodesRead, attributes, characters }: PageExtract['cut']): Problem[] =>
  nodesRead === null && attributes === 0 && characters === 0
    ? []
    : [problem('page-cut', 'page', { nodesRead, attributes, characters })];
