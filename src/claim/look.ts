import {
  aheadInClause,
  clauseAround,
  clauseBeforeComma,
  phrasePattern,
  phraseTest,
  rightAhead,
  rightBehind,
  textPattern,
  wordsOf,
} from '../text';

const article = `(?:\\s(?:${phrasePattern(wordsOf('article')).source}))?`;
/** "90s style", "1960s design": what stands behind makes it a look. */
const after = textPattern(`^['s]{0,2}[\\s-]{0,2}(?:${phrasePattern(wordsOf('look')).source})`);
const before = textPattern(`(?:${phrasePattern(wordsOf('look', 'in-the-look-of')).source})${article}\\s$`);
/** "Inspired by the bags of doctors of the 1920s": the clause tells of what it looks like. */
const compared = phraseTest(wordsOf('inspired-by', 'in-the-look-of'));

const closesWithLook = textPattern(
  `(?:${phrasePattern(wordsOf('look', 'in-the-look-of')).source})(?:\\s[\\p{L}-]{1,12}){0,2}$`,
);
/** "Vintage style, sixties": a decade that opens its clause goes on with the look that the clause before it tells of. */
export function goesOnOfLook(text: string, start: number): boolean {
  const { start: opens } = clauseAround(text, start, start);
  const before = isBareLead.test(text.slice(opens, start)) ? clauseBeforeComma(text, opens) : null;
  return before !== null && closesWithLook.test(text.slice(before.start, before.end).trimEnd().replace(/,$/, ''));
}
const isBareLead = /^\s?(?:\p{L}{1,5}\s)?$/u;

/** "The style goes back to 1908": the year is the design's. */
const ofDesign = textPattern(
  `^\\s?(?:${phrasePattern(wordsOf('article')).source})\\s?(?:\\p{L}{1,12}\\s)?(?:${phraseTest(wordsOf('look')).source})\\s`,
);

/** Whether words tell of what the piece looks like, and not of when it was made. */
export function isOnlyLook(text: string, start: number, end: number): boolean {
  const ahead = aheadInClause(text, start);
  return after.test(rightBehind(text, end)) || before.test(ahead) || compared.test(ahead) || ofDesign.test(ahead);
}

const likenedAhead = textPattern(
  `(?:${phrasePattern(wordsOf('looks-like', 'likened')).source})\\s(?:(?:${phrasePattern(wordsOf('an', 'article')).source})\\s)?(?:\\p{L}{1,3}\\s)?$`,
);
const likenedBehind = /^(?:の(?:よう|ごとく)|みたい|っぽ)/u;
/** "It feels like faux leather", "合皮のように軽い": what something is likened to, and not what it is. */
export const isLikened = (text: string, start: number, end: number): boolean =>
  likenedAhead.test(rightAhead(text, start)) || likenedBehind.test(rightBehind(text, end));
