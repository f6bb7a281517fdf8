import { describe, expect, it } from 'vitest';
import { fail, type Result, succeed } from '../../../../src/problem';
import { keepBegunReadings, mostAgeMs } from '../../../../src/reader/page/begun-readings';

const refused = { code: 'right-lapsed', where: 'tab', what: 'no right', remedy: 'Click.' };

/** Readings that give their number, so that it shows which of them was taken. */
function readings({ stands = true, first }: { stands?: boolean; first?: Result<string> } = {}) {
  const read: number[] = [];
  let now = 0;
  const kept = keepBegunReadings<string>({
    async read(tabId) {
      read.push(tabId);
      return read.length === 1 && first ? first : succeed(`reading ${read.length} of tab ${tabId}`);
    },
    stands: async () => stands,
    now: () => now,
  });
  return { kept, read, pass: (ms: number) => (now += ms) };
}

describe('a reading that the click began', () => {
  it('is under way before the panel asks, and is what it gets', async () => {
    const { kept, read, pass } = readings();
    kept.begin(7);
    expect(read).toEqual([7]);
    pass(mostAgeMs);
    expect(await kept.take(7)).toEqual(succeed('reading 1 of tab 7'));
    expect(read).toEqual([7]);
  });

  it('is taken once: who reads again sees the page as it is now', async () => {
    const { kept, read } = readings();
    kept.begin(7);
    await kept.take(7);
    expect(await kept.take(7)).toEqual(succeed('reading 2 of tab 7'));
    expect(read).toEqual([7, 7]);
  });

  it('is no other tab’s', async () => {
    const { kept } = readings();
    kept.begin(7);
    expect(await kept.take(8)).toEqual(succeed('reading 2 of tab 8'));
  });

  it.each([
    ['the page shows something else by now', { stands: false }, 0],
    ['it failed', { first: fail(refused) }, 0],
    ['nobody asked for so long', {}, mostAgeMs + 1],
  ])('is not taken where %s', async (_, options, age) => {
    const { kept, pass } = readings(options);
    kept.begin(7);
    pass(age);
    expect(await kept.take(7)).toEqual(succeed('reading 2 of tab 7'));
  });

  it('is forgotten with its tab', async () => {
    const { kept } = readings();
    kept.begin(7);
    kept.drop(7);
    expect(await kept.take(7)).toEqual(succeed('reading 2 of tab 7'));
  });
});
