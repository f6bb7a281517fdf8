import { describe, expect, it } from 'vitest';
import { allWords, firstWords, listingText, statedWords } from '../../../src/check/words';
import { emptyListing, stated } from './sample';

describe('allWords', () => {
  it('finds whole words whatever their case and accents, as the text writes them', () => {
    expect(allWords('Une QUALITE  miroir, vraiment', { fr: ['qualité'] })).toEqual(['QUALITE']);
    expect(allWords('inequality', { en: ['equality', 'quality'] })).toEqual([]);
  });
  it('finds words across a line break', () => {
    expect(firstWords('signs\nof wear', { en: ['signs of wear'] })).toBe('signs\nof wear');
  });
  it('finds words inside scripts without spaces', () => {
    expect(allWords('これはレプリカです', { ja: ['レプリカ'] })).toEqual(['レプリカ']);
  });
  it('gives the longer of two that start together, once', () => {
    expect(allWords('stock photos here', { en: ['stock photo', 'stock photos', 'photos'] })).toEqual(['stock photos']);
  });
  it('reads 50,000 characters of one letter without delay', () => {
    expect(allWords('a'.repeat(50_000), { en: ['aaaa', 'a a'] })).toEqual([]);
  });
});

describe('statedWords', () => {
  const table = { en: ['replica', 'mirror quality'], es: ['réplica'], ja: ['レプリカ'] };
  it.each(['No es réplica', 'Geen replica, geen namaak', 'not a replica', 'レプリカではありません', 'keine Replica'])(
    'leaves out what %j denies',
    (text) => {
      expect(statedWords(text, table)).toEqual([]);
    },
  );
  it.each(['no returns. Mirror quality', 'not cheap, mirror quality', 'a replica', 'レプリカです'])(
    'keeps what %j states',
    (text) => {
      expect(statedWords(text, table)).toHaveLength(1);
    },
  );
});

describe('listingText', () => {
  it('does not repeat a description that the visible text holds', () => {
    const listing = { ...emptyListing, title: stated('T'), description: stated('D'), text: 'x D y' };
    expect(listingText(listing)).toBe('T\nx D y');
    expect(listingText({ ...listing, text: 'x y' })).toBe('T\nD\nx y');
  });
});
