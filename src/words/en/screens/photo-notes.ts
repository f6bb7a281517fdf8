/** What is noticed of how the photos were made. */
export const photoNoteStrings = {
  title: 'Noticed in the photos',
  size: (photos: string, longer: string, shorter: string) => `${photos}: ${longer} × ${shorter} pixels.`,
  sizesWhy:
    'Photos of one listing differ in size where some were cut, saved by another app, or taken with another phone.',
  margins: (photos: string) => `${photos}: an even margin around the picture; the others have none.`,
  marginsWhy: 'Apps and marketplaces lay margins around photos of another shape.',
  evenGrounds: (photos: string) =>
    `${photos}: an even, light ground, as in a catalogue; others show a ground in ordinary light.`,
  evenGroundsWhy: 'A phone or an app may have cut the piece out, or laid a plain ground behind it.',
  taken: (photos: string, day: string) => `${photos}: taken on ${day}, as the file says.`,
  camera: (photos: string, camera: string) => `${photos}: taken with ${camera}, as the file says.`,
  fileWhy:
    'A camera’s clock may be wrong, and a photo may be older than the sale. Marketplaces and chats mostly take this out, so that it is missing says nothing.',
} as const;
