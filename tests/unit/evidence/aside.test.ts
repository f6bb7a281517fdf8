import { expect, test } from 'vitest';
import { gatherEvidence, pairsOf, reason } from '../../../src/evidence';
import { evidenceSchema } from '../../../src/evidence/types';
import type { Listing } from '../../../src/listing/types';
import { monthSpan, sinceSpan, yearSpan } from '../../../src/span';
import { claim, decoded, measureOf, ondrasse, priceOf, reading, stated, withPhotos } from '../check/sample';

const now = '2026-01-15T10:00:00Z';
const nothing = { claims: [], decodings: [], marks: [], maker: ondrasse, now };
const page = (rest: Partial<Listing>) => ({ ...nothing, listing: withPhotos(1, rest) });
const wide = (mm: number, words = `${mm} mm`) => stated(measureOf('width', mm, words, 5));

/** How the two stand to each other by a rule, each as "relation hard". */
const stand = (given: Parameters<typeof gatherEvidence>[0], rule: string) =>
  pairsOf(gatherEvidence(given))
    .filter((pair) => pair.rule === rule)
    .map(({ relation, hard }) => [relation, ...(hard ? ['hard'] : [])].join(' '));

test('all that is gathered is a statement of its kind', () => {
  const evidence = gatherEvidence({
    ...page({
      model: stated('Weekender 50'),
      measures: [...wide(510), ...stated(measureOf('height', 300, '30 cm'))],
      price: [...stated(priceOf(20_000)), ...stated(priceOf(90_000, 'EUR', 'was'))],
    }),
    claims: [
      claim('age-word', 'vintage', { word: 'vintage', polarity: 'is' }),
      claim('bought', '1990', { span: yearSpan(1990) }),
      claim('condition', 'unused', { condition: 'unused' }),
      claim('wear', 'scratches', { polarity: 'is' }),
      claim('leather', 'cowhide', { real: true, of: null, polarity: 'is' }),
      claim('leather', 'pleather', { real: false, of: 'lining', polarity: 'is' }),
      claim('metal', 'solid brass', { metal: 'brass', solid: true, of: null, polarity: 'is' }),
      claim('metal', 'gold plated', { metal: 'gold', solid: false, of: 'buckle', polarity: 'is' }),
      claim('maker', 'Ondrasse', { maker: 'Ondrasse' }),
    ].map((one, at) => ({ ...one, id: `c${at}` })),
    decodings: [decoded('KV0915', [reading('KV0915', monthSpan(1995, 1))])],
  });
  expect(evidence.map((piece) => evidenceSchema.safeParse(piece).success)).not.toContain(false);
  expect(new Set(evidence.map(({ id }) => id)).size).toBe(evidence.length);
  const kinds = new Set(
    evidence.filter(({ about }) => !about.includes('date') && about !== 'place').map(({ says }) => says.kind),
  );
  expect([...kinds].sort()).toEqual([
    'age-word',
    'asked-new',
    'called-new',
    'called-used',
    'floor-then',
    'imitation',
    'leather',
    'maker-name',
    'named-width',
    'other-metal',
    'price-before',
    'price-now',
    'price-shown',
    'purchase-day',
    'shown-code',
    'size',
    'solid-metal',
    'stamped',
    'stamping',
    'today',
  ]);
});

test('what stands aside narrows no date and is no fact that agrees', () => {
  const made = claim('made', '1995', { span: yearSpan(1995) });
  const given = { ...page({ measures: wide(300), price: stated(priceOf(54_000)) }), claims: [made] };
  const [plain, whole] = [gatherEvidence({ ...nothing, maker: null, claims: [made] }), gatherEvidence(given)];
  expect(reason(whole).agreeing).toEqual(reason(plain).agreeing);
  expect(reason(whole).agrees).toBe(true);
});

test('two lengths of a side are apart from the roundings of both and two tapes on', () => {
  const apart = (mm: number) => stand(page({ measures: [...wide(300), ...wide(300 + mm)] }), 'sizes');
  expect([19, 20, 21].map(apart)).toEqual([['agrees'], ['agrees'], ['conflicts']]);
});

test('a length fits a model within its tolerance, the rounding and the tape', () => {
  const off = (mm: number) => stand(page({ model: stated('Carryall 30'), measures: wide(300 + mm) }), 'size-model');
  expect([19, 20, 21].map(off)).toEqual([['agrees'], ['agrees'], ['conflicts']]);
  expect([-19, -20, -21].map(off)).toEqual([['agrees'], ['agrees'], ['conflicts']]);
});

test('a width fits the number of a name within three centimetres and its rounding', () => {
  const off = (mm: number) => stand(page({ model: stated('Weekender 50'), measures: wide(500 + mm) }), 'size-name');
  expect([34, 35, 36].map(off)).toEqual([['agrees'], ['agrees'], ['conflicts']]);
});

test('sums in another currency are held against each other only where a floor is, by dollars', () => {
  const price = (currency: string) =>
    page({ price: [...stated(priceOf(20_000, currency)), ...stated(priceOf(90_000, 'EUR', 'was'))] });
  expect(stand(price('USD'), 'price-cut')).toEqual([]);
  expect(stand(price('USD'), 'used-price')).toEqual(['agrees']);
  expect(stand(price('XTS'), 'used-price')).toEqual([]);
});

