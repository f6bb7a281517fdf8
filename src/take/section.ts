import { rolesNamed } from './said/label';
import type { SaidPeriod } from './said/period';
import { tellingFinder } from './words';

const codeWords = tellingFinder('code');

/** A heading no longer than this is a period and little else; one no longer than the second may tell more beside it. */
const longestPeriod = 30;
const longestHeading = 60;

/** Whether a heading may tell a thing by itself. */
export const isHeadingSize = (heading: string): boolean => heading.length <= longestHeading;

/** Whether a heading asks for the code, or where it sits: what follows means it by "it". */
export const speaksOfCodes = (heading: string): boolean =>
  codeWords(heading).length > 0 || rolesNamed(heading.replace(/[¿?]/g, '')).includes('where');

const codeOrLook = tellingFinder('code', 'look-at');
/** Whether a heading is of where the code sits: "Where do I look?", "Place of the stamp". */
export const asksWhere = (heading: string): boolean =>
  isHeadingSize(heading) &&
  codeOrLook(heading).length > 0 &&
  rolesNamed(heading.replace(/[¿?]/g, '')).includes('where');

/** "1980 to 1998: a letter joins in", "Codes between 1964 and 1979": a heading whose period is that of what follows. */
export function isOfPeriod(heading: string, { form, start }: SaidPeriod): boolean {
  if (heading.length <= longestPeriod) return true;
  return heading.length <= longestHeading && form !== 'year' && (start === 0 || codeWords(heading).length > 0);
}
