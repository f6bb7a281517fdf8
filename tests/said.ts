import type { Finding } from '../src/check/types';
import { sayFinding } from '../src/words';

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
