import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { Facts } from '../../../src/check';
import {
  ageYears,
  compareWeights,
  type Dating,
  type Evidence,
  finestSides,
  fitsClaims,
  inUseAt,
  isDating,
  isInOwnTime,
  layOutAxis,
  likelyReadings,
  mistakenUnit,
  pairsOf,
  reason,
  stretchOf,
  type Weight,
  weighFinding,
} from '../../../src/evidence';
import { type Span, yearsSpan } from '../../../src/span';
import { digestOf } from '../../digest';
import { given } from '../check/reasoning-cases';
import { piece } from './samples';

/*
 * What is made of many made-up cases: some whole, the others as a digest of each part of it. Where it changes on
 * purpose, `npm test -- unit/evidence/kept --update` writes it anew; what changed is looked at in the whole ones.
 */

const seed = 14;
const wholeOnes = 8;

const spanSaid = ({ from, to, precision, about }: Span) =>
  `${from ?? '…'}/${to ?? '…'} ${precision}${about ? '~' : ''}`;
const spansSaid = (spans: readonly Span[]) => spans.map(spanSaid).join(', ');

function pieceSaid({ spans, places, ...rest }: Evidence): string {
  const { reach, hardReach, ...more } = rest as Partial<Dating>;
  const room = `${reach ? ` reach ${spansSaid(reach)}` : ''}${hardReach ? ` hard ${spansSaid(hardReach)}` : ''}`;
  return `${spansSaid(spans)} ${places.join(' ')}${room} ${JSON.stringify(more)}`;
}

const weightSaid = ({ standing, order, derivation: { statements, facts, soft, backing, source } }: Weight) =>
  `${standing} ${order.join(' ')}, ${statements} of ${facts} facts, ${soft?.id ?? 'none'} soft, ${backing.facts} against ${backing.against?.id ?? 'none'} ${spansSaid(backing.against?.spans ?? [])} by ${source}`;

/** All that the reasoning makes of a set of evidence. */
function reasoned(evidence: readonly Evidence[]): Record<string, string[]> {
  const { agreeing, agreements, conflicts, explanations, agrees, conflictsComplete } = reason(evidence);
  const weighed = [...conflicts.map(({ evidence: ids }) => ids), ...agreeing.map(({ evidence: ids }) => ids)].flatMap(
    (ids) =>
      (['contradiction', 'doubt', 'agreement'] as const).map((kind) =>
        weighFinding({ kind, evidence: ids, claims: ['c0', 'c1'], source: { kind: 'practice', text: '' } }, evidence),
      ),
  );
  const lines = (values: readonly unknown[]) => values.map((value) => JSON.stringify(value));
  return {
    evidence: evidence.map(pieceSaid),
    pairs: lines(pairsOf(evidence)),
    agreeing: [`${agrees} ${conflictsComplete}`, ...lines(agreeing)],
    agreements: lines(agreements),
    conflicts: lines(conflicts),
    explanations: lines(explanations),
    stretch: lines([stretchOf(evidence.filter(isDating))]),
    axis: lines([layOutAxis(evidence, reason(evidence))]),
    weights: [...weighed.map(weightSaid), weighed.map((one) => Math.sign(compareWeights(one, weighed[0]!))).join(' ')],
  };
}

const beside = ({ evidence, claims, decodings, now }: Facts): Record<string, string[]> => ({
  unit: [JSON.stringify(mistakenUnit(evidence)), JSON.stringify(finestSides(evidence))],
  readings: decodings.map(({ readings }) =>
    JSON.stringify([
      likelyReadings(readings).length,
      readings.map(isInOwnTime),
      readings.map(({ span, systemUsed }) => (span ? inUseAt(systemUsed, [span]) : null)),
      readings.map(({ span }) => fitsClaims(span, claims)),
    ]),
  ),
  ages: [...new Set(evidence.filter(isDating).map(({ spans }) => (spans.length > 0 ? ageYears(spans, now) : 0)))].map(
    String,
  ),
});

const told = (all: readonly Record<string, string[]>[]): string =>
  `${all
    .flatMap((parts, at) =>
      Object.entries(parts).flatMap(([part, lines]) =>
        at < wholeOnes
          ? [`${at} ${part}`, ...lines.map((line) => `  ${line}`)]
          : [`${at} ${part} ${lines.length} ${digestOf(lines)}`],
      ),
    )
    .join('\n')}\n`;

it('what is gathered of made-up cases, and what is made of it', async () => {
  const all = fc.sample(given, { numRuns: 150, seed });
  await expect(told(all.map((facts) => ({ ...reasoned(facts.evidence), ...beside(facts) })))).toMatchFileSnapshot(
    './kept/cases.txt',
  );
});

const span: fc.Arbitrary<Span> = fc
  .tuple(fc.integer({ min: 1979, max: 1995 }), fc.integer({ min: 1990, max: 2006 }), fc.boolean())
  .filter(([from, to]) => from <= to)
  .map(([from, to, about]) => ({
    ...yearsSpan(from === 1979 ? null : from, to === 2006 ? null : to),
    ...(about ? { about } : {}),
  }));
const kinds = ['claim', 'reading', 'system', 'plant', 'mark', 'construction'] as const;
const plain = fc.record({
  from: fc.constantFrom(...kinds).map((kind) => ({ kind, id: 'd' })),
  basis: fc.constantFrom('a', 'b', 'c', 'd', 'e', 'f'),
  spans: fc.array(span, { maxLength: 3 }),
  places: fc.array(fc.constantFrom('CSHH', 'CZ', 'SK', 'FR', 'SUHH'), { maxLength: 2 }),
  strength: fc.constantFrom('hard' as const, 'soft' as const),
  hardReach: fc.option(fc.array(span, { minLength: 1, maxLength: 2 }), { nil: undefined }),
});

it('what is made of any pieces of evidence', async () => {
  const all = fc.sample(fc.array(plain, { maxLength: 9 }), { numRuns: 200, seed });
  const pieces = all.map((some) => some.map((over, at) => piece(`e${at}`, over)));
  await expect(told(pieces.map(reasoned))).toMatchFileSnapshot('./kept/pieces.txt');
});
