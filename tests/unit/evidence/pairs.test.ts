import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import type { Claim } from '../../../src/claim/types';
import { gatherEvidence, pairsOf, reason } from '../../../src/evidence';
import type { MakerFile } from '../../../src/maker/types';
import type { MarkRead } from '../../../src/mark/types';
import { monthSpan, sinceSpan, yearSpan, yearsSpan } from '../../../src/span';
import { decadeSpan } from '../span/decade';
import { decoding, madeClaim, mark, ondrasse, originClaim, reading } from './samples';

const nothing = { claims: [], decodings: [], marks: [], maker: ondrasse };
const codeOf = (year: number) => decoding('d1', { readings: [reading({ span: monthSpan(year, 1) })] });
const bought = (year: number): Claim =>
  ({ ...madeClaim('b1', `bought in ${year}`, yearSpan(year)), kind: 'bought' }) as Claim;
/** What follows from a code, which is told of the code alone. */
const ofOneCode: readonly string[] = ['code-period', 'code-system', 'code-plant'];
const stand = (given: Partial<Parameters<typeof gatherEvidence>[0]>) =>
  pairsOf(gatherEvidence({ ...nothing, ...given }))
    .filter(({ rule }) => !ofOneCode.includes(rule))
    .map(({ rule, left, right, relation, hard, informs, withheld }) => {
      const how = Object.entries({ hard, informs, withheld }).flatMap(([name, is]) => (is ? [name] : []));
      return [rule, left, right, relation, ...how].join(' ');
    });

test('every claimed date, code and mark is held against the others, once by each rule', () => {
  const claims = [
    madeClaim('c1', 'made in 1995', yearSpan(1995)),
    bought(1990),
    originClaim('o1', 'Czechoslovakia', 'CSHH'),
  ];
  const marks = [mark('m1', { spans: [yearsSpan(1998, null)], places: [] })];
  expect(stand({ claims, decodings: [codeOf(1995)], marks })).toEqual([
    'claimed-date-code claim-c1 reading-d1 agrees informs',
    // It also gives the code's own year: the listing contradicts itself first.
    'claimed-date-code claim-b1 reading-d1 conflicts',
    'claimed-date-mark claim-c1 mark-m1 conflicts hard',
    'purchase-mark claim-b1 mark-m1 conflicts',
    'code-mark reading-d1 mark-m1 conflicts hard',
    'making-purchase claim-c1 claim-b1 conflicts',
    'country-date claim-o1-country claim-c1 conflicts',
    'country-date claim-o1-country reading-d1 conflicts',
    'country-mark claim-o1-country mark-m1 conflicts',
    'country-purchase claim-o1-country claim-b1 agrees informs',
    'origin-code claim-o1 reading-d1 conflicts hard',
  ]);
});

test('a purchase is held against the first day of a mark, at the year before and in it', () => {
  const marks = [mark('m1', { spans: [yearsSpan(1998, null)], places: [] })];
  const relation = (year: number) => stand({ claims: [bought(year)], marks }).map((one) => one.split(' ')[3]);
  expect([1997, 1998, 1999].map(relation)).toEqual([['conflicts'], ['agrees'], ['agrees']]);
});

describe('a former country and the dates of a mark', () => {
  const czechoslovakia = originClaim('o1', 'Czechoslovakia', 'CSHH');
  const since = (day: string, over: Partial<MarkRead> = {}) =>
    mark('m1', { spans: [sinceSpan(day)], places: [], ...over });
  const relation = (claim: Claim, one: MarkRead) =>
    stand({ claims: [claim], marks: [one] }).flatMap((said) =>
      said.startsWith('country-mark') ? said.replace('country-mark claim-o1-country mark-m1 ', '') : [],
    );

  it('stand against each other, never hard, from the day on which no stock of labels explains it', () => {
    const days = ['1992-12-31', '1993-01-01', '1996-01-03', '1996-01-04', '2005-01-01'];
    expect(days.map((day) => relation(czechoslovakia, since(day)))).toEqual([
      ['agrees informs'],
      ['within-room'],
      ['within-room'],
      ['conflicts'],
      ['conflicts'],
    ]);
  });

  it('stand against each other before its beginning as well', () => {
    const until = (year: number) => mark('m1', { spans: [yearsSpan(null, year)], places: [] });
    expect([1910, 1916, 1918].map((year) => relation(czechoslovakia, until(year)))).toEqual([
      ['conflicts'],
      ['within-room'],
      ['agrees informs'],
    ]);
  });

  it('are no news where the country claimed is one of today, whose name is given to older pieces too', () => {
    const until = mark('m1', { spans: [yearsSpan(null, 1960)], places: [] });
    expect(relation(originClaim('o1', 'Slovakia', 'SK'), until)).toEqual(['within-room']);
  });

  it('are told of the place where the mark names another country, and of nothing where only the listing has the mark', () => {
    const late = '2005-01-01';
    expect(relation(czechoslovakia, since(late, { places: ['SK'] }))).toEqual(['conflicts']);
    expect(relation(czechoslovakia, since(late, { places: ['IT'] }))).toEqual(['within-room']);
    expect(relation(czechoslovakia, since(late, { places: ['SK', 'IT'] }))).toEqual(['conflicts']);
    const quoted = since(late, { foundIn: 'listing', photoId: null });
    expect(relation(czechoslovakia, quoted)).toEqual(['within-room']);
  });
});

