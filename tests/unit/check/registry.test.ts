import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { checks } from '../../../src/check';
import { describeCheck, saySource } from '../../../src/words';
import { checksDocument } from '../../../src/words/checks-document';

const root = new URL('../../../', import.meta.url);
/** Files of the folder that are not checks themselves. */
const frameFiles = readdirSync(new URL('src/check/', root))
  .filter((name) => name.endsWith('.ts'))
  .filter(
    (name) =>
      !/^export const \w+ = define(?:Check|Written)\(\{/m.test(
        readFileSync(new URL(`src/check/${name}`, root), 'utf8'),
      ),
  )
  .map((name) => name.slice(0, -3));
const checkFiles = readdirSync(new URL('src/check/', root))
  .filter((name) => name.endsWith('.ts'))
  .map((name) => name.slice(0, -3))
  .filter((name) => !frameFiles.includes(name));

/** Checks with a number at which no answer turns. */
const noLimits = {
  'claimed-dates-agree': 'how many dates are named',
  'evidence-agrees': 'how many conflicts are named',
  'maker-stated': 'how many names are told',
};

describe('the collection of checks', () => {
  it('registers every check file once, under the name of its file', () => {
    expect(checks.map(({ id }) => id).sort()).toEqual(checkFiles.sort());
  });

  it('has a test of the same name for every check', () => {
    const untested = checks.filter(({ id }) => !existsSync(new URL(`tests/unit/check/${id}.test.ts`, root)));
    expect(untested.map(({ id }) => id)).toEqual([]);
  });

  it('tries every number that a check declares at its limit, by the rule tester', () => {
    const limited = checks.filter(({ limits }) => limits !== undefined).map(({ id }) => id);
    const test = (id: string) => readFileSync(new URL(`tests/unit/check/${id}.test.ts`, root), 'utf8');
    expect(limited.length).toBeGreaterThan(15);
    expect(limited.filter((id) => !test(id).includes('testRule('))).toEqual([]);
  });

  it('leaves no number of a check undeclared', () => {
    const source = (id: string) => readFileSync(new URL(`src/check/${id}.ts`, root), 'utf8');
    const numbered = checkFiles.filter((id) => /^const \w+ = -?[\d_.]+( [*/] [\d.]+)?;$/m.test(source(id)));
    const undeclared = numbered.filter((id) => checks.find((check) => check.id === id)?.limits === undefined);
    expect(undeclared.sort()).toEqual(Object.keys(noLimits).sort());
  });

  it.each(checks.map((check) => [check.id, check] as const))('%s has all of its wording', (id, check) => {
    const { title, failureTitle, basis, innocent, settles } = describeCheck(check, 'en');
    expect(id).toMatch(/^[a-z]+(-[a-z]+)+$/);
    for (const words of [title, failureTitle, basis, innocent, settles, saySource(check.source, 'en')])
      expect(words.length).toBeGreaterThan(10);
    expect(title).not.toBe(failureTitle);
    for (const words of [basis, innocent, settles]) expect(words).toMatch(/\.$/);
    expect(check.kinds.length).toBeGreaterThan(0);
    expect(new Set(check.kinds).size).toBe(check.kinds.length);
  });

  it('gives a verdict in no wording', () => {
    const words = checks.flatMap((check) => Object.values(describeCheck(check, 'en')));
    for (const one of words) expect(one.toLowerCase()).not.toMatch(/\b(fake|counterfeit|genuine|authentic|fraud|scam)/);
  });

  it('is described by docs/checks.md as it stands (npm run make:docs)', () => {
    expect(readFileSync(new URL('docs/checks.md', root), 'utf8')).toBe(checksDocument(checks));
  });
});
