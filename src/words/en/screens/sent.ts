import { count } from './count';

/** Photos of the piece that the page does not show. */
export const sentStrings = {
  title: 'Photos that were sent',
  add: 'Add photos that were sent to you',
  how: 'Drop or paste photos anywhere here, or choose files. They are read, decoded and measured as the listing’s own are.',
  from: 'Where they come from',
  on: 'When they came',
  ways: {
    'seller-chat': 'The seller, in a chat',
    'seller-mail': 'The seller, by mail',
    own: 'Taken by you',
  },
  came: {
    'seller-chat': (day: string) => `sent by the seller in a chat, ${day}`,
    'seller-mail': (day: string) => `sent by the seller by mail, ${day}`,
    own: (day: string) => `taken by you, ${day}`,
  },
  choose: 'Choose photos',
  note: 'Only photos of this piece: what they show counts as the piece’s. Chats mostly make photos smaller and take out when they were taken.',
  reading: (photos: number) => `Reading ${count(photos, 'photo', 'photos')}…`,
  open: (number: number) => `Open photo ${number} at its own size`,
  opened: (number: number) => `Photo ${number} at its own size`,
  close: 'Close the photo',
  notWhole: 'Only the small picture is kept of this photo here.',
  remove: 'Take out',
  removeNumbered: (number: number) => `Take out photo ${number}`,
} as const;
