import type { Finding } from '../src/check/types';
import type { MakerProblem } from '../src/maker';
import type { Problem } from '../src/problem';
import { sayFinding, sayProblem } from '../src/words';

/** A finding with its English sentences, as a screen shows them; no-break blanks as plain ones. */
export function inEnglish(finding: Finding) {
  const { statement, basis, innocent, settles } = sayFinding(finding, 'en');
  const plain = (words: string) => words.replace(/\u00a0/g, ' ');
  return {
    ...finding,
    statement: plain(statement),
    basis: basis.map(plain),
    innocent: plain(innocent),
    settles: plain(settles),
  };
}

/** A failure as a reader of English sees it. */
export const problemInEnglish = ({ code, where, ...problem }: Problem & Partial<MakerProblem>) => ({
  code,
  where,
  ...sayProblem({ code, ...problem }, 'en'),
});
