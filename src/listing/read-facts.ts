import { findAvailability } from '../text/availability';
import { isBuyControl, isOfferControl } from '../text/offer-words';
import { isCompanyName } from '../text/trader';
import { type Draft, emptyDraft, likeliest, propose, settleDraft } from './draft';
import type { PageExtract } from './extract-types';
import { isOfThePiece, kindProblem, wantedProblem } from './kind-problem';
import { dropNoValues } from './no-value';
import { hostOf } from './page/address';
import { pageKind } from './page-kind';
import { cutProblems, pageProblem } from './page-problems';
import { pickProblem } from './pick-problem';
import { photoLink } from './sent-photo-types';
import { settleConflicts } from './settle';
import { readStateFacts } from './state-facts';
import type { Listing } from './types';
import { type ReadHints, readLabelled } from './visible/labelled';
import { readPick } from './visible/read-pick';
import { readFooter, readSaidFacts } from './visible/said-facts';
import { readStatedMeasures } from './visible/stated-measures';
import { readTags } from './visible/tags';
import { isWantedAd } from './wanted';

/** Reads what the words of a page say: labelled values, then its text, title and description. Pure. */
export function readFacts({ listing, labelled, signs, notes, cut, state, picked, footer }: PageExtract): Listing {
  const draft: Draft = structuredClone(listing);
  draft.problems.push(...notes.map(pageProblem), ...cutProblems(cut));
  const hints: ReadHints = {
    language: listing.language,
    domain: hostOf(listing.url),
    now: listing.readAt.slice(0, 10),
  };
  Object.assign(draft, settleDraft(draft));
  readStateFacts(state, draft, hints, listing.text);
  for (const { name, value, ...from } of labelled) readLabelled(name, value, draft, from, hints);
  for (const pick of picked)
    if (!readPick(pick, draft, hints)) draft.problems.push(pickProblem('pick-unreadable', pick.field, pick.where));
  readStatedMeasures(draft, likeliest(listing.description), hints);
  readTags(labelled, draft);
  const { auction } = readSaidFacts(listing.text, draft, hints);
  if (!auction) readFooter(footer, draft);
  dropNoValues(draft);
  sayTrader(draft);
  preferOfferedByControl(draft, signs.controls);
  const { text, photos, format, url, readAt, language } = listing;
  const settled = settleConflicts(settleDraft(draft), listing.text);
  const told = pageKind(signs, settled, auction, text);
  const isWanted =
    told.kind === 'offer' && !signs.pointed && !signs.controls.some(isBuyControl) && isWantedAd(settled, labelled);
  const page = isWanted ? { ...told, kind: 'none' as const } : told;
  const of = { format, url, readAt, language, text };
  const { kind } = page;
  if (kind !== 'offer' && kind !== 'auction' && kind !== 'ended')
    return noListing(kind, { ...of, page }, settled, isWanted);
  return { ...of, kind: 'listing', page, photos, ...settled };
}

/** "Old Leather Ltd": a seller who is called as a company is. */
function sayTrader({ seller }: Draft): void {
  const [best] = seller.name;
  if (best && isCompanyName(best.value))
    propose(seller.trader, 'trader', { origin: best.origin, where: best.where, confidence: 0.6 }, best.value);
}

/**
 * A page that offers no piece says so, and what could not be read of it; a tab that shows a file says that alone, and a
 * picture by itself is a photo.
 */
function noListing(
  kind: Exclude<Listing['kind'], 'listing'>,
  of: Pick<Listing, 'page' | 'format' | 'url' | 'readAt' | 'language' | 'text'>,
  { problems }: Draft,
  isWanted: boolean,
): Listing {
  const isPicture = problems.some(({ code }) => code === 'page-is-picture');
  const isFile = isPicture || problems.some(({ code }) => code === 'page-is-pdf');
  const said = [
    ...(isFile ? [] : [isWanted ? wantedProblem : kindProblem(kind)]),
    ...problems.filter((problem) => !isOfThePiece(problem)),
  ];
  return {
    ...of,
    kind,
    // The one photo of a tab that shows a picture by itself: its address is the tab's.
    photos: isPicture ? [photoLink('picture', of.url)] : [],
    ...emptyDraft(),
    problems: said,
  };
}

/** "Sold out" on a page whose data and whose own button offer the piece is said of one size, or of another shop. */
function preferOfferedByControl({ availability }: Draft, controls: readonly string[]): void {
  // What can still be bought is offered, where nothing else says anything of it.
  const button = controls.find((words) => findAvailability(words)[0]?.value === 'offered');
  if (button && availability.length === 0)
    propose(availability, 'offered', { origin: 'visible', where: 'button', confidence: 0.45 }, button);
  const data = availability.find(({ value, origin }) => value === 'offered' && origin !== 'visible');
  if (!data || !controls.some(isOfferControl)) return;
  for (const one of availability)
    if (one.value === 'sold' && one.origin === 'visible')
      one.confidence = Math.min(one.confidence, data.confidence * 0.9);
}
