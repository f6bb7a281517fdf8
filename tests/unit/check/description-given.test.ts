import { describe, expect, it } from 'vitest';
import { descriptionGiven } from '../../../src/check/description-given';
import { facts, said, stated, withPhotos } from './sample';

describe('description-given', () => {
  const text = (words: string) => facts({ listing: withPhotos(1, { description: words ? stated(words) : [] }) });
  it('misses a description', () => {
    expect(said(descriptionGiven, text(''))).toEqual(['gap: The listing has no description.']);
    expect(said(descriptionGiven, text('Nice bag'))).toEqual(['gap: The listing describes the piece in 8 characters.']);
  });
  it('is silent on a sentence or two', () => {
    expect(said(descriptionGiven, text('Brown leather bag of 1994, 30 cm wide, small scratch on the base.'))).toEqual([
      'silent',
    ]);
  });
});
