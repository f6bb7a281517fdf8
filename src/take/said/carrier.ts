import type { CarrierKind } from '../../maker/types';
import { foldWords } from '../../text';
import { tellingFinder } from '../words';

const carriers = tellingFinder('on-tab', 'on-sticker', 'on-card', 'on-chip', 'on-woven-label', 'on-some-label');
const leads = tellingFinder('sits-on', 'not-on-it');
const besides = tellingFinder('not-on-it');
/** Parts of a bag that are named after what goes into them. */
const places = tellingFinder('card-place');

/** How far before a carrier the word may stand that says whether the code is on it: "under the small leather tab". */
const reach = 24;

const inJapanese = /[\u3040-\u30ff]/;

/** The carrier that words name, and whether they place the code on it; of a label of no told sort, "some". */
function carrierNamed(where: string): CarrierKind | 'some' | null {
  const folded = foldWords(where);
  const beside = besides(folded);
  const ofPlaces = places(folded);
  const ahead = leads(folded).sort((a, b) => b.end - a.end);
  const named = carriers(folded).find(({ start, end }) => {
    const lead = ahead.find((one) => one.end <= start && start - one.end <= reach);
    // Japanese says it behind: "on the back of the tab".
    const isBeside = beside.some((one) => one.start === end || (!inJapanese.test(where) && one.start === lead?.start));
    return !isBeside && !ofPlaces.some((one) => one.start <= start && one.end >= end);
  });
  if (!named) return null;
  return named.value === 'on-some-label' ? 'some' : (named.value.slice('on-'.length) as CarrierKind);
}

/**
 * What carries the code, by the words for where it sits: the piece itself where they name nothing that does, and null
 * where they name a label and not of what sort.
 */
export function carrierIn(where: string): CarrierKind | null {
  const named = carrierNamed(where);
  return named === 'some' ? null : (named ?? 'stamp');
}

/** The carrier that words name as such: a tab, a sticker, a card; null where they name none, or only some label. */
export function namesCarrier(words: string): CarrierKind | null {
  const named = carrierNamed(words);
  return named === 'some' ? null : named;
}
