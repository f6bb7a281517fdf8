import { type Draft, settleDraft } from './draft';
import { hostOf } from './page/address';
import { pickProblem } from './pick-problem';
import { settleConflicts } from './settle';
import type { Listing, PageExtract } from './types';
import { type ReadHints, readLabelled } from './visible/labelled';
import { readPick } from './visible/read-pick';
import { readSaidFacts } from './visible/said-facts';
import { readStatedMeasures } from './visible/stated-measures';

/** Reads what the words of a page say: labelled values, then its text, title and description. Pure. */
export function readFacts({ listing, labelled, picked }: PageExtract): Listing {
  if (listing.kind !== 'listing') return listing;
  const draft: Draft = structuredClone(listing);
  const hints: ReadHints = {
    language: listing.language,
    domain: hostOf(listing.url),
    now: listing.readAt.slice(0, 10),
  };
  for (const { name, value, ...from } of labelled) readLabelled(name, value, draft, from, hints);
  for (const pick of picked)
    if (!readPick(pick, draft, hints)) draft.problems.push(pickProblem('pick-unreadable', pick.field, pick.where));
  readStatedMeasures(draft, listing.description[0]?.value ?? '', hints);
  readSaidFacts(listing.text, draft, hints);
  const { text, photos, format, url, readAt, kind, language } = listing;
  return { format, url, readAt, kind, language, text, photos, ...settleConflicts(settleDraft(draft)) };
}
