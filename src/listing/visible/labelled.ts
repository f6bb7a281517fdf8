import type { PriceHints } from '../../text/currency';
import { type Label, labelOf } from '../../text/label';
import { isRunningText } from '../../text/label-words';
import { parseMeasures } from '../../text/measure';
import { parsePrices } from '../../text/price';
import { readCount } from '../../text/said-number';
import { isCompanyName, traderBehind } from '../../text/trader';
import { type Draft, type Provenance, propose } from '../draft';
import { readConditionWords, readDate, readRatingWords, readReturnsWords } from './words';

/** What reading values needs of the page: hints for money, and the time of reading for dates. */
export interface ReadHints extends PriceHints {
  now: string;
}

/** "Maße B/H/T", "Dimensions (L x W x H)", "Medidas en cm": which side each number is, or its unit, said with the label. */
const sides =
  /\s?[\s(]\(?(?:(?:in|en)\s)?(?:[cm]m|inch(?:es)?|\p{L}{1,12}\s?[x×*/]\s?\p{L}{1,12}(?:\s?[x×*/]\s?\p{L}{1,12})?(?:,?\s(?:in\s)?[cm]m)?)\)?$/iu;
const withoutSides = (name: string): string => {
  const measured = name.replace(sides, '');
  return labelOf(measured) === 'measures' ? measured : name;
};
const withSides = (name: string, text: string): string => (withoutSides(name) === name ? text : `${name}: ${text}`);

/** Fields whose value is a name, a date or a few words. */
const named = new Set<Label>([
  'model',
  'maker',
  'itemCode',
  'material',
  'colour',
  'serial',
  'seller',
  'place',
  'posted',
]);

/** Reads the value beside a label ("Brand", "Zustand", "素材") into the field that the label names; other labels are left. */
export function readLabelled(name: string, value: string, draft: Draft, from: Provenance, hints: ReadHints): void {
  const label = labelOf(name) ?? labelOf(withoutSides(name));
  const text = value.replace(/\s+/g, ' ').trim().slice(0, 400);
  // The heads of a table's columns stand side by side as a name and its value do.
  if (labelOf(text) !== null) return;
  const language = hints.language ?? null;
  // "Maker: it says … inside, see the fourth photo.": what a seller tells under a heading is read as text.
  if (label !== null && named.has(label) && isRunningText(text)) return;
  switch (label) {
    case 'model':
      // "Style: 1980s look, holds a phone and keys.": a sentence is no model's name.
      if (text.length <= 60 && !/[.!?。]$/.test(text)) propose(draft.model, text, from);
      break;
    case 'maker':
    case 'itemCode':
    case 'material':
    case 'colour':
      if (text.length <= 120) propose(draft[label], text, from);
      break;
    case 'serial':
      propose(draft.itemCode, text.slice(0, 60), { ...from, confidence: from.confidence * 0.95 });
      break;
    case 'condition':
      propose(draft.condition, readConditionWords(text), from, text);
      break;
    case 'measures':
      for (const { measure } of parseMeasures(withSides(name, text), language)) propose(draft.measures, measure, from);
      break;
    case 'seller': {
      const name = sellerName(text);
      // Stars may stand under the heading in the name's place.
      if (name.length <= 60 && readRatingWords(name)?.words !== name) propose(draft.seller.name, name, from);
      propose(draft.seller.trader, traderBehind(text)?.value, from);
      propose(draft.seller.rating, readRatingWords(text), from);
      break;
    }
    case 'place':
      propose(draft.seller.place, text.slice(0, 100), from);
      break;
    case 'posted':
    case 'memberSince': {
      const date = readDate(text, { language, now: hints.now });
      const field = label === 'posted' ? draft.posted : draft.seller.memberSince;
      propose(
        field,
        date?.span,
        date?.ambiguous ? { ...from, caveats: [...(from.caveats ?? []), 'ambiguous'] } : from,
        text,
      );
      break;
    }
    case 'shipping':
    case 'payment':
      propose(draft[label], text, from);
      break;
    case 'returns':
      // "14 days" says it only beside its label.
      propose(draft.returns, readReturnsWords(text) ?? readReturnsWords(`${name}: ${text}`), from);
      break;
    case 'watchers':
    case 'bids':
      propose(draft[label], firstCount(text), from, text);
      break;
    case 'rating':
      propose(draft.seller.rating, readRatingWords(text), from);
      break;
    case 'sales':
      propose(draft.seller.salesCount, firstCount(text), from, text);
      break;
    case 'price':
      for (const { price, words, caveats } of parsePrices(text, hints).slice(0, 3))
        propose(draft.price, price, { ...from, caveats: [...(from.caveats ?? []), ...caveats] }, words);
  }
}

const firstCount = (text: string): number | null =>
  readCount(/\d[\d.,'\u00A0\u202F ]*k?/i.exec(text)?.[0]?.trim() ?? '');

const behindName =
  /評価|bewertung|rating|feedback|évaluation|valutazion|valoraci|beoordeling|[(（［[]|[,;]\s|\s[–—-]\s|\d[\d.,]{0,12}\s{0,3}%|\s\d[\d.,]{0,12} (?:sales|ventes|vendite|ventas|verkäufe)/iu;
const sentenceBehind = /(?<=[\p{L}\p{N}_]{3})\.\s/u;

const before = (text: string, pattern: RegExp): string => {
  const at = text.search(pattern);
  return at < 0 ? text : text.slice(0, at);
};

/** A seller's name without a label before it and the rating, count or badge behind it. */
export function sellerName(text: string): string {
  const named = text.replace(/^(?:name|nom|nome|nombre|naam|username|pseudo|ニックネーム)\s*[:：]\s*/iu, '');
  const [line = ''] = named.split(/[\n|·•★☆]|\s・\s/);
  const badge = traderBehind(line);
  const shown = badge ? line.slice(0, badge.start) : line;
  const name = before(before(shown, behindName), sentenceBehind);
  // "S.L.", "Ltd.", "Sanni R.": the full stop is the name's own.
  return isCompanyName(name) || /\s\p{Lu}\.\s?$/u.test(name) ? name.trim() : name.trim().replace(/[.,;:]$/, '');
}
