import { describe, expect, it } from 'vitest';
import {
  buildCase,
  type Case,
  type CaseInput,
  type Correction,
  caseSchema,
  correct,
  findingsOf,
  lookAt,
  type NewCorrection,
  photoMeant,
  typedCode,
  undo,
} from '../../../src/case';
import { applyCorrections } from '../../../src/case/corrected';
import { correctionSchema, mostCorrections } from '../../../src/case/correction-types';
import { liftTypedCodes } from '../../../src/case/older-typed-codes';
import type { ClaimOf } from '../../../src/claim/types';
import { builtInMakers } from '../../../src/maker';
import { valueIn } from '../../../src/photo';
import { photoRead } from '../../photo-read';
import { stampLine, unreadPhoto } from '../check/sample';
import { listingOf } from './sample-listing';

const now = '2026-01-15T10:00:00Z';
const listing = listingOf('Ondrasse Carryall 30', 'Ondrasse Carryall 30, made in Belgium in 1987. Width 30 cm.', 3);
const photos = [
  photoRead('p1', { hash: '1111111111111111' }),
  photoRead('p2', { hash: 'f0e1d2c3b4a59687', lines: [stampLine('p2', 'KV0915')] }),
  photoRead('p3', { hash: '3333333333333333' }),
];
const build = (corrections: Correction[], part: Partial<CaseInput> = {}): Case =>
  buildCase({ listing, photos, corrections, makers: builtInMakers, now, ...part });
const plain = build([]);
const made = plain.claims.find((claim): claim is ClaimOf<'made'> => claim.kind === 'made')!;
const meant = photoMeant(listing, 'p2', photos[1])!;
const line = { name: '-line-1', what: 'stamp-line', was: 'KV0915' };
const strikeLine: NewCorrection = { of: 'seen', photo: meant, target: line, to: null };
const strikeMade: NewCorrection = { of: 'claim', target: made, to: null };

const codes = (kase: Case) => kase.decodings.map(({ code, from }) => `${from.kind}: ${code}`);
const kinds = (kase: Case, kind: string) =>
  findingsOf(kase).flatMap((finding) => (finding.kind === kind ? [finding.check] : []));
const unmet = (kase: Case) => kase.skipped.flatMap(({ code }) => (code.startsWith('correction-') ? [code] : []));

describe('the list of corrections', () => {
  it('is JSON that its schema takes, and names each', () => {
    const list = [strikeLine, strikeMade, typedCode('KV0915', meant)].reduce<Correction[]>(correct, []);
    expect(list.map(({ id }) => id)).toEqual(['hand-1', 'hand-2', 'hand-3']);
    expect(JSON.parse(JSON.stringify(list)).map((one: unknown) => correctionSchema.parse(one))).toEqual(list);
  });

  it('holds the same correction once, and of one thing the last', () => {
    const twice = correct(correct([], strikeLine), strikeLine);
    expect(twice).toHaveLength(1);
    const code = { what: 'code', value: 'KV0916', unit: null, where: null };
    const set = correct(twice, { ...strikeLine, to: code });
    expect(set.map(({ of, ...rest }) => 'to' in rest && rest.to)).toEqual([code]);
    const reset = correct(set, strikeLine);
    expect(reset).toHaveLength(1);
  });

  it('gives no name twice while others stand', () => {
    const list = ['KV0915', 'KV0916', 'KV0917'].reduce<Correction[]>((all, code) => correct(all, typedCode(code)), []);
    expect(correct(undo(list, 'hand-2'), typedCode('KV0918')).map(({ id }) => id)).toEqual([
      'hand-1',
      'hand-3',
      'hand-4',
    ]);
  });

  it('holds no part where the whole photo is read', () => {
    const part = { of: 'part', photo: meant, to: { turn: 90, invert: false, crop: null } } as const;
    const list = correct([], part);
    expect(list).toHaveLength(1);
    expect(correct(list, { ...part, to: { turn: 0, invert: false, crop: null } })).toEqual([]);
  });

  it('ends at a length that no hand reaches', () => {
    const full = Array.from({ length: mostCorrections }, (_, at) => ({ ...typedCode(`A${at}`), id: `hand-${at + 1}` }));
    expect(correct(full as Correction[], typedCode('KV0915'))).toHaveLength(mostCorrections);
  });

  it.each([
    ['nothing to correct', { id: 'hand-1', of: 'claim', target: null, to: null }],
    ['a target in no photo', { id: 'hand-1', of: 'seen', photo: null, target: line, to: null }],
    ['a place that is none', { id: 'hand-1', of: 'seen', photo: meant, target: null, to: { what: 'tilt', value: 1 } }],
  ])('is refused with %s', (_name, one) => {
    expect(correctionSchema.safeParse(one).success).toBe(false);
  });
});

