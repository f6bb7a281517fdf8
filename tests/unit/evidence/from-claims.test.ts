import { describe, expect, it } from 'vitest';
import type { Claim } from '../../../src/claim/types';
import { fromClaims } from '../../../src/evidence/from-claims';
import { type Span, sinceSpan, yearSpan, yearsSpan } from '../../../src/span';
import { claim } from '../check/sample';

describe('what the seller states', () => {
  const at = { field: 'description', words: 'x' } as const;
  const inWords = { kind: 'listing', field: 'description' } as const;
  const span = (from: string | null, to: string | null): Span => ({ from, to, precision: 'range' });

  it('of a date is told whole, of making and of purchase', () => {
    const claims = [
      claim('made', 'x', { span: { ...yearSpan(1994), about: true } }, 'm'),
      claim('bought', 'x', { span: yearSpan(1996) }, 'b'),
    ];
    const said = { about: 'date', places: [], source: inWords } as const;
    expect(fromClaims(claims)).toEqual([
      {
        ...said,
        id: 'claim-m',
        from: { kind: 'claim', id: 'm' },
        basis: 'claimed-date:1994-01-01..1994-12-31~',
        spans: [{ ...yearSpan(1994), about: true }],
        reach: [{ from: '1988-12-28', to: '2000-01-04', precision: 'range' }],
        strength: 'soft',
        says: { kind: 'made', ...at },
      },
      {
        ...said,
        id: 'claim-b',
        from: { kind: 'claim', id: 'b' },
        basis: 'claimed-purchase:1996-01-01..1996-12-31',
        spans: [span(null, '1996-12-31')],
        strength: 'hard',
        says: { kind: 'bought', ...at },
      },
    ]);
  });

  it('of a purchase that may be of any later day bounds nothing, and of a making that is open at an end does', () => {
    expect(fromClaims([claim('bought', 'x', { span: sinceSpan('1990-01-01') }, 'b')])).toEqual([]);
    expect(fromClaims([claim('bought', 'x', { span: yearsSpan(null, 1990) }, 'b')]).map(({ basis }) => basis)).toEqual([
      'claimed-purchase:..1990-12-31',
    ]);
    expect(fromClaims([claim('made', 'x', { span: sinceSpan('1990-01-01') }, 'm')]).map(({ basis }) => basis)).toEqual([
      'claimed-date:1990-01-01..',
    ]);
  });

  it('of an origin is told whole, with the days of a country that began or ended', () => {
    const origin = (place: string) => fromClaims([claim('origin', 'x', { place }, 'o')]);
    const placed = (place: string) => ({
      id: 'claim-o',
      about: 'place',
      from: { kind: 'claim', id: 'o' },
      basis: `claimed-origin:${place}`,
      spans: [],
      places: [place],
      strength: 'hard',
      says: { kind: 'origin', ...at },
      source: inWords,
    });
    const existed = (place: string) => ({
      ...{ ...placed(place), id: 'claim-o-country', about: 'date', places: [], strength: 'soft' },
      says: { kind: 'country', ...at, place },
    });
    expect(origin('FR')).toEqual([placed('FR')]);
    expect(origin('DDDE')).toEqual([
      placed('DDDE'),
      {
        ...existed('DDDE'),
        spans: [span('1949-10-07', '1990-10-03')],
        hardReach: [span('1946-10-05', '1993-10-05')],
        source: {
          kind: 'published',
          text: 'Constitution of 7 October 1949; Unification Treaty, in force 3 October 1990',
        },
      },
    ]);
    // A country of today is never hard: its name is given to older pieces too.
    expect(origin('CZ')).toEqual([
      placed('CZ'),
      {
        ...existed('CZ'),
        spans: [sinceSpan('1993-01-01')],
        source: { kind: 'published', text: 'Constitutional Act 542/1992 on the dissolution of Czechoslovakia' },
      },
    ]);
  });

  it('of a country whose days are from memory, or hardly read, is never hard', () => {
    const days = (place: string, confidence = 0.9) =>
      fromClaims([{ ...claim('origin', 'x', { place }, 'o'), confidence } as Claim]).map(
        ({ strength, hardReach, source }) => [strength, hardReach !== undefined, source.kind].join(' '),
      );
    expect(days('YUCS')).toEqual(['hard false listing', 'soft false memory']);
    expect([0.49, 0.5].map((confidence) => days('DDDE', confidence))).toEqual([
      ['soft false listing', 'soft false published'],
      ['hard false listing', 'soft true published'],
    ]);
  });

  it('is from the field that it stands in, or from the buyer’s own note', () => {
    const source = (field: Claim['at']['field']) =>
      fromClaims([{ ...claim('origin', 'x', { place: 'FR' }, 'o'), at: { field, start: 0, end: 1 } } as Claim])[0];
    expect(source('reply')).toMatchObject({ source: { kind: 'listing', field: 'reply' }, says: { field: 'reply' } });
    expect(source('user')).toMatchObject({ source: { kind: 'user', as: 'note' }, says: { field: 'user' } });
  });
});
