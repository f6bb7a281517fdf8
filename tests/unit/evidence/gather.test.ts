import { expect, test } from 'vitest';
import type { Claim } from '../../../src/claim/types';
import { evidenceSchema } from '../../../src/evidence/types';
import type { MakerFile } from '../../../src/maker/types';
import { monthSpan, yearSpan, yearsSpan } from '../../../src/span';
import { sayStated } from '../../../src/words';
import { blankMaker } from '../blank-maker';
import { datingOf, decoding, madeClaim, mark, nineties, ondrasse, originClaim, reading } from './samples';

const nothing = { claims: [], decodings: [], marks: [], maker: null };

test('a year claimed is hard as it stands', () => {
  const evidence = datingOf({ ...nothing, claims: [madeClaim('c1', 'made in 1994', yearSpan(1994))] });
  expect(evidence).toEqual([
    {
      id: 'claim-c1',
      about: 'date',
      from: { kind: 'claim', id: 'c1' },
      basis: 'claimed-date:1994-01-01..1994-12-31',
      spans: [yearSpan(1994)],
      hardReach: [{ from: '1992-12-31', to: '1994-12-31', precision: 'range' }],
      places: [],
      strength: 'hard',
      says: { kind: 'made', field: 'description', words: 'made in 1994' },
      source: { kind: 'listing', field: 'description' },
    },
  ]);
});

const roomOf = (claim: Claim) =>
  datingOf({ ...nothing, claims: [claim] }).map(({ strength, spans, reach, hardReach }) => [
    strength,
    ...[spans, reach, hardReach].map((dates) => dates?.map(({ from, to }) => `${from}..${to}`).join()),
  ]);

test('a decade is soft with a year of room, and hard only in a title, with a year and a half', () => {
  const described = madeClaim('c1', 'a nineties bag', nineties);
  const titled = { ...described, at: { ...described.at, field: 'title' } } as Claim;
  expect(roomOf(described)).toEqual([['soft', '1990-01-01..1999-12-31', '1988-12-31..2000-12-31', undefined]]);
  expect(roomOf(titled)).toEqual([
    ['soft', '1990-01-01..1999-12-31', '1988-12-31..2000-12-31', '1988-07-01..2001-07-02'],
  ]);
});

test('a hedged year has five years of room and is never hard', () => {
  const hedged = madeClaim('c1', 'circa 1994', { ...yearSpan(1994), about: true });
  expect(roomOf(hedged)).toEqual([['soft', '1994-01-01..1994-12-31', '1988-12-28..2000-01-04', undefined]]);
});

test('a claim read with little confidence never becomes hard', () => {
  const evidence = datingOf({ ...nothing, claims: [madeClaim('c1', '94', yearSpan(1994), 0.3)] });
  expect(evidence.map((piece) => [piece.strength, piece.hardReach])).toEqual([['soft', undefined]]);
});

test('the same year said twice is one fact', () => {
  const claims = [madeClaim('c1', 'from 1994', yearSpan(1994)), madeClaim('c2', '1994', yearSpan(1994))];
  const bases = datingOf({ ...nothing, claims }).map((piece) => piece.basis);
  expect(new Set(bases).size).toBe(1);
});

test('a purchase bounds the making from above only', () => {
  const { words, at, confidence } = madeClaim('c1', 'bought in 1996', yearSpan(1996));
  const bought: Claim = { kind: 'bought', id: 'c1', words, at, confidence, span: yearSpan(1996) };
  const [evidence] = datingOf({ ...nothing, claims: [bought] });
  expect(evidence?.spans).toEqual([{ from: null, to: '1996-12-31', precision: 'range' }]);
  expect(evidence?.strength).toBe('hard');
});

test('an origin claimed is a place', () => {
  const [evidence] = datingOf({ ...nothing, claims: [originClaim('c1', 'made in France', 'FR')] });
  expect([evidence?.about, evidence?.places, evidence?.strength]).toEqual(['place', ['FR'], 'hard']);
});

test('a code gives its reading, its system and its plant, all of one basis', () => {
  const evidence = datingOf({ ...nothing, maker: ondrasse, decodings: [decoding('d1')] });
  expect(
    evidence.map(({ from, spans, places, strength, basis }) => ({ kind: from.kind, spans, places, strength, basis })),
  ).toEqual([
    { kind: 'reading', spans: [monthSpan(1995, 1)], places: ['BE'], strength: 'hard', basis: 'code:KV0915' },
    { kind: 'system', spans: [yearsSpan(1990, 2006)], places: [], strength: 'hard', basis: 'code:KV0915' },
    { kind: 'plant', spans: [yearsSpan(1988, 2003)], places: [], strength: 'hard', basis: 'code:KV0915' },
  ]);
  expect(sayStated(evidence[0]!, 'en')).toBe('The stamp reads KV0915: January 1995, Belgium');
});

