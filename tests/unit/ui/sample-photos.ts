import type { PhotoLink } from '../../../src/listing/types';
import type { PhotoView } from '../../../src/message/protocol';
import { photoRead } from '../../photo-read';

export const photoLink = (id: string, file: string): PhotoLink => ({
  id,
  url: `https://attic-arcade.example/${file}.jpg`,
  alternatives: [],
  width: null,
  height: null,
  alt: '',
  origins: [],
});

const corner = { x: 0, y: 0 };

/** A photo as the reader tells of it, with a line for each text. */
export const viewOf = (photoId: string, texts: readonly string[] = []): PhotoView => ({
  read: photoRead(photoId, {
    width: 9,
    height: 9,
    hash: '0'.repeat(16),
    lines: texts.map((text, index) => ({
      id: `${photoId}-line-${index + 1}`,
      photoId,
      quad: [corner, corner, corner, corner],
      stampScore: 1,
      engine: 'net',
      lattice: { steps: [] },
      free: { text, probability: 1 },
      measurements: [],
    })),
  }),
  thumbnail: null,
  crops: texts.map((_, index) => ({ lineId: `${photoId}-line-${index + 1}`, picture: 'data:image/jpeg;base64,AA==' })),
});
