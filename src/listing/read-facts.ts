import type { Problem } from '../problem';
import { type Draft, settleDraft } from './draft';
import { hostOf } from './page/address';
import type { Listing, PageExtract } from './types';
import { readLabelled } from './visible/labelled';
import { readStatedMeasures } from './visible/stated-measures';

/** Reads what the words of a page say: labelled values, and facts in its title and description. Pure. */
export function readFacts({ listing, labelled }: PageExtract): Listing {
  if (listing.kind !== 'listing') return listing;
  const draft: Draft = structuredClone({ ...listing, problems: [...listing.problems] });
  const hints = { language: listing.language, domain: hostOf(listing.url), now: listing.readAt.slice(0, 10) };
  for (const { name, value, ...from } of labelled) readLabelled(name, value, draft, from, hints);
  readStatedMeasures(draft, listing.description[0]?.value ?? '', hints);
  const settled = settleDraft(draft);
  settleConflicts(settled, settled.problems);
  return { ...listing, ...settled };
}

/** A price of the data that is not the one seen: both stay, and it is said. */
function settleConflicts(draft: Draft, problems: Problem[]): void {
  const sale = draft.price.filter((one) => one.value.kind === 'sale');
  const data = sale.find((one) => one.origin !== 'visible' && !one.caveats?.includes('stale'));
  const seen = sale.find((one) => one.origin === 'visible' && one.confidence >= 0.6);
  if (!data || !seen || data.value.minor === seen.value.minor) return;
  for (const one of [data, seen]) one.caveats = [...(one.caveats ?? []), 'conflict'];
  problems.push({
    code: 'price-conflict',
    where: 'price',
    what: `The page's data gives another price (${data.words ?? data.value.minor}) than the page shows (${seen.words ?? seen.value.minor}).`,
    remedy: 'Ask the seller for the price, or point at the right one.',
  });
}
