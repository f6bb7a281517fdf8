import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import * as z from 'zod';
import {
  buildCase,
  type Case,
  type CaseInput,
  type Correction,
  correct,
  findingsOf,
  lookAt,
  photoMeant,
  typedCode,
} from '../../../src/case';
import type { FindingKind } from '../../../src/check';
import type { Listing } from '../../../src/listing/types';
import { builtInMakers } from '../../../src/maker';
import type { MakerFile } from '../../../src/maker/types';
import type { PhotoRead } from '../../../src/photo/read-types';
import { monthSpan } from '../../../src/span';
import type { StampLine } from '../../../src/stamp/types';
import { counted, darkened, marked, openLeather, rowOfStitches } from '../../hand-mark';
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
  /** Stitches that the buyer counted along a row in the first photo, to the half-width given, and on what: the maker's file says five on a tab. */
  counted: z.strictObject({ on: z.string(), stitches: z.number(), within: z.number() }).optional(),
  /** How much darker, in steps of CIELAB, the buyer measured leather that lay open in the first photo, and to what half-width. */
  darkened: z.strictObject({ by: z.number(), within: z.number() }).optional(),
  printed: z.array(z.string()).default([]),
  /** Photos on the page; the stamp is in the last, print in the last but one. */
  photos: z.number().int().default(9),
  /** How many of the photos, from the first, were not read. */
  unread: z.number().int().default(0),
  weak: z.boolean().default(false),
  tooWeak: z.boolean().default(false),
  repeated: z.boolean().default(false),
  /** "EUR 540"; "?" for a currency that the page leaves open. */
  price: z.string().optional(),
  /** An earlier price that the page strikes through, and one that only the page's data give. */
  was: z.string().optional(),
  dataPrice: z.string().optional(),
  model: z.string().optional(),
  /** Width, height and depth in millimetres, as a page states them in its own fields. */
  sizes: z.array(z.number()).default([]),
  /** Whether the first photo is a picture of a phone's screen. */
  screen: z.boolean().default(false),
  /** What lies around the piece in the first photo: a cut-out's even white, or a white sheet at home. */
  ground: z.enum(['cut-out', 'sheet']).optional(),
  /** Whether the stamp is much deeper at one end than at the other. */
  uneven: z.boolean().default(false),
  /** What differed at the look before this one; without it this is the first look. */
  before: z
    .strictObject({
      title: z.string().optional(),
      text: z.string().optional(),
      price: z.string().optional(),
      seller: z.string().optional(),
      photos: z.number().int().optional(),
    })
    .optional(),
  condition: z.enum(['new', 'used']).optional(),
  returns: z.enum(['refused']).nullable().optional(),
  seller: z.enum(['known', 'new', 'trader', 'none']).default('known'),
  /** Where the page says that the seller is. */
  place: z.string().optional(),
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
  z.array(truthSchema).parse(JSON.parse(readFileSync(join(import.meta.dirname, `${file}.json`), 'utf8')));

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

