import { describe, expect, it } from 'vitest';
import { type Observation, observed, type PhotoReader, readPhoto, seenIn, valueIn } from '../../../src/photo';
import { fail, succeed } from '../../../src/problem';
import { strokes } from './observe/strokes';

const print = (photoId: string, line: string): Observation => observed(photoId, 'print', line);

describe('reading a photo', () => {
  it('joins what readers see and what observers measure, who are told the print', async () => {
    const reader: PhotoReader = async ({ photoId }) => succeed([print(photoId, 'www.cellar-finds.example')]);
    const read = await readPhoto(strokes(640, 480), 'p1', [reader]);
    expect(read).toMatchObject({ state: 'read', photoId: 'p1', width: 640, height: 480 });
    expect(seenIn(read, 'print').map(({ value }) => value)).toEqual(['www.cellar-finds.example']);
    expect(valueIn(read, 'watermark')).toBe('cellar-finds.example');
  });

  it('hands readers the photo at the size at which it is read, and lets that go afterwards', async () => {
    let copy: Parameters<PhotoReader>[0]['copy'] | null = null;
    let sides: unknown[] = [];
    const reader: PhotoReader = async (photo) => {
      copy = photo.copy;
      sides = [copy.small.width, copy.grey.width, copy.across, copy.grey.data.length];
      return succeed([]);
    };
    await readPhoto(strokes(4500, 300), 'p1', [reader]);
    expect(sides).toEqual([3000, 3000, 1.5, 3000 * 200]);
    expect(copy!.grey.data.length).toBe(0);
  });

  it('is unread, never empty, when a reader failed', async () => {
    const problem = { code: 'stamp-engine-failed', where: 'photo p1', what: 'it failed', remedy: 'Read again.' };
    expect(await readPhoto(strokes(640, 480), 'p1', [async () => fail(problem)])).toEqual({
      state: 'unread',
      photoId: 'p1',
      problem,
    });
  });

  it('is unread when it is too small to hold a line', async () => {
    const read = await readPhoto(strokes(23, 90), 'p1', []);
    expect(read).toMatchObject({ state: 'unread', problem: { code: 'photo-too-small' } });
  });
});
