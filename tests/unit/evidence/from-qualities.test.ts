import { describe, expect, it } from 'vitest';
import type { Claim } from '../../../src/claim/types';
import type { Decoding } from '../../../src/code/types';
import { fromQualities } from '../../../src/evidence/from-qualities';
import type { Listing, Origin } from '../../../src/listing/types';
import { monthSpan } from '../../../src/span';
import { claim, decoded, reading, stated } from '../check/sample';

const plain = { about: 'quality', spans: [], places: [], strength: 'soft' } as const;
const inWords = { kind: 'listing', field: 'description' } as const;
const of = (claims: Claim[], condition: Listing['condition'] = [], decodings: Decoding[] = []) =>
  fromQualities(claims, { condition }, decodings);
/** Each as "what of: what it is". */
const told = (...given: Parameters<typeof of>) =>
  of(...given).map(({ says, quality }) => `${says.kind} ${quality.of}: ${quality.is.join(', ')}`);
const metal = (metal: 'gold' | 'silver' | 'brass' | 'zinc', solid: boolean, part: string | null = null) =>
  claim('metal', `${metal} ${solid}`, { metal, solid, of: part, polarity: 'is' }, `${metal}-${solid}-${part}`);
const condition = (condition: Listing['condition'][number]['value'], field?: 'data' | 'user') => {
  const one = claim('condition', condition, { condition }, `is-${condition}`);
  return field ? ({ ...one, at: { ...one.at, field } } as Claim) : one;
};

describe('how a piece is described', () => {
  it('is told whole of each kind of words', () => {
    expect(
      of([
        condition('new', 'data'),
        condition('worn'),
        claim('leather', 'Cowhide', { real: true, of: null, polarity: 'is' }, 'l'),
        claim('metal', 'Brass tone', { metal: 'brass', solid: false, of: 'zip', polarity: 'is' }, 'm'),
        { ...claim('maker', 'Calderwick & Rook', { maker: 'Calderwick & Rook' }, 'k'), at: atUser },
      ]),
    ).toEqual([
      {
        ...plain,
        id: 'quality-is-new',
        from: { kind: 'claim', id: 'is-new' },
        basis: 'called-new',
        quality: { of: 'state', is: ['new'] },
        says: { kind: 'called-new', words: 'new', inData: true },
        source: { kind: 'listing', field: 'data' },
      },
      {
        ...plain,
        id: 'quality-is-worn',
        from: { kind: 'claim', id: 'is-worn' },
        basis: 'called-used:worn',
        quality: { of: 'state', is: ['used'] },
        says: { kind: 'called-used', words: 'worn' },
        source: inWords,
      },
      {
        ...plain,
        id: 'quality-l',
        from: { kind: 'claim', id: 'l' },
        basis: 'leather:null',
        quality: { of: 'leather of piece', is: ['leather'] },
        says: { kind: 'leather', words: 'Cowhide', of: null },
        source: inWords,
      },
      {
        ...plain,
        id: 'quality-m',
        from: { kind: 'claim', id: 'm' },
        basis: 'other-metal:brass:zip',
        quality: { of: 'metal of zip', is: ['gold', 'silver', 'zinc'] },
        says: { kind: 'other-metal', words: 'Brass tone', of: 'zip', metal: 'brass' },
        source: inWords,
      },
      {
        ...plain,
        id: 'quality-k',
        from: { kind: 'claim', id: 'k' },
        basis: 'maker:calderwick and rook',
        quality: { of: 'maker', is: ['calderwick and rook'] },
        says: { kind: 'maker-name', maker: 'Calderwick & Rook' },
        source: { kind: 'user', as: 'note' },
      },
    ]);
  });
  const atUser = { field: 'user', start: 0, end: 1 } as const;

  it('is new by the seller’s word, by the page’s field where there is none, and by neither', () => {
    expect(told([condition('unused')])).toEqual(['called-new state: new']);
    expect(told([condition('as-new'), condition('used-very-good')])).toEqual([]);
    expect(of([condition('worn')], stated('unused')).map(({ id }) => id)).toEqual(['quality-field', 'quality-is-worn']);
    expect(of([condition('new')], stated('unused')).map(({ id }) => id)).toEqual(['quality-is-new']);
    expect(of([condition('new'), condition('unused')]).map(({ id }) => id)).toEqual(['quality-is-new']);
    expect(told([], stated('as-new'))).toEqual([]);
    expect(told([], [...stated('used' as const), ...stated('new' as const)])).toEqual(['called-new state: new']);
  });

  it('is new by a field as the page words it, and in its data where nothing is shown', () => {
    const field = (origin: Origin, words?: string) =>
      of([], [{ ...stated('new' as const)[0]!, origin, ...(words === undefined ? {} : { words }) }]);
    expect(field('visible', 'Brand new')).toEqual([
      {
        ...plain,
        id: 'quality-field',
        from: { kind: 'listing', id: 'condition' },
        basis: 'called-new',
        quality: { of: 'state', is: ['new'] },
        says: { kind: 'called-new', words: 'Brand new', inData: false },
        source: { kind: 'listing', field: 'data' },
      },
    ]);
    expect(field('visible')[0]?.says).toEqual({ kind: 'called-new', words: 'new', inData: true });
    expect(field('json-ld', 'NewCondition')[0]?.says).toEqual({
      kind: 'called-new',
      words: 'NewCondition',
      inData: true,
    });
  });

  it('is used by the seller’s own words for the whole first, then by signs of wear, not by a field of the page', () => {
    const sign = (words: string, polarity: 'is' | 'is-not' = 'is') =>
      claim('wear', words, { polarity }, `${words} ${polarity}`);
    expect(of([sign('Scuffs'), condition('used'), condition('damaged')]).map(({ basis }) => basis)).toEqual([
      'called-used:used',
      'called-used:damaged',
      'called-used:scuffs',
    ]);
    expect(told([condition('used', 'data'), condition('worn', 'data')])).toEqual([]);
    expect(told([condition('used', 'user')])).toEqual(['called-used state: used']);
    // What is denied anywhere is not held against the piece, however it is written.
    expect(told([sign('SCUFFS'), sign('scuffs', 'is-not')])).toEqual([]);
    expect(of([sign('scuffs', 'is-not'), sign('cracks')]).map(({ basis }) => basis)).toEqual(['called-used:cracks']);
    expect(told([sign('no scuffs', 'is-not')])).toEqual([]);
  });

  it('is of leather or of its imitation, each of its own part', () => {
    const leather = (words: string, real: boolean, part: 'lining' | null, polarity: 'is' | 'is-not' = 'is') =>
      claim('leather', words, { real, of: part, polarity }, words);
    expect(told([leather('a', true, 'lining'), leather('b', false, null), leather('c', false, 'lining')])).toEqual([
      'leather leather of lining: leather',
      'imitation leather of piece: imitation',
      'imitation leather of lining: imitation',
    ]);
    expect(told([leather('a', true, null, 'is-not')])).toEqual([]);
  });

  it('is of a solid metal, of zinc, or of any metal within another', () => {
    expect(told([metal('gold', true), metal('gold', false), metal('silver', false), metal('zinc', false)])).toEqual([
      'solid-metal metal of piece: gold',
      'other-metal metal of piece: silver, brass, zinc',
      'other-metal metal of piece: gold, brass, zinc',
      'other-metal metal of piece: zinc',
    ]);
    const denied = { ...metal('gold', true), polarity: 'is-not' } as Claim;
    expect(told([denied])).toEqual([]);
    expect(told([metal('brass', true, 'buckle'), metal('brass', true, 'zip'), metal('brass', true, 'zip')])).toEqual([
      'solid-metal metal of buckle: brass',
      'solid-metal metal of zip: brass',
    ]);
  });

  it('is told once in the same words, and of one kind twenty times at most', () => {
    const scuff = (words: string, id: string) => claim('wear', words, { polarity: 'is' }, id);
    expect(of([scuff('Scuffs', 'a'), scuff('scuffs', 'b')]).map(({ id }) => id)).toEqual(['quality-a']);
    const many = Array.from({ length: 21 }, (_, at) => scuff(`scuff ${at}`, `s${at}`));
    const makers = [claim('maker', 'Ondrasse', { maker: 'Ondrasse' }, 'k')];
    expect(told(many.slice(0, 20))).toHaveLength(20);
    const all = of([...many, ...many, ...makers]).map(({ id }) => id);
    expect(all).toEqual([...many.slice(0, 20).map(({ id }) => `quality-${id}`), 'quality-k']);
  });
});

