import { describe, expect, it } from 'vitest';
import { buildCase, caseSchema, findingsOf } from '../../src/case';
import { checks } from '../../src/check';
import { inEnglish } from '../said';
import { checksOf, inputOf, knownOf, truthFiles, truthRows } from './cases/truth-case';

const rows = truthFiles.flatMap((file) => truthRows(file).map((row) => ({ file, row })));

describe('the truth table', () => {
  it('holds at least 120 cases, of which at least 40 are sound, and names only checks that there are', () => {
    expect(rows.length).toBeGreaterThanOrEqual(120);
    expect(truthRows('sound').length).toBeGreaterThanOrEqual(40);
    const known = new Set(checks.map(({ id }) => id));
    const named = rows.flatMap(({ row }) => [...row.contradiction, ...row.doubt, ...row.gap, ...row.among]);
    expect(named.filter((id) => !known.has(id))).toEqual([]);
    expect(truthRows('sound').filter((row) => row.contradiction.length > 0)).toEqual([]);
  });

  it('knows of no contradiction on a sound piece, not even as a fault', () => {
    const contradicted = truthRows('sound').filter(
      (row) => checksOf(buildCase(inputOf(row)), 'contradiction').length > 0,
    );
    expect(contradicted.map(({ name }) => name)).toEqual([]);
  }, 120_000);

  it.each(rows.map(({ file, row }) => [file, row.name, row] as const))(
    '%s: %s',
    (_file, _name, row) => {
      const built = buildCase(inputOf(row));
      const found = {
        contradiction: checksOf(built, 'contradiction'),
        doubt: checksOf(built, 'doubt'),
        gap: checksOf(built, 'gap'),
      };
      const said = findingsOf(built)
        .map(inEnglish)
        .map(({ kind, statement }) => `${kind}: ${statement}`);
      const agreed = checksOf(built, 'agreement');
      for (const kind of ['contradiction', 'doubt', 'gap'] as const)
        expect(found[kind], `${kind}\n${said.join('\n')}`).toEqual(knownOf(row, kind, found[kind]));
      expect(agreed).toEqual(expect.arrayContaining(row.among.filter((id) => !row.missed.includes(id))));
      expect(caseSchema.safeParse(JSON.parse(JSON.stringify(built))).success).toBe(true);
    },
    60_000,
  );
});
