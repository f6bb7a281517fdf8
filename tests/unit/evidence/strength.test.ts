import fc from 'fast-check';
import { expect, test } from 'vitest';
import { compareWeights, type Dating, type Weighable, weighFinding } from '../../../src/evidence';
import type { Source } from '../../../src/source';
import { yearSpan, yearsSpan } from '../../../src/span';
import { sayWeight } from '../../../src/words';
import { claimed, coded, piece } from './samples';

const rule: Source = { kind: 'maker-file', maker: 'Ondrasse', invented: false, part: null, sources: [] };
const finding = (over: Partial<Weighable> = {}): Weighable => ({
  kind: 'contradiction',
  evidence: ['claim', 'code'],
  claims: [],
  source: rule,
  ...over,
});
const claim = claimed('1984', {
  id: 'claim',
  from: { kind: 'claim', id: 'claim' },
  basis: 'claim',
  spans: [yearSpan(1984)],
});
const code = coded('KV0915', { id: 'code', basis: 'code', spans: [yearSpan(1995)] });
const backing = piece('zip', { spans: [yearsSpan(1990, null)] });

test('two hard facts alone', () => {
  const weight = weighFinding(finding(), [claim, code]);
  expect(weight).toMatchObject({ standing: 'hard', order: [3, 1, 0, 2, 0, 2] });
  expect(sayWeight(weight, 'en')).toEqual([
    'It rests on hard facts only: no habit is needed.',
    'It rests on 2 independent facts.',
    'The rule stands in the maker file.',
  ]);
});

test('a further fact that stands against the same one backs it', () => {
  const weight = weighFinding(finding(), [claim, code, backing]);
  expect(weight.standing).toBe('backed');
  expect(sayWeight(weight, 'en')[2]).toBe('1 other fact stands against the same one: the listing says “1984”.');
});

test('a fact that stands against both, or against none, backs nothing', () => {
  const neither = piece('far', { spans: [yearSpan(2010)] });
  const both = piece('wide', { spans: [yearsSpan(1970, 2020)] });
  expect(weighFinding(finding(), [claim, code, neither, both]).standing).toBe('hard');
});

test('a habit makes it lighter, and it is said which', () => {
  const habit = { ...code, strength: 'soft' as const };
  const weight = weighFinding(finding({ kind: 'doubt' }), [claim, habit]);
  expect(weight.standing).toBe('soft');
  expect(sayWeight(weight, 'en')[0]).toBe(
    'It is lighter because one of the facts is a habit or a loose statement: the stamp reads KV0915: 1995.',
  );
  const unverified: Dating = { ...habit, source: { kind: 'memory', text: 'from memory' } };
  expect(sayWeight(weighFinding(finding({ kind: 'doubt' }), [claim, unverified]), 'en')[0]).toContain(
    'was not verified',
  );
});

test('what is said again counts once', () => {
  const again = piece('again', { basis: 'claim', spans: [yearSpan(1984)] });
  const once = weighFinding(finding(), [claim, code]);
  const twice = weighFinding(finding({ evidence: ['claim', 'again', 'code'] }), [claim, code, again]);
  expect(twice.order).toEqual(once.order);
  expect(sayWeight(twice, 'en')).toContain('It rests on 2 independent facts; what is said again counts once.');
});

test('an agreement is backed by what agrees with all of it', () => {
  const agreed = finding({ kind: 'agreement', evidence: ['code'] });
  expect(sayWeight(weighFinding(agreed, [code, backing]), 'en')).toContain('1 other fact agrees with it.');
  expect(weighFinding(agreed, [code, claim]).standing).toBe('hard');
});

test('a finding without dated evidence is weighed by its kind and its rule', () => {
  const published = weighFinding(finding({ kind: 'gap', evidence: [], source: { kind: 'published', text: 'x' } }), []);
  const memory = weighFinding(finding({ kind: 'gap', evidence: [], source: { kind: 'memory', text: 'x' } }), []);
  expect([published.standing, memory.standing]).toEqual(['bare', 'bare']);
  expect(compareWeights(published, memory)).toBeGreaterThan(0);
  expect(sayWeight(memory, 'en')).toEqual([
    'It rests on what the page or the photos show, not on dates or places.',
    'The rule stands from memory and was not verified, which makes it lighter.',
  ]);
});

test('a loose claim contradicts with all the room that its words have, and doubts as it was said', () => {
  const loose = {
    ...claim,
    strength: 'soft' as const,
    reach: [yearsSpan(1983, 1985)],
    hardReach: [yearsSpan(1982, 1986)],
  };
  expect(weighFinding(finding(), [loose, code]).standing).toBe('hard');
  expect(weighFinding(finding({ kind: 'doubt' }), [loose, code]).standing).toBe('soft');
});

test('claims stand for their evidence where no evidence is named', () => {
  expect(weighFinding(finding({ evidence: [], claims: ['claim'] }), [claim, code]).standing).toBe('hard');
});

const seed = Date.now() % 1_000_000;
console.log(`seed ${seed}`);
const year = fc.integer({ min: 1980, max: 1999 });

test('a hard contradiction outweighs every soft finding, whatever backs that one', () => {
  fc.assert(
    fc.property(fc.array(year, { maxLength: 8 }), (years) => {
      const others = years.map((one, at) => piece(`o${at}`, { spans: [yearSpan(one)] }));
      const hard = weighFinding(finding(), [claim, code]);
      const soft = weighFinding(finding({ kind: 'doubt' }), [claim, { ...code, strength: 'soft' }, ...others]);
      expect(compareWeights(hard, soft)).toBeGreaterThan(0);
    }),
    { seed, numRuns: 200 },
  );
});

test('one more independent fact never makes a finding lighter, and one said again changes nothing', () => {
  fc.assert(
    fc.property(fc.array(year, { maxLength: 6 }), year, (years, one) => {
      const evidence = [claim, code, ...years.map((other, at) => piece(`o${at}`, { spans: [yearSpan(other)] }))];
      const before = weighFinding(finding(), evidence);
      const more = weighFinding(finding(), [...evidence, piece('more', { spans: [yearSpan(one)] })]);
      expect(compareWeights(more, before)).toBeGreaterThanOrEqual(0);
      const repeated = piece('repeated', { basis: evidence.at(-1)!.basis, spans: evidence.at(-1)!.spans });
      expect(weighFinding(finding(), [...evidence, repeated]).order).toEqual(before.order);
    }),
    { seed, numRuns: 200 },
  );
});

test('equal weights are equal, and the first difference decides', () => {
  const weight = (...order: number[]) => ({ ...weighFinding(finding(), [claim, code]), order });
  expect(compareWeights(weight(3, 1, 0), weight(3, 1, 0))).toBe(0);
  expect(compareWeights(weight(3, 0, 9), weight(3, 1, 0))).toBeLessThan(0);
  expect(compareWeights(weight(3, 2, 0), weight(3, 1, 9))).toBeGreaterThan(0);
});
