import { describe, expect, it } from 'vitest';
import { drawnAnew } from '../../../src/reader/drawn-anew';

/** A worker that draws everything as this picture, or nothing at all. */
class Room extends EventTarget {
  ended = false;
  constructor(readonly picture: Blob | undefined) {
    super();
  }
  postMessage() {
    const { picture } = this;
    if (picture) queueMicrotask(() => this.dispatchEvent(Object.assign(new Event('message'), { data: picture })));
  }
  terminate() {
    this.ended = true;
  }
}

async function drawn(opening: string, { picture, end = false }: { picture?: Blob; end?: boolean }) {
  const opened: Room[] = [];
  const ended = new AbortController();
  const answer = drawnAnew(new Blob([opening, 'and the rest']), ended.signal, () => {
    const room = new Room(picture);
    opened.push(room);
    if (end) queueMicrotask(() => ended.abort());
    return room;
  });
  return { answer: await answer, opened };
}

describe('a photo drawn anew', () => {
  const picture = new Blob(['as browsers show it']);

  it('is drawn by a worker that is gone afterwards, where browsers may show nothing of the file', async () => {
    for (const opening of ['II*\0', 'MM\0*', '\0\0\0\x18ftypheic']) {
      const { answer, opened } = await drawn(opening, { picture });
      expect(answer).toBe(picture);
      expect(opened.map(({ ended }) => ended)).toEqual([true]);
    }
  });

  it('asks no worker where browsers show the file itself', async () => {
    for (const opening of ['\xff\xd8\xff\xe0', '\x89PNG\r\n', 'RIFF\0\0\0\0WEBP', '']) {
      const { answer, opened } = await drawn(opening, { picture });
      expect(answer).toBeNull();
      expect(opened).toEqual([]);
    }
  });

  it('is none where the photo is shown no longer, and its worker ends at once', async () => {
    const { answer, opened } = await drawn('II*\0', { end: true });
    expect(answer).toBeNull();
    expect(opened.map(({ ended }) => ended)).toEqual([true]);
  });
});
