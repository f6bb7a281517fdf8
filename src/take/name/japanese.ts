import { japaneseHouses } from '../../text';
import { isCommon, type Shape } from './words';

const bagsOfHouse =
  /(?<![\p{Script=Katakana}\p{Script=Han}ー・])([\p{Script=Katakana}ー・]{2,20})鞄(?![\p{Script=Han}\p{Script=Katakana}ー])/gu;
const katakana = /[\p{Script=Katakana}ー・]{1,30}(?:\s?[&＆]\s?[\p{Script=Katakana}ー・]{1,30})?/gu;
const quoted = /[「『“]([\p{Script=Han}\p{Script=Hiragana}\p{Script=Katakana}ー]{2,16})[」』”]/gu;

type Placed = Pick<Shape, 'name' | 'start'>;
const liesIn = ({ start }: Placed, others: readonly Placed[]): boolean =>
  others.some((one) => start >= one.start && start < one.start + one.name.length);

/** Houses with their bags in their names ("カシワギ鞄"): those that the texts of a page never name without. */
export function housesOfBags(texts: readonly string[]): string[] {
  const found = texts.flatMap((text) => [...text.matchAll(bagsOfHouse)]);
  const withBags = new Map(found.map(([name, stem]) => [name, stem!]));
  const alone = new Set(
    texts.flatMap((text) =>
      [...text.matchAll(katakana)].map(({ 0: run, index }) => (text[index + run.length] === '鞄' ? '' : run)),
    ),
  );
  return [...withBags].filter(([, stem]) => !alone.has(stem) && !isCommon(stem)).map(([name]) => name);
}

/** Names in Japanese: runs of katakana that are no common word, what stands in quotation marks, and those that the page knows. */
export function japaneseNames(text: string, known: ReadonlySet<string>): Shape[] {
  const bags = [...text.matchAll(bagsOfHouse)]
    .filter(([name]) => known.has(name))
    .map(({ 0: name, index }) => ({ name, start: index }));
  const inMarks = [...text.matchAll(quoted)].map((match) => ({ name: match[1]!, start: match.index + 1 }));
  const houses = [...text.matchAll(japaneseHouses)].map((match) => ({ name: match[0], start: match.index }));
  const runs = [...text.matchAll(katakana)]
    .map((match) => ({ name: match[0], start: match.index }))
    .filter(({ name }) => name.length > 2);
  const marked = [...inMarks, ...bags];
  const longer = [...marked, ...houses.filter((one) => !liesIn(one, marked))];
  return [...longer, ...runs.filter((one) => !liesIn(one, longer))]
    .filter(({ name }) => !isCommon(name))
    .map(({ name, start }) => ({ name, start, end: start + name.length }));
}
