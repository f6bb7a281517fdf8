import fc from 'fast-check';
import { expect, it } from 'vitest';
import { checks } from '../../../src/check';
import { digestOf } from '../../digest';
import { given } from './reasoning-cases';

/*
 * What every check says of many made-up cases: what it says first, whole, and a digest of all that it says. Where it
 * changes on purpose, `npm test -- unit/check/kept --update` writes it anew.
 */

const cases = fc.sample(given, { numRuns: 250, seed: 14 });
const shownOfAKind = 1;

it('what each check says of made-up cases', async () => {
  const out = checks.flatMap((check) => {
    const outcomes = cases.map((facts) => check.judge(facts));
    const kindOf = (one: (typeof outcomes)[number]) =>
      one.outcome === 'speaks'
        ? one.findings.map(({ kind }) => kind).join(' ')
        : `${one.outcome} ${'why' in one && typeof one.why !== 'string' ? one.why.reason : ''}`;
    const kinds = new Map<string, typeof outcomes>();
    for (const one of outcomes) kinds.set(kindOf(one), [...(kinds.get(kindOf(one)) ?? []), one]);
    return [
      `${check.id} ${digestOf(outcomes)}`,
      ...[...kinds].flatMap(([kind, all]) => [
        `  ${kind} ${all.length}`,
        ...all.slice(0, shownOfAKind).map((one) => `    ${JSON.stringify(one)}`),
      ]),
    ];
  });
  await expect(`${out.join('\n')}\n`).toMatchFileSnapshot('./kept/cases.txt');
});
