import { describe, expect, it } from 'vitest';
import type { PhotoBytes } from '../../../src/message/protocol';
import { cameBy, type HeldPhoto, keepPhotos, type Photos, sameBytes } from '../../../src/ui/panel/keep-photos';
import { photoLink, viewOf } from './sample-photos';

const full = { way: 'page', fullSize: true } as const;
const captured = { way: 'capture', fullSize: false, part: false, largest: null } as const;
const bytes = (base64: string, came: PhotoBytes['came'] = full): PhotoBytes => ({
  base64,
  mediaType: 'image/jpeg',
  came,
});
const held = (base64: string, came?: PhotoBytes['came']): HeldPhoto => ({
  bytes: bytes(base64, came),
  file: `blob:${base64}`,
});

const before: Photos & { links: ReturnType<typeof photoLink>[] } = {
  links: [photoLink('photo-1', 'front'), photoLink('photo-2', 'stamp'), photoLink('photo-3', 'gone')],
  views: {
    'photo-1': viewOf('photo-1'),
    'photo-2': viewOf('photo-2', ['KV0915']),
    'photo-3': {
      read: {
        state: 'unread',
        photoId: 'photo-3',
        problem: { code: 'photo-late', where: '', what: 'late', remedy: '' },
      },
      thumbnail: null,
      crops: [],
    },
  },
  held: { 'photo-1': held('front', captured), 'photo-2': held('stamp') },
};

describe('what holds of an earlier reading', () => {
  it('is every photo of the same address', () => {
    const kept = keepPhotos(before, before.links, 'keep');
    expect(kept.views).toEqual({ 'photo-1': before.views['photo-1'], 'photo-2': before.views['photo-2'] });
    expect(kept.held).toEqual(before.held);
  });

  it('goes with a photo to its new number, down to its lines', () => {
    const kept = keepPhotos(before, [photoLink('photo-1', 'stamp')], 'keep');
    expect(kept.views).toEqual({ 'photo-1': viewOf('photo-1', ['KV0915']) });
  });

  it('is not what was pictured on the page, where the photo itself may be had now', () => {
    expect(Object.keys(keepPhotos(before, before.links, 'again').views)).toEqual(['photo-2']);
  });

  it('is no photo of another address, and none that was not read', () => {
    expect(keepPhotos(before, [photoLink('photo-1', 'new'), photoLink('photo-3', 'gone')], 'keep').views).toEqual({});
  });

  it('is told by its bytes where the page made its address anew', () => {
    const same = sameBytes(before, 'photo-7', bytes('stamp'));
    expect(same).toEqual(cameBy(viewOf('photo-7', ['KV0915']), full));
    expect(sameBytes(before, 'photo-7', bytes('other'))).toBeNull();
  });
});
