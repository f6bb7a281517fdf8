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

/**
 * What carries the code, by the words for where it sits: the piece itself where they name nothing that does, and null
 * where they name a label and not of what sort.
 */
export function carrierIn(where: string): CarrierKind | null {
  const folded = foldWords(where);
  const [named] = carriers(folded).filter(({ start, end }) => {
    const [lead] = leads(folded)
      .filter((one) => one.end <= start && start - one.end <= reach)
      .sort((a, b) => b.end - a.end);
    // Japanese says it behind: "on the back of the tab".
    const behind = besides(folded).some((one) => one.start === end);
    const isPlace = places(folded).some((one) => one.start <= start && one.end >= end);
    return (
      !behind && !isPlace && lead?.value !== 'not-on-it' && !besides(folded).some((one) => one.start === lead?.start)
    );
  });
  if (!named) return 'stamp';
  return named.value === 'on-some-label' ? null : (named.value.slice('on-'.length) as CarrierKind);
}
