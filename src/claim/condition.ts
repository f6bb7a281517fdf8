import type { Listing } from '../listing/types';
import { findConditions, foldWords, phraseTest, type Said, wordsOf } from '../text';
import { type ClaimDraft, isDataTerm, type Passage, saidIn, saidInData } from './passage';
import { runsOf } from './runs';

type Found = Said<Listing['condition'][number]['value']>;

/** From so many different grades in one row, a dealer explains grades and grades nothing. */
const fewestOfLegend = 4;
/** How far apart grades of one legend stand. */
const nextInLegend = 40;
const ofThisOne = phraseTest(wordsOf('this-one'));

/** The grades that are said of the piece, without a legend's: "N: new, A: like new, B: used …". */
function withoutLegend(text: string, found: readonly Found[]): Found[] {
  const rows = runsOf(found, (before, said) => {
    const gap = text.slice(before.end, said.start);
    return gap.length <= nextInLegend && !ofThisOne.test(foldWords(gap).text);
  });
  return rows.flatMap((row) => (new Set(row.map(({ value }) => value)).size >= fewestOfLegend ? [] : row));
}

/** A labelled value of the form; what stands in running text or on a line of its own is less sure. */
const ofForm = 0.6;

/** Condition words of the text; the page's own condition field counts as said too. */
export function conditionClaims(passages: Passage[], listing: Listing): ClaimDraft[] {
  const heard = passages.flatMap((from) =>
    withoutLegend(from.text, findConditions(from.text, from.field === 'title')).map((said) => ({ from, said })),
  );
  const inText = heard.map(
    ({ from, said }): ClaimDraft => ({ kind: 'condition', condition: said.value, ...saidIn(from, said, 0.9) }),
  );
  // What the page's text was read for is said where it stands; a field of the page's own form speaks for itself.
  const data =
    listing.condition.find(({ origin }) => origin !== 'visible') ??
    listing.condition.find(
      ({ value, confidence }) => confidence >= ofForm && !heard.some(({ said }) => said.value === value),
    );
  if (!data) return inText;
  const words = data.words && !isDataTerm(data.words) ? data.words : data.value;
  return [...inText, { kind: 'condition', condition: data.value, ...saidInData(words, data.confidence) }];
}
