import type { ScreenWords } from '../../screen-words';

/** Fotos vom Stück, die nicht auf der Seite stehen. */
export const sentStrings: ScreenWords['sent'] = {
  title: 'Zugeschickte Fotos',
  add: 'Zugeschickte Fotos hinzufügen',
  how: 'Zieh Fotos irgendwo hierher, füge sie ein oder wähle Dateien. Sie werden gelesen, entschlüsselt und vermessen wie die des Angebots.',
  from: 'Woher sie kommen',
  on: 'Wann sie kamen',
  ways: {
    'seller-chat': 'Vom Verkäufer, im Chat',
    'seller-mail': 'Vom Verkäufer, per E-Mail',
    own: 'Von dir aufgenommen',
  },
  came: {
    'seller-chat': (day) => `vom Verkäufer im Chat geschickt, ${day}`,
    'seller-mail': (day) => `vom Verkäufer per E-Mail geschickt, ${day}`,
    own: (day) => `von dir aufgenommen, ${day}`,
  },
  choose: 'Fotos wählen',
  note: 'Nur Fotos von diesem Stück: Was sie zeigen, gilt für das Stück. Chats verkleinern Fotos meist und entfernen, wann sie entstanden sind.',
  reading: (photos) => `${photos === 1 ? 'Ein Foto wird' : `${photos} Fotos werden`} gelesen…`,
  open: (number) => `Foto ${number} in seiner eigenen Größe öffnen`,
  opened: (number) => `Foto ${number} in seiner eigenen Größe`,
  close: 'Foto schließen',
  notWhole: 'Von diesem Foto ist hier nur das kleine Bild aufbewahrt.',
  remove: 'Herausnehmen',
  removeNumbered: (number) => `Foto ${number} herausnehmen`,
};
