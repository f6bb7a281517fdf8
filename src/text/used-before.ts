import { aheadInClause, behindInClause, clauseAround } from './clause';
import { anyLanguage } from './each-language';
import { topics, wordsOf } from './lexicon';
import { phrasePattern, phraseTest } from './phrases';

/** "Not used much", "jamais porté plus de deux fois": used, and not often. */
const muchBehind = new RegExp(`^\\s(?:\\p{L}{1,6}\\s)?(?:${phrasePattern(wordsOf('not-much')).source})`, 'u');
/** Japanese has it ahead: "数回しか使っていません". */
const littleAhead = phraseTest(topics['not-much'].ja);
const forATime = phraseTest(wordsOf('for-a-time'));
/** What was never used at all was not used for years either. */
const never = new RegExp(
  anyLanguage([
    'never',
    'jamais',
    '(?:^|\\P{L})nie(?:mals)?(?!\\p{L})',
    '(?<!\\p{L})mai(?!\\p{L})',
    'nunca|jamas',
    'nooit',
    '一度も',
  ]),
  'u',
);

/**
 * Whether "not used" is said of how much, or of some time only: "not used much" is used, and "not used for years" tells
 * nothing of the years before.
 */
export function isUsedBefore(text: string, start: number, end: number): boolean {
  if (muchBehind.test(behindInClause(text, end)) || littleAhead.test(aheadInClause(text, start))) return true;
  if (never.test(text.slice(start, end))) return false;
  const clause = clauseAround(text, start, end);
  return forATime.test(text.slice(clause.start, clause.end));
}
