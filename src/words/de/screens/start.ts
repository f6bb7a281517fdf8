import type { ScreenWords } from '../../screen-words';

/** The words of the first page, and of codes and photos without a listing. */
export const startStrings: ScreenWords['start'] = {
  title: 'Ein Angebot neben seinen eigenen Stempel halten',
  about:
    'Tellstamp liest Worte und Fotos eines Angebots auf deinem Rechner und stellt nebeneinander, was der Code des Herstellers sagt, was der Verkäufer sagt und was noch niemand gezeigt hat. Es sagt nicht, von wem ein Stück ist. Es gibt kein Konto, und hier wird nichts von dir verlangt.',
  demo: 'Zum Ausprobieren: ein erfundenes Angebot',
  demoAbout:
    'Eine erfundene Tasche eines erfundenen Herstellers. Es dauert eine halbe Minute und braucht weder Laden noch Erlaubnis.',
  openDemo: 'Das Angebot zum Ausprobieren öffnen',
  demoNote:
    'Alles hier ist zur Vorführung erfunden: Tasche, Hersteller, Verkäufer und Laden. Gelesen wird es wie jedes Angebot. Behalten wird nichts davon.',
  code: 'Einen Code lesen',
  whose: 'Wessen Codes',
  nobody: 'Hersteller ohne Datei oder unbekannt',
  photo: 'Ein Foto lesen',
  photoHow: 'Zieh ein Foto hierher, füge eines ein oder wähle eine Datei. Es bleibt auf diesem Rechner.',
  choosePhoto: 'Ein Foto wählen',
  photoForms: 'JPEG, PNG, WebP, AVIF, GIF',
  files: 'Dateien zu Herstellern',
  filesAbout:
    'Zu einem echten Hersteller liegt keine bei. Eine Datei sagt, wie ein Hersteller seine Stücke datiert hat; auf einem dieser Wege bekommst du eine.',
  bring: 'Eine Datei von jemandem einlesen, der den Hersteller kennt',
  take: 'Sie von einer Seite nehmen, die sagt, wie die Codes gebaut sind',
  workOut: 'Sie aus Codes erschließen, deren Zeit du kennst',
  fromListing: 'Mit einem Angebot beginnen: Das bietet die Leiste neben der Seite an.',
  beside: 'Neben einem Angebot',
  besideHow:
    'Öffne die Seite eines Stücks und drücke auf Tellstamp. Die Leiste öffnet sich. Vorher wird nichts gelesen.',
  keys: (keys) => `Die Tasten ${keys} tun dasselbe. Ändern lassen sie sich in der Liste der Erweiterungen.`,
  noKeys: 'Keine Tasten sind dafür gesetzt. Setzen lassen sie sich in der Liste der Erweiterungen.',
  noButton: 'Kein Knopf zu sehen? Öffne die Liste der Erweiterungen und hefte ihn an.',
  kept: 'Was behalten wird, was erlaubt ist',
  keptWhat:
    'Behalten wird, was du behältst, auf diesem Rechner; aus privaten Fenstern nichts. Gesendet wird nichts als Anfragen nach den eigenen Fotos eines Angebots und nach einer Herstellerdatei unter einer Adresse, die du genannt hast.',
  allowedNone:
    'Noch ist kein Laden erlaubt. Gefragt wird, wenn einer gebraucht wird; hier steht er dann zum Zurücknehmen.',
  allowed: 'Du hast das Lesen erlaubt von:',
  takeBack: 'Zurücknehmen',
  takeBackFrom: (host) => `Zurücknehmen: ${host}`,
  given: 'Dein eigenes Foto, keines dieser Seite',
  readThis: 'Dieses Foto lesen',
  otherPhoto: 'Ein Foto lesen',
};
