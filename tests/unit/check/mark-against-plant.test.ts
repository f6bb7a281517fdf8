import { describe, expect, it } from 'vitest';
import { markAgainstPlant } from '../../../src/check/mark-against-plant';
import { facts, kv0915, onlyFinding, said } from './sample';
import { markRead } from './sample-marks';

describe('mark-against-plant', () => {
  const label = (place: string) => markRead({ words: 'MADE HERE', spans: [], places: [place] });
  it('doubts a label of another country than the plant', () => {
    expect(said(markAgainstPlant, facts({ marks: [label('IT')], decodings: [kv0915] }))).toEqual([
      'doubt: The stamp in photo 1 reads KV0915: Belgium, but photo 1 shows “MADE HERE”: Italy.',
    ]);
  });
  it('agrees with the same country', () => {
    expect(onlyFinding(markAgainstPlant, facts({ marks: [label('BE')], decodings: [kv0915] })).kind).toBe('agreement');
  });
  it('cannot tell from an unclear stamp', () => {
    expect(
      said(markAgainstPlant, facts({ marks: [label('IT')], decodings: [{ ...kv0915, accepted: false }] }))[0],
    ).toMatch(/^cannot-tell/);
  });
});
