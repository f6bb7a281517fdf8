import { type AuctionRole, auctionRole } from '../../text/auction-words';
import { findBids } from '../../text/bids';
import { type FoundPrice, parsePrices } from '../../text/price';
import { type Draft, propose } from '../draft';
import type { Price } from '../types';
import type { ReadHints } from './labelled';
import { readDate } from './words';

/** An amount or a time of an auction, as the page labels it. */
interface Labelled {
  role: AuctionRole;
  price: FoundPrice | null;
  line: string;
}

const amountRoles: ReadonlySet<AuctionRole> = new Set(['bid', 'next-bid', 'start', 'buy-now', 'estimate', 'own-bid']);
const maxLine = 120;
/** Lines below a label in which its amount stands: a page may set an empty one or a sign between. */
const reach = 3;

/** The words before the first amount or digit of a line: its label, when it has one. */
function labelOf(line: string, price: FoundPrice | undefined): string {
  const end = price ? price.start : line.search(/\d/);
  const before = end < 0 ? line : line.slice(0, end);
  return before !== '' ? before : price ? line.slice(price.end) : '';
}

/** "$410 · 7 bids": where an amount without a label stands before a count of bids, they have come to it. */
function isBidByCount(line: string, { start, end }: FoundPrice, below: string): boolean {
  const behind = line.slice(end).trim();
  const counted = behind === '' ? below : behind;
  const [bids] = findBids(counted);
  const others = bids === undefined ? counted : counted.slice(0, bids.start) + counted.slice(bids.end);
  return start === 0 && bids !== undefined && bids.value > 0 && !/[\p{L}\d]/u.test(others);
}

/** Labels of an auction with their amounts: on one line, the label first or behind, or the amount below it. */
function labelledAmounts(lines: readonly string[], hints: ReadHints): Labelled[] {
  const found: Labelled[] = [];
  for (const [index, line] of lines.entries()) {
    if (line.length > maxLine) continue;
    const [own] = parsePrices(line, hints);
    const role =
      auctionRole(labelOf(line, own)) ?? (own && isBidByCount(line, own, lines[index + 1] ?? '') ? 'bid' : null);
    if (role === null) continue;
    if (own || !amountRoles.has(role)) {
      found.push({
        role,
        price: own ?? null,
        line: own || /\d/.test(line) ? line : lines.slice(index, index + 2).join(' '),
      });
      continue;
    }
    const below = lines.slice(index + 1, index + 1 + reach).map((one) => ({ one, price: parsePrices(one, hints)[0] }));
    const first = below.find(({ one, price }) => price !== undefined || auctionRole(labelOf(one, price)) !== null);
    if (first?.price && first.price.words.length * 2 >= first.one.length)
      found.push({ role, price: first.price, line });
  }
  return found;
}

const kinds: Partial<Record<AuctionRole, Price['kind']>> = {
  start: 'start',
  'next-bid': 'next-bid',
  'buy-now': 'buy-now',
  estimate: 'estimate',
};

/**
 * Tells an auction's amounts apart: the current bid is the price, and what the page or its data gives as the price is the
 * start, the next bid, the price to buy at once or an estimate where the page labels that amount so. Without a bid the price
 * stays open: the start is none. Returns whether the page labels what only an auction has.
 */
export function readAuction(lines: readonly string[], draft: Draft, hints: ReadHints): boolean {
  const found = labelledAmounts(lines, hints);
  const says = (role: AuctionRole) => found.filter((one) => one.role === role);
  const [bid] = says('bid');
  const isAuction =
    draft.bids.length > 0 ||
    says('next-bid').length + says('start').length + says('own-bid').length > 0 ||
    (bid !== undefined && says('buy-now').length + says('estimate').length > 0);
  if (!isAuction) return false;
  for (const one of [...found].reverse()) {
    const kind = kinds[one.role];
    if (kind && one.price) nameAmount(draft, one.price, kind, bid?.price ?? null);
  }
  if (bid?.price) {
    const sale = { ...bid.price.price, kind: 'sale' as const };
    // Above what data says: data of auctions keeps the amount of the day when it was made.
    propose(
      draft.price,
      sale,
      {
        origin: 'visible',
        where: `text: ${bid.line.slice(0, 60)}`,
        confidence: 0.93,
        caveats: [...bid.price.caveats, 'current-bid'],
      },
      bid.price.words,
    );
    const own = draft.price.find((one) => one.caveats?.includes('current-bid'));
    if (own) own.confidence = 0.93;
  }
  const [start] = draft.price.filter(({ value }) => value.kind === 'start');
  if (!bid?.price && start)
    draft.price = draft.price.filter(
      ({ value, origin, confidence }) => value.kind !== 'sale' || origin !== 'visible' || confidence >= 0.6,
    );
  const [ended] = says('ended');
  // What ended with a bid is another's; what ended without one is offered no more.
  if (ended && says('ends').length === 0) {
    const gone = { origin: 'visible', where: 'text', confidence: 0.85 } as const;
    propose(draft.availability, bid?.price ? 'sold' : 'removed', gone, ended.line.slice(0, 120));
  }
  for (const { line } of [...says('ends'), ...says('ended')]) {
    const date = readDate(line, { language: hints.language ?? null, now: hints.now });
    draft.ends ??= [];
    propose(draft.ends, date?.span, { origin: 'visible', where: 'text', confidence: 0.6 }, line.slice(0, 120));
  }
  return true;
}

/** Gives every candidate of an amount its name, unless the current bid is of the same amount. */
function nameAmount(draft: Draft, { price, words }: FoundPrice, kind: Price['kind'], bid: FoundPrice | null): void {
  const same = (one: Price) => one.minor === price.minor && one.exponent === price.exponent;
  if (bid && same(bid.price)) return;
  let known = false;
  for (const one of draft.price)
    if (same(one.value) && one.value.kind !== 'was' && one.origin !== 'user-pick') {
      one.value = { ...one.value, kind };
      one.confidence = Math.min(one.confidence, 0.4);
      known = true;
    }
  if (!known) propose(draft.price, { ...price, kind }, { origin: 'visible', where: 'text', confidence: 0.4 }, words);
}
