import { describe, expect, it } from 'vitest';
import { builtPatterns, faultsOf, writtenPatterns } from './patterns';
import { filesUnder } from './source-files';

/** Names of shapes, not times: the answer is the same on a busy machine. Growth itself is measured by `npm run bench -- growth`. */
describe('patterns over text that a page controls', () => {
  it('are told apart: those that walk a run again and again, and those with bounds', () => {
    const faults = (pattern: RegExp) => faultsOf({ where: 'here', source: pattern.source, flags: pattern.flags });
    expect(faults(/\s+$/)).toHaveLength(1);
    expect(faults(/\d[\d.,]*\s*%/)).toHaveLength(1);
    expect(faults(/^\s*\/?\s*x/)).toHaveLength(1);
    expect(faults(/(?:a+)+b/)).not.toEqual([]);
    expect(faults(/\s{1,8}$|^\s+|(?<!\d)\d+(?!\d)/)).toEqual([]);
  });

  it('written in the source keep their work linear', () => {
    const patterns = [...filesUnder('src'), ...filesUnder('entrypoints')].flatMap(writtenPatterns);
    expect(patterns.length).toBeGreaterThan(500);
    expect(patterns.flatMap(faultsOf)).toEqual([]);
  }, 60_000);

  it('put together from word lists keep their work linear', async () => {
    const patterns = await builtPatterns(async () => {
      // Some are built when their reader is first asked.
      const { textReaders } = await import('../../growth/text-readers');
      for (const read of Object.values(textReaders)) read('Ondrasse bag, "like new", made in Belgium in 1994. ');
    });
    expect(patterns.length).toBeGreaterThan(100);
    expect(patterns.flatMap(faultsOf)).toEqual([]);
  }, 60_000);
});
