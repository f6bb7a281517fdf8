import { describe, expect, it } from 'vitest';
import type { Decoding, Reading } from '../../../src/code/types';
import { fromDecodings, likelyReadings } from '../../../src/evidence/from-decodings';
import { monthSpan, type Span, yearsSpan } from '../../../src/span';
import { decoding, inFile, reading } from './samples';

const ever: Span = { from: null, to: null, precision: 'range' };
const own = { maker: 'Ondrasse', id: 'interleaved-month' };
const piecesOf = (readings: Reading[], over: Partial<Decoding> = {}, maker: string | null = 'Ondrasse') =>
  fromDecodings([decoding('d1', { readings, ...over })], maker);
const kindsOf = (...readings: Reading[]) => piecesOf(readings).map(({ from, about }) => [from.kind, about]);

describe('what codes say', () => {
  it('is a date, a place or both, as the readings name them', () => {
    const plain = { plant: null, systemUsed: ever };
    expect(kindsOf(reading(plain))).toEqual([['reading', 'date-and-place']]);
    expect(kindsOf(reading({ ...plain, places: [] }))).toEqual([['reading', 'date']]);
    expect(kindsOf(reading({ ...plain, span: null }))).toEqual([['reading', 'place']]);
    expect(kindsOf(reading({ ...plain, span: null, places: [] }))).toEqual([]);
  });

  it('is nothing of a system or a plant whose period is open at both ends, something of one that is open at one', () => {
    const plant = (used: Span[]) => ({ code: 'KV', place: 'BE', used });
    const since: Span = { ...ever, from: '1990-01-01' };
    const until: Span = { ...ever, to: '2006-12-31' };
    const of = (systemUsed: Span, used: Span[]) =>
      piecesOf([reading({ systemUsed, plant: plant(used) })]).map((piece) => [piece.from.kind, piece.spans]);
    const [read] = of(ever, [ever]);
    expect(of(ever, [ever])).toEqual([read]);
    expect(of(since, [ever])).toEqual([read, ['system', [since]]]);
    expect(of(until, [ever])).toEqual([read, ['system', [until]]]);
    expect(of(ever, [since])).toEqual([read, ['plant', [since]]]);
    expect(of(ever, [until])).toEqual([read, ['plant', [until]]]);
    expect(of(ever, [])).toEqual([read]);
  });

  it('is, by a shape alone, any date that its shapes give to what was written', () => {
    const byShape = { maker: null, id: 'year-month' };
    const shape = (year: number, probability: number, text = '1711') =>
      reading({
        system: byShape,
        systemUsed: ever,
        plant: null,
        places: [],
        text,
        span: yearsSpan(year, year),
        probability,
      });
    const dates = (readings: Reading[], code = '1711', from: Decoding['from']['kind'] = 'claim') =>
      piecesOf(readings, { code, from: { ...decoding('d1', {}).from, kind: from } as Decoding['from'] }, null).flatMap(
        ({ spans }) => spans.map((span) => span.from?.slice(0, 4)),
      );
    // A less usual shape gives a date as well; one that hardly anybody uses does not.
    expect(dates([shape(2017, 0.9), shape(2011, 0.08)])).toEqual(['2011', '2017']);
    expect(dates([shape(2017, 0.97), shape(2011, 0.02)])).toEqual(['2011', '2017']);
    expect(dates([shape(2017, 0.98), shape(2011, 0.019)])).toEqual(['2017']);
    // A writer's letter is no other one.
    expect(dates([shape(2017, 0.9, '17I1')])).toEqual([]);
    expect(dates([shape(2017, 0.9, '17I1')], '1711', 'photo')).toEqual(['2017']);
    // Three digits are too few.
    expect(dates([shape(2012, 0.9, '127')], '1 2 7')).toEqual([]);
    expect(dates([shape(2012, 0.9, '1 27-0')], '1 27-0')).toEqual(['2012']);
  });

  it('leaves open what one of its readings leaves open, and joins the periods of all', () => {
    const later = reading({ systemUsed: yearsSpan(2010, 2012), plant: null, span: null });
    const [read, system, ...rest] = piecesOf([reading(), later]);
    expect([read?.about, system?.spans, rest]).toEqual(['place', [yearsSpan(1990, 2006), yearsSpan(2010, 2012)], []]);
  });

  it('counts a code once however it is written', () => {
    const of = (text: string) => piecesOf([reading({ text })])[0]?.basis;
    expect(['KV0915', 'kv 09-15', 'Kv 0 9 1 5'].map(of)).toEqual(['code:KV0915', 'code:KV0915', 'code:KV0915']);
  });

  it('takes the stated maker’s own systems before all others, and of them the likely', () => {
    const foreign = reading({ system: { maker: 'Tessaro Vell', id: 'x' }, probability: 0.9, span: monthSpan(2001, 1) });
    const mine = reading({ system: own, probability: 0.05 });
    const strengths = (readings: Reading[], over: Partial<Decoding> = {}, maker: string | null = 'Ondrasse') =>
      piecesOf(readings, over, maker).map(({ strength, spans }) => [strength, spans[0]?.from])[0];
    expect(strengths([foreign, mine])).toEqual(['hard', '1995-01-01']);
    expect(strengths([foreign])).toEqual(['soft', '2001-01-01']);
    expect(strengths([mine], {}, null)).toEqual(['soft', '1995-01-01']);
    expect(strengths([mine], { from: { kind: 'typed' } })).toEqual(['hard', '1995-01-01']);
    expect(strengths([mine], { from: { kind: 'claim', claimId: 'c' } })).toEqual(['soft', '1995-01-01']);
  });

  it('comes from a photo, from what the user typed, or from the listing', () => {
    const source = (from: Decoding['from']) => piecesOf([reading()], { from })[0]?.source;
    expect(source({ kind: 'photo', photoId: 'p1', lineId: 'l' })).toEqual({ kind: 'photo' });
    expect(source({ kind: 'typed' })).toEqual({ kind: 'user', as: 'code' });
    expect(source({ kind: 'claim', claimId: 'c' })).toEqual({ kind: 'listing', field: 'code' });
  });

  it('says by what it was read: the shape of a code first, then the files of others, each once', () => {
    const by = (readings: Reading[], maker: string | null) => {
      const says = piecesOf(readings, {}, maker)[0]?.says;
      return says?.kind === 'code' ? says.by : null;
    };
    const shape = reading({ system: { maker: null, id: 'family' } });
    const vell = reading({ system: { maker: 'Tessaro Vell', id: 'x', invented: true } });
    expect(by([reading()], 'Ondrasse')).toEqual([]);
    expect(by([vell, shape, vell], 'Calderwick & Rook')).toEqual([
      { maker: null, invented: false },
      { maker: 'Tessaro Vell', invented: true },
    ]);
  });

  it('names the file and each source that it gives; a shape without a file has no period of use', () => {
    const sourced = (source: string | undefined, text = 'KV0915') =>
      reading({ text, system: { ...own, ...(source ? { source } : {}) } });
    const of = (...readings: Reading[]) => piecesOf(readings).find(({ from }) => from.kind === 'system')?.source;
    expect(of(sourced('ledger'), sourced('ledger'), sourced('catalogue'))).toEqual({
      ...inFile,
      sources: ['ledger', 'catalogue'],
    });
    expect(of(sourced(undefined))).toEqual({ ...inFile, sources: [] });
    expect(of(reading({ system: { maker: null, id: 'family' } }))).toBeUndefined();
  });
});

describe('likely readings', () => {
  const kept = (...all: number[]) =>
    likelyReadings(all.map((probability) => ({ probability }))).map((one) => one.probability);
  it('are those from a tenth of the best on, in their order', () => {
    expect(kept(0.05, 0.5, 0.049, 0.2)).toEqual([0.05, 0.5, 0.2]);
    expect(kept(0.9)).toEqual([0.9]);
    expect(kept()).toEqual([]);
  });
});
