import { describe, expect, it } from 'vitest';
import { Judge } from '../../mutation/judge';
import type { Answer, Order } from '../../mutation/order';
import type { Tester } from '../../mutation/pool';

type Said = 'passes' | 'fails' | 'gone';

/** A process that answers as it is told, by the number that is on and how often it was replaced; and what it was asked. */
function judged(says: (order: Order, life: number) => Said) {
  const asked: string[] = [];
  const tester = {
    life: 0,
    run: async (order: Order): Promise<Answer> => {
      const said = says(order, tester.life);
      asked.push(`${order.change}: ${said}`);
      if (said === 'gone') tester.stop();
      const failed = said === 'fails' ? ['a test'] : [];
      const answer = { failed, why: '', ms: 1, times: {}, turns: 0, reached: { whole: [], tests: {} } };
      return said === 'gone' ? { ...answer, gone: true } : answer;
    },
    stop: () => {
      tester.life += 1;
    },
  };
  return { judge: new Judge(tester as unknown as Tester, new Map()), asked };
}
const steps = [{ file: 'a.test.ts', tests: ['a test'], ms: 1 }];

describe('a change', () => {
  it('is alive where nothing fails, and where nothing reaches it', async () => {
    const { judge } = judged(() => 'passes');
    expect([await judge.warm(7, steps), await judge.warm(7, []), await judge.anew(7, steps)]).toEqual(
      Array(3).fill('alive'),
    );
  });

  it('is noticed where a test fails with it, and passes before and after', async () => {
    const { judge, asked } = judged(({ change }) => (change === 7 ? 'fails' : 'passes'));
    expect(await judge.warm(7, steps)).toBe('noticed');
    expect(asked).toEqual(['0: passes', '7: fails', '0: passes']);
  });

  it('is tried again in a new process where the test also fails without it', async () => {
    let spoilt = false;
    const { judge } = judged(({ change }, life) => {
      if (change === 7) spoilt = true;
      return spoilt && life === 0 ? 'fails' : 'passes';
    });
    expect(await judge.warm(7, steps)).toBe('alive');
    expect(judge.lost).toEqual([]);
  });

  it('tells nothing where tests fail without it', async () => {
    const { judge } = judged(() => 'fails');
    expect(await judge.warm(7, steps)).toBe('void');
    expect(judge.lost.length).toBe(1);
  });

  it('counts as hung only where two processes die of it', async () => {
    const twice = judged(({ change }) => (change === 7 ? 'gone' : 'passes')).judge;
    const once = () => judged(({ change }, life) => (change === 7 && life === 0 ? 'gone' : 'passes')).judge;
    expect([await twice.warm(7, steps), await twice.anew(7, steps)]).toEqual(['hung', 'hung']);
    expect([await once().warm(7, steps), await once().anew(7, steps)]).toEqual(['alive', 'alive']);
  });
});
