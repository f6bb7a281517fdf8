import { isNegated } from './clause';
import { foldWords, type Said } from './fold';
import { tableWords, wordsOf } from './lexicon';
import { phraseFinder, phrasePattern } from './phrases';

const find = phraseFinder(tableWords('trader'));
/** Words that are common outside seller statements: they count only after a label or alone in their line. */
const alone = { 'private-alone': 'private', 'trader-alone': 'trader' } as const;
const label = new RegExp(
  `(?:${phrasePattern(wordsOf('seller-label')).source})[\\s:(-]{0,3}(?:(?:${phrasePattern(wordsOf('is')).source})\\s)?$`,
  'u',
);

/** No name with its badge is longer. */
const longestName = 120;

/** "north_gate Private seller": the badge at the end of what stands for a seller's name. */
export function traderBehind(text: string): Said<'private' | 'trader'> | null {
  if (text.length > longestName) return null;
  const last = find(foldWords(text)).find(
    ({ start, end }) => start > 0 && /\s$/.test(text.slice(0, start)) && end === text.trimEnd().length,
  );
  if (!last) return null;
  const { value, start, end, words } = last;
  return { value: value === 'private' || value === 'trader' ? value : alone[value], start, end, words };
}

/** How companies of these countries end their names. Common practice, no source. */
const companyEnd =
  /(?:^|[\s,])(?:ltd|limited|llc|llp|plc|inc|gmbh|ohg|kg|ug|e\.\s?k|sarl|s\.a\.r\.l|sas|s\.a\.s|eurl|srl|s\.r\.l|snc|s\.n\.c|s\.p\.a|s\.a|s\.l|s\.l\.u|s\.c|b\.\s?v|bv|n\.\s?v|nv|vof|v\.o\.f)\.?$|^(?:株式会社|有限会社|合同会社)|(?:株式会社|有限会社|合同会社)$/iu;

/** Those of countries outside the EU and the UK alone; "Co., Ltd." is how they are called in East Asia. Common practice, no source. */
const endElsewhere =
  /[\s,](?:llc|inc|corp|pty\.?,?\s?ltd|pte\.?,?\s?ltd|pvt\.?,?\s?ltd|co\.?,\s?ltd|k\.k)\.?$|^(?:株式会社|有限会社|合同会社)|(?:株式会社|有限会社|合同会社)$/iu;

/** Whether a seller is called as only companies outside the EU and the UK are. */
export const isCompanyElsewhere = (name: string): boolean => endElsewhere.test(name.trim());

/** Whether a seller is called as a company is. */
export const isCompanyName = (name: string): boolean => companyEnd.test(name.trim());

/** Private or trader statements about the seller. */
export function findTraders(text: string): Said<'private' | 'trader'>[] {
  const folded = foldWords(text);
  return find(folded).flatMap(({ value, foldedStart, foldedEnd, start, end, words }) => {
    if (isNegated(folded.text, foldedStart, foldedEnd)) return [];
    const left = folded.text.slice(Math.max(0, foldedStart - 24), foldedStart);
    const right = folded.text.slice(foldedEnd, foldedEnd + 4);
    const standsAlone = /(?:^|[\n\r|•·(])\s{0,3}$/u.test(left) && /^\s{0,3}(?:$|[\n\r|•·)])/u.test(right);
    if (value === 'private' || value === 'trader') return [{ value, start, end, words }];
    return standsAlone || label.test(left) ? [{ value: alone[value], start, end, words }] : [];
  });
}
