import { expect, test } from 'vitest';
import { buildCase, findingsOf } from '../../../src/case';
import { compareWeights, weighFinding } from '../../../src/evidence';
import { builtInMakers } from '../../../src/maker';
import { sayWeight } from '../../../src/words';
import { readPhoto, stampLine } from '../check/sample';
import { listingOf } from './sample-listing';

const text = 'Ondrasse Carryall 30 in brown leather, made in Italy in 1987. Width 30 cm, height 21 cm, depth 17 cm.';

/** A listing whose year and country the stamp rules out, with a label of its own in another photo. */
const built = buildCase({
  listing: listingOf('Ondrasse Carryall 30', text),
  photos: [
    readPhoto('p1', { printed: ['RN 13670'] }),
    readPhoto('p2'),
    readPhoto('p3', { lines: [stampLine('p3', 'KV0915')] }),
  ],
  corrections: [],
  makers: builtInMakers,
  now: '2026-01-15T10:00:00Z',
});
const findings = findingsOf(built);
const weightOf = (check: string) => {
  const finding = findings.find((one) => one.check === check);
  if (!finding) throw new Error(`${check} found nothing`);
  return weighFinding(finding, built.evidence);
};

test('findings name evidence that stands in the case', { timeout: 60_000 }, () => {
  const known = new Set(built.evidence.map(({ id }) => id));
  const named = findings.flatMap((finding) => finding.evidence);
  expect(named.length).toBeGreaterThan(0);
  expect(named.filter((id) => !known.has(id))).toEqual([]);
});

test('the year that the stamp rules out rests on two independent hard facts, and what else stands against the stamp is said', () => {
  const weight = weightOf('code-against-claimed-date');
  expect(weight.standing).toBe('backed');
  expect(sayWeight(weight, 'en')).toEqual([
    'It rests on hard facts only: no habit is needed.',
    'It rests on 2 independent facts.',
    expect.stringMatching(/^1 other fact stands against the same one: the stamp reads KV0915/),
    'The rule stands in the maker file.',
  ]);
});

test('a contradiction weighs more than any doubt, a doubt more than any gap', () => {
  const byKind = (kind: string) =>
    findings.filter((one) => one.kind === kind).map((one) => weighFinding(one, built.evidence));
  for (const [heavier, lighter] of [
    ['contradiction', 'doubt'],
    ['doubt', 'gap'],
    ['gap', 'agreement'],
  ] as const) {
    for (const a of byKind(heavier)) for (const b of byKind(lighter)) expect(compareWeights(a, b)).toBeGreaterThan(0);
  }
  expect(byKind('contradiction').length).toBeGreaterThan(0);
});
