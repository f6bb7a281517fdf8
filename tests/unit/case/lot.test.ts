import { describe, expect, it } from 'vitest';
import {
  answerOf,
  buildCase,
  type Case,
  type Correction,
  choosePiece,
  correct,
  findingsOf,
  type NewCorrection,
  photoMeant,
  previousOf,
  stampIsOn,
  stampsPlaced,
  undo,
} from '../../../src/case';
import { builtInMakers } from '../../../src/maker';
import { readPhoto, stampLine } from '../check/sample';
import { listingOf } from './sample-listing';

const now = '2026-01-15T10:00:00Z';
const listing = listingOf(
  'Ondrasse Carryall 30 and matching wallet, 1987',
  'The bag is from 1995. The wallet was made in 2003. Date code KV0915. Brass hardware. 19 cm wide.',
);
const build = (corrections: Case['corrections'] = [], of = listing): Case =>
  buildCase({
    listing: of,
    photos: [],
    corrections,
    makers: builtInMakers,
    now,
    previous: previousOf(of, builtInMakers),
  });
const chosen = (piece: string | null, of = listing): Case => {
  const { lot } = build([], of);
  if (!lot) throw new Error('the listing offers one piece');
  return build(correct([], choosePiece(lot, piece)), of);
};
const years = (kase: Case) => answerOf(kase).said.dates.map(({ from }) => from?.slice(0, 4));
const against = (kase: Case) => findingsOf(kase).filter(({ kind }) => kind === 'contradiction' || kind === 'doubt');

describe('a listing of two pieces', () => {
  it('judges nothing that may be said of only one of them, until one is chosen', () => {
    const kase = build();
    expect(kase.lot).toMatchObject({ pieces: ['Ondrasse Carryall 30', 'wallet'], chosen: null });
    expect(years(kase)).toEqual([]);
    expect(against(kase)).toEqual([]);
    expect(kase.maker).toBe('Ondrasse');
    expect(findingsOf(kase).some(({ check }) => check === 'measures-stated')).toBe(false);
    const told = kase.outcomes.find(({ check }) => check === 'measures-stated');
    expect(told).toMatchObject({ outcome: 'cannot-tell', why: { reason: 'several-pieces' } });
  });

  it('says of the chosen piece what is plainly said of it, and holds the rest against none', () => {
    expect(years(chosen('Ondrasse Carryall 30'))).toEqual(['1995']);
    expect(years(chosen('wallet'))).toEqual(['2003']);
    const { lot, claims } = chosen('wallet');
    const words = (ids: string[]) => claims.filter(({ id }) => ids.includes(id)).map((claim) => claim.words);
    expect(words(lot?.notPlaced ?? [])).toEqual(expect.arrayContaining(['1987', 'Brass hardware']));
    expect(words(lot?.judging ?? [])).not.toContain('1995');
  });

  it('is one piece where the buyer says so, and everything counts again', () => {
    const kase = chosen(null);
    expect(kase.lot).toBeUndefined();
    expect(years(kase)).toEqual(['1987', '1995', '2003']);
    expect(against(kase).length).toBeGreaterThan(0);
  });

  it('forgets the choice where other pieces are on offer', () => {
    const { corrections } = chosen('wallet');
    const other = { ...listing, title: listing.title.map((one) => ({ ...one, value: 'Ondrasse bag and belt' })) };
    expect(build(corrections, other).lot).toMatchObject({ pieces: ['bag', 'belt'], chosen: null });
  });

  it('takes nothing that does not count for gone since the look before', () => {
    for (const kase of [build(), chosen('wallet'), chosen('Ondrasse Carryall 30')])
      expect(findingsOf(kase).filter(({ check }) => check.endsWith('-changed'))).toEqual([]);
  });

  it('of which only the number is said holds nothing against any', () => {
    const two = listingOf('Two bags by Ondrasse, 1987', 'Date code KV0915.');
    expect(build([], two).lot).toMatchObject({ pieces: [], chosen: null });
    expect(against(build([], two))).toEqual([]);
    expect(chosen(null, two).lot).toBeUndefined();
  });
});

describe('whose stamp it is, of two pieces', () => {
  const two = listingOf(listing.title[0]?.value ?? '', listing.description[0]?.value ?? '', 2);
  const photos = [
    readPhoto('p1', { lines: [stampLine('p1', 'KV0915')] }),
    readPhoto('p2', { lines: [stampLine('p2', 'KV0187')] }),
  ];
  const of = (piece: string, ...more: NewCorrection[]): Case => {
    const first = buildCase({ listing: two, photos, corrections: [], makers: builtInMakers, now });
    const corrections = [choosePiece(first.lot!, piece), ...more].reduce<Correction[]>(correct, []);
    return buildCase({ listing: two, photos, corrections, makers: builtInMakers, now });
  };
  const onWallet = stampIsOn(photoMeant(two, 'p2')!, 'wallet');
  const codes = (kase: Case) => kase.decodings.flatMap(({ from, code }) => (from.kind === 'photo' ? [code] : []));
  const held = (kase: Case) => kase.evidence.some(({ says }) => says.kind === 'code');

  it('nobody knows while two stamps differ, and none is held against what is said', () => {
    expect(codes(of('Ondrasse Carryall 30'))).toEqual(['KV0915', 'KV0187']);
    expect(held(of('Ondrasse Carryall 30'))).toBe(false);
  });

  it('is kept as the buyer says it: the stamp speaks for its piece and for no other', () => {
    const bag = of('Ondrasse Carryall 30', onWallet);
    expect(codes(bag)).toEqual(['KV0915']);
    expect(held(bag)).toBe(true);
    expect(codes(of('wallet', onWallet))).toEqual(['KV0187']);
    expect(stampsPlaced(bag)).toMatchObject([{ photoId: 'p2', piece: 'wallet' }]);
    // Nothing of the photo itself is changed by it, and nothing is said to be missing.
    expect(bag.photos).toEqual(photos);
    expect(bag.skipped.filter(({ code }) => code.startsWith('correction-'))).toEqual([]);
  });

  it('is said once for each photo, and undone with it', () => {
    const back = stampIsOn(photoMeant(two, 'p2')!, 'Ondrasse Carryall 30');
    expect(codes(of('Ondrasse Carryall 30', onWallet, back))).toEqual(['KV0187']);
    const { corrections } = of('Ondrasse Carryall 30', onWallet);
    const undone = undo(corrections, corrections.at(-1)!.id);
    const without = buildCase({ listing: two, photos, corrections: undone, makers: builtInMakers, now });
    expect(codes(without)).toEqual(['KV0915', 'KV0187']);
  });
});
