import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { listingSchema } from '../../../src/listing/types';
import {
  accuracyWords,
  precisionAndRecall,
  readSaved,
  type Scored,
  scoreListing,
  truths,
} from '../../listing-pages/score';

/** Pages in seven languages and as many layouts; `npm run bench -- listing` shows the figures field by field. */
describe('saved pages against their truth table', () => {
  const all: Scored[] = [];

  for (const [name, truth] of Object.entries(truths))
    it(`reads ${name} without inventing or mistaking a field`, async () => {
      const listing = await readSaved(name);
      expect(listingSchema.safeParse(listing).error).toBeUndefined();
      const scores = scoreListing(name, listing, truth);
      all.push(...scores);
      const said = scores.map(
        ({ field, mark, given, truth: wanted }) => `${field} ${mark}: ${given} (true: ${wanted})`,
      );
      expect(said.filter((line) => / (wrong|invented): /.test(line))).toEqual([]);
    });

  it('finds at least 95% of what the pages give', () => {
    expect(Object.keys(truths).length).toBeGreaterThanOrEqual(25);
    const { precision, recall } = precisionAndRecall(all);
    expect(precision).toBeGreaterThanOrEqual(0.97);
    expect(recall).toBeGreaterThanOrEqual(0.95);
  });

  it('gives what the README says of it, and the README says that the reader was tuned on these pages', () => {
    const readme = readFileSync(new URL('../../../README.md', import.meta.url), 'utf8');
    const { what, result } = accuracyWords(all);
    expect(readme).toContain(`| ${what} | ${result} | \`npm run bench -- listing\` |`);
    expect(what).toContain('tuned on');
  });
});
