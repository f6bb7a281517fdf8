import { describe, expect, it } from 'vitest';
import { codeAgainstClaimedDate } from '../../../src/check/code-against-claimed-date';
import { monthSpan, yearSpan } from '../../../src/span';
import { claim, decoded, facts, kv0915, made, madeIn, onlyFinding, reading, said } from './sample';

describe('code-against-claimed-date', () => {
  it('contradicts a year that the code rules out', () => {
    expect(said(codeAgainstClaimedDate, facts({ decodings: [kv0915], claims: [madeIn(1987)] }))).toEqual([
      'contradiction: The stamp in photo 1 reads KV0915: January 1995, Belgium. The listing says “made in 1987”.',
    ]);
  });
  it('agrees inside a claimed decade', () => {
    const nineties = made('from the 1990s', '1990', '1999', { precision: 'decade' });
    expect(said(codeAgainstClaimedDate, facts({ decodings: [kv0915], claims: [nineties] }))).toEqual([
      "agreement: The stamp in photo 1 reads KV0915: January 1995, Belgium, inside the listing's “from the 1990s”.",
    ]);
  });
  it('contradicts an unhedged decade in the title that is years away, and doubts one in the description', () => {
    const told = made('1970s bag', '1970', '1979', { precision: 'decade' });
    const titled = { ...told, at: { ...told.at, field: 'title' as const } };
    const kindOf = (claim: typeof told) =>
      onlyFinding(codeAgainstClaimedDate, facts({ decodings: [kv0915], claims: [claim] })).kind;
    expect([kindOf(titled), kindOf(told)]).toEqual(['contradiction', 'doubt']);
  });
  it('doubts only, when the piece may have been sold the year after it was made', () => {
    expect(onlyFinding(codeAgainstClaimedDate, facts({ decodings: [kv0915], claims: [madeIn(1996)] })).kind).toBe(
      'doubt',
    );
  });
  it('contradicts a year just before the code, for no piece is older than its stamp', () => {
    expect(onlyFinding(codeAgainstClaimedDate, facts({ decodings: [kv0915], claims: [madeIn(1994)] })).kind).toBe(
      'contradiction',
    );
  });
  it('lets a hedged year be some years off and doubts it when far off', () => {
    const about = (year: string) => made(`c. ${year}`, year, year, { precision: 'year', about: true });
    expect(said(codeAgainstClaimedDate, facts({ decodings: [kv0915], claims: [about('1992')] }))).toEqual(['silent']);
    expect(onlyFinding(codeAgainstClaimedDate, facts({ decodings: [kv0915], claims: [about('1975')] })).kind).toBe(
      'doubt',
    );
  });
  it('only doubts when the listing merely quotes the code', () => {
    const quoted = { ...kv0915, from: { kind: 'claim' as const, claimId: 'c' } };
    expect(onlyFinding(codeAgainstClaimedDate, facts({ decodings: [quoted], claims: [madeIn(1987)] })).kind).toBe(
      'doubt',
    );
  });
  it('does not contradict while one likely reading fits', () => {
    const two = decoded('0915', [
      reading('0915', monthSpan(1995, 1), { probability: 0.5 }),
      reading('0915', monthSpan(1987, 3), { probability: 0.4 }),
    ]);
    expect(said(codeAgainstClaimedDate, facts({ decodings: [two], claims: [madeIn(1987)] }))).toEqual(['silent']);
  });
  it('takes no date from a code whose system was not in use at that date', () => {
    const late = { systemUsed: { from: '2007-01-01', to: null, precision: 'range' } } as const;
    const weeks = decoded('KV1953', [reading('KV1953', monthSpan(1993, 4), late)]);
    expect(said(codeAgainstClaimedDate, facts({ decodings: [weeks], claims: [madeIn(1993)] }))).toEqual([
      'cannot-tell: no code gives a date under the systems of the maker',
    ]);
  });
  it('contradicts a purchase before the making and is silent on a later one', () => {
    const bought = (year: number) => claim('bought', `bought in ${year}`, { span: yearSpan(year) });
    expect(said(codeAgainstClaimedDate, facts({ decodings: [kv0915], claims: [bought(1990)] }))).toEqual([
      'contradiction: The stamp in photo 1 reads KV0915: January 1995, Belgium. The listing says “bought in 1990”.',
    ]);
    expect(said(codeAgainstClaimedDate, facts({ decodings: [kv0915], claims: [bought(2001)] }))).toEqual(['silent']);
  });
  it('never contradicts from an unclear stamp', () => {
    const unclear = { ...kv0915, accepted: false };
    expect(said(codeAgainstClaimedDate, facts({ decodings: [unclear], claims: [madeIn(1987)] }))).toEqual([
      'cannot-tell: the stamp in photo 1 could not be read with enough certainty',
    ]);
  });
  it('does not apply without a claimed date', () => {
    expect(said(codeAgainstClaimedDate, facts({ decodings: [kv0915] }))).toEqual([
      'not-applicable: the listing claims no date',
    ]);
  });
  it('only doubts a second date when the listing also gives the date of the code', () => {
    const second = { ...madeIn(1987), id: 'second' };
    expect(said(codeAgainstClaimedDate, facts({ decodings: [kv0915], claims: [madeIn(1995), second] }))).toEqual([
      "agreement: The stamp in photo 1 reads KV0915: January 1995, Belgium, inside the listing's “made in 1995”.",
      'doubt: The stamp in photo 1 reads KV0915: January 1995, Belgium. The listing says “made in 1987”.',
    ]);
  });
  it('only doubts a date that was not read surely from the text', () => {
    const unsure = { ...madeIn(1987), confidence: 0.4 };
    expect(onlyFinding(codeAgainstClaimedDate, facts({ decodings: [kv0915], claims: [unsure] })).kind).toBe('doubt');
  });
  it('says that a wide reading allows the year, not that it lies inside it', () => {
    const serial = decoded('B1042173', [
      reading('B1042173', { from: '2002-01-01', to: '2004-12-31', precision: 'range' }, { places: [] }),
    ]);
    expect(said(codeAgainstClaimedDate, facts({ decodings: [serial], claims: [madeIn(2003)] }))).toEqual([
      "agreement: The stamp in photo 1 reads B1042173: 2002 to 2004, which allows the listing's “made in 2003”.",
    ]);
  });
  it('rests on the system in words, not by its id', () => {
    const finding = onlyFinding(codeAgainstClaimedDate, facts({ decodings: [kv0915], claims: [madeIn(1987)] }));
    expect(finding.basis[0]).toBe('the code system “interleaved month”: January 1995');
  });
});
