import { describe, expect, it } from 'vitest';
import { madeOnce } from '../../../src/case/made-once';

describe('what is made once', () => {
  const made: string[] = [];
  const join = madeOnce((of: { name: string }, others: readonly object[], day: string) => {
    made.push(of.name);
    return { of: of.name, others: others.length, day };
  });
  const [one, file, another] = [{ name: 'one' }, { maker: 'A' }, { maker: 'B' }];

  it('is not made again while all that it rests on is the same, in a list made anew too', () => {
    const first = join(one, [file, another], '2026-11-29');
    expect(join(one, [file, another], '2026-11-29')).toBe(first);
    expect(made).toEqual(['one']);
  });

  it('is made again for another object, a list with another entry, a longer list, and another value', () => {
    join(one, [file, another], '2026-11-29');
    made.length = 0;
    expect(join({ name: 'two' }, [file, another], '2026-11-29').of).toBe('two');
    expect(join(one, [file, { maker: 'B' }], '2026-11-29').others).toBe(2);
    expect(join(one, [file], '2026-11-29').others).toBe(1);
    expect(join(one, [file], '2026-11-30').day).toBe('2026-11-30');
    expect(made).toEqual(['two', 'one', 'one', 'one']);
  });
});
