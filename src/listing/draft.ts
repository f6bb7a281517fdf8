import type { Problem } from '../problem';
import { noFacts } from './fact-types';
import type { Candidate, Field, Listing, Origin } from './types';

/** A listing in the making: fields gather candidates in any order; `settleDraft` puts the best first. */
export type Draft = Pick<
  Listing,
  | 'title'
  | 'description'
  | 'maker'
  | 'model'
  | 'itemCode'
  | 'price'
  | 'condition'
  | 'availability'
  | 'measures'
  | 'colour'
  | 'material'
  | 'posted'
  | 'ends'
  | 'watchers'
  | 'bids'
  | 'returns'
  | 'shipping'
  | 'payment'
  | 'seller'
> & { problems: Problem[] };

export const emptyDraft = (): Draft => ({ ...noFacts(), problems: [] });

/** Where a value comes from and how far to trust it. */
export interface Provenance {
  origin: Origin;
  where: string;
  confidence: number;
  caveats?: readonly string[] | undefined;
}

const weakerBy: Record<string, number> = {
  repaired: 0.9,
  'unusual-names': 0.92,
  stale: 0.3,
  ambiguous: 0.75,
  'currency-open': 0.9,
  tie: 0.6,
  hidden: 0.8,
};

/** Adds a candidate; its caveats lower its confidence. Empty texts are left out; the same value of one origin stays once. */
export function propose<T>(field: Field<T>, value: T | null | undefined, from: Provenance, words?: string): void {
  if (value === null || value === undefined || (typeof value === 'string' && value.trim() === '')) return;
  const caveats = [...new Set(from.caveats)];
  const confidence = caveats.reduce((sum, caveat) => sum * (weakerBy[caveat] ?? 1), from.confidence);
  const candidate: Candidate<T> = {
    value: typeof value === 'string' ? (value.trim() as T) : value,
    origin: from.origin,
    where: from.where.slice(0, 200),
    confidence: Math.round(Math.min(1, Math.max(0, confidence)) * 1000) / 1000,
    ...(words !== undefined && words !== value ? { words: words.slice(0, 500) } : {}),
    ...(caveats.length > 0 ? { caveats } : {}),
  };
  const known = field.find((one) => one.origin === candidate.origin && sameValue(one.value, candidate.value));
  if (!known) field.push(candidate);
  else if (known.confidence < candidate.confidence) Object.assign(known, candidate);
}

export const sameValue = (a: unknown, b: unknown): boolean => JSON.stringify(a) === JSON.stringify(b);

/** The likeliest text of a field; empty where it has none. */
export const likeliest = ([best]: Field<string>): string => best?.value ?? '';

const maxCandidates = 12;

/** Every field's candidates best first (the order of reading among equals), at most twelve each. */
export function settleDraft(draft: Draft): Draft {
  const settle = <T>(field: Field<T>): Field<T> =>
    [...field].sort((a, b) => b.confidence - a.confidence).slice(0, maxCandidates);
  const { seller } = draft;
  return {
    title: settle(draft.title),
    description: settle(draft.description),
    maker: settle(draft.maker),
    model: settle(draft.model),
    itemCode: settle(draft.itemCode),
    price: settle(draft.price),
    condition: settle(draft.condition),
    availability: settle(draft.availability),
    measures: draft.measures.slice(0, 40),
    colour: settle(draft.colour),
    material: settle(draft.material),
    posted: settle(draft.posted),
    ...(draft.ends ? { ends: settle(draft.ends) } : {}),
    watchers: settle(draft.watchers),
    bids: settle(draft.bids),
    returns: settle(draft.returns),
    shipping: settle(draft.shipping),
    payment: settle(draft.payment),
    seller: {
      name: settle(seller.name),
      rating: settle(seller.rating),
      salesCount: settle(seller.salesCount),
      memberSince: settle(seller.memberSince),
      trader: settle(seller.trader),
      place: settle(seller.place),
    },
    problems: draft.problems,
  };
}
