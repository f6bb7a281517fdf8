import { foldWords } from '../../text';
import { tellingFinder } from '../words';

const on = tellingFinder('sits-on');
const sits = tellingFinder('sits');
const code = tellingFinder('code');

/** Whether words begin as a place on a piece does: "on a leather tab", "sous le rabat". */
export const opensPlaceOnPiece = (text: string): boolean => {
  const [first] = on(text);
  return first !== undefined && first.start <= 10 && text.length <= 160;
};

const japanese = /(?:コード|刻印)は(.{2,40}?)に(?:刻印|あり|押|入)/u;

/** Where a sentence says that the code sits, in its own words; null when it says nothing of that. */
export function readWhere(sentence: string): string | null {
  const inJapanese = japanese.exec(sentence.slice(0, 400));
  if (inJapanese) return inJapanese[1]!;
  const folded = foldWords(sentence);
  const [noun] = code(folded);
  const verb = sits(folded).find((one) => noun !== undefined && Math.abs(one.start - noun.start) <= 60);
  if (!noun || !verb) return null;
  const from = Math.max(noun.end, verb.end);
  const first = on(folded).find(({ start }) => start >= from && start - from <= 24);
  if (!first) return null;
  const where = sentence
    .slice(first.start)
    .replace(/[.;!?].{0,2000}$/su, '')
    .replace(/\s?\([^)]{0,60}\)$/, '')
    .trim();
  return where.length >= 6 && where.length <= 140 && !/\d{3}/.test(where) ? where : null;
}
