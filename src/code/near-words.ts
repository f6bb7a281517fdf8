import { changesBetween } from './nearest';
import { tidyCode } from './typed';
import type { Nearest } from './types';

const bare = (text: string) => tidyCode(text).replace(/[^A-Z0-9]/g, '');
/** More changes than this are no longer told one by one. */
const mostTold = 2;

/**
 * What tells a near code from the one that was read, in words: '"8" in place 2 read as "B", which look alike'. Null when
 * it is the same text, which reads under a system and is only not certain enough; empty where too much differs to say it.
 */
export function differenceWords(read: string, { text, change }: Pick<Nearest, 'text' | 'change'>): string | null {
  if (bare(read) === bare(text)) return null;
  if (!change.startsWith('read as') && change !== 'none') return change;
  const changes = changesBetween(tidyCode(read), text);
  return changes.length > mostTold ? '' : changes.map(({ words }) => words).join('; ');
}
