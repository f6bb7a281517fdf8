import { findAvailability, isOfOneVariant } from '../../text/availability';
import { findBids } from '../../text/bids';
import { findConditions } from '../../text/condition';
import { foldWords } from '../../text/fold';
import { findItemCodes } from '../../text/item-code';
import { labelOf } from '../../text/label';
import { splitLabelled } from '../../text/label-words';
import { withoutLegends } from '../../text/legend';
import { wordsOf } from '../../text/lexicon';
import { findMemberSince } from '../../text/member-since';
import { tellsSum } from '../../text/offer-words';
import { findPayment } from '../../text/payment';
import { phraseTest } from '../../text/phrases';

import { findRatings } from '../../text/rating';
import { findReturns } from '../../text/returns';
import { findSalesCounts } from '../../text/sales-count';
import { findShipping } from '../../text/shipping';
import { findTraders, isCompanyName } from '../../text/trader';
import { sellersOwn } from '../../text/voices';
import { findWatchers } from '../../text/watchers';
import { type Draft, likeliest, type Provenance, propose } from '../draft';
import { readAuction } from './auction';
import { type ReadHints, readLabelled } from './labelled';
import { leadingLabel } from './leading-label';
import { placeLine } from './place-line';

const from = (where: string, confidence: number): Provenance => ({ origin: 'visible', where, confidence });
const maxText = 30_000;
const ownName = /^(?:name|nom|nome|nombre|naam|username|pseudo|ニックネーム)\s*[:：]/i;

/** Reads the second-hand facts that the page says without data: in its text, its description and its title. */
export function readSaidFacts(text: string, draft: Draft, hints: ReadHints): { auction: boolean } {
  const shown = text.slice(0, maxText).split('\n');
  const lines = shown.filter((line) => line !== '');
  // What buyers, reviewers and the house's legend say of a condition or of terms is not said of this piece.
  const own = sellersOwn(shown.join('\n'))
    .split('\n')
    .filter((_, index) => shown[index] !== '');
  const title = likeliest(draft.title);
  const description = withoutLegends(likeliest(draft.description).slice(0, maxText));
  for (const said of findConditions(title, true)) propose(draft.condition, said.value, from('title', 0.5), said.words);
  for (const said of findConditions(description))
    propose(draft.condition, said.value, from('description', 0.45), said.words);
  for (const said of findItemCodes(`${title}\n${description}`))
    propose(draft.itemCode, said.value, from('description', 0.55), said.words);
  readStatus(lines, draft);
  for (const [index, line] of lines.entries()) {
    const next = lines[index + 1] ?? '';
    if (labelOf(line) !== null && next.length <= 60 && labelOf(next) === null && splitLabelled(next) === null)
      readLabelled(line, next, draft, from('text', 0.5), hints);
    if (labelOf(line) === 'seller' && ownName.test(next)) readLabelled(line, next, draft, from('text', 0.55), hints);
    propose(draft.seller.place, placeLine(line), from('text', 0.45));
    if (line.length <= 80 && own[index] === line)
      for (const said of findConditions(line)) propose(draft.condition, said.value, from('text', 0.4), said.words);
    const lead = leadingLabel(line);
    if (lead) readLabelled(lead.name, lead.value, draft, from('text', 0.55), hints);
    if (line.length <= 600) readTerms(line, draft, hints, isNearSeller(lines, index, draft), own[index] === line);
  }
  return { auction: readAuction(lines, draft, hints) };
}

/** "What dealers sell may go back": the house speaks of those who sell there. */
const ofOthers = phraseTest(wordsOf('those-who-sell'));
/**
 * Within how many days a piece may go back, and that a company sells it, as a shop's footer says it where nothing else on the page speaks of returns. The
 * terms of a market, which names a seller beside itself, are not the seller's, and what a footer refuses may be said of
 * other goods.
 */
