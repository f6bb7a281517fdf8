import type { NewCorrection } from './correction-types';
import type { Case } from './types';

/** Who made the piece, as the buyer says it, else as the page's own field does; empty where neither names anybody. */
export function makerNamed({ claims, listing }: Pick<Case, 'claims' | 'listing'>): string {
  const byHand = claims.findLast((claim) => claim.kind === 'maker' && claim.at.field === 'user');
  return (byHand?.kind === 'maker' ? byHand.maker : (listing.maker[0]?.value ?? '')).trim();
}

/**
 * Who may have made it by the words of the listing, where neither the buyer nor the page's own field names the maker: to be
 * asked, and never used unasked. Null where no word with a capital may be a name, or several are said.
 */
export function makerGuessed(kase: Pick<Case, 'claims' | 'listing' | 'skipped'>): string | null {
  const { names, possible } = kase.skipped.find(({ code }) => code === 'no-maker-file')?.data ?? {};
  const [said, another] = Array.isArray(names) ? names : [];
  const guess = another === undefined ? (said ?? possible) : null;
  if (typeof guess !== 'string' || !looksLikeName.test(guess)) return null;
  return makerNamed(kase) === '' ? guess : null;
}
const looksLikeName = /^[\p{Lu}\u3040-\u30ff\u3400-\u9fff]/u;

/** The maker as the buyer names it: its file judges the piece, whatever the page says. */
export const makerByHand = (maker: string): NewCorrection => ({
  of: 'claim',
  target: null,
  to: {
    kind: 'maker',
    id: 'by-hand',
    words: maker,
    at: { field: 'user', start: 0, end: maker.length },
    confidence: 1,
    maker,
  },
});
