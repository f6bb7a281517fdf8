import { describe, expect, test } from 'vitest';
import { learnSystem } from '../../../src/code/teacher';
import { chanceFrom } from '../../reference/number-systems';
import { families, normal } from './teacher-families';

describe.each(families)('$name', ({ layout, example }) => {
  const seeds = Array.from({ length: 20 }, (_, step) => 700 + step);

  test(`is found from six random examples, or named among what remains (seeds ${seeds[0]} to ${seeds.at(-1)})`, () => {
    const misses: string[] = [];
    let first = 0;
    for (const seed of seeds) {
      const chance = chanceFrom(seed);
      const examples = Array.from({ length: 6 }, () => example(chance));
      const learned = learnSystem(examples);
      const layouts = learned.remaining.map((candidate) => normal(candidate.eras[0]!.layout));
      if (layouts[0] === normal(layout)) first++;
      else if (!layouts.includes(normal(layout)) || !learned.ambiguous) {
        misses.push(`${seed}: ${examples.map(({ code, reads }) => `${code} ${reads}`).join('; ')} gave ${layouts[0]}`);
      }
    }
    expect(misses).toEqual([]);
    expect(first, 'first in nearly all').toBeGreaterThanOrEqual(17);
  }, 60_000);
});
