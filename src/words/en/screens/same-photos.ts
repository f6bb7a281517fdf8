/** A photo of the case that stands in other kept cases too. */
export const samePhotosStrings = {
  title: 'The same photo in other kept cases',
  own: (photo: number) => `Here: photo ${photo}`,
  ownEarlier: (photo: number, day: string) => `Here: photo ${photo}, read on ${day}, gone since`,
  other: (photo: number, day: string) => `There: photo ${photo}, read on ${day}`,
  mirrored: 'One is the mirror image of the other.',
  cut: 'One shows less than the other.',
  why: 'a seller may list a piece anew or on several sites, a shop may show one photo for several pieces of a kind, and whoever buys may sell with the photos of before.',
} as const;
