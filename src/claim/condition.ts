import type { Listing } from '../listing/types';
import { findConditions, foldWords, phrasePattern, type Said, wordsOf } from '../text';
import { type ClaimDraft, isDataTerm, type Passage, saidIn, saidInData } from './passage';

type Found = Said<Listing['condition'][number]['value']>;

/** From so many different grades in one row, a dealer explains grades and grades nothing. */
const fewestOfLegend = 4;
/** How far apart grades of one legend stand. */
const nextInLegend = 40;
const ofThisOne = phrasePattern(wordsOf('this-one'), 'u');

/** The grades that are said of the piece, without a legend's: "N: new, A: like new, B: used …". */
function withoutLegend(text: string, found: readonly Found[]): Found[] {
  const rows: Found[][] = [];
  for (const said of found) {
    const row = rows.at(-1);
    const gap = row ? text.slice(row.at(-1)?.end, said.start) : '';
    if (row && gap.length <= nextInLegend && !ofThisOne.test(foldWords(gap).text)) row.push(said);
    else rows.push([said]);
  }
  return rows.flatMap((row) => (new Set(row.map(({ value }) => value)).size >= fewestOfLegend ? [] : row));
}

/** Condition words of the text; the page's own condition field counts as said too. */
export function conditionClaims(passages: Passage[], listing: Listing): ClaimDraft[] {
  const inText = passages.flatMap((from) =>
    withoutLegend(from.text, findConditions(from.text, from.field === 'title')).map(
      (said): ClaimDraft => ({
        kind: 'condition',
        condition: said.value,
        ...saidIn(from, said, 0.9),
      }),
    ),
  );
  const data = listing.condition.filter((candidate) => candidate.origin !== 'visible')[0];
  if (!data) return inText;
  const words = data.words && !isDataTerm(data.words) ? data.words : data.value;
  return [...inText, { kind: 'condition', condition: data.value, ...saidInData(words, data.confidence) }];
}
