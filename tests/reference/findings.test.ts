import { describe, expect, it } from 'vitest';
import { buildCase, findingsOf } from '../../src/case';
import { checks } from '../../src/check';
import { inputOf, truthFiles, truthRows } from './cases/truth-case';

const findings = truthFiles.flatMap(truthRows).flatMap((row) => findingsOf(buildCase(inputOf(row))));

describe('every finding of the truth table', () => {
  it('is there to be looked at, of every check', () => {
    const spoke = new Set(findings.map(({ check }) => check));
    expect(checks.filter(({ id }) => !spoke.has(id)).map(({ id }) => id)).toEqual([]);
  });

  it('rests on something, and says so', () => {
    const empty = findings.filter(({ basis }) => basis.length === 0 || basis.some((line) => line.trim().length < 5));
    expect(empty.map(({ check, statement }) => `${check}: ${statement}`)).toEqual([]);
  });
});