describe('which code it carries', () => {
  const texts = (...decodings: Decoding[]) =>
    of([], [], decodings).map(({ says, quality }) => `${says.kind} ${quality.is.join(', ')}`);
  const quote = { from: { kind: 'claim', claimId: 'q' } } as const;

  it('is told whole, as its best reading has it', () => {
    const best = reading('KV-09 15', monthSpan(1995, 1));
    expect(of([], [], [decoded('KVO9I5', [best, reading('KV0915', null)])])).toEqual([
      {
        ...plain,
        id: 'code-text-decoding-KVO9I5',
        from: { kind: 'code', id: 'decoding-KVO9I5' },
        basis: 'code-text:decoding-KVO9I5',
        quality: { of: 'code', is: ['KV0915'] },
        says: { kind: 'shown-code', code: 'KV-09 15' },
        source: { kind: 'practice', text: 'common practice, no source' },
      },
    ]);
  });

  it('is read or typed where it was accepted, and quoted in any case', () => {
    expect(texts(decoded('KV0915', []))).toEqual(['shown-code KV0915']);
    expect(texts(decoded('KV0915', [], { from: { kind: 'typed' } }))).toEqual(['shown-code KV0915']);
    expect(texts(decoded('KV0915', [], { accepted: false }))).toEqual([]);
    expect(texts(decoded('kv 09.15', [], quote))).toEqual(['quoted-code KV0915']);
    expect(texts(decoded('KV0915', [], { ...quote, accepted: false }))).toEqual(['quoted-code KV0915']);
  });

  it('is any of the texts that are left open, where no system settles them', () => {
    const open: Decoding['open'] = [{ kind: 'may-go-on' }, { kind: 'alike', place: 2, may: ['0', 'O'] }];
    expect(texts(decoded('KV0915', [], { open }))).toEqual(['shown-code KV0915, KVO915']);
    expect(texts(decoded('KV0915', [reading('KV0915', null)], { open }))).toEqual(['shown-code KV0915']);
  });
});
