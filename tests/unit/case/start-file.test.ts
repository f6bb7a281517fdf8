import { expect, it } from 'vitest';
import { buildCase, fileFromCase } from '../../../src/case';
import { inspectDraft } from '../../../src/maker';
import { stated } from '../check/sample';
import { listingOf } from './sample-listing';

const now = '2026-01-15T10:00:00Z';
const begun = (title: string, words: string, maker: string | null) => {
  const listing = listingOf(title, words, 1, maker === null ? {} : { maker: stated(maker) });
  return fileFromCase(buildCase({ listing, photos: [], corrections: [], makers: [], now }), 'Begun from a listing.');
};

it('a file begun from a listing names maker, model, size and where they stand, and has no fault', () => {
  const draft = begun('Velmar Lane Tote 30, 1994', 'Width 30 cm, height 21 cm, depth 17 cm.', 'Velmar Lane');
  const { file, problems } = inspectDraft(draft as NonNullable<typeof draft>);
  expect(problems).toEqual([]);
  expect(file?.maker).toBe('Velmar Lane');
  expect(file?.models).toMatchObject([
    { name: 'Tote 30', runs: [{ size: { width: 30, height: 21, depth: 17, unit: 'cm', tolerance: 1 } }] },
  ]);
  expect(file?.models[0]?.sources?.[0]).toMatch(/^https?:\/\/\S+, \d{4}-\d{2}-\d{2}$/);
});

it('leaves out what the listing does not say, and begins nothing without a maker', () => {
  const draft = begun('Velmar Lane', 'A bag.', 'Velmar Lane');
  expect(inspectDraft(draft as NonNullable<typeof draft>).file?.models).toEqual([]);
  expect(begun('A bag', 'A bag.', null)).toBeNull();
});