test('a code and the day of the look: of today it may be, of the month after it cannot, a claim of it is a doubt', () => {
  const code = (month: number) => ({ ...nothing, decodings: [decoded('KV', [reading('KV', monthSpan(2026, month))])] });
  expect([1, 2].map((month) => stand(code(month), 'today-date'))).toEqual([['agrees'], ['conflicts hard']]);
  const said = (year: number) => ({ ...nothing, claims: [claim('made', String(year), { span: yearSpan(year) })] });
  expect([2026, 2027].map((year) => stand(said(year), 'today-date'))).toEqual([['agrees'], ['conflicts']]);
});

test('a word of age is held against the last year that it allows', () => {
  const given = (year: number) => ({
    ...nothing,
    claims: [
      claim('age-word', 'vintage', { word: 'vintage', polarity: 'is' }),
      claim('made', String(year), { span: yearSpan(year) }),
    ],
  });
  expect([2005, 2006, 2007].map((year) => stand(given(year), 'age-word-date'))).toEqual([
    ['agrees'],
    ['agrees'],
    ['conflicts'],
  ]);
});

test('the dates of one reading are not saved by the years of the system of another', () => {
  const early = reading('KV0915', monthSpan(2009, 1));
  const late = { ...early, span: monthSpan(1995, 1), systemUsed: sinceSpan('2009-01-01') };
  // The first system was in use in 1995 and the second is in 2009: by what the two allow together nothing would be wrong.
  const both = [early, late];
  expect(stand({ ...nothing, decodings: [decoded('KV0915', both)] }, 'code-system')).toEqual(['conflicts hard']);
});

test('the reasoning names the rule of each agreement, and why it counts', () => {
  const given = {
    ...page({ model: stated('Carryall 30'), measures: wide(300) }),
    claims: [claim('made', '1995', { span: yearSpan(1995) })],
    decodings: [decoded('KV0915', [reading('KV0915', monthSpan(1995, 1))])],
  };
  const { agreements } = reason(gatherEvidence(given));
  expect(agreements.map(({ rule, over, informs, narrows }) => `${rule} ${over} ${informs} ${narrows}`)).toEqual([
    'claimed-date-code date another-date true',
    'code-plant date closed-period false',
    'size-model size another-length true',
  ]);
});

const metal = (words: string, metal: 'gold' | 'brass' | 'zinc', solid: boolean, of: string | null = null) =>
  ({ ...claim('metal', words, { metal, solid, of, polarity: 'is' }), id: words }) as const;
const leather = (words: string, real: boolean, of: 'lining' | null = null, polarity: 'is' | 'is-not' = 'is') =>
  ({ ...claim('leather', words, { real, of, polarity }), id: words }) as const;

test('how a piece is described is held against what else is said of the same part', () => {
  const described = (...claims: Parameters<typeof gatherEvidence>[0]['claims'][number][]) =>
    pairsOf(gatherEvidence({ ...page({}), claims }))
      .filter(({ over }) => over === 'quality')
      .map(({ rule, left, right, relation, hard }) => [rule, left, right, relation, hard].join(' '));
  const solid = metal('solid brass', 'brass', true);
  expect(described(solid, metal('gold plated', 'gold', false))).toEqual([
    'solid-metal quality-solid brass quality-gold plated agrees false',
  ]);
  expect(described(solid, metal('brass tone', 'brass', false), metal('zamak', 'zinc', false))).toEqual([
    'solid-metal quality-solid brass quality-brass tone conflicts false',
    'solid-metal quality-solid brass quality-zamak conflicts false',
  ]);
  expect(described(solid, metal('brass tone', 'brass', false, 'zip'))).toEqual([]);
  expect(described(leather('cowhide', true), leather('pleather', false), leather('vinyl', false, 'lining'))).toEqual([
    'leather-imitation quality-cowhide quality-pleather conflicts false',
  ]);
  expect(described(leather('cowhide', true), leather('pleather', false, null, 'is-not'))).toEqual([]);
  const someOther = claim('leather', 'pleather', { real: false, of: null, inPart: true, polarity: 'is' });
  // Of some part that is not said it leaves the rest of leather.
  expect(described(leather('cowhide', true), someOther)).toEqual([]);
  const wear = (words: string, polarity: 'is' | 'is-not') => ({ ...claim('wear', words, { polarity }), id: words });
  const fresh = claim('condition', 'brand new', { condition: 'new' });
  expect(described(fresh, wear('Scratches', 'is'), wear('scuffs', 'is'), wear('scuffs', 'is-not'))).toEqual([
    'new-used quality-claim-condition quality-Scratches conflicts false',
  ]);
});

test('what is described a hundred times is held against the first twenty that differ', () => {
  const claims = Array.from({ length: 100 }, (_, at) => ({
    ...claim('maker', `Maker ${at}`, { maker: `Maker ${at % 50}` }),
    id: `c${at}`,
  }));
  const named = gatherEvidence({ ...page({}), claims }).filter(({ says }) => says.kind === 'maker-name');
  expect(named.map(({ id }) => id)).toEqual(Array.from({ length: 20 }, (_, at) => `quality-c${at}`));
});

test('a condition of the page stands where the seller has no word for it, as the page’s own', () => {
  const given = (words?: string) => ({
    ...page({ condition: [{ ...stated('new' as const)[0]!, ...(words ? { words } : {}) }] }),
    claims: [{ ...claim('wear', 'scratches', { polarity: 'is' }), id: 'w' }],
  });
  const fresh = (words?: string) => gatherEvidence(given(words)).find(({ says }) => says.kind === 'called-new')?.says;
  expect([fresh(), fresh('Brand new')]).toEqual([
    { kind: 'called-new', words: 'new', inData: true },
    { kind: 'called-new', words: 'Brand new', inData: false },
  ]);
  expect(stand(given(), 'new-used')).toEqual(['conflicts']);
});
