import type { ScreenWords } from '../../screen-words';
import { photos } from './count';

/** The photos of a listing, and a part of one that is read by hand. */
export const photosStrings: ScreenWords['photos'] = {
  title: 'Fotos',
  alone: (number) => `Foto ${number}`,
  numbered: (numbers) => `${numbers.length === 1 ? 'Foto' : 'Fotos'} ${numbers.join(', ')}`,
  shows: 'zeigt einen Stempel',
  showsNone: 'kein Stempel gefunden',
  seesNone: 'kein Stempel zu sehen',
  tooWeak: 'zu schwach, um es zu sagen',
  unread: 'nicht gelesen',
  waiting: 'wartet',
  byHand: (number) => `Foto ${number} näher ansehen`,
  close: 'Schließen',
  turn: 'Nach rechts drehen',
  invert: 'Umkehren',
  zone: 'Zu lesender Ausschnitt',
  lineAt: (text) => `Die Zeile, die ${text} lautet`,
  cuts: (text) =>
    `Dieser Ausschnitt schneidet die Zeile an, die sich als ${text} liest, oder endet keine Zeichenbreite neben ihr: Was darin gelesen wird, gilt nicht als ganzer Code.`,
  takeIn: 'Die ganze Zeile einschließen',
  whole: 'Ganzes Foto',
  read: 'Diesen Ausschnitt lesen',
  reading: 'Wird gelesen…',
  found: (number) =>
    number === 0
      ? 'Hier wurde keine gestempelte Zeile gefunden.'
      : `${number === 1 ? 'Eine Zeile' : `${number} Zeilen`} gefunden.`,
  allow: (hosts) => `Lesen von ${hosts} erlauben`,
  noAllowing: 'In einem privaten Fenster wird keine Website dauerhaft erlaubt: Der Browser würde ihren Namen behalten.',
  notRead: (unread, of) => `${unread} von ${photos(of)} nicht gelesen`,
};
