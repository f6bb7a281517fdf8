import { describe, expect, it } from 'vitest';
import { partsShown } from '../../../src/check/parts-shown';
import { observed } from '../../../src/photo';
import { facts, onlyFinding, readPhoto, said, stated, withPhotos } from './sample';

describe('parts-shown', () => {
  it('names the parts of the model that there are too few photos for', () => {
    expect(said(partsShown, facts({ listing: withPhotos(3, { title: stated('Ondrasse Carryall 30') }) }))).toEqual([
      'gap: 3 photos for 5 parts to be seen: the front, the base, the inside, the handles and the stamp.',
    ]);
  });
  it('is silent with a photo for each part', () => {
    expect(said(partsShown, facts({ listing: withPhotos(5, { title: stated('Ondrasse Carryall 30') }) }))).toEqual([
      'silent',
    ]);
  });
  it('asks for the parts of any bag when the model or the maker is unknown', () => {
    const finding = onlyFinding(partsShown, facts({ maker: null, listing: withPhotos(1) }));
    expect(finding.statement).toMatch(/^1 photo for 8 parts to be seen: the front, the back,/);
  });

  describe('where the buyer says what photos show', () => {
    const shows = (id: string, ...parts: string[]) => {
      const read = readPhoto(id);
      const tags = parts.map((part, at) => observed(id, 'shows-part', part, { id: `${id}-hand-${at}`, by: 'hand' }));
      return read.state === 'read' ? { ...read, observations: [...read.observations, ...tags] } : read;
    };
    const carryall = (photos: ReturnType<typeof shows>[]) =>
      facts({ listing: withPhotos(photos.length, { title: stated('Ondrasse Carryall 30') }), photos });

    it('names those that none of them shows', () => {
      expect(said(partsShown, carryall([shows('p1', 'body', 'base'), shows('p2', 'stamp')]))).toEqual([
        'gap: No photo is said to show the inside or the handles.',
      ]);
    });
    it('leaves open what the others may show, the stamp among them', () => {
      expect(said(partsShown, carryall([shows('p1', 'body', 'base'), shows('p2'), shows('p3'), shows('p4')]))).toEqual([
        'silent',
      ]);
      expect(said(partsShown, carryall([shows('p1', 'body', 'base'), shows('p2'), shows('p3')]))).toEqual([
        'gap: No photo is said to show the inside or the handles.',
      ]);
    });
    it('is silent once each is shown', () => {
      expect(said(partsShown, carryall([shows('p1', 'body', 'base', 'lining', 'handle')]))).toEqual(['silent']);
    });
  });
});