type PriceKind = Listing['price'][number]['value']['kind'];
function priceOf(words: string | undefined, kind: PriceKind = 'sale'): Listing['price'] {
  const [currency, amount] = words?.split(' ') ?? [];
  if (!currency || !amount) return [];
  const known = currency === '?' ? null : currency;
  const currencies = known ? [known] : ['USD', 'CAD', 'AUD'];
  return stated({ kind, minor: Number(amount) * 100, exponent: 2, currency: known, currencies });
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

const fallingDepth: StampLine['measurements'][number] = {
  what: 'depth-slope',
  value: -0.9,
  uncertainty: 0.08,
  unit: 'share',
};

/** Hashes that differ in many bits from photo to photo. */
const hashOf = (index: number): string =>
  (0x9e3779b97f4a7c15n * BigInt(index + 1)).toString(16).padStart(16, '0').slice(-16);

/** As they were measured on photographs: a room, a white sheet in daylight, and a cut-out's ground. */
const grounds = {
  room: { lightness: 118, spread: 74, noise: 1.9 },
  sheet: { lightness: 236, spread: 22, noise: 1.6 },
  'cut-out': { lightness: 255, spread: 0, noise: 0 },
};

function photosOf(row: TruthRow, ids: string[]): PhotoRead[] {
  return ids.map((id, index) => {
    if (index < row.unread) return unreadPhoto(id);
    const last = index === ids.length - 1;
    const lines = [
      ...(row.stamp !== null && last
        ? [{ ...lineOf(id, row.stamp, 0.995), measurements: row.uneven ? [fallingDepth] : [] }]
        : []),
      ...(row.blurred !== undefined && index === ids.length - 2 ? [lineOf(id, row.blurred, 0.55)] : []),
    ];
    return readPhoto(id, {
      lines,
      printed: index === ids.length - 2 ? row.printed : [],
      hash: hashOf(row.repeated && index === 1 ? 0 : index),
      ...(row.screen && index === 0 ? { width: 1170, height: 2532, printed: ['09:41 5G 87%'] } : {}),
      background: row.ground !== undefined && index === 0 ? grounds[row.ground] : grounds.room,
      ...(row.weak ? { width: 320, height: 240, tooWeak: true } : {}),
      ...(row.tooWeak ? { tooWeak: true } : {}),
    });
  });
}

const measureOf = (mm: number, index: number) => ({
  dimension: (['width', 'height', 'depth'] as const)[index] ?? ('unknown' as const),
  mm,
  precisionMm: 5,
  unit: 'cm' as const,
  words: `${mm / 10} cm`,
});

/** The look before, as it would have been kept. */
function lookBefore(row: TruthRow): CaseInput['previous'] {
  if (!row.before) return undefined;
  const { before, ...rest } = row;
  const { seller, ...changed } = before;
  const then = buildCase(inputOf({ ...rest, ...changed, before: undefined }));
  return { ...lookAt(then), readAt: '2026-01-02T10:00:00Z', ...(seller === undefined ? {} : { seller }) };
}

/** The built-in files give no numbers: they are those of the first format, which has none. */
const withStitches = (file: MakerFile): MakerFile =>
  file.maker === 'Ondrasse'
    ? { ...file, numbers: [{ of: 'stitches', part: 'tab', least: 5, most: 5, used: ['1980', null] }] }
    : file;

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
    model: row.model === undefined ? [] : stated(row.model),
    measures: row.sizes.flatMap((mm, index) => stated(measureOf(mm, index))),
    price: [
      ...priceOf(row.price),
      ...priceOf(row.dataPrice).map((one) => ({ ...one, origin: 'json-ld' as const })),
      ...priceOf(row.was, 'was'),
    ],
    condition: row.condition ? stated(row.condition) : [],
    returns,
    seller: { ...sellerOf(row.seller), ...(row.place === undefined ? {} : { place: stated(row.place) }) },
  });
  const photos = photosOf(
    row,
    listing.photos.map(({ id }) => id),
  );
  const first = listing.photos[0]?.id ?? '';
  const meant = photoMeant(listing, first, photos[0]);
  const byHand = [
    ...row.typed.map((code) => typedCode(code)),
    ...(row.counted && meant
      ? [marked(meant, rowOfStitches({ name: row.counted.on }), [counted(row.counted.stitches, row.counted.within)])]
      : []),
    ...(row.darkened && meant ? [marked(meant, openLeather, [darkened(row.darkened.by, row.darkened.within)])] : []),
  ];
  const corrections = byHand.reduce<Correction[]>(correct, []);
  return {
    listing,
    photos,
    corrections,
    makers: row.counted ? builtInMakers.map(withStitches) : builtInMakers,
    now,
    previous: lookBefore(row),
  };
}

/** The truth of one kind, with the row's known faults where they show: what a case has to give to be as good as known. */
export function knownOf(row: TruthRow, kind: 'contradiction' | 'doubt' | 'gap', found: string[]): string[] {
  const shown = row[kind].filter((id) => found.includes(id) || !row.missed.includes(id));
  return [...shown, ...row.extra.filter((id) => found.includes(id))].sort();
}

/** The checks that gave a finding of a kind, each once, in alphabetical order. */
export const checksOf = (built: Case, kind: FindingKind): string[] =>
  [...new Set(findingsOf(built).flatMap((one) => (one.kind === kind ? [one.check] : [])))].sort();
