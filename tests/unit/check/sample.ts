import type { Check, Facts } from '../../../src/check';
import type { Outcome } from '../../../src/check/types';
import { findClaims } from '../../../src/claim';
import type { Claim } from '../../../src/claim/types';
import type { Decoding, Misfit, Nearest, Reading } from '../../../src/code/types';
import { gatherEvidence, reason } from '../../../src/evidence';
import type { Field, Listing, Measure } from '../../../src/listing/types';
import type { MakerFile } from '../../../src/maker/types';
import type { PhotoRead } from '../../../src/photo';
import { monthSpan, partialDateSpan, periodSpan, type Span, yearSpan } from '../../../src/span';
import type { StampLine } from '../../../src/stamp/types';
import { sayReason } from '../../../src/words';
import { photoRead } from '../../photo-read';
import { inEnglish } from '../../said';
import { blankListing } from '../blank-listing';
import { blankMaker } from '../blank-maker';

/** A small invented maker, enough for every check. */
export const ondrasse: MakerFile = {
  ...blankMaker,
  maker: 'Ondrasse',
  aliases: ['ondrasse bruxelles'],
  sources: ['invented for tests'],
  stamped: { from: '1980', to: null, sources: ['invented workshop ledger'] },
  plants: [
    { code: 'KV', place: 'BE', used: ['1988', '2003'] },
    { code: 'LT', place: 'IT', used: ['1994', '2010'] },
  ],
  codeSystems: [
    {
      id: 'interleaved-month',
      used: ['1990-01', '2006-12'],
      layout: [{ plant: 2 }, { month: 'tens' }, { year: 'tens' }, { month: 'units' }, { year: 'units' }],
      examples: [{ code: 'KV0915', reads: '1995-01, BE' }],
    },
  ],
  construction: [
    {
      part: 'lining',
      is: 'olive twill',
      not: ['microsuede', 'suede'],
      used: ['1970', '1999'],
      strength: 'soft',
      sources: ['invented catalogue'],
    },
    { part: 'zip', is: 'coil zip', used: ['2001', null], strength: 'hard', sources: ['invented purchase book'] },
  ],
  models: [
    {
      name: 'Carryall 30',
      runs: [{ made: ['1985', '2012'], size: { width: 30, height: 21, depth: 17, unit: 'cm', tolerance: 1 } }],
      parts: ['body', 'base', 'lining', 'handle'],
    },
  ],
  prices: [{ condition: 'new', least: 620, currency: 'EUR', year: 2015, sources: ['invented price list'] }],
  trade: {
    discounts: 'never',
    sampleSales: false,
    seconds: false,
    sources: ['invented price list'],
  },
};

/** A field with one value, read from the visible text. */
export const stated = <T>(value: T, words?: string): Field<T> => [
  { value, origin: 'visible', where: 'body', confidence: 0.9, ...(words === undefined ? {} : { words }) },
];

/** A sum in hundredths of its currency. */
export const priceOf = (minor: number, currency: string | null = 'EUR', kind: 'sale' | 'was' = 'sale') => ({
  kind,
  minor,
  exponent: 2,
  currency,
  currencies: currency ? [currency] : [],
});

/** A stated length. */
export const measureOf = (dimension: Measure['dimension'], mm: number, words: string, precisionMm = 5): Measure => ({
  dimension,
  mm,
  precisionMm,
  unit: 'cm',
  words,
});

export const emptyListing: Listing = { ...blankListing, title: stated('Ondrasse bag') };

/** A listing with `count` photos p1, p2, … */
export const withPhotos = (count: number, rest: Partial<Listing> = {}): Listing => ({
  ...emptyListing,
  ...rest,
  photos: Array.from({ length: count }, (_, index) => ({
    id: `p${index + 1}`,
    url: `https://attic-arcade.example/photo/${index + 1}.jpg`,
    alternatives: [],
    width: 1200,
    height: 900,
    alt: '',
    origins: ['visible' as const],
  })),
});

export const readPhoto = photoRead;

export const unreadPhoto = (photoId: string): PhotoRead => ({
  state: 'unread',
  photoId,
  problem: { code: 'photo-not-image', where: photoId },
});

export const stampLine = (photoId: string, text: string, rest: Partial<StampLine> = {}): StampLine => ({
  id: `${photoId}-line-1`,
  photoId,
  quad: [
    { x: 10, y: 10 },
    { x: 110, y: 10 },
    { x: 110, y: 40 },
    { x: 10, y: 40 },
  ],
  stampScore: 0.9,
  engine: 'net',
  lattice: { steps: [...text].map((character) => ({ [character]: 0.98 })) },
  free: { text, probability: 0.9 },
  measurements: [],
  ...rest,
});

