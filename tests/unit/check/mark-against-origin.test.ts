import { describe, expect, it } from 'vitest';
import { markAgainstOrigin } from '../../../src/check/mark-against-origin';
import { claim, facts, said } from './sample';
import { markRead } from './sample-marks';

describe('mark-against-origin', () => {
  const label = (place: string, rest = {}) => markRead({ words: 'FABRICA IN X', spans: [], places: [place], ...rest });
  const italy = claim('origin', 'made in Italy', { place: 'IT' });
  it('doubts a label that names another country', () => {
    expect(said(markAgainstOrigin, facts({ marks: [label('BE')], claims: [italy] }))).toEqual([
      'doubt: Photo 1 shows “FABRICA IN X”: Belgium. The listing says “made in Italy”.',
    ]);
  });
  it('agrees with the same country', () => {
    expect(said(markAgainstOrigin, facts({ marks: [label('IT')], claims: [italy] }))).toEqual([
      'agreement: Photo 1 shows “FABRICA IN X”: Italy, as the listing says: “made in Italy”.',
    ]);
  });
  it('does not compare the text with itself', () => {
    const inText = label('BE', { foundIn: 'listing', photoId: null });
    expect(said(markAgainstOrigin, facts({ marks: [inText], claims: [italy] }))).toEqual([
      'not-applicable: no photo shows a mark that names a place',
    ]);
  });
});
