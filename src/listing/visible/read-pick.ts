import { parseMeasures } from '../../text/measure';
import { parsePrices } from '../../text/price';
import { type Draft, propose } from '../draft';
import type { PageExtract } from '../extract-types';
import { type ReadHints, sellerName } from './labelled';
import { readConditionWords, readDate, readReturnsWords } from './words';

type Picked = PageExtract['picked'][number];

/** Reads what the user pointed at into its field, above everything else. False when the words are not of that kind. */
export function readPick({ field, words, where }: Picked, draft: Draft, hints: ReadHints): boolean {
  const from = { origin: 'user-pick' as const, where, confidence: 1 };
  const line = words.replace(/\s+/g, ' ').trim();
  switch (field) {
    case 'photo':
      return true;
    case 'price': {
      const found = parsePrices(line, hints);
      const best = found.find((one) => one.price.kind === 'sale') ?? found[0];
      if (best) propose(draft.price, best.price, { ...from, caveats: best.caveats }, best.words);
      if (best) draft.price.find((one) => one.origin === 'user-pick')!.confidence = 1;
      return best !== undefined;
    }
    case 'condition': {
      const condition = readConditionWords(line);
      propose(draft.condition, condition, from, line);
      return condition !== null;
    }
    case 'measures': {
      const found = parseMeasures(words, hints.language ?? null);
      draft.measures.unshift(...found.map(({ measure }) => ({ value: measure, ...from })));
      return found.length > 0;
    }
    case 'posted': {
      const date = readDate(line, { language: hints.language ?? null, now: hints.now });
      propose(draft.posted, date?.span, from, line);
      return date !== null;
    }
    case 'returns': {
      const terms = readReturnsWords(line);
      propose(draft.returns, terms, from);
      return terms !== null;
    }
    case 'seller':
      propose(draft.seller.name, sellerName(line), from, line);
      return true;
    case 'description':
      propose(draft.description, words, from);
      return true;
    default:
      propose(draft[field], line.slice(0, 400), from);
      return true;
  }
}
