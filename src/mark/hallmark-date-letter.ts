import { defineMark, type MarkFound, rowSource } from './define';
import { firstLetterYear, hallmarkSource, letterSpans, letterYears, type Office } from './hallmarks';

const letterPattern =
  /\bdate[\s-]{0,4}letter\s{0,8}(?:is|for|of|:|=)?\s{0,8}(?:an?\s{1,8})?(?:(?:small|lower[\s-]?case|capital|upper[\s-]?case)\s{1,8})?["“'‘]?([A-Za-z])["”'’]?(?![\p{L}\d])/giu;
/** An office by its name, or by its own mark; a mark alone counts because "date letter" already speaks of hallmarks. */
const officePatterns: [Office, RegExp][] = [
  ['London', /\bLondon\b|\bleopard['’]?s?\s+head\b/iu],
  ['Birmingham', /\bBirmingham\b|\banchor\b/iu],
  ['Sheffield', /\bSheffield\b|\b(?:York\s+)?rose(?:tte)?\b/iu],
  ['Edinburgh', /\bEdinburgh\b|\bcastle\b/iu],
];
const reach = 90;

/**
 * All years in which that office used the letter; none without the office.
 * Date letters of UK hallmarks, on mounts and locks of precious metal. All candidate years of the office are given;
 * without the office there is no year at all. Soft: the letters before 1975 are from memory, and the shield is not read.
 */
export const hallmarkDateLetter = defineMark({
  id: 'hallmark-date-letter',
  find: (text) =>
    [...text.matchAll(letterPattern)].map((match): MarkFound => {
      const end = match.index + match[0].length;
      const letter = caseAsSaid(match[0], match[1]!);
      const near = sentenceAround(text, match.index, end);
      const named = officePatterns.filter(([, pattern]) => pattern.test(near)).map(([office]) => office);
      const office = named.length === 1 ? named[0] : undefined;
      const at = {
        start: match.index,
        end,
        strength: 'soft' as const,
        verified: false,
        source: rowSource(hallmarkSource, false),
      };
      if (!office) {
        const offices = named.length > 1 ? 'several' : 'none';
        return { ...at, spans: [], says: { kind: 'lone-date-letter', letter, offices } };
      }
      const years = letterYears(office, letter);
      return {
        ...at,
        spans: letterSpans(years),
        places: [],
        says: { kind: 'date-letter', office, letter, years: years.map(({ year }) => year), first: firstLetterYear },
        cautions: [{ kind: 'letter-style', first: firstLetterYear }],
      };
    }),
});

const sentenceEnd = /[.!?\n]/u;

/** The words of the same sentence, `reach` characters either way: a shop's town in the next one is no assay office. */
const sentenceAround = (text: string, start: number, end: number): string =>
  (text
    .slice(Math.max(0, start - reach), start)
    .split(sentenceEnd)
    .at(-1) ?? '') + (text.slice(start, end + reach).split(sentenceEnd)[0] ?? '');

/** "small d" and "capital D" say the case; else it is as written. */
function caseAsSaid(words: string, letter: string): string {
  if (/small|lower/iu.test(words)) return letter.toLowerCase();
  return /capital|upper/iu.test(words) ? letter.toUpperCase() : letter;
}
