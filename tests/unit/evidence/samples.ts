import type { Claim } from '../../../src/claim/types';
import type { Decoding, Reading } from '../../../src/code/types';
import { type Dating, type Gathered, gatherEvidence, isDating, type Reasoning } from '../../../src/evidence';
import type { MakerFile } from '../../../src/maker/types';
import type { MarkRead } from '../../../src/mark/types';
import { monthSpan, type Span, yearSpan, yearsSpan } from '../../../src/span';
import { sayStretch } from '../../../src/words';
import { blankMaker } from '../blank-maker';
import { decadeSpan } from '../span/decade';

const at = { field: 'description', start: 0, end: 1 } as const;

export const madeClaim = (id: string, words: string, span: Span, confidence = 0.9): Claim => ({
  kind: 'made',
  id,
  words,
  at,
  confidence,
  span,
});

export const originClaim = (id: string, words: string, place: string): Claim => ({
  kind: 'origin',
  id,
  words,
  at,
  confidence: 0.9,
  place,
});

export const reading = (over: Partial<Reading> = {}): Reading => ({
  text: 'KV0915',
  probability: 0.9,
  system: { maker: 'Ondrasse', id: 'interleaved-month' },
  parts: [],
  span: monthSpan(1995, 1),
  places: ['BE'],
  plant: { code: 'KV', place: 'BE', used: [yearsSpan(1988, 2003)] },
  systemUsed: yearsSpan(1990, 2006),
  reasons: [],
  ...over,
});

export const decoding = (id: string, over: Partial<Decoding> = {}): Decoding => ({
  id,
  code: 'KV0915',
  from: { kind: 'photo', photoId: 'p1', lineId: 'l1' },
  accepted: true,
  readings: [reading()],
  misfits: [],
  nearest: [],
  ...over,
});

export const mark = (id: string, over: Partial<MarkRead> = {}): MarkRead => ({
  id,
  mark: 'origin-wording',
  words: 'Made in West Germany',
  foundIn: 'photo',
  photoId: 'p1',
  spans: [{ from: '1949-05-23', to: '1990-10-03', precision: 'range' }],
  places: ['DE'],
  strength: 'hard',
  verified: true,
  source: { kind: 'published', text: 'a document' },
  says: {
    kind: 'row',
    row: 'west-germany',
    place: null,
    span: { from: '1949-05-23', to: '1990-10-03', precision: 'range' },
    normal: true,
  },
  cautions: [],
  ...over,
});

/** A plain piece of evidence on date and place for tests of the reasoning. */
export const piece = (id: string, over: Partial<Dating> = {}): Dating => ({
  id,
  about: 'date',
  from: { kind: 'claim', id },
  basis: id,
  spans: [yearSpan(1994)],
  places: [],
  strength: 'hard',
  says: markSaid(id),
  source: { kind: 'listing', field: 'description' },
  ...over,
});

export const nineties = decadeSpan(1990);

/** The file of the maker that the readings above follow. */
export const ondrasse: MakerFile = { ...blankMaker, maker: 'Ondrasse' };
/** Where what this file says is from, but for the sources that it gives. */
export const inFile = { kind: 'maker-file', maker: 'Ondrasse', invented: false, part: null } as const;

type Over = Partial<Dating>;
/** A year that the seller gives, a code that a photo shows, a mark on the piece: kinds that rules know. */
export const claimed = (id: string, over: Over = {}): Dating =>
  piece(id, { says: { kind: 'made', field: 'title', words: id }, ...over });
export const coded = (id: string, over: Over = {}): Dating =>
  piece(id, { from: { kind: 'reading', id }, says: { kind: 'code', from: 'photo', code: id, by: [] }, ...over });
export const marked = (id: string, over: Over = {}): Dating =>
  piece(id, { from: { kind: 'mark', id }, says: markSaid(id), ...over });
export const markSaid = (words: string): Dating['says'] => ({
  kind: 'mark',
  inText: false,
  words,
  tells: { kind: 'convention-mark' },
});

/** What the largest agreeing sets allow, in English, with the number of their facts. */
export const agreed = ({ agreeing }: Reasoning): string[] =>
  agreeing.map(({ facts, ...stretch }) => `${facts}: ${sayStretch(stretch, 'en')}`);

/** What dates and places the piece, of all that is gathered. */
export const datingOf = (given: Gathered): Dating[] => gatherEvidence(given).filter(isDating);
