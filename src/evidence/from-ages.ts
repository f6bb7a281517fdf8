import type { Claim } from '../claim/types';
import type { Decoding } from '../code/types';
import type { MakerFile } from '../maker/types';
import { commonPractice, strengthOf } from '../source';
import { daySpan, periodSpan, type Span, yearsSpan } from '../span';
import { exceptedSpans } from './exceptions';
import { fileSource } from './file-source';
import { claimSaid, claimSource } from './from-claims';
import { evidenceId } from './ids';
import { makerDates, roomYears } from './room';
import type { EvidenceAbout } from './types';

type Age = EvidenceAbout<'age'>;
const plain: Pick<Age, 'about' | 'places' | 'strength' | 'source'> = {
  about: 'age',
  places: [],
  strength: 'soft',
  source: commonPractice,
};

/**
 * What the day of the look says of a date: nothing is of tomorrow, what is called vintage or antique is of so many
 * years ago, and what is still pale or bright is not. A day of purchase is here as that day itself.
 */
export function fromAges(claims: readonly Claim[], now: string): Age[] {
  const today = now.slice(0, 10);
  const year = Number(now.slice(0, 4));
  const clock: Age = {
    ...plain,
    id: evidenceId.today,
    from: { kind: 'clock', id: today },
    basis: 'today',
    spans: [{ ...daySpan(today), from: null, precision: 'range' }],
    strength: 'hard',
    says: { kind: 'today', day: today },
  };
  const said = (claim: Claim, basis: string, spans: Span[], says: Age['says']): Age => ({
    ...plain,
    id: evidenceId.age(claim.id),
    from: { kind: 'claim', id: claim.id },
    basis,
    spans,
    says,
    source: claimSource(claim),
  });
  const excused = isFreshForAReason(claims);
  return [
    clock,
    ...claims.flatMap((claim) => {
      const by = claimSaid(claim);
      if (claim.kind === 'bought')
        return [said(claim, `purchase-day:${claim.id}`, [claim.span], { kind: 'purchase-day', ...by })];
      if (claim.kind === 'age-word' && claim.polarity === 'is') {
        const spans = [yearsSpan(null, year - roomYears[claim.word])];
        return [said(claim, `age-word:${claim.word}`, spans, { kind: 'age-word', ...by, word: claim.word })];
      }
      if (claim.kind === 'fresh-part' && claim.polarity === 'is' && !excused)
        return [said(claim, 'fresh', [yearsSpan(year - roomYears.darkened + 1, null)], { kind: 'fresh', ...by })];
      return [];
    }),
  ];
}

/** Why something old may be fresh, as the seller tells it. */
const isFreshForAReason = (claims: readonly Claim[]): boolean =>
  claims.some(
    (claim) =>
      claim.kind === 'replaced' ||
      (claim.kind === 'stored' && claim.polarity === 'is') ||
      (claim.kind === 'condition' && (claim.condition === 'new' || claim.condition === 'unused')),
  );

/** When the maker stamped, by its file; and of each code that it had begun to, as surely as the code is seen. */
export function fromStamping(decodings: readonly Decoding[], maker: MakerFile | null): Age[] {
  const period = maker?.stamped ? periodSpan([maker.stamped.from, maker.stamped.to]) : null;
  if (!maker?.stamped || !period) return [];
  const source = fileSource(maker, maker.stamped.sources ?? []);
  const strength = strengthOf(maker.stamped, 'hard');
  const excepted = exceptedSpans(maker.stamped, null);
  const begun: Span[] = [{ ...period, to: null }, ...excepted];
  const ofFile = { ...plain, from: { kind: 'maker-file', id: maker.maker }, basis: 'stamping', source } as const;
  const says = { kind: 'stamping', maker: maker.maker } as const;
  return [
    { ...ofFile, id: evidenceId.stamping, ...makerDates([period, ...excepted], 'soft'), says },
    { ...ofFile, id: evidenceId.stampingBegun, ...makerDates(begun, 'soft'), says },
    ...decodings
      .filter(({ accepted }) => accepted)
      .map(
        (decoding): Age => ({
          ...plain,
          id: evidenceId.stamped(decoding.id),
          from: { kind: 'code', id: decoding.id },
          basis: `stamped:${decoding.id}`,
          ...makerDates(begun, decoding.from.kind === 'claim' ? 'soft' : strength),
          says: { kind: 'stamped', code: decoding.readings[0]?.text ?? decoding.code, maker: maker.maker },
          source,
        }),
      ),
  ];
}

/** Whole years from the latest day that the dates allow to the year of the look; what may be of any day is of none. */
export function ageYears(spans: readonly Span[], now: string): number {
  const year = Number(now.slice(0, 4));
  return year - Math.max(...spans.map(({ to }) => (to ? Number(to.slice(0, 4)) : year)));
}
