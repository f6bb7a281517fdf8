import { readFileSync } from 'node:fs';
import * as z from 'zod';
import { type Case, type CaseInput, findingsOf } from '../../../src/case';
import type { FindingKind } from '../../../src/check';
import type { Listing } from '../../../src/listing/types';
import { builtInMakers } from '../../../src/maker';
import { monthSpan } from '../../../src/span';
import type { PhotoRead, StampLine } from '../../../src/stamp/types';
import { emptyListing, readPhoto, stampLine, stated, unreadPhoto, withPhotos } from '../../unit/check/sample';

const checkIds = z.array(z.string()).default([]);
/**
 * One row of the truth table, written by hand from the rules of the trade. Contradictions, doubts and gaps are all of
 * them, by check; `among` names agreements that must be there.
 */
const truthSchema = z.strictObject({
  name: z.string(),
  /** The page's own field for the maker, null when it has none. */
  maker: z.string().nullable(),
  language: z.string().default('en'),
  title: z.string(),
  text: z.string(),
  /** Code that a sharp photo shows. */
  stamp: z.string().nullable(),
  /** Code that a photo shows too badly to be read. */
  blurred: z.string().optional(),
  typed: z.array(z.string()).default([]),
  printed: z.array(z.string()).default([]),
  /** Photos on the page; the stamp is in the last, print in the last but one. */
  photos: z.number().int().default(9),
  /** How many of the photos, from the first, were not read. */
  unread: z.number().int().default(0),
  weak: z.boolean().default(false),
  tooWeak: z.boolean().default(false),
  repeated: z.boolean().default(false),
  price: z.string().optional(),
  condition: z.enum(['new', 'used']).optional(),
  returns: z.enum(['refused']).nullable().optional(),
  seller: z.enum(['known', 'new', 'trader', 'none']).default('known'),
  contradiction: checkIds,
  doubt: checkIds,
  gap: checkIds,
  among: checkIds,
  /** Known faults, counted as such: checks that should speak and do not, and that speak and should not, with the reason. */
  missed: checkIds,
  extra: checkIds,
  why: z.string().optional(),
});
export type TruthRow = z.infer<typeof truthSchema>;

export const truthFiles = ['sound', 'misdescribed', 'incomplete'] as const;
export const truthRows = (file: (typeof truthFiles)[number]): TruthRow[] =>
  z.array(truthSchema).parse(JSON.parse(readFileSync(new URL(`${file}.json`, import.meta.url), 'utf8')));

const now = '2026-01-15T10:00:00Z';

function sellerOf(kind: TruthRow['seller']): Listing['seller'] {
  if (kind === 'none') return emptyListing.seller;
  const known = kind === 'known' || kind === 'trader';
  return {
    ...emptyListing.seller,
    name: stated('harbour_attic'),
    memberSince: stated(known ? monthSpan(2014, 1) : monthSpan(2025, 12)),
    rating: stated(known ? { share: 0.99, count: 212, words: '99% (212)' } : { share: 1, count: 1, words: '1 rating' }),
    trader: stated(kind === 'trader' ? ('trader' as const) : ('private' as const)),
  };
}

function priceOf(words: string | undefined): Listing['price'] {
  const [currency, amount] = words?.split(' ') ?? [];
  if (!currency || !amount) return [];
  const known = currency === '?' ? null : currency;
  const currencies = known ? [known] : ['USD', 'CAD', 'AUD'];
  return stated({ kind: 'sale' as const, minor: Number(amount) * 100, exponent: 2, currency: known, currencies });
}

/** A line as a recogniser gives whole characters, each this certain, the rest on a look-alike. */
function lineOf(photoId: string, text: string, certainty: number): StampLine {
  const steps = [...text].flatMap((character): Record<string, number>[] => [
    { '': 1 },
    { [character]: certainty, [character === '8' ? '3' : '8']: (1 - certainty) * 0.6, E: (1 - certainty) * 0.3 },
  ]);
  const free = { text, probability: certainty ** text.length };
  return stampLine(photoId, text, { lattice: { steps: steps.slice(1) }, free });
}

/** Hashes that differ in many bits from photo to photo. */
const hashOf = (index: number): string =>
  (0x9e3779b97f4a7c15n * BigInt(index + 1)).toString(16).padStart(16, '0').slice(-16);

function photosOf(row: TruthRow, ids: string[]): PhotoRead[] {
  return ids.map((id, index) => {
    if (index < row.unread) return unreadPhoto(id);
    const last = index === ids.length - 1;
    const lines = [
      ...(row.stamp !== null && last ? [lineOf(id, row.stamp, 0.995)] : []),
      ...(row.blurred !== undefined && index === ids.length - 2 ? [lineOf(id, row.blurred, 0.55)] : []),
    ];
    return readPhoto(id, {
      lines,
      printed: index === ids.length - 2 ? row.printed : [],
      hash: hashOf(row.repeated && index === 1 ? 0 : index),
      ...(row.weak ? { width: 320, height: 240, tooWeak: true } : {}),
      ...(row.tooWeak ? { tooWeak: true } : {}),
    });
  });
}

/** The input that the page reader and the stamp reader would give for the row. */
export function inputOf(row: TruthRow): CaseInput {
  const returns =
    row.returns === null
      ? []
      : row.returns === 'refused'
        ? stated({ accepted: false, days: null, words: 'no returns' })
        : stated({ accepted: true, days: 14, words: '14 day returns' });
  const listing = withPhotos(row.photos, {
    language: row.language,
    title: stated(row.title),
    description: row.text === '' ? [] : stated(row.text),
    text: `${row.title}\n${row.text}`,
    maker: row.maker === null ? [] : stated(row.maker),
    price: priceOf(row.price),
    condition: row.condition ? stated(row.condition) : [],
    returns,
    seller: sellerOf(row.seller),
  });
  const typedCodes = row.typed.map((code) => ({ photoId: null, code }));
  const photos = photosOf(
    row,
    listing.photos.map(({ id }) => id),
  );
  return { listing, photos, typedCodes, makers: builtInMakers, now };
}

/** What the case is known to give: the truth with the known faults put in. */
export const knownOf = (row: TruthRow, kind: 'contradiction' | 'doubt' | 'gap', found: string[]): string[] =>
  [...row[kind].filter((id) => !row.missed.includes(id)), ...row.extra.filter((id) => found.includes(id))].sort();

/** The checks that gave a finding of a kind, each once, in alphabetical order. */
export const checksOf = (built: Case, kind: FindingKind): string[] =>
  [...new Set(findingsOf(built).flatMap((one) => (one.kind === kind ? [one.check] : [])))].sort();
