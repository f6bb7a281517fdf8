import type { Claim } from '../claim/types';
import { amountOf } from '../evidence';
import { isSentPhoto } from '../listing/sent-photo-types';
import type { Field, Listing, Price } from '../listing/types';
import type { PreviousLook } from './types';

/** One thing that a listing says otherwise than at the look before; null where it says nothing now. */
export type Change =
  | { what: 'price'; before: Price; now: Price | null }
  | { what: 'title' | 'seller'; before: string; now: string | null }
  /** Sentences that are gone and that are new; both are empty where no description was read now. */
  | { what: 'description'; gone: string[]; added: string[] }
  | PhotoChange
  | { what: 'claim'; kind: Claim['kind']; gone: Claim[]; added: Claim[] };

/** How many photos are gone, and the numbers of those that are new; null where addresses do not tell which. */
interface PhotoChange {
  what: 'photos';
  gone: number;
  added: number[] | null;
  of: number;
  now: number;
}

/**
 * Everything that a listing says otherwise than at the look before, what weighs most in a purchase first. It judges
 * nothing. What was not read then is no change; of several values that a page gives for a field, any one that stayed
 * shows that nothing was changed.
 */
export function changesSince(before: PreviousLook, listing: Listing, claims: readonly Claim[]): Change[] {
  return [
    ...priceChange(before.price, listing.price),
    ...wordChange('title', before.title, listing.title),
    ...wordChange('seller', before.seller, listing.seller.name),
    ...photoChange(before, listing),
    ...descriptionChange(before.description ?? null, listing.description),
    ...claimChanges(before, listing, claims),
  ];
}

function priceChange(before: Price | null, prices: Field<Price>): Change[] {
  if (before === null) return [];
  const alike = prices.map(({ value }) => value).filter(({ kind }) => kind === before.kind);
  if (alike.some((price) => samePrice(before, price))) return [];
  return [{ what: 'price', before, now: alike[0] ?? prices[0]?.value ?? null }];
}

/** The same amount; a currency that only one of the two looks could settle is no change. */
function samePrice(a: Price, b: Price): boolean {
  const highest = ({ minorTo, exponent }: Price) => (minorTo === undefined ? null : minorTo / 10 ** exponent);
  const currency = a.currency === b.currency || a.currency === null || b.currency === null;
  return currency && amountOf(a) === amountOf(b) && highest(a) === highest(b);
}

const plain = (words: string): string => words.normalize('NFKC').replace(/\s+/g, ' ').trim();

function wordChange(what: 'title' | 'seller', before: string | null, values: Field<string>): Change[] {
  if (before === null || plain(before) === '') return [];
  if (values.some(({ value }) => plain(value).toLowerCase() === plain(before).toLowerCase())) return [];
  return [{ what, before, now: values[0]?.value ?? null }];
}

function descriptionChange(before: string | null, values: Field<string>): Change[] {
  if (before === null || plain(before) === '') return [];
  if (values.some(({ value }) => plain(value) === plain(before))) return [];
  const now = values[0];
  if (!now) return [{ what: 'description', gone: [], added: [] }];
  const [was, is] = [sentencesOf(before), sentencesOf(now.value)];
  const gone = was.filter((sentence) => !is.includes(sentence));
  const added = is.filter((sentence) => !was.includes(sentence));
  return gone.length + added.length === 0 ? [] : [{ what: 'description', gone, added }];
}

/** Lines and sentences, each in one line of words. */
const sentencesOf = (text: string): string[] =>
  text
    .split(/\n|(?<=[.!?。！？])(?=\s|$)/)
    .map(plain)
    .filter((sentence) => sentence !== '');

/** At most one change: which of the page's photos are gone, and which are new. */
export function photoChange(before: PreviousLook, listing: Pick<Listing, 'photos'>): PhotoChange[] {
  const photos = listing.photos.filter((link) => !isSentPhoto(link));
  const [of, now] = [before.photos.length, photos.length];
  const identityOf = identityAmong(before.photos, photos);
  if (identityOf === null) {
    return of === now ? [] : [{ what: 'photos', gone: Math.max(0, of - now), added: null, of, now }];
  }
  const addressesNow = photos.map(({ url, alternatives }) => [url, ...alternatives].map(identityOf));
  const [was, is] = [new Set(before.photos.map(({ url }) => identityOf(url))), new Set(addressesNow.flat())];
  const gone = before.photos.filter(({ url }) => !is.has(identityOf(url))).length;
  const added = addressesNow.flatMap((addresses, index) => (addresses.some((one) => was.has(one)) ? [] : [index + 1]));
  return gone + added.length === 0 ? [] : [{ what: 'photos', gone, added, of, now }];
}