export const reading = (text: string, span: Span | null, rest: Partial<Reading> = {}): Reading => ({
  text,
  probability: 0.95,
  system: { maker: 'Ondrasse', id: 'interleaved-month' },
  parts: [],
  span,
  places: ['BE'],
  plant: { code: 'KV', place: 'BE', used: [periodSpan(['1988', '2003']) as Span] },
  systemUsed: periodSpan(['1990-01', '2006-12']) as Span,
  reasons: [],
  ...rest,
});

export const misfit = (text: string, rest: Partial<Misfit> = {}): Misfit => ({
  text,
  probability: 0.95,
  system: { maker: 'Ondrasse', id: 'interleaved-month' },
  slot: 'month',
  value: '19',
  expected: { kind: 'range', first: '01', last: '12' },
  ...rest,
});

export const nearest = (text: string, likelihood: number): Nearest => ({
  text,
  system: { maker: 'Ondrasse', id: 'interleaved-month' },
  how: 'differs',
  likelihood,
  reading: reading(text, monthSpan(1995, 1)),
});

/** A code seen in photo p1, accepted, with the readings given. */
export const decoded = (code: string, readings: Reading[], rest: Partial<Decoding> = {}): Decoding => ({
  id: `decoding-${code}`,
  code,
  from: { kind: 'photo', photoId: 'p1', lineId: 'p1-line-1' },
  accepted: true,
  readings,
  misfits: [],
  nearest: [],
  ...rest,
});

/** KV0915: January 1995, Belgium. */
export const kv0915 = decoded('KV0915', [reading('KV0915', monthSpan(1995, 1))]);

type Extra<K extends Claim['kind']> = Omit<Extract<Claim, { kind: K }>, 'kind' | 'id' | 'words' | 'at' | 'confidence'>;

/** A confident claim in the description. */
export function claim<K extends Claim['kind']>(kind: K, words: string, extra: Extra<K>, id = `claim-${kind}`): Claim {
  const at = { field: 'description', start: 0, end: words.length };
  return { kind, id, words, at, confidence: 0.9, ...extra } as unknown as Claim;
}

export const madeIn = (year: number, words = `made in ${year}`): Claim =>
  claim('made', words, { span: yearSpan(year) });
export const made = (words: string, from: string, to: string, rest: Partial<Span> = {}): Claim =>
  claim('made', words, {
    span: { ...(periodSpan([from, to]) ?? (partialDateSpan(from) as Span)), ...rest } as Span,
  });

/** Facts with one photo read and the invented maker, and whatever the test sets; evidence is gathered from them. */
export function facts(rest: Partial<Facts> = {}): Facts {
  const given = {
    listing: withPhotos(1),
    claims: [],
    severalPieces: false,
    offer: 'piece' as const,
    decodings: [],
    photos: [readPhoto('p1')],
    marks: [],
    maker: ondrasse,
    previous: null,
    now: '2026-01-15T10:00:00Z',
    ...rest,
  };
  const evidence = rest.evidence ?? gatherEvidence(given);
  return { evidence, reasoning: reason(evidence), ...given };
}

/** The same facts judged by another maker's file, with the evidence that it gives. */
export function judgedBy({ evidence: _old, reasoning: _before, ...given }: Facts, maker: MakerFile | null): Facts {
  return facts({ ...given, maker });
}

/** Facts of a listing of one photo with this description, and the claims that it makes. */
export function factsSaying(words: string, rest: Partial<Facts> = {}): Facts {
  const listing = withPhotos(1, { title: stated('-'), description: stated(words), text: words });
  return facts({ listing, claims: findClaims(listing, [ondrasse]), ...rest });
}

/** The findings of a check as "kind: statement"; any other outcome as "outcome: why". */
export function said(check: Check, given: Facts): string[] {
  const outcome: Outcome = check.judge(given);
  if (outcome.outcome === 'speaks')
    return outcome.findings.map((finding) => `${finding.kind}: ${inEnglish(finding).statement}`);
  if (!('why' in outcome)) return [outcome.outcome];
  const why = typeof outcome.why === 'string' ? outcome.why : sayReason(outcome.why, 'en');
  return [`${outcome.outcome}: ${why}`];
}

export function onlyFinding(check: Check, given: Facts): ReturnType<typeof inEnglish> {
  const outcome = check.judge(given);
  if (outcome.outcome !== 'speaks' || outcome.findings.length !== 1 || !outcome.findings[0])
    throw new Error(`expected one finding of ${check.id}, got ${JSON.stringify(outcome)}`);
  return inEnglish(outcome.findings[0]);
}