export function readFooter(footer: string, draft: Draft): void {
  const seller = likeliest(draft.seller.name);
  if (seller !== '' && !footer.includes(seller)) return;
  const terms = footer
    .split('\n')
    .flatMap((line) => (ofOthers.test(foldWords(line).text) ? [] : findReturns(line)))
    .filter(({ value }) => value.accepted && value.days !== null);
  if (draft.returns.length === 0)
    for (const { value, words } of terms) propose(draft.returns, { ...value, words }, from('footer', 0.4));
  const company = footer.split(/[\n,;|·]|(?<=\p{L}{4})\.\s/u).find(isCompanyName);
  // Who grants returns there sells by itself: a market's company does not.
  if (terms.length > 0 && draft.seller.trader.length === 0)
    propose(draft.seller.trader, company && 'trader', from('footer', 0.4), company?.trim());
}

/** Whether a line stands under a heading for the seller, or names the seller. */
function isNearSeller(lines: readonly string[], index: number, draft: Draft): boolean {
  const name = likeliest(draft.seller.name);
  return lines
    .slice(Math.max(0, index - 6), index + 1)
    .some((line) => labelOf(line) === 'seller' || (name.length > 2 && line.includes(name)));
}

function readTerms(line: string, draft: Draft, hints: ReadHints, nearSeller: boolean, own: boolean): void {
  const where = from('text', nearSeller ? 0.6 : 0.45);
  const { seller } = draft;
  // "Ann · Leeds · 4.9 (128)": on a seller's line a rating may stand behind a dot.
  const whole = findRatings(nearSeller ? withoutName(line, draft) : line);
  const rated = whole.length > 0 || !nearSeller ? whole : line.split(/\s[·•|]\s/).flatMap((part) => findRatings(part));
  for (const { share, count, words } of rated.slice(0, 2)) {
    // A number alone counts sales or pieces as likely as stars.
    if (count === null && (!nearSeller || /^\d+$/.test(words))) continue;
    propose(seller.rating, { share: Math.round(share * 10_000) / 10_000, count, words }, where);
  }
  for (const said of findSalesCounts(line)) propose(seller.salesCount, said.value, where, said.words);
  for (const said of findMemberSince(line, { language: hints.language ?? null, now: hints.now }))
    propose(seller.memberSince, said.value, where, said.words);
  for (const said of findTraders(line)) propose(seller.trader, said.value, where, said.words);
  for (const said of findWatchers(line)) propose(draft.watchers, said.value, from('text', 0.6), said.words);
  for (const said of findBids(line)) propose(draft.bids, said.value, from('text', 0.6), said.words);
  for (const said of findReturns(line))
    propose(draft.returns, { ...said.value, words: said.words }, from('text', 0.6), said.words);
  for (const said of findShipping(line))
    if (said.value.kind !== 'stated' || labelOf(said.words) === null)
      propose(draft.shipping, said.words, from('text', said.value.kind === 'stated' ? 0.4 : 0.55));
  for (const said of own ? findPayment(line) : []) propose(draft.payment, said.words, from('text', 0.55));
}

/** Lines of a table's row below its first: words and a button of the same seller. */
const rowReach = 3;

/** A status on a line of its own speaks for the listing; inside a sentence it may speak of something else. */
function readStatus(lines: readonly string[], draft: Draft): void {
  let row = Number.NEGATIVE_INFINITY;
  for (const [index, line] of lines.entries()) {
    if (line.length > 400) continue;
    // Rows with a sum each compare what others ask, or list sizes: what one of them says stands for that one.
    if (line.includes('\t') && tellsSum(line)) row = index;
    if (line.length > 120 || index - row <= rowReach) continue;
    for (const said of findAvailability(line)) {
      const alone = said.words.length >= line.replace(/[\s!.:*–—-]/g, '').length * 0.6;
      const ended = said.value === 'sold' || said.value === 'removed';
      if (said.value === 'sold' && isOfOneVariant(line)) continue;
      propose(draft.availability, said.value, from('text', alone ? (ended ? 0.92 : 0.8) : 0.4), said.words);
    }
  }
}

/** A line without the seller's name that opens it: a page may set name and stars side by side with no space between. */
function withoutName(line: string, draft: Draft): string {
  const name = likeliest(draft.seller.name);
  return name.length > 2 && line.startsWith(name) ? line.slice(name.length) : line;
}