describe('a case that was set right', () => {
  it('counts a typed code, and a reading that is set in place of the one that was read', () => {
    expect(codes(plain)).toEqual(['photo: KV0915']);
    expect(codes(build(correct([], typedCode('KV0915'))))).toEqual(['photo: KV0915', 'typed: KV0915']);
    const to = { what: 'code', value: 'KV0187', unit: null, where: null };
    expect(codes(build(correct([], { ...strikeLine, to })))).toEqual(['typed: KV0187']);
  });

  it('leaves out a line that is no code, and has it again when that is undone', () => {
    const list = correct([], strikeLine);
    expect(kinds(plain, 'contradiction')).toContain('code-against-claimed-date');
    expect(codes(build(list))).toEqual([]);
    expect(kinds(build(list), 'contradiction')).toEqual([]);
    expect(build(undo(list, 'hand-1'))).toEqual(plain);
  });

  it('leaves out a claim, sets another, and adds one', () => {
    const struck = build(correct([], strikeMade));
    expect(struck.claims.some(({ id }) => id === made.id)).toBe(false);
    expect(kinds(struck, 'contradiction')).toEqual([]);
    const span = { from: '1995-01-01', to: '1995-12-31', precision: 'year' as const };
    const set = build(correct([], { of: 'claim', target: made, to: { ...made, words: '1995', span } }));
    expect(set.claims.find(({ id }) => id === made.id)).toMatchObject({ words: '1995', span });
    expect(kinds(set, 'contradiction')).toEqual([]);
    const at = { field: 'user', start: 0, end: 0 } as const;
    const added = build(correct([], { of: 'claim', target: null, to: { ...made, at, words: '1994' } }));
    expect(added.claims.at(-1)).toMatchObject({ id: 'hand-1', words: '1994' });
  });

  it('is no change of the seller’s: what is left out was not taken back, nor said anew when that is undone', () => {
    const list = correct([], strikeMade);
    const changed = (corrections: Correction[], before: Case) =>
      findingsOf(build(corrections, { previous: lookAt(before) })).filter(({ check }) => check === 'claims-changed');
    expect(changed(list, plain)).toEqual([]);
    expect(changed([], build(list))).toEqual([]);
    expect(changed(list, build(list))).toEqual([]);
  });

  it('keeps what was read as it was read, and says by whom each was seen', () => {
    const to = { what: 'sharpness', value: 0.4, unit: 'share' as const, where: null };
    const target = { name: '-hash', what: 'hash', was: 'f0e1d2c3b4a59687' };
    const list = [
      { of: 'seen', photo: meant, target: null, to },
      { of: 'seen', photo: meant, target, to: { what: 'hash', value: '0123456789abcdef', unit: null, where: null } },
    ].reduce<Correction[]>((all, one) => correct(all, one as NewCorrection), []);
    const kase = build(list);
    expect(kase.photos).toEqual(photos);
    const [, seen] = applyCorrections({ listing, photos, claims: [], corrections: list }).photos;
    expect(valueIn(seen!, 'hash')).toBe('0123456789abcdef');
    const hands = seen?.state === 'read' ? seen.observations.filter(({ by }) => by === 'hand') : [];
    expect(hands.map(({ id, what }) => `${id} ${what}`).sort()).toEqual(['p2-hand-1 sharpness', 'p2-hand-2 hash']);
  });

  it('lays a place in shares over a photo of any size', () => {
    const where = { form: 'point' as const, points: [{ x: 0.5, y: 0.25 }] as [{ x: number; y: number }] };
    const to = { what: 'rivet', value: null, unit: null, where };
    const corrections = correct([], { of: 'seen', photo: meant, target: null, to });
    for (const [width, height] of [
      [1200, 900],
      [400, 300],
    ] as const) {
      const [photo] = applyCorrections({
        listing,
        photos: [photoRead('p2', { width, height })],
        claims: [],
        corrections,
      }).photos;
      const rivet = photo?.state === 'read' ? photo.observations.find(({ what }) => what === 'rivet') : null;
      expect(rivet?.where?.points).toEqual([{ x: width / 2, y: height / 4 }]);
    }
  });

  it('keeps what was read in a place that a hand moved', () => {
    const where = { form: 'quad', points: [0, 1, 2, 3].map((x) => ({ x: x / 4, y: 0.5 })) } as never;
    const to = { what: 'stamp-line', value: 'KV0915', unit: null, where };
    expect(codes(build(correct([], { ...strikeLine, to } as NewCorrection)))).toEqual(['photo: KV0915']);
  });
});

