import { count } from './count';

/** The photos of a listing, and a part of one that is read by hand. */
export const photosStrings = {
  title: 'Photos',
  alone: (number: number) => `Photo ${number}`,
  numbered: (numbers: number[]) => `${numbers.length === 1 ? 'Photo' : 'Photos'} ${numbers.join(', ')}`,
  shows: 'shows a stamp',
  showsNone: 'read: no stamp',
  seesNone: 'no stamp seen',
  tooWeak: 'too blurred to read',
  unread: 'not read',
  waiting: 'waiting',
  byHand: (number: number) => `Look at photo ${number} by hand`,
  close: 'Close',
  turn: 'Turn right',
  invert: 'Invert',
  zone: 'Part to read',
  lineAt: (text: string) => `The line that reads ${text}`,
  cuts: (text: string) =>
    `This part cuts the line that reads ${text}, or ends within a character of it: what is read there will not count as a whole code.`,
  takeIn: 'Take in the whole line',
  whole: 'Whole photo',
  read: 'Read this part',
  reading: 'Reading…',
  found: (number: number) =>
    number === 0 ? 'No stamped line found here.' : `${count(number, 'line', 'lines')} found.`,
  allow: (hosts: string) => `Allow reading from ${hosts}`,
  noAllowing: 'In a private window no site is allowed for good: the browser would keep its name.',
  notRead: (unread: number, of: number) => `${unread} of ${count(of, 'photo', 'photos')} not read`,
} as const;
