import fc from 'fast-check';
import type { Facts } from '../../../src/check';
import type { Claim, Part } from '../../../src/claim/types';
import type { Decoding } from '../../../src/code/types';
import type { MakerFile } from '../../../src/maker/types';
import type { MarkRead } from '../../../src/mark/types';
import { monthSpan, type Span, yearSpan, yearsSpan } from '../../../src/span';
import { claim, decoded, facts, measureOf, ondrasse, priceOf, reading, stated, withPhotos } from './sample';
import { markRead } from './sample-marks';

const year = fc.integer({ min: 1984, max: 2004 });
const places = ['BE', 'IT', 'DDDE', 'DE', 'CSHH', 'SK'];
const place = fc.constantFrom(...places);
const sure = fc.constantFrom(0.9, 0.9, 0.3);
const field = fc.constantFrom('title', 'description');

const side = fc.constantFrom('width' as const, 'height' as const, 'depth' as const, 'strap' as const);
const length = fc.oneof(fc.integer({ min: 100, max: 500 }), fc.constantFrom(300, 210, 170, 118, 83, 67, 508));
const price = fc.record({
  kind: fc.constantFrom('sale' as const, 'sale' as const, 'was' as const),
  minor: fc.constantFrom(3_000, 15_000, 54_000, 540_000),
  currency: fc.constantFrom('EUR', 'EUR', 'USD', 'XTS', null),
  origin: fc.constantFrom('visible' as const, 'json-ld' as const),
});
/** What the page says of size, price and model. */
const page = fc
  .record({
    measures: fc.array(fc.tuple(fc.oneof(side, fc.constant('unknown' as const)), length), { maxLength: 4 }),
    prices: fc.array(price, { maxLength: 3 }),
    model: fc.constantFrom('Carryall 30', 'Carryall 45', 'Carryall 40', 'Weekender 50', null),
  })
  .map(({ measures, prices, model }) =>
    withPhotos(1, {
      measures: measures.flatMap(([one, mm]) => stated(measureOf(one, mm, `${mm} mm`))),
      price: prices.map(({ kind, minor, currency, origin }) => ({
        value: priceOf(minor, currency, kind),
        origin,
        where: 'page',
        confidence: 0.9,
      })),
      model: model ? stated(model) : [],
    }),
  );

const loose: fc.Arbitrary<Span> = fc.oneof(
  { weight: 3, arbitrary: year.map(yearSpan) },
  fc.tuple(year, fc.integer({ min: 1, max: 9 })).map(([from, more]) => yearsSpan(from, from + more)),
  year.map((one) => ({ ...yearSpan(one), about: true })),
);
/** How the piece is, in words that hold each other up or cannot both hold. */
const described: fc.Arbitrary<Claim> = fc.constantFrom(
  claim('wear', 'scratches', { polarity: 'is' }),
  claim('wear', 'Scratches', { polarity: 'is-not' }),
  claim('leather', 'cowhide', { real: true, of: null, polarity: 'is' }),
  claim('leather', 'pleather', { real: false, of: null, polarity: 'is' }),
  claim('metal', 'solid brass', { metal: 'brass', solid: true, of: 'zip', polarity: 'is' }),
  claim('metal', 'zamak', { metal: 'zinc', solid: false, of: 'zip', polarity: 'is' }),
  claim('maker', 'Ondrasse', { maker: 'Ondrasse' }),
  claim('maker', 'Tessaro Vell', { maker: 'Tessaro Vell' }),
);
const saying: fc.Arbitrary<(id: string) => Claim> = fc
  .tuple(
    fc.oneof(
      { weight: 4, arbitrary: loose.map((span) => claim('made', `made ${span.from}`, { span })) },
      loose.map((span) => claim('bought', `bought ${span.from}`, { span })),
      { weight: 2, arbitrary: place.map((one) => claim('origin', `made in ${one}`, { place: one })) },
      fc
        .constantFrom('olive twill', 'sand suede', 'satin', 'cotton')
        .map((material) => claim('material', material, { part: 'lining', material })),
      fc.constantFrom('Carryall 30', 'Carryall 45').map((model) => claim('model', model, { model })),
      fc.constantFrom<Part[]>(['lining'], []).map((parts) => claim('replaced', 'restored', { parts })),
      fc
        .constantFrom('vintage' as const, 'antique' as const)
        .map((word) => claim('age-word', word, { word, polarity: 'is' })),
      { weight: 2, arbitrary: fc.constant(claim('fresh-part', 'pale handles', { polarity: 'is' })) },
      { weight: 3, arbitrary: described },
      fc.constantFrom('new' as const, 'worn' as const).map((condition) => claim('condition', condition, { condition })),
      fc
        .tuple(side, length)
        .map(([one, mm]) => claim('measure', `${mm} mm`, { measure: measureOf(one, mm, `${mm} mm`) })),
    ),
    sure,
    field,
  )
  .map(
    ([one, confidence, where]) =>
      (id) =>
        ({ ...one, id, confidence, at: { ...one.at, field: where } }) as Claim,
  );

