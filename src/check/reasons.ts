import type { Offer } from '../claim/offer-types';
import type { Price } from '../listing/types';
import type { Within } from '../problem';
import type { Span } from '../span/types';
import type { Reason } from './types';

type None = Record<never, never>;

/** Every reason for which a check cannot tell or does not apply, and what its sentence is made with. */
export interface ReasonData {
  'no-listing': { page: 'list' | 'article' | 'cut' | 'none' };
  'not-stated': { field: string };
  'no-maker-file': None;
  'maker-file-silent': { maker: string; section: string };
  'first-look': None;
  'several-pieces': None;
  'another-offer': { offer: Offer['kind'] };
  'no-photos': None;
  /** `photo` is null for a code that stands in the text. */
  'code-unclear': { photo: number | null };
  'no-code': None;
  'no-date-claimed': None;
  /** Neither by a code nor by the listing. */
  'no-date-known': None;
  'no-origin-claimed': None;
  'fewer-than-two-origins': None;
  'no-placed-code': None;
  'no-placed-mark': None;
  'no-part-material': None;
  'parts-replaced': { words: string[] };
  'no-dated-model': None;
  'no-age-word': None;
  'no-fresh-part': None;
  'sold-new': None;
  'no-dating-code': None;
  'no-dating-mark': None;
  'no-plant-and-date': None;
  'not-made-and-bought': None;
  'fewer-than-two-dates': None;
  'no-date-before-stamping': { maker: string };
  'no-code-quoted': None;
  'no-code-denied': None;
  'no-code-to-compare': None;
  'stamping-not-sure': { maker: string; span: Span };
  'photos-not-read': { unread: number; of: number; cause: Within | null };
  'copies-only': { copies: number; of: number };
  'price-not-comparable': None;
  'price-without-like': { price: Price };
  'prices-in-two-currencies': None;
  'no-earlier-price': None;
  'called-new': None;
  'not-called-new': None;
  'maker-file-without-price': { maker: string };
  'photos-too-weak': { weak: number; of: number };
  'ground-not-measured': None;
  'not-yet-stamped': None;
  'stamp-only-in-copy': None;
  'no-stamp-read': None;
  'seller-not-named-twice': None;
  'seller-not-business': None;
  'law-elsewhere': None;
  'market-not-told': None;
  'no-model-of-file': None;
  'model-without-size': { model: string };
  'model-size-in-file': None;
  'no-sized-relative': None;
  'no-numbered-model': None;
  'no-sides-stated': None;
  /** Nothing that the file gives a number of. */
  'no-number-measured': { maker: string };
  'fewer-than-two-sides': None;
  /** A name in the listing that may be the maker's. */
  'name-without-file': { name: string };
}
export type ReasonId = keyof ReasonData;

/** A reason with its data: `because('first-look', {})`. */
export const because = <R extends ReasonId>(reason: R, data: ReasonData[R]): Reason => ({ reason, data });
