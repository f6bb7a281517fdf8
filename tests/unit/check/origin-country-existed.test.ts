import { describe, expect, it } from 'vitest';
import { originCountryExisted } from '../../../src/check/origin-country-existed';
import { claim, facts, madeIn, onlyFinding, said } from './sample';

describe('origin-country-existed', () => {
  const origin = (words: string, place: string) => claim('origin', words, { place });
  it('speaks against a country that had long ended at an exact date', () => {
    const finding = onlyFinding(
      originCountryExisted,
      facts({ claims: [origin('Made in East Germany', 'DDDE'), madeIn(1999)] }),
    );
    expect(finding.statement).toMatch(
      /^The listing says “Made in East Germany”, but East Germany existed .*1990.*“made in 1999”\.$/,
    );
    expect(['contradiction', 'doubt']).toContain(finding.kind);
    expect(finding.kind === 'contradiction').toBe(finding.source.kind === 'published');
  });
  it('only doubts within three years, for labels outlive countries', () => {
    expect(
      onlyFinding(originCountryExisted, facts({ claims: [origin('Made in East Germany', 'DDDE'), madeIn(1992)] })).kind,
    ).toBe('doubt');
  });
  it('agrees with a former country of the time and is silent on a country of today', () => {
    expect(
      onlyFinding(originCountryExisted, facts({ claims: [origin('Made in East Germany', 'DDDE'), madeIn(1985)] })).kind,
    ).toBe('agreement');
    expect(said(originCountryExisted, facts({ claims: [origin('Made in Belgium', 'BE'), madeIn(1985)] }))).toEqual([
      'silent',
    ]);
  });
  it('cannot tell without a date', () => {
    expect(said(originCountryExisted, facts({ claims: [origin('Made in East Germany', 'DDDE')] }))).toEqual([
      'cannot-tell: neither a code nor the listing gives a date',
    ]);
  });
});