test('a code read under the file of a maker that nobody named is soft, and says by which file', () => {
  const invented = reading({ system: { maker: 'Ondrasse', id: 'interleaved-month', invented: true } });
  const evidence = datingOf({ ...nothing, decodings: [decoding('d1', { readings: [invented] })] });
  expect(new Set(evidence.map(({ strength }) => strength))).toEqual(new Set(['soft']));
  expect(sayStated(evidence[0]!, 'en')).toBe(
    'The stamp reads KV0915, by the invented maker file of Ondrasse: January 1995, Belgium',
  );
  expect(evidence[1]?.source).toMatchObject({ kind: 'maker-file', maker: 'Ondrasse', invented: true });
  const family = reading({ system: { maker: null, id: 'plant-interleaved-month' } });
  const [byShape] = datingOf({ ...nothing, decodings: [decoding('d1', { readings: [family] })] });
  expect(sayStated(byShape!, 'en')).toBe('The stamp reads KV0915, by its shape alone: January 1995, Belgium');
});

test('readings of one code are alternatives; one that names no date leaves the date open', () => {
  const two = [reading(), reading({ span: monthSpan(2005, 9), places: ['FR'] })];
  const [either] = datingOf({ ...nothing, decodings: [decoding('d1', { readings: two })] });
  expect(either?.spans).toEqual([monthSpan(1995, 1), monthSpan(2005, 9)]);
  expect(either?.places).toEqual(['BE', 'FR']);
  const open = [reading(), reading({ span: null, places: ['BE'] })];
  const [placeOnly] = datingOf({ ...nothing, decodings: [decoding('d1', { readings: open })] });
  expect([placeOnly?.about, placeOnly?.spans]).toEqual(['place', []]);
});

test('a code that was not accepted is no evidence; a quoted code and a reading by family are soft', () => {
  expect(datingOf({ ...nothing, decodings: [decoding('d1', { accepted: false })] })).toEqual([]);
  const said = decoding('d1', { from: { kind: 'claim', claimId: 'c9' } });
  expect(datingOf({ ...nothing, decodings: [said] }).map((piece) => piece.strength)).toEqual(['soft', 'soft', 'soft']);
  const family = decoding('d1', { readings: [reading({ system: { maker: null, id: 'year-year-month' } })] });
  expect(datingOf({ ...nothing, decodings: [family] })[0]?.strength).toBe('soft');
});

test('a mark keeps its strength, but never when it was not verified', () => {
  const marks = [mark('m1'), mark('m2', { verified: false }), mark('m3', { spans: [], places: [] })];
  const evidence = datingOf({ ...nothing, marks });
  expect(evidence.map(({ id, strength }) => [id, strength])).toEqual([
    ['mark-m1', 'hard'],
    ['mark-m2', 'soft'],
  ]);
});

test('a mark tells of a date, a place or both', () => {
  const about = (over: Partial<Parameters<typeof mark>[1]>) =>
    datingOf({ ...nothing, marks: [mark('m1', over)] }).map((piece) => piece.about);
  expect([about({}), about({ places: [] }), about({ spans: [] })]).toEqual([['date-and-place'], ['date'], ['place']]);
  expect(about({ places: ['DE', 'FR'] })).toEqual(['date-and-place']);
});

test('a mark that only the words of the listing name is soft', () => {
  const [evidence] = datingOf({ ...nothing, marks: [mark('m1', { foundIn: 'listing', photoId: null })] });
  expect(evidence?.strength).toBe('soft');
});

test('a country that ended dates the piece as well, softly', () => {
  const claims = [originClaim('c1', 'made in Czechoslovakia', 'CSHH')];
  const evidence = datingOf({ ...nothing, claims });
  expect(evidence.map(({ id, strength, spans, places }) => [id, strength, spans[0]?.to, places])).toEqual([
    ['claim-c1', 'hard', undefined, ['CSHH']],
    ['claim-c1-country', 'soft', '1992-12-31', []],
  ]);
  expect(sayStated(evidence[1]!, 'en')).toBe(
    'The listing says “made in Czechoslovakia”, and Czechoslovakia existed 28 October 1918 to 1992',
  );
});

test('origin words in the listing are one fact with the claim that they are', () => {
  const claims = [originClaim('c1', 'Made in West Germany', 'DE')];
  const evidence = datingOf({ ...nothing, claims, marks: [mark('m1', { foundIn: 'listing', photoId: null })] });
  expect(evidence.map((piece) => piece.basis)).toEqual(['claimed-origin:DE', 'claimed-origin:DE']);
});

