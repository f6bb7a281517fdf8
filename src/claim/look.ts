import { clauseAround, phrasePattern, phraseTest, textPattern, wordsOf } from '../text';

const article = `(?:\\s(?:${phrasePattern(wordsOf('article')).source}))?`;
/** "90s style", "1960s design": what stands behind makes it a look. */
const after = textPattern(`^['s]{0,2}[\\s-]{0,2}(?:${phrasePattern(wordsOf('look')).source})`);
const before = textPattern(`(?:${phrasePattern(wordsOf('look', 'in-the-look-of')).source})${article}\\s$`);
/** "Inspired by the bags of doctors of the 1920s": the clause tells of what it looks like. */
const compared = phraseTest(wordsOf('inspired-by', 'in-the-look-of'));

/** Whether words tell of what the piece looks like, and not of when it was made. */
export function isOnlyLook(text: string, start: number, end: number): boolean {
  const { start: opens } = clauseAround(text, start, end);
  const ahead = text.slice(opens, start);
  return after.test(text.slice(end)) || before.test(ahead) || compared.test(ahead);
}
