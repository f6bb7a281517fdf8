import { type Draft, emptyDraft, settleDraft } from './draft';
import { isOfThePiece, kindProblem } from './kind-problem';
import { hostOf } from './page/address';
import { pageKind } from './page-kind';
import { pickProblem } from './pick-problem';
import { settleConflicts } from './settle';
import type { Listing, PageExtract } from './types';
import { type ReadHints, readLabelled } from './visible/labelled';
import { readPick } from './visible/read-pick';
import { readSaidFacts } from './visible/said-facts';
import { readStatedMeasures } from './visible/stated-measures';

/** Reads what the words of a page say: labelled values, then its text, title and description. Pure. */
export function readFacts({ listing, labelled, signs, picked }: PageExtract): Listing {
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
  const { text, photos, format, url, readAt, language } = listing;
  const settled = settleConflicts(settleDraft(draft));
  const page = pageKind(signs, settled);
  const of = { format, url, readAt, language, text };
  if (page.kind !== 'offer' && page.kind !== 'auction' && page.kind !== 'ended')
    return noListing(page.kind, page, of, settled);
  return { ...of, kind: 'listing', page, photos, ...settled };
}

/** A page that offers no piece says so, and what could not be read of it; a tab that shows a file says that alone. */
function noListing(
  kind: Exclude<Listing['kind'], 'listing'>,
  page: Listing['page'],
  of: Pick<Listing, 'format' | 'url' | 'readAt' | 'language' | 'text'>,
  { problems }: Draft,
): Listing {
  const isFile = problems.some(({ code }) => code === 'page-is-picture' || code === 'page-is-pdf');
  const said = [...(isFile ? [] : [kindProblem(kind)]), ...problems.filter((problem) => !isOfThePiece(problem))];
  return { ...of, kind, page, photos: [], ...emptyDraft(), problems: said };
}
