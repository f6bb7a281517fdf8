import { readFileSync } from 'node:fs';
import { parseHTML } from 'linkedom';
import { type Listing, readListing } from '../../src/listing';
import { priceWords } from '../hostile/expectation';

/** What is true of a saved page; a field that is absent is one that the page does not give. */
export interface Truth {
  url: string;
  kind?: Listing['kind'];
  title?: string;
  maker?: string;
  model?: string;
  price?: string;
  condition?: string;
  availability?: string;
  colour?: string;
  material?: string;
  itemCode?: string;
  descriptionStarts?: string;
  /** Day, ISO 8601. */
  posted?: string;
  /** "refused", or the number of days. */
  returns?: string;
  /** Words that one of the statements has. */
  shipping?: string;
  payment?: string;
  place?: string;
  watchers?: number;
  bids?: number;
  sellerName?: string;
  trader?: string;
  memberSince?: string;
  rating?: string;
  ratingCount?: number;
  /** Millimetres, any order. */
  measures?: string[];
  photos?: string[];
}

const read = (name: string) => readFileSync(new URL(name, import.meta.url), 'utf8');

export const truths = JSON.parse(read('truth.json')) as Record<string, Truth>;
/** A third of the pages of 2026-11-29, drawn at random before any was read; opened once, after the reader was done. */
export const asideTruths = JSON.parse(read('truth-aside.json')) as Record<string, Truth>;
export const pageHtml = (name: string): string => read(`${name}.html`);

export const readSaved = (name: string): Promise<Listing> => {
  const { document } = parseHTML(pageHtml(name));
  return readListing(document as unknown as Document, {
    url: (truths[name] ?? asideTruths[name])?.url ?? '',
    now: '2026-03-01T12:00:00Z',
  });
};

export const scoredFields = [
  'kind',
  'title',
  'maker',
  'model',
  'price',
  'condition',
  'availability',
  'colour',
  'material',
  'itemCode',
  'descriptionStarts',
  'posted',
  'returns',
  'shipping',
  'payment',
  'place',
  'watchers',
  'bids',
  'sellerName',
  'trader',
  'memberSince',
  'rating',
  'ratingCount',
  'measures',
  'photos',
] as const satisfies readonly (keyof Truth)[];
export type ScoredField = (typeof scoredFields)[number];

/** What the reader gives for a field, in the form of the truth table; null when it gives nothing. */
export function givenFor(field: ScoredField, listing: Listing, truth: Truth): string | null {
  const { seller } = listing;
  const best = <T>(candidates: { value: T }[]): T | undefined => candidates[0]?.value;
  const text = (value: string | number | undefined | null) =>
    value === undefined || value === null ? null : String(value);
  /** The wanted words when one of the statements has them, else the first statement. */
  const among = (candidates: { value: string }[], wanted: string | undefined) =>
    candidates.some(({ value }) => wanted !== undefined && value.toLowerCase().includes(wanted.toLowerCase()))
      ? (wanted ?? null)
      : text(best(candidates));
  switch (field) {
    case 'kind':
      return listing.kind;
    case 'price': {
      const price = best(listing.price);
      return price ? priceWords(price) : null;
    }
    case 'descriptionStarts': {
      const description = best(listing.description);
      return description?.startsWith(truth.descriptionStarts ?? '\0')
        ? (truth.descriptionStarts ?? null)
        : text(description?.slice(0, 60));
    }
    case 'posted':
      return text(best(listing.posted)?.from);
    case 'returns': {
      const returns = best(listing.returns);
      return returns ? (returns.accepted ? String(returns.days ?? 'accepted') : 'refused') : null;
    }
    case 'shipping':
    case 'payment':
      return among(listing[field], truth[field]);
    case 'place':
      return among(seller.place.slice(0, 1), truth.place);
    case 'sellerName':
      return text(best(seller.name));
    case 'trader':
      return text(best(seller.trader));
    case 'memberSince':
      return text(best(seller.memberSince)?.from?.slice(0, 4));
    case 'rating':
      return text(best(seller.rating) && Math.round((best(seller.rating)?.share ?? 0) * 1000) / 1000);
    case 'ratingCount':
      return text(best(seller.rating)?.count);
    case 'measures': {
      const sizes = listing.measures.map(({ value }) => value.mm).sort((a, b) => a - b);
      return sizes.length > 0 ? sizes.map((mm) => Math.round(mm * 10) / 10).join(' ') : null;
    }
    case 'photos':
      return listing.photos.length > 0 ? listing.photos.map(({ url }) => url).join(' ') : null;
    default:
      return text(best(listing[field] as { value: string | number }[]));
  }
}

/** The truth of a field in the same form. */
export function trueFor(field: ScoredField, truth: Truth): string | null {
  if (field === 'kind') return truth.kind ?? 'listing';
  if (field === 'measures')
    return truth.measures ? [...truth.measures].sort((a, b) => Number(a) - Number(b)).join(' ') : null;
  if (field === 'photos')
    return truth.photos ? truth.photos.map((address) => new URL(address, truth.url).href).join(' ') : null;
  const value = truth[field];
  return value === undefined ? null : String(value);
}

export type Mark = 'right' | 'wrong' | 'missed' | 'invented' | 'silent';

export interface Scored {
  page: string;
  field: ScoredField;
  mark: Mark;
  given: string | null;
  truth: string | null;
}

function markOf(given: string | null, truth: string | null): Mark {
  if (truth === null) return given === null ? 'silent' : 'invented';
  if (given === null) return 'missed';
  return given === truth ? 'right' : 'wrong';
}

export function scoreListing(page: string, listing: Listing, truth: Truth): Scored[] {
  return scoredFields
    .filter((field) => field === 'kind' || (truth.kind ?? 'listing') === 'listing')
    .map((field) => {
      const [given, wanted] = [givenFor(field, listing, truth), trueFor(field, truth)];
      return { page, field, mark: markOf(given, wanted), given, truth: wanted };
    });
}

/** Reads and scores saved pages: those that the reader was tuned on, or those set aside. */
export async function scoreAll(of: Record<string, Truth> = truths): Promise<Scored[]> {
  const scores: Scored[] = [];
  for (const [name, truth] of Object.entries(of)) scores.push(...scoreListing(name, await readSaved(name), truth));
  return scores;
}

/** Share of what was given that is right, and share of what is there that was given right. */
export function precisionAndRecall(scores: readonly Scored[]): { precision: number; recall: number; there: number } {
  const count = (...marks: Mark[]) => scores.filter(({ mark }) => marks.includes(mark)).length;
  const right = count('right');
  const there = count('right', 'wrong', 'missed');
  return {
    precision: right / Math.max(1, count('right', 'wrong', 'invented')),
    recall: right / Math.max(1, there),
    there,
  };
}

/** What the README says of these pages: every one of them was looked at while the reader was made. */
export function accuracyWords(scores: readonly Scored[]): { what: string; result: string } {
  const { precision, recall } = precisionAndRecall(scores);
  const percent = (share: number) => `${(share * 100).toFixed(1)} %`;
  return {
    what: `${new Set(scores.map(({ page }) => page)).size} saved pages in seven languages that the reader was tuned on; on pages that it was not, expect less`,
    result: `precision ${percent(precision)} and recall ${percent(recall)}`,
  };
}
