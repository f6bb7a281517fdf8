import { describe, expect, it } from 'vitest';
import { buildCase, findingsOf } from '../../src/case';
import { checks } from '../../src/check';
import { inEnglish } from '../said';
import { inputOf, truthFiles, truthRows } from './cases/truth-case';

const findings = truthFiles.flatMap(truthRows).flatMap((row) => findingsOf(buildCase(inputOf(row))).map(inEnglish));

describe('every finding of the truth table', () => {
  it('is there to be looked at, of every check', () => {
    const spoke = new Set(findings.map(({ check }) => check));
    expect(checks.filter(({ id }) => !spoke.has(id)).map(({ id }) => id)).toEqual([]);
  });

  it('quotes no term of the page’s data as words of the seller', () => {
    const terms = truthFiles.flatMap(truthRows).flatMap((row) => {
      const input = inputOf(row);
      const { condition, returns } = input.listing;
      const data = { origin: 'json-ld' as const, where: 'script', confidence: 0.9 };
      const asNew = { value: 'new' as const, words: 'https://schema.org/NewCondition', ...data };
      const asUsed = { value: 'used' as const, words: 'http://schema.org/UsedCondition', ...data };
      const refused = { accepted: false, days: null, words: 'MerchantReturnNotPermitted' };
      const listings = [
        { ...input.listing, condition: [asNew, ...condition], returns: [{ value: refused, ...data }, ...returns] },
        { ...input.listing, condition: [asUsed, ...condition] },
      ];
      return listings.flatMap((listing) => findingsOf(buildCase({ ...input, listing })).map(inEnglish));
    });
    expect(terms.length).toBeGreaterThan(findings.length);
    const quoted = terms.filter((finding) => /schema\.org|\wCondition|MerchantReturn/.test(JSON.stringify(finding)));
    expect(quoted.map(({ check, statement }) => `${check}: ${statement}`)).toEqual([]);
  }, 120_000);

  it('rests on something, and says so', () => {
    const empty = findings.filter(({ basis }) => basis.length === 0 || basis.some((line) => line.trim().length < 5));
    expect(empty.map(({ check, statement }) => `${check}: ${statement}`)).toEqual([]);
  });
});