const maker: MakerFile = {
  ...blankMaker,
  maker: 'Tessaro Vell',
  aliases: [],
  sources: ['invented'],
  plants: [],
  codeSystems: [],
  construction: [
    {
      part: 'lining',
      is: 'olive twill',
      also: ['green twill'],
      used: ['1970', '1988'],
      strength: 'hard',
      sources: ['house book'],
    },
    { part: 'lining', is: 'red suede', used: ['1989', null], strength: 'soft', sources: ['house book'] },
  ],
  models: [{ name: 'Carryall 30', runs: [{ made: ['1985', '1999'] }] }],
  trade: {},
};

test('a material claimed calls up the years in which the maker used it', () => {
  const said = {
    id: 'c1',
    words: 'Green Twill lining',
    at: { field: 'title', start: 0, end: 1 },
    confidence: 1,
  } as const;
  const claim: Claim = { kind: 'material', ...said, part: 'lining', material: 'green twill' };
  const [evidence] = datingOf({ ...nothing, claims: [claim], maker });
  expect(evidence).toMatchObject({
    spans: [{ from: '1970-01-01', to: '1988-12-31' }],
    strength: 'hard',
    from: { kind: 'construction' },
  });
  expect(sayStated(evidence!, 'en')).toBe(
    'The listing says “Green Twill lining”, and Tessaro Vell used lining of olive twill 1970 to 1988',
  );
  expect(datingOf({ ...nothing, claims: [{ ...claim, material: 'blue silk', words: 'blue silk' }], maker })).toEqual(
    [],
  );
});

test('a material is one fact by any of its names, and another material one of its own', () => {
  const lining = (material: string): Claim => ({
    ...{ kind: 'material', id: 'c1', words: material, at: { field: 'title', start: 0, end: 1 }, confidence: 1 },
    part: 'lining',
    material,
  });
  const basisOf = (material: string, file = maker) =>
    datingOf({ ...nothing, claims: [lining(material)], maker: file }).map(({ basis }) => basis);
  expect([basisOf('green twill'), basisOf('Olive Twill')]).toEqual([
    ['material:lining:olive twill'],
    ['material:lining:olive twill'],
  ]);
  const closed = { ...maker, construction: [{ ...maker.construction![0]!, not: ['blue silk'] }] };
  expect(basisOf('blue silk', closed)).toEqual(['material:lining:blue silk']);
});

test('a part that was replaced dates nothing, and a piece restored without saying where dates nothing for sure', () => {
  const at = { field: 'title', start: 0, end: 1 } as const;
  const lining: Claim = {
    ...{ kind: 'material', id: 'c1', words: 'green twill lining', at, confidence: 1 },
    part: 'lining',
    material: 'green twill',
  };
  const replaced: Claim = { kind: 'replaced', id: 'c2', words: 'lining redone', at, confidence: 1, parts: ['lining'] };
  expect(datingOf({ ...nothing, claims: [lining, replaced], maker })).toEqual([]);
  const restored = datingOf({ ...nothing, claims: [lining, { ...replaced, parts: [] }], maker });
  expect(restored.map(({ strength }) => strength)).toEqual(['soft']);
  const fastener = mark('m1', { mark: 'fastener' });
  const zip: Claim = { ...replaced, parts: ['zip'] };
  expect(datingOf({ ...nothing, claims: [zip], marks: [fastener, mark('m2')] }).map(({ id }) => id)).toEqual([
    'mark-m2',
  ]);
});

test('a model claimed calls up its years, softly', () => {
  const claim: Claim = {
    kind: 'model',
    id: 'c1',
    words: 'Carryall 30',
    at: { field: 'title', start: 0, end: 1 },
    confidence: 1,
    model: 'carryall 30',
  };
  const [evidence] = datingOf({ ...nothing, claims: [claim], maker });
  expect([evidence?.spans[0]?.to, evidence?.strength]).toEqual(['1999-12-31', 'soft']);
});

test('all evidence fits its schema and every id is its own', () => {
  const claims = [madeClaim('c1', 'a nineties bag', nineties), originClaim('c2', 'made in France', 'FR')];
  const evidence = datingOf({ claims, decodings: [decoding('d1')], marks: [mark('m1')], maker });
  expect(() => evidence.map((piece) => evidenceSchema.parse(piece))).not.toThrow();
  expect(new Set(evidence.map((piece) => piece.id)).size).toBe(evidence.length);
});