test('a purchase before a country, a material or a model is never more than unlikely', () => {
  const slovakia = originClaim('o1', 'Slovakia', 'SK');
  expect([1980, 1993].map((year) => stand({ claims: [bought(year), slovakia] }))).toEqual([
    ['country-purchase claim-o1-country claim-b1 conflicts'],
    ['country-purchase claim-o1-country claim-b1 agrees'],
  ]);
  const suede = (year: number) => stand({ claims: [bought(year), material('m1', 'sand suede')], maker: lined });
  expect([1980, 1994, 1995].map(suede)).toEqual([
    ['material-purchase construction-m1 claim-b1 conflicts'],
    ['material-purchase construction-m1 claim-b1 conflicts'],
    ['material-purchase construction-m1 claim-b1 agrees informs'],
  ]);
  const model: Claim = { ...from, kind: 'model', id: 'm1', words: 'Carryall 30', model: 'Carryall 30' };
  const maker = { ...ondrasse, models: [{ name: 'Carryall 30', runs: [{ made: ['1985', '1995'] }] }] } as MakerFile;
  expect([1983, 1984, 1985].map((year) => stand({ claims: [bought(year), model], maker })[0])).toEqual([
    'model-purchase model-m1 claim-b1 conflicts',
    'model-purchase model-m1 claim-b1 within-room',
    'model-purchase model-m1 claim-b1 agrees informs',
  ]);
});

test('what agrees with nearly everything tells nothing', () => {
  const marks = [mark('m1', { spans: [yearsSpan(1990, null)], places: [] })];
  expect(stand({ claims: [bought(2001)], decodings: [codeOf(1995)], marks })).toEqual([
    'claimed-date-code claim-b1 reading-d1 agrees',
    'purchase-mark claim-b1 mark-m1 agrees',
    'code-mark reading-d1 mark-m1 agrees',
  ]);
});

test('within its room a loose date neither agrees nor conflicts', () => {
  const about = madeClaim('c1', 'about 1994', { ...yearSpan(1994), about: true });
  const pair = (year: number) => stand({ claims: [about], decodings: [codeOf(year)] });
  expect(pair(1998)).toEqual(['claimed-date-code claim-c1 reading-d1 within-room']);
  expect(pair(2001)).toEqual(['claimed-date-code claim-c1 reading-d1 conflicts']);
});

const from = { at: { field: 'title', start: 0, end: 1 }, confidence: 0.9 } as const;
const material = (id: string, words: string): Claim => ({
  ...from,
  kind: 'material',
  id,
  words,
  part: 'lining',
  material: words,
});
const lined = {
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
    {
      part: 'lining',
      is: 'sand suede',
      not: ['satin'],
      used: ['1995', '1999'],
      strength: 'hard',
      sources: ['invented'],
    },
  ],
} as MakerFile;

test('a material is held against the date of the piece, one that was not used then as well, and once only', () => {
  const pair = (words: string, year: number) =>
    stand({ claims: [material('m1', words)], decodings: [codeOf(year)], maker: lined });
  expect(pair('olive twill', 1992)).toEqual(['material-date construction-m1 reading-d1 agrees informs']);
  expect(pair('olive twill', 1995)).toEqual(['material-date construction-m1 reading-d1 conflicts']);
  expect(pair('olive twill', 1998)).toEqual(['material-date construction-m1 reading-d1 conflicts hard']);
  expect(pair('satin', 1998)).toEqual(['material-date construction-m1 reading-d1 conflicts hard']);
  expect(pair('satin', 2005)).toEqual(['material-date construction-m1 reading-d1 agrees']);
  const both = [material('m1', 'olive twill'), material('m2', 'sand suede'), material('m3', 'satin')];
  expect(stand({ claims: both, decodings: [codeOf(1998)], maker: lined })).toEqual([
    'material-date construction-m1 reading-d1 conflicts',
    'material-date construction-m2 reading-d1 agrees informs',
    'material-date construction-m3 reading-d1 conflicts',
    'other-material construction-m3 construction-m1 conflicts',
    'other-material construction-m3 construction-m2 conflicts',
  ]);
});

