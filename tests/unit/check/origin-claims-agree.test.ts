import { describe, expect, it } from 'vitest';
import { originClaimsAgree } from '../../../src/check/origin-claims-agree';
import { claim, facts, said } from './sample';

describe('origin-claims-agree', () => {
  const origin = (words: string, place: string) => ({ ...claim('origin', words, { place }), id: words });
  it('doubts two countries', () => {
    expect(
      said(originClaimsAgree, facts({ claims: [origin('made in Belgium', 'BE'), origin('made in Italy', 'IT')] })),
    ).toEqual(['doubt: The listing says “made in Belgium” (Belgium) and also “made in Italy” (Italy).']);
  });
  it('takes a former country for its heir', () => {
    expect(
      said(
        originClaimsAgree,
        facts({ claims: [origin('made in Czechoslovakia', 'CSHH'), origin('Slovak make', 'SK')] }),
      ),
    ).toEqual(['silent']);
  });
  it('does not apply to one country', () => {
    expect(said(originClaimsAgree, facts({ claims: [origin('made in Italy', 'IT')] }))[0]).toMatch(/^not-applicable/);
  });
});
