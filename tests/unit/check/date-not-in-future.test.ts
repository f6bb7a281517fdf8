import { describe, expect, it } from 'vitest';
import { dateNotInFuture } from '../../../src/check/date-not-in-future';
import { monthSpan } from '../../../src/span';
import { decoded, facts, kv0915, madeIn, reading, said } from './sample';

describe('date-not-in-future', () => {
  it('contradicts a code from after the day of the listing', () => {
    const late = decoded('KV0939', [reading('KV0939', monthSpan(2039, 1))]);
    expect(said(dateNotInFuture, facts({ decodings: [late] }))).toEqual([
      'contradiction: The stamp in photo 1 reads KV0939: January 2039, Belgium, after 15 January 2026.',
    ]);
  });
  it('only doubts a year that the listing gives', () => {
    expect(said(dateNotInFuture, facts({ claims: [madeIn(2031)] }))).toEqual([
      'doubt: The listing says “made in 2031”, after 15 January 2026.',
    ]);
  });
  it('is silent on the past and on a code with one past reading', () => {
    const either = decoded('KV0939', [
      reading('KV0939', monthSpan(2039, 1), { probability: 0.5 }),
      reading('KV0939', monthSpan(1939, 1), { probability: 0.4 }),
    ]);
    expect(said(dateNotInFuture, facts({ decodings: [either], claims: [madeIn(1990)] }))).toEqual(['silent']);
  });
  it('cannot tell from an unclear stamp', () => {
    expect(said(dateNotInFuture, facts({ decodings: [{ ...kv0915, accepted: false }] }))[0]).toMatch(/^cannot-tell/);
  });
});
