import { foldWords } from '../text/fold';
import { wordsOf } from '../text/lexicon';
import { phraseTest } from '../text/phrases';
import type { Draft } from './draft';
import type { PageSigns } from './extract-types';

const offers = phraseTest(wordsOf('offering'));
/** A seller's own text is no longer; an article that names a sum is. */
const longest = 4000;

/**
 * "I'm selling my bag, £120 posted": the only sum of a short page stands in the seller's sentence and nowhere by itself.
 * Whoever sells is named, or says that they sell. Common practice, no source.
 */
export function isOfferedInWords(text: string, { price, seller }: Draft, { headType, published, article }: PageSigns) {
  if (text.length > longest || published || article || /article|blog/i.test(String(headType))) return false;
  const sums = price.filter(
    ({ value, origin, caveats }) =>
      origin === 'visible' && value.kind !== 'shipping' && !caveats?.includes('no-currency-sign'),
  );
  const asked = sums.find(({ value }) => value.kind === 'sale')?.value.minor;
  if (asked === undefined) return false;
  // What it cost when new is more, and stands beside the sum that is asked.
  if (sums.some(({ value }) => value.minor !== asked && !(value.kind === 'was' && value.minor > asked))) return false;
  return seller.name.length > 0 || offers.test(foldWords(text).text);
}
