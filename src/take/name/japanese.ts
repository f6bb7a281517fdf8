import { japaneseHouses } from '../../text';
import { isCommon, type Shape } from './words';

const houseOfBags = /^[\p{Script=Katakana}ー・]{2,20}鞄$/u;
const katakana = /[\p{Script=Katakana}ー・]{1,30}(?:\s?[&＆]\s?[\p{Script=Katakana}ー・]{1,30})?/gu;
const quoted = /[「『“]([\p{Script=Han}\p{Script=Hiragana}\p{Script=Katakana}ー]{2,16})[」』”]/gu;

/** What parts the pieces of a heading. */
const pieces = /[\u3000|｜【】：:（(]/u;

type Placed = Pick<Shape, 'name' | 'start'>;
const liesIn = ({ start }: Placed, others: readonly Placed[]): boolean =>
  others.some((one) => start >= one.start && start < one.start + one.name.length);

/** Names in Japanese: runs of katakana that are no common word, and what stands in quotation marks. */
export function japaneseNames(text: string): Shape[] {
  const bags = text
    .split(pieces)
    .find((piece) => houseOfBags.test(piece.trim()))
    ?.trim();
  if (bags !== undefined) return [{ name: bags, start: text.indexOf(bags), end: text.indexOf(bags) + bags.length }];
  const inMarks = [...text.matchAll(quoted)].map((match) => ({ name: match[1]!, start: match.index + 1 }));
  const houses = [...text.matchAll(japaneseHouses)].map((match) => ({ name: match[0], start: match.index }));
  const runs = [...text.matchAll(katakana)]
    .map((match) => ({ name: match[0], start: match.index }))
    .filter(({ name }) => name.length > 2);
  const longer = [...inMarks, ...houses.filter((one) => !liesIn(one, inMarks))];
  return [...longer, ...runs.filter((one) => !liesIn(one, longer))]
    .filter(({ name }) => !isCommon(name))
    .map(({ name, start }) => ({ name, start, end: start + name.length }));
}