test('two dates of the seller, of making or of purchase, and two countries, are never more than unlikely', () => {
  const [early, late] = [
    madeClaim('c1', 'made in 1980', yearSpan(1980)),
    madeClaim('c2', 'made in 1995', yearSpan(1995)),
  ];
  expect(stand({ claims: [early, late] })).toEqual(['claimed-dates claim-c1 claim-c2 conflicts']);
  const about = madeClaim('c3', 'the 1980s', decadeSpan(1980));
  expect(stand({ claims: [about, madeClaim('c4', '1996', yearSpan(1996))] })).toEqual([
    'claimed-dates claim-c3 claim-c4 conflicts',
  ]);
  expect(stand({ claims: [about, madeClaim('c4', '1993', yearSpan(1993))] })).toEqual([
    'claimed-dates claim-c3 claim-c4 within-room',
  ]);
  expect(stand({ claims: [late, bought(1996)] })).toEqual(['making-purchase claim-c2 claim-b1 agrees informs']);
  expect(stand({ claims: [late, bought(1998)] })).toEqual(['making-purchase claim-c2 claim-b1 agrees']);
  const countries = [
    originClaim('o1', 'Italy', 'IT'),
    originClaim('o2', 'France', 'FR'),
    originClaim('o3', 'Italy', 'IT'),
  ];
  expect(stand({ claims: countries })).toEqual(['origins claim-o1 claim-o2 conflicts']);
});

test('the code of a plant in the country that the listing names as well is no hard conflict with another', () => {
  const [belgium, italy] = [originClaim('o1', 'Belgium', 'BE'), originClaim('o2', 'Italy', 'IT')];
  const places = (...claims: Claim[]) =>
    stand({ claims, decodings: [codeOf(1995)] }).filter((one) => one.startsWith('origin-code'));
  expect(places(italy)).toEqual(['origin-code claim-o2 reading-d1 conflicts hard']);
  expect(places(italy, belgium)).toEqual([
    'origin-code claim-o2 reading-d1 conflicts',
    'origin-code claim-o1 reading-d1 agrees informs',
  ]);
});

test('a code whose own system excludes its date is held against nothing, and a country of exact years only', () => {
  const impossible = decoding('d1', { readings: [reading({ span: monthSpan(1985, 1) })] });
  const year = madeClaim('c1', 'made in 1985', yearSpan(1985));
  expect(stand({ claims: [year], decodings: [impossible] })).toEqual([
    'claimed-date-code claim-c1 reading-d1 agrees withheld',
  ]);
  const ddr = originClaim('o1', 'East Germany', 'DDDE');
  const dated = (years: Claim) => stand({ claims: [ddr, years] });
  expect(dated(madeClaim('c1', '1999', yearSpan(1999)))).toEqual([
    'country-date claim-o1-country claim-c1 conflicts hard',
  ]);
  expect(dated(madeClaim('c1', '1993', yearSpan(1993)))).toEqual(['country-date claim-o1-country claim-c1 conflicts']);
  const late = { ...madeClaim('c1', 'the 2000s', decadeSpan(2000)), at: { field: 'title', start: 0, end: 1 } } as Claim;
  expect(dated(late)).toEqual(['country-date claim-o1-country claim-c1 conflicts']);
});

test('the years of a model have a year of room on both sides', () => {
  const model: Claim = { ...from, kind: 'model', id: 'm1', words: 'Carryall 30', model: 'Carryall 30' };
  const maker = { ...ondrasse, models: [{ name: 'Carryall 30', runs: [{ made: ['1985', '1995'] }] }] } as MakerFile;
  const pair = (year: number) =>
    stand({ claims: [model], decodings: [codeOf(year)], maker }).map((one) => one.split(' ')[3]);
  expect([1995, 1996, 1998].map(pair)).toEqual([['agrees'], ['within-room'], ['conflicts']]);
});

test('a page full of years is held against itself up to twenty of them', () => {
  const claims = Array.from({ length: 60 }, (_, at) => madeClaim(`c${at}`, `${1900 + at}`, yearSpan(1900 + at)));
  expect(stand({ claims })).toHaveLength((20 * 19) / 2);
});

const seed = Date.now() % 1_000_000;
console.log(`seed ${seed}`);

test('two statements stand to each other as the reasoning over the two says', () => {
  const year = fc.integer({ min: 1985, max: 2005 });
  const about = fc.boolean();
  const given = fc.record({
    claimed: year,
    hedged: about,
    last: fc.option(fc.integer({ min: 0, max: 9 })),
    code: year,
    from: year,
    soft: about,
  });
  fc.assert(
    fc.property(given, ({ claimed, hedged, last, code, from, soft }) => {
      const span = { ...yearsSpan(claimed, claimed + (last ?? 0)), ...(hedged ? { about: true } : {}) };
      const evidence = gatherEvidence({
        claims: [madeClaim('c1', 'a date', span)],
        decodings: [codeOf(code)],
        marks: [mark('m1', { spans: [yearsSpan(from, null)], places: [], strength: soft ? 'soft' : 'hard' })],
        maker: ondrasse,
      });
      const pairs = pairsOf(evidence).filter(({ rule }) => !ofOneCode.includes(rule));
      expect(pairs).toHaveLength(3);
      for (const { left, right, relation, hard } of pairs) {
        const { agrees, conflicts } = reason(evidence.filter(({ id }) => id === left || id === right));
        expect(agrees).toBe(relation !== 'conflicts');
        expect(conflicts.map(({ strength }) => strength)).toEqual(agrees ? [] : [hard ? 'hard' : 'soft']);
      }
    }),
    { seed, numRuns: 1000 },
  );
});
