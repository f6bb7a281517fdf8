import { beforeAll, expect, it } from 'vitest';
import {
  callerPages,
  type MessyScore,
  messyPages,
  precisionOf,
  recallOf,
  scoreCaller,
  scoreMessy,
  sumOf,
} from '../../messy-pages/score';

/*
 * Second-hand pages as people write them, on which the reader was tuned: what has to stand there. Those set aside are
 * read by the bench only.
 */

const scores: MessyScore[] = [];
beforeAll(async () => {
  for (const page of messyPages('seen')) scores.push(await scoreMessy(page));
}, 120_000);

it.each([
  ['fields', 0.97, 0.92],
  ['claims', 0.97, 0.88],
  ['made', 0.97, 0.9],
  ['codes', 0.95, 0.9],
] as const)('%s are right in %f of what is given, and %f of what is there is given', (of, precision, recall) => {
  const tally = sumOf(scores, of);
  const faults = scores.map(({ page, faults }) => [page, ...faults].join('\n  ')).join('\n');
  expect(precisionOf(tally), faults).toBeGreaterThanOrEqual(precision);
  expect(recallOf(tally), faults).toBeGreaterThanOrEqual(recall);
});

it('raises no doubt about an honest seller that nothing founds', () => {
  expect(
    scores.filter(({ unfounded }) => unfounded.length > 0).map(({ page, unfounded }) => [page, unfounded]),
  ).toEqual([]);
  expect(scores.filter(({ contradictions }) => contradictions > 0)).toEqual([]);
});

it.each(callerPages('callers'))('tells of %s what was planted, and nothing else', async (page) => {
  const { unfounded, missed } = await scoreCaller(page);
  expect(unfounded).toEqual([]);
  expect(missed).toBe(false);
});
