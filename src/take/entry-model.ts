import type { Say } from './propose';
import { blanked } from './said/blanked';
import { rolesNamed } from './said/label';
import { onePeriod } from './said/one-period';
import { partNamed } from './said/part';
import { readPeriods, usedOf } from './said/period';
import { readAmounts } from './said/price';
import { readSizes } from './said/size';
import { opensPlaceOnPiece } from './said/where';
import { saysNothing } from './table/row';
import type { Proposal } from './types';
import { tellingFinder } from './words';

const longestLabel = 30;
const codeWords = tellingFinder('code');
/** "Modelli": "Lucana 30 × 22 × 9 cm (1963–1984); Sinni 24 × 17 × 7 cm": a label that names models, and each with its size. */
export function modelsOfLabel(head: string, body: string, say: Say): Proposal[] | null {
  if (head.length > longestLabel || !rolesNamed(head).includes('model')) return null;
  const pieces = body.replace(/[.。\s]{1,4}$/u, '').split(/[;\n]\s?/u);
  const told = pieces.map((piece) => {
    const [size] = readSizes(piece);
    const name = size
      ? piece
          .slice(0, size.start)
          .replace(/[\s,:(–-]{1,4}$/u, '')
          .trim()
      : '';
    return size && /^\p{Lu}/u.test(name) ? modelOf(name, piece.slice(size.start), say) : null;
  });
  return pieces.length > 1 && told.every((one) => one !== null) ? told.flatMap((one) => one!) : null;
}

/** A name with its size, and the years in which it was made. */
export function modelOf(name: string, body: string, say: Say): Proposal[] | null {
  const [sides, ...more] = readSizes(body);
  // "The Carryall comes in three sizes: …" is a sentence.
  const named = name
    .split(/\s/)
    .every(
      (word) => /^[\p{Lu}\d(]/u.test(word) || word.length <= 3 || /\p{Script=Han}|\p{Script=Katakana}/u.test(word),
    );
  // "Dimensions: 30 x 22 cm" is of one piece, and no name.
  const isLabel = rolesNamed(name).some((role) => ['size', 'width', 'height', 'depth'].includes(role));
  if (!sides || more.length > 0 || !named || isLabel || name.length > 40) return null;
  // "from 1958, £9 in 1965": a bare year beside a period is of something else.
  const periods = readPeriods(blanked(body, [sides]));
  const whole = periods.filter(({ form }) => form !== 'year');
  const { backwards, used, about } = usedOf(whole.length === 1 ? whole : periods);
  const made = onePeriod(used);
  return [
    say({ kind: 'model', name, size: sides.size, ...(made && { made }), ...(about && { about }) }, [
      backwards && 'backwards',
    ]),
  ];
}

/** "Format: 31 x 24 cm. Lining: linen. Code: under the flap": what clauses with a label of their own tell of a model. */
export function partsOfModel(model: string, body: string, say: Say): Proposal[] {
  return body.split(/[;\n]\s?|\.\s(?=\p{Lu})/u).flatMap((clause): Proposal[] => {
    const [, label, value] = /^\s{0,4}([^:：]{2,40}?)\s?[:：]\s?([^:：]{3,80}?)[.\s]{0,3}$/u.exec(clause) ?? [];
    if (label === undefined || readPeriods(clause).length > 0) return [];
    const part = partNamed(label);
    if (part) return saysNothing(value!) ? [] : [say({ kind: 'construction', part, is: value!, models: [model] })];
    const ofCode = codeWords(label).length > 0 || rolesNamed(label).includes('where');
    return ofCode && opensPlaceOnPiece(value!) ? [say({ kind: 'carrier', model, where: value! })] : [];
  });
}

const priceWords = tellingFinder('column-price', 'new-price', 'cost', 'price-list');
const longestBefore = 30;
/** "£19 in 1966", "189 DM (1975)": an amount and a year, and nothing else. */
const isPriced = (clause: string): boolean =>
  /^\s?(?:\p{Sc}\s?[\d.,]{1,10}|[\d.,]{1,10}\s?(?:\p{Sc}|\p{L}{1,8}\.?))\s(?:\(|(?:in|en|im Jahr|nel|anno|jahr)\s)\d{4}\)?[\s.]{0,3}$/iu.test(
    clause,
  );
/** "Neupreis 1975: 189 DM", "£42 in the autumn 1979 catalogue": what a model cost new in the one year beside the one amount of a clause. */
export function pricesOfModel(model: string, body: string, francs: string | null, say: Say): Proposal[] {
  return body.split(/[;,\n]\s?|\.\s(?=[\p{Lu}\p{Sc}])/u).flatMap((clause): Proposal[] => {
    const [amount, ...more] = priceWords(clause).length > 0 || isPriced(clause) ? readAmounts(clause, francs) : [];
    const [year, ...others] = readPeriods(clause).filter(({ form }) => form === 'year');
    if (!amount || !year || more.length > 0 || others.length > 0) return [];
    const apart = Math.max(amount.start - year.end, year.start - amount.end);
    if (apart > longestBefore) return [];
    const { currency } = amount;
    return [say({ kind: 'price', model, amount: amount.amount, currency, year: Number(year.used[0]) })];
  });
}

/** "Carryall 30: €430 (2002), €575 (2010)": each amount with the year behind it, or the one before it. */
export function pricesOf(model: string, body: string, francs: string | null, say: Say): Proposal[] {
  const years = readPeriods(body).filter(({ form }) => form === 'year');
  return readAmounts(body, francs).flatMap(({ amount, currency, start, end }, at, all) => {
    const until = all[at + 1]?.start ?? body.length;
    const year =
      years.find((one) => one.start >= end && one.start < until && one.start - end <= 3) ??
      years.findLast((one) => one.end <= start);
    return year ? [say({ kind: 'price', model, amount, currency, year: Number(year.used[0]) })] : [];
  });
}
