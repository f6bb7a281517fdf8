import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { codeAgainstClaimedDate } from '../../../src/check/code-against-claimed-date';
import type { Claim } from '../../../src/claim/types';
import { gatherEvidence, reason } from '../../../src/evidence';
import { monthSpan, type Span, yearSpan, yearsSpan } from '../../../src/span';
import { decadeSpan } from '../span/decade';
import { claim, decoded, facts, ondrasse, reading } from './sample';

const codeOf = (year: number, month = 1) => decoded('KV0915', [reading('KV0915', monthSpan(year, month))]);
const dated = (
  words: string,
  span: Span,
  field: 'title' | 'description',
  rest: { kind?: 'made' | 'bought'; confidence?: number } = {},
): Claim => {
  const plain = claim(rest.kind ?? 'made', words, { span });
  return { ...plain, at: { ...plain.at, field }, confidence: rest.confidence ?? 0.9 } as Claim;
};

/** What the reasoning says of the claim and the code alone, in the kinds of findings. */
function reasoned(said: Claim, code: ReturnType<typeof codeOf>): 'contradiction' | 'doubt' | 'none' {
  const evidence = gatherEvidence({ claims: [said], decodings: [code], marks: [], maker: ondrasse });
  const both = evidence.filter(({ from }) => from.kind === 'claim' || from.kind === 'reading');
  const conflict = reason(both).conflicts[0];
  return conflict ? (conflict.strength === 'hard' ? 'contradiction' : 'doubt') : 'none';
}

function found(said: Claim, code: ReturnType<typeof codeOf>): 'contradiction' | 'doubt' | 'none' {
  const outcome = codeAgainstClaimedDate.judge(facts({ claims: [said], decodings: [code] }));
  const kind = outcome.outcome === 'speaks' ? outcome.findings[0]?.kind : undefined;
  return kind === 'contradiction' || kind === 'doubt' ? kind : 'none';
}

const nineties = decadeSpan(1990);
const about1994: Span = { ...yearSpan(1994), about: true };

describe('a loose date and a code of 2001', () => {
  it.each([
    ['the 1990s in a title', dated('1990s bag', nineties, 'title'), 'doubt'],
    ['the 1990s in a description', dated('from the 1990s', nineties, 'description'), 'doubt'],
    ['about 1994 in a title', dated('circa 1994', about1994, 'title'), 'doubt'],
    ['about 1994 in a description', dated('about 1994', about1994, 'description'), 'doubt'],
  ] as const)('%s: the reasoning and the finding say the same', (_case, said, kind) => {
    expect([reasoned(said, codeOf(2001, 2)), found(said, codeOf(2001, 2))]).toEqual([kind, kind]);
  });

  it('is ruled out only by a decade in the title, more than a year and a half away', () => {
    const kinds = (said: Claim, year: number) => [reasoned(said, codeOf(year)), found(said, codeOf(year))];
    expect(kinds(dated('1990s bag', nineties, 'title'), 2003)).toEqual(['contradiction', 'contradiction']);
    expect(kinds(dated('from the 1990s', nineties, 'description'), 2003)).toEqual(['doubt', 'doubt']);
    expect(kinds(dated('circa 1994', about1994, 'title'), 2005)).toEqual(['doubt', 'doubt']);
    expect(kinds(dated('from the 1990s', nineties, 'description'), 2000)).toEqual(['none', 'none']);
    expect(kinds(dated('circa 1994', about1994, 'title'), 1999)).toEqual(['none', 'none']);
  });
});

describe('a year and the code of the year before', () => {
  it('is a doubt, for many sellers give the year of the first sale; the year after is ruled out', () => {
    const said = dated('made in 1996', yearSpan(1996), 'title');
    const kinds = (year: number) => [reasoned(said, codeOf(year)), found(said, codeOf(year))];
    expect(kinds(1994)).toEqual(['contradiction', 'contradiction']);
    expect(kinds(1995)).toEqual(['doubt', 'doubt']);
    expect(kinds(1997)).toEqual(['contradiction', 'contradiction']);
  });
});

const seed = Date.now() % 1_000_000;
console.log(`seed ${seed}`);

it('never says otherwise of a date and a code than the reasoning', () => {
  const year = fc.integer({ min: 1980, max: 2010 });
  const span = fc.oneof(
    year.map(yearSpan),
    year.map((one): Span => ({ ...yearSpan(one), about: true })),
    year.map((one) => decadeSpan(one - (one % 10))),
    fc.tuple(year, fc.integer({ min: 1, max: 9 })).map(([from, more]) => yearsSpan(from, from + more)),
    year.map((one) => yearsSpan(null, one)),
    year.map((one) => yearsSpan(one, null)),
    fc.tuple(year, fc.integer({ min: 1, max: 12 })).map(([one, month]) => monthSpan(one, month)),
  );
  const said = fc
    .tuple(
      span,
      fc.constantFrom('title' as const, 'description' as const),
      fc.constantFrom('made' as const, 'bought' as const),
      fc.constantFrom(0.9, 0.4),
    )
    .map(([one, field, kind, confidence]) => dated('a date', one, field, { kind, confidence }));
  fc.assert(
    fc.property(said, fc.integer({ min: 1990, max: 2006 }), fc.integer({ min: 1, max: 12 }), (one, of, month) => {
      expect(found(one, codeOf(of, month))).toBe(reasoned(one, codeOf(of, month)));
    }),
    { seed, numRuns: 2000 },
  );
});
