import { describe, expect, it } from 'vitest';
import type { Facts } from '../../../src/check';
import { evidenceAgrees } from '../../../src/check/evidence-agrees';
import { measuresAgree } from '../../../src/check/measures-agree';
import type { Dating } from '../../../src/evidence';
import type { MakerFile } from '../../../src/maker/types';
import type { MarkRead } from '../../../src/mark/types';
import { periodSpan, type Span, yearSpan, yearsSpan } from '../../../src/span';
import { mark, markSaid } from '../evidence/samples';
import { claim, decoded, facts, measureOf, ondrasse, onlyFinding, said, stated, withPhotos } from './sample';

describe('evidence-agrees', () => {
  const piece = (
    id: string,
    basis: string,
    kind: Dating['from']['kind'],
    span: Span,
    strength: 'hard' | 'soft' = 'hard',
  ): Dating => ({
    id,
    about: 'date',
    from: { kind, id },
    basis,
    spans: [span],
    places: [],
    strength,
    says: saysOf(kind, `${id} gives ${span.from?.slice(0, 4)}`),
    source: { kind: 'photo' },
  });
  const saysOf = (kind: Dating['from']['kind'], words: string): Dating['says'] => {
    if (kind === 'claim') return { kind: 'made', field: 'title', words };
    if (kind === 'reading') return { kind: 'code', from: 'photo', code: words, by: [] };
    return kind === 'mark'
      ? markSaid(words)
      : { kind: 'model', field: 'title', words, maker: 'Ondrasse', model: words };
  };
  const year = yearSpan;
  const decade = (from: string, to: string) => periodSpan([from, to]) as Span;
  it('agrees when several facts share a date', () => {
    const evidence = [
      piece('a', 'claimed', 'claim', decade('1990', '1999')),
      piece('b', 'code', 'reading', year(1995)),
    ];
    expect(said(evidenceAgrees, facts({ evidence }))).toEqual([
      'agreement: What the code reads (b gives 1995) and what the listing says (“a gives 1990”) agree on 1995.',
    ]);
  });
  it('is silent where facts hold together only with the room of a loose date', () => {
    const loose = {
      ...piece('a', 'claimed', 'claim', decade('1990', '1999'), 'soft'),
      reach: [decade('1989', '2000')],
    };
    const evidence = [
      loose,
      piece('b', 'code', 'reading', year(2000)),
      piece('c', 'c', 'mark', decade('1995', '2005')),
    ];
    expect(said(evidenceAgrees, facts({ evidence }))).toEqual(['silent']);
    expect(said(evidenceAgrees, facts({ evidence: evidence.slice(1) }))).toEqual([
      'agreement: What the code reads (b gives 2000) and what the piece shows (“c gives 1995”) agree on 2000.',
    ]);
  });
  it('is silent where only the seller says it, or where nothing could have excluded another', () => {
    const own = [piece('a', 'a', 'claim', decade('1990', '1999')), piece('b', 'b', 'claim', year(1995))];
    expect(said(evidenceAgrees, facts({ evidence: own }))).toEqual(['silent']);
    const open = [
      piece('a', 'a', 'reading', year(1995)),
      piece('b', 'b', 'mark', { from: '1970-01-01', to: null, precision: 'range' }),
    ];
    expect(said(evidenceAgrees, facts({ evidence: open }))).toEqual(['silent']);
  });
  it('leaves a claim against a code to its own check', () => {
    const evidence = [piece('a', 'claimed', 'claim', year(1987)), piece('b', 'code', 'reading', year(1995))];
    expect(said(evidenceAgrees, facts({ evidence }))).toEqual(['silent']);
  });
  it('leaves two lengths of one side to their own check', () => {
    const measures = [measureOf('width', 300, '30 cm'), measureOf('width', 355.6, '14 in', 12.7)];
    const given = facts({ listing: withPhotos(1, { measures: measures.flatMap((one) => stated(one)) }) });
    expect(said(measuresAgree, given)).toHaveLength(1);
    expect(said(evidenceAgrees, given)).toEqual(['silent']);
  });
  it('tells a purchase before the first day of a mark, which has no check of its own', () => {
    const bought: Dating = {
      ...piece('a', 'bought', 'claim', { from: null, to: '1990-12-31', precision: 'range' }),
      says: { kind: 'bought', field: 'description', words: 'bought in 1990' },
    };
    const evidence = [bought, piece('b', 'mark', 'mark', { from: '1998-01-01', to: null, precision: 'range' })];
    const finding = onlyFinding(evidenceAgrees, facts({ evidence }));
    expect([finding.kind, finding.evidence]).toEqual(['doubt', ['a', 'b']]);
    expect(finding.statement).toMatch(/^Hardly any date fits both: the listing says “bought in 1990”/);
  });
  it('tells a purchase before the country, the material or the model claimed, where it is the only date', () => {
    const bought = (year: number) => claim('bought', `bought in ${year}`, { span: yearSpan(year) });
    const others = {
      country: claim('origin', 'made in Slovakia', { place: 'SK' }),
      material: claim('material', 'sand canvas', { part: 'lining', material: 'sand canvas' }),
      model: claim('model', 'Carryall 30', { model: 'Carryall 30' }),
    };
    const maker: MakerFile = {
      ...ondrasse,
      construction: [
        { part: 'lining', is: 'sand canvas', used: ['1995', null], strength: 'hard', sources: ['invented'] },
      ],
      models: [{ name: 'Carryall 30', runs: [{ made: ['1990', null] }] }],
    };
    const told = (...claims: Facts['claims']) => said(evidenceAgrees, facts({ claims, maker }));
    for (const other of Object.values(others)) {
      expect(told(bought(1985), other)).toEqual([
        expect.stringMatching(/^doubt: Hardly any date fits both: .*“bought in 1985”/),
      ]);
      expect(told(bought(1996), other)).toEqual(['silent']);
      // The date of the piece itself stands against it, or against the purchase: that is told already.
      expect(told(bought(1985), claim('made', '1984', { span: yearSpan(1984) }), other)).toEqual(['silent']);
      expect(told(bought(1985), claim('made', '1996', { span: yearSpan(1996) }), other)).toEqual(['silent']);
    }
  });
  it('tells a former country against a mark that a photo dates, where no date of the piece is known', () => {
    const country = (words: string, place: string) => claim('origin', words, { place });
    const dated = (first: number, last: number | null, over: Partial<MarkRead> = {}) =>
      mark('m1', { spans: [yearsSpan(first, last)], places: [], ...over });
    const told = (one: MarkRead, ...claims: Facts['claims']) => said(evidenceAgrees, facts({ claims, marks: [one] }));
    const czech = country('made in Czechoslovakia', 'CSHH');
    expect(told(dated(2003, null), czech)).toEqual([
      expect.stringMatching(/^doubt: Hardly any date fits both: the listing says “made in Czechoslovakia”/),
    ]);
    // Stocks of labels outlive a country; today's name is given to older pieces; the place is told elsewhere.
    expect(told(dated(1994, null), czech)).toEqual(['silent']);
    expect(told(dated(1950, 1960), country('made in Slovakia', 'SK'))).toEqual(['silent']);
    expect(told(dated(2003, null, { places: ['IT'] }), czech)).toEqual(['silent']);
    expect(told(dated(2003, null, { foundIn: 'listing', photoId: null }), czech)).toEqual(['silent']);
    // The date of the piece itself stands against the country, or against the mark: that is told already.
    const made = (year: number) => claim('made', `made in ${year}`, { span: yearSpan(year) });
    expect(told(dated(2003, null), czech, made(2005))).toEqual(['silent']);
    expect(told(dated(2003, null), czech, made(1985))).toEqual(['silent']);
  });
  const readBy = (maker: string | null): Dating => ({
    ...piece('b', 'code', 'reading', year(1995), 'soft'),
    says: { kind: 'code', from: 'claim', code: 'TH 9501', by: [{ maker, invented: false }] },
  });
  it('tells softly, and asks nobody, where a code stands against a claim or a mark by its shape alone', () => {
    const evidence = [piece('a', 'claimed', 'claim', year(1987)), readBy(null)];
    const finding = onlyFinding(evidenceAgrees, facts({ evidence, maker: null }));
    expect([finding.kind, finding.evidence, finding.asks]).toEqual(['gap', ['a', 'b'], []]);
    expect(finding.statement).toMatch(
      /^No maker file knows this code, and what its shape alone would give does not fit:/,
    );
    expect(finding.innocent).toMatch(/^This maker may write its codes in another way/);
    const marked = [piece('a', 'mark', 'mark', year(1960)), readBy(null)];
    expect(onlyFinding(evidenceAgrees, facts({ evidence: marked, maker: null })).kind).toBe('gap');
    expect(said(evidenceAgrees, facts({ evidence: marked }))).toEqual(['silent']);
  });
  it('doubts what a file that reads the code is against, also one of a maker that nobody named', () => {
    const evidence = [piece('a', 'claimed', 'claim', year(1987)), readBy('Ondrasse')];
    expect(onlyFinding(evidenceAgrees, facts({ evidence, maker: null })).kind).toBe('doubt');
  });
  it('doubts two codes that are shown, of which one may be a repair’s, and leaves a quoted one to its own check', () => {
    const evidence = [piece('d1', 'code:A', 'reading', year(1987)), piece('d2', 'code:B', 'reading', year(1995))];
    const shown = decoded('A', [], { id: 'd1', from: { kind: 'typed' } });
    const quoted = decoded('B', [], { id: 'd2', from: { kind: 'claim', claimId: 'c' } });
    expect(onlyFinding(evidenceAgrees, facts({ evidence, decodings: [shown, { ...shown, id: 'd2' }] })).kind).toBe(
      'doubt',
    );
    expect(said(evidenceAgrees, facts({ evidence, decodings: [shown, quoted] }))).toEqual(['silent']);
  });
  it('contradicts three hard facts that hold in pairs but not together', () => {
    // Spans with a gap: a or b, b or c, a or c.
    const both = (id: string, basis: string, kind: Dating['from']['kind'], one: number, two: number): Dating => ({
      ...piece(id, basis, kind, year(one)),
      spans: [year(one), year(two)],
    });
    const evidence = [
      both('a', 'a', 'claim', 1990, 1995),
      both('b', 'b', 'mark', 1995, 2000),
      both('c', 'c', 'reading', 1990, 2000),
    ];
    const finding = onlyFinding(evidenceAgrees, facts({ evidence }));
    expect(finding.kind).toBe('contradiction');
    expect(finding.evidence.sort()).toEqual(['a', 'b', 'c']);
  });
  it('only doubts two marks of which one is soft', () => {
    const evidence = [piece('a', 'a', 'mark', year(1960)), piece('b', 'b', 'mark', year(1995), 'soft')];
    expect(onlyFinding(evidenceAgrees, facts({ evidence })).kind).toBe('doubt');
  });
  it('is silent with a single fact', () => {
    expect(said(evidenceAgrees, facts({ evidence: [piece('a', 'a', 'claim', year(1990))] }))).toEqual(['silent']);
  });
});
