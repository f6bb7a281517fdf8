import { isAsked } from '../prose/sentences';
import { type Inline, partOf } from './inline';

const asks = /^(?:Q|F|D|P|V|問|質問)\d{0,2}\s?[:.：)]\s?/u;
const answers = /^(?:A|R|回答|答)\d{0,2}\s?[:.：)]\s?(?=\S)/u;

/** "A: It was made after 1986": under a question (`above`) the letter says that it is an answer, and is no code. */
export function withoutAnswerSign(words: Inline, above: string): Inline {
  const lead = isAsked(above) || asks.test(above) ? answers.exec(words.text)?.[0] : undefined;
  return lead === undefined ? words : partOf(words, lead.length, words.text.length);
}
