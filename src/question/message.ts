import type { Question } from './types';

export interface MessageOptions {
  sellerName?: string | undefined;
  title?: string | undefined;
}

/**
 * One polite message to copy to the seller: a greeting, the questions as a numbered list, thanks. It repeats no
 * finding, so that nobody reads an accusation in it; empty without questions.
 */
export function composeMessage(questions: Question[], { sellerName, title }: MessageOptions = {}): string {
  if (questions.length === 0) return '';
  const greeting = sellerName ? `Hello ${oneLine(sellerName)},` : 'Hello,';
  const piece = title ? `“${oneLine(title)}”` : 'your piece';
  const lead =
    questions.length === 1
      ? `I am interested in ${piece} and have one question before I decide:`
      : `I am interested in ${piece} and have ${questions.length} questions before I decide:`;
  const list = questions.map(({ words }, index) => (questions.length === 1 ? words : `${index + 1}. ${words}`));
  return [greeting, '', lead, '', ...list, '', 'Thank you very much for your help.'].join('\n');
}

/** Page text on one line and of bounded length, so that a title cannot write the message. */
const oneLine = (text: string): string => text.replace(/\s+/g, ' ').trim().slice(0, 120);