const read = fc.record({
  year,
  other: fc.option(year),
  places: fc.constantFrom<string[]>(['BE'], ['IT'], []),
  used: fc.tuple(year, fc.integer({ min: 0, max: 20 })),
  from: fc.constantFrom('photo', 'claim', 'typed'),
});
const code: fc.Arbitrary<(id: string) => Decoding> = read.map((given) => (id) => {
  const systemUsed = yearsSpan(given.used[0], given.used[0] + given.used[1]);
  const one = (at: number) => reading(id, monthSpan(at, 1), { places: given.places, systemUsed });
  const readings = [given.year, ...(given.other === null ? [] : [given.other])].map(one);
  const from = { photo: { kind: 'photo', photoId: 'p1', lineId: id }, typed: { kind: 'typed' } } as const;
  return decoded(id, readings, {
    id,
    from: given.from === 'claim' ? { kind: 'claim', claimId: id } : from[given.from],
  });
});
const mark: fc.Arbitrary<(id: string) => MarkRead> = fc
  .record({
    spans: fc.constantFrom<[number | null, number | null] | null>([1990, null], [1995, 1999], [null, 1990], null),
    places: fc.constantFrom<string[]>([], ['BE'], ['DE']),
    strength: fc.constantFrom<'hard' | 'soft'>('hard', 'soft'),
    foundIn: fc.constantFrom<'photo' | 'listing'>('photo', 'listing'),
  })
  .map(
    ({ spans, foundIn, ...rest }) =>
      (id) =>
        markRead({
          id,
          words: `mark ${id}`,
          spans: spans ? [yearsSpan(...spans)] : [],
          ...(foundIn === 'photo' ? { foundIn, photoId: 'p1' } : { foundIn, photoId: null }),
          ...rest,
        } as Partial<MarkRead>),
  );

const maker = {
  ...ondrasse,
  construction: [
    {
      part: 'lining',
      is: 'olive twill',
      not: ['satin'],
      used: ['1970', '1994'],
      strength: 'hard',
      sources: ['invented'],
    },
    { part: 'lining', is: 'sand suede', not: ['satin'], used: ['1995', null], strength: 'soft', sources: ['invented'] },
  ],
  models: [
    {
      name: 'Carryall 30',
      runs: [{ made: ['1985', '1997'], size: { width: 30, height: 21, depth: 17, unit: 'cm', tolerance: 1 } }],
    },
    { name: 'Carryall 45', runs: [{ made: ['1999', null] }] },
  ],
  stamped: { from: '1990', to: null, sources: ['invented'] },
} as MakerFile;

const numbered = <T>(make: readonly ((id: string) => T)[], letter: string): T[] =>
  make.map((one, at) => one(`${letter}${at}`));
/** Made-up cases in which statements of every kind that rules compare agree and conflict. */
export const given: fc.Arbitrary<Facts> = fc
  .record({
    claims: fc.array(saying, { maxLength: 5 }),
    decodings: fc.array(code, { maxLength: 2 }),
    marks: fc.array(mark, { maxLength: 2 }),
    known: fc.constantFrom(true, true, true, false),
    listing: page,
    now: fc.constantFrom('2026-01-15T10:00:00Z', '2010-01-15T10:00:00Z', '1999-01-15T10:00:00Z'),
  })
  .map(({ claims, decodings, marks, known, listing, now }) =>
    facts({
      listing,
      now,
      claims: numbered(claims, 'c'),
      decodings: numbered(decodings, 'd'),
      marks: numbered(marks, 'm'),
      maker: known ? maker : null,
    }),
  );
