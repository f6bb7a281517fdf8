import { yearSpan } from '../span';
import { anyLanguage, type FoundDate, jointWords, sourceRange, Taken } from '../text';
import type { Passage } from './passage';

/*
 * "Bought in 98", "presa nel 98", "Baujahr 98", "98年頃に購入": a year without its century and without an apostrophe, said
 * behind a word that only a year follows, and followed by nothing that it could count. Only of the last four decades of
 * the century: "in 04" and "in 24" count too much else. Common practice, no source.
 */

const { beforeShortYear, behindShortYear, behindShortYearJapanese } = jointWords;
const western = new RegExp(
  `(?<![\\p{L}\\d])(?:${anyLanguage(beforeShortYear)})[\\s:']{1,2}([6-9]\\d)(?=\\s?(?:$|[,;!?)\\n]|\\.(?!\\d))|\\s(?:${anyLanguage(behindShortYear)})(?!\\p{L}))`,
  'gu',
);
const japanese = new RegExp(`(?<![\\d和成治正])([6-9]\\d)年(?=${behindShortYearJapanese})`, 'gu');

/** Such years of a passage, where no date that was read holds their digits. */
export function shortYearsIn({ folded, text }: Passage, read: readonly FoundDate[]): FoundDate[] {
  const taken = new Taken(text.length);
  for (const { start, end } of read) taken.take(start, end);
  return [western, japanese].flatMap((pattern) =>
    Array.from(folded.text.matchAll(pattern)).flatMap((match): FoundDate[] => {
      const start = match.index + match[0].indexOf(match[1] as string);
      const said = sourceRange(folded, start, match.index + match[0].length);
      if (taken.overlaps(said.start, said.end)) return [];
      return [{ ...said, span: yearSpan(1900 + Number(match[1])), form: 'short-year' }];
    }),
  );
}
