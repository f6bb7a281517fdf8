import { describe, expect, it } from 'vitest';
import { buildCase, type Correction, correct, partsToTag, proposalsOf, tagPart, tagsOf, undo } from '../../../src/case';
import { builtInMakers } from '../../../src/maker';
import { observed } from '../../../src/photo';
import { photoRead } from '../../photo-read';
import { listingOf } from './sample-listing';

const listing = listingOf('Ondrasse Carryall 30', 'Width 30 cm.', 3);
const photos = [
  photoRead('p1', { hash: '1111111111111111' }),
  photoRead('p2', { hash: 'f0e1d2c3b4a59687' }),
  photoRead('p3'),
];
const built = (corrections: Correction[], page = listing) =>
  buildCase({ listing: page, photos, corrections, makers: builtInMakers, now: '2026-03-01T10:00:00.000Z' });
const tagged = (...tags: [photoId: string, part: string][]) =>
  tags.reduce<Correction[]>((list, [id, part]) => correct(list, tagPart(built(list), id, part)!), []);
const open = (corrections: Correction[]) => built(corrections).outcomes.find(({ check }) => check === 'parts-shown');
const missing = (corrections: Correction[]) => {
  const outcome = open(corrections);
  return outcome?.outcome === 'speaks' ? outcome.findings[0]?.data.parts : outcome?.outcome;
};

describe('which parts a photo shows, as the buyer says', () => {
  it('is several of one photo, each once, and each undone by itself', () => {
    const list = tagged(['p1', 'body'], ['p1', 'handle'], ['p1', 'body']);
    expect(tagsOf(built(list), 'p1').map(({ part }) => part)).toEqual(['body', 'handle']);
    const [first] = tagsOf(built(list), 'p1');
    expect(tagsOf(built(undo(list, first!.id)), 'p1').map(({ part }) => part)).toEqual(['handle']);
    expect(tagsOf(built(list), 'p2')).toEqual([]);
  });

  it('follows its photo to another number', () => {
    const moved = { ...listing, photos: listing.photos.map((photo, at) => ({ ...photo, url: `${photo.url}?${at}` })) };
    expect(tagsOf(built(tagged(['p2', 'lining']), moved), 'p2').map(({ part }) => part)).toEqual(['lining']);
  });

  it('answers what no photo was said to show, part by part', () => {
    const none = missing([]);
    expect(none).toContain('lining');
    const all = Array.isArray(none) ? none.map(String) : [];
    expect(missing(tagged(['p1', 'lining']))).toEqual(all.filter((part) => part !== 'lining'));
    expect(missing(tagged(...all.map((part): [string, string] => ['p1', part])))).toBe('silent');
  });

  it('is offered with a figure that never changes, and a letter for what else is asked for of this piece', () => {
    const offered = partsToTag(built([]));
    expect(offered.map(({ key }) => key)).toEqual(['1', '2', '3', '4', '5', '6', '7', '8', '9', '0', 'a']);
    expect(offered.at(-2)).toEqual({ key: '0', part: 'stamp' });
    expect(offered.at(-1)).toEqual({ key: 'a', part: 'zip' });
    // A key means the same before and after it was used.
    expect(partsToTag(built(tagged(['p1', 'lining'], ['p1', 'zip'])))).toEqual(offered);
  });

  it('settles that no photo shows the stamp', () => {
    const gap = (list: Correction[]) => built(list).outcomes.find(({ check }) => check === 'stamp-close-up')?.outcome;
    expect([gap([]), gap(tagged(['p3', 'stamp']))]).toEqual(['speaks', 'silent']);
  });
});

describe('what is proposed of a photo', () => {
  const quad = (height: number) => ({
    form: 'quad' as const,
    points: [
      { x: 10, y: 10 },
      { x: 90, y: 10 },
      { x: 90, y: 10 + height },
      { x: 10, y: 10 + height },
    ] as [{ x: number; y: number }, { x: number; y: number }, { x: number; y: number }, { x: number; y: number }],
  });
  const seen = (what: string, value: number | string, height: number | null = null) =>
    observed('p1', what, value, { where: height === null ? null : quad(height) });
  const read = (observations: ReturnType<typeof seen>[]) => ({
    state: 'read' as const,
    photoId: 'p1',
    width: 1000,
    height: 500,
    observations,
  });
  const none = { decodings: [] };

  it.each([
    ['print from near', [seen('print', 'PELLEVAL', 40)], ['close-up', 'print']],
    ['print from afar', [seen('print', 'PELLEVAL', 39)], ['print']],
    ['an even ground', [seen('ground-spread', 40)], ['even-ground']],
    ['an uneven one', [seen('ground-spread', 41)], []],
  ])('%s', (_, observations, proposed) => {
    expect(proposalsOf(none, read(observations))).toEqual(proposed);
  });

  it('nothing of a photo that was not read', () => {
    const problem = { code: 'x', where: 'p1', what: 'x', remedy: 'x' };
    expect(proposalsOf(none, { state: 'unread', photoId: 'p1', problem })).toEqual([]);
    expect(proposalsOf(none, undefined)).toEqual([]);
  });
});
