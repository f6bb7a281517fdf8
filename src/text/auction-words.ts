import { foldWords } from './fold';
import { tableWords } from './lexicon';
import type { tables } from './lexicon/tables';
import { phraseFinder } from './phrases';

/** What an amount is at an auction; `ends` and `ended` stand before a time. */
export type AuctionRole = keyof (typeof tables)['auction'];

const find = phraseFinder<AuctionRole>(tableWords('auction'));

/** The role that a short label names, when it says little else; null for any other words. */
export function auctionRole(label: string): AuctionRole | null {
  const plain = label.replace(/\s+/g, ' ').trim();
  if (plain === '' || plain.length > 50) return null;
  const [first] = find(plain);
  return first &&
    first.foldedEnd - first.foldedStart >= foldWords(plain).text.replace(/[\s:：()[\].*]/g, '').length * 0.6
    ? first.value
    : null;
}
