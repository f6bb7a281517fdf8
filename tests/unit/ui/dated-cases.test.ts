import { describe, expect, it } from 'vitest';
import { builtInMakers } from '../../../src/maker';
import { casesBehind, rowOfKnown } from '../../../src/ui/makers/dated-cases';
import { readKnownRows } from '../../../src/ui/makers/known-codes';

const file = builtInMakers[0]!;
const examples = file.codeSystems.map(({ id, examples: [first] }) => ({ id, ...first! }));
const caseOf = (code: string, reads: string) => ({ maker: file.maker, code, reads });

describe('kept cases whose dates something else settles', () => {
  it('stand behind the system that reads in their codes what is known of them', () => {
    const [one, other] = [examples[0]!, examples.at(-1)!];
    const cases = [one, one, other].map(({ code, reads }) => caseOf(code, reads));
    const behind = casesBehind(file, cases);
    expect(behind.get(one.id)).toBe(2);
    expect(behind.get(other.id)).toBe(1);
  });

  it('stand behind none that reads something else, or whose code fits no layout', () => {
    const wrong = [caseOf(examples[0]!.code, '1901'), caseOf('?', '1995'), caseOf(examples[0]!.code, 'some day')];
    expect([...casesBehind(file, wrong).values()].every((number) => number === 0)).toBe(true);
  });

  it('are rows that the teacher understands', () => {
    for (const { code, reads } of examples) {
      const [row] = readKnownRows(rowOfKnown({ code, reads }));
      expect(row?.known).toEqual({ code, reads });
    }
  });
});