/**
 * What stays of a photo's address when its host or its size changes: the file's name, or, where several photos of one
 * look share a name, all that stands after the host. Null where the page made addresses itself: those are others each time.
 */
function identityAmong(...looks: readonly { url: string }[][]): ((url: string) => string) | null {
  if (looks.flat().some(({ url }) => /^(blob|data):/i.test(url))) return null;
  const nameOf = (url: string) => url.replace(/[?#].*/s, '').replace(/^.*\//s, '');
  const isClear = looks.every((photos) => new Set(photos.map(({ url }) => nameOf(url))).size === photos.length);
  return isClear ? nameOf : (url) => url.replace(/^https?:\/\/[^/]*/i, '');
}

/**
 * Statements that are gone or new. Where the words of one stand in both looks, the listing is the same, and only the
 * reading of it has become another with a newer version.
 */
function claimChanges(before: PreviousLook, listing: Listing, claims: readonly Claim[]): Change[] {
  const wordsBefore = plain([before.title, before.description].join('\n'));
  const wordsNow = plain([...listing.title, ...listing.description].map(({ value }) => value).join('\n'));
  const inWords = ({ at, words }: Claim, text: string) =>
    (at.field === 'title' || at.field === 'description') && text.includes(plain(words));
  const kinds = new Set([...before.claims, ...claims].map(({ kind }) => kind));
  return [...kinds].flatMap((kind): Change[] => {
    const [was, is] = [
      statementsOf(before.claims.filter(inOwnWords(before.description != null)), kind),
      statementsOf(claims.filter(inOwnWords(listing.description.length > 0)), kind),
    ];
    const gone = [...was].flatMap(([said, claim]) => (is.has(said) || inWords(claim, wordsNow) ? [] : [claim]));
    const added = [...is].flatMap(([said, claim]) => (was.has(said) || inWords(claim, wordsBefore) ? [] : [claim]));
    return gone.length + added.length === 0 ? [] : [{ what: 'claim', kind, gone, added }];
  });
}

/** What the page shows beside a description is not kept from look to look: nothing in it can be told to be new or gone. */
const inOwnWords = (described: boolean) => (claim: Claim) => !(described && claim.at.field === 'text');

/** The different statements of one kind, each with one claim that makes it. */
function statementsOf(claims: readonly Claim[], kind: Claim['kind']): Map<string, Claim> {
  const statements = new Map<string, Claim>();
  for (const claim of claims) {
    const statement = claim.kind === kind ? statementOf(claim) : null;
    if (statement !== null && !statements.has(statement)) statements.set(statement, claim);
  }
  return statements;
}

/** What a claim states, in a form that can be compared between two looks; null for a price, which is compared as such. */
export function statementOf(claim: Claim): string | null {
  switch (claim.kind) {
    case 'price':
      return null;
    case 'made':
    case 'bought':
      return JSON.stringify([claim.span.from, claim.span.to, claim.span.about ?? false]);
    case 'measure':
      return JSON.stringify([claim.measure.dimension, claim.measure.mm]);
    case 'returns':
      return JSON.stringify(claim.accepted);
    case 'assurance':
    case 'hurry':
    case 'wear':
      // These state no more than their words.
      return JSON.stringify([
        claim.kind,
        plain(claim.words),
        'polarity' in claim ? claim.polarity : 'is',
      ]).toLowerCase();
    default:
      // Its place and words may change while it states the same.
      return JSON.stringify(
        Object.entries(claim)
          .filter(([name]) => !['id', 'words', 'at', 'confidence'].includes(name))
          .sort(([one], [other]) => (one < other ? -1 : 1)),
      ).toLowerCase();
  }
}