describe('a correction after the page was read again', () => {
  const list = correct(correct([], strikeLine), typedCode('KV0916', meant));
  const renumbered = {
    ...listing,
    photos: [listing.photos[1]!, listing.photos[0]!].map((photo, at) => ({ ...photo, id: `p${at + 1}` })),
  };

  it('goes with its photo to another number', () => {
    const moved = [photoRead('p1', { hash: meant.hash!, lines: [stampLine('p1', 'KV0915')] }), photoRead('p2')];
    const kase = build(list, { listing: renumbered, photos: moved });
    expect(codes(kase)).toEqual(['typed: KV0916']);
    expect(unmet(kase)).toEqual([]);
  });

  it('knows its photo by what it shows under another address', () => {
    const elsewhere = {
      ...listing,
      photos: listing.photos.map((photo) => ({ ...photo, url: `${photo.url}?made=anew` })),
    };
    const kase = build(list, { listing: elsewhere });
    expect(codes(kase)).toEqual(['typed: KV0916']);
    expect(unmet(kase)).toEqual([]);
  });

  it('says that its photo is gone, is kept, and a typed code counts all the same', () => {
    const without = { ...listing, photos: listing.photos.filter(({ id }) => id !== 'p2') };
    const kase = build(list, { listing: without, photos: [photos[0]!, photos[2]!] });
    expect(unmet(kase)).toEqual(['correction-photo-gone', 'correction-photo-gone']);
    expect(kase.corrections).toEqual(list);
    expect(codes(kase)).toEqual(['typed: KV0916']);
  });

  it('waits while its photo may be among those that were not read', () => {
    const without = { ...listing, photos: listing.photos.filter(({ id }) => id !== 'p2') };
    expect(unmet(build(list, { listing: without, photos: [photos[0]!, unreadPhoto('p3')] }))).toEqual([]);
    expect(unmet(build(list, { photos: [photos[0]!, unreadPhoto('p2'), photos[2]!] }))).toEqual([]);
  });

  it('strikes nothing else where the line reads otherwise now, and says so', () => {
    const other = photos.map((photo) =>
      photo.photoId === 'p2' ? photoRead('p2', { hash: meant.hash!, lines: [stampLine('p2', 'KV0187')] }) : photo,
    );
    const kase = build(correct([], strikeLine), { photos: other });
    expect(codes(kase)).toEqual(['photo: KV0187']);
    expect(unmet(kase)).toEqual(['correction-not-there']);
  });

  it('says that a claim is made no more', () => {
    const silent = listingOf('Ondrasse Carryall 30', 'Ondrasse Carryall 30.', 3);
    expect(unmet(build(correct([], strikeMade), { listing: silent }))).toEqual(['correction-not-there']);
  });
});

describe('a case kept when typed codes were a list of their own', () => {
  const { corrections: _, ...rest } = plain;

  it('gets each as a correction', () => {
    const typedCodes = [
      { photoId: null, code: 'KV0915' },
      { photoId: 'p2', code: 'KV0916' },
    ];
    const lifted = liftTypedCodes({ ...rest, typedCodes });
    const corrections = ['KV0915', 'KV0916'].map((code, at) => ({ ...typedCode(code), id: `hand-${at + 1}` }));
    expect(caseSchema.parse(lifted)).toEqual({ ...rest, corrections });
    expect(liftTypedCodes(lifted)).toBe(lifted);
  });

  it('is left as it is where they are no codes', () => {
    const none = { ...rest, typedCodes: [{ photoId: null }] };
    expect(liftTypedCodes(none)).toBe(none);
  });
});
