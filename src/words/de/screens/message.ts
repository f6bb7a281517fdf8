import type { ScreenWords } from '../../screen-words';

/** The next step, and the message that asks the seller. */
export const messageStrings: ScreenWords['message'] = {
  next: 'Als Nächstes:',
  ask: (questions, photos, against) => {
    const asked = [
      questions > 0 ? (questions === 1 ? '1 Frage' : `${questions} Fragen`) : '',
      photos > 0 ? (photos === 1 ? '1 Bitte um Fotos' : `${photos} Bitten um Fotos`) : '',
    ].filter(Boolean);
    const would = questions + photos === 1 ? 'würde klären' : 'würden klären';
    return `${asked.join(' und ')} ${would}, ${against ? 'was dagegen spricht und was offen ist' : 'was offen ist'}.`;
  },
  choose: 'Wähle das Stück oder sage, dass es eines ist: Dann steht fest, was zu fragen ist.',
  sound: 'Dass etwas passt, zeigt ein ehrliches Angebot, und eine sorgfältige Kopie zeigt es auch.',
  look: 'Die Nachricht ansehen',
  title: 'Nachricht an den Verkäufer',
  notSent: 'Tellstamp schickt nichts: Du kopierst sie und fügst sie in die Nachrichten des Marktplatzes ein.',
  toAsk: 'Was zu fragen ist',
  askedOn: (day) => `gefragt am ${day}`,
  replies: {
    title: 'Was geantwortet wurde',
    titleNone: 'Kam eine Antwort? Hier einfügen',
    paste: 'Füge eine Antwort ein: Was darin behauptet wird, wird mit den Worten des Angebots gelesen.',
    keep: 'Die Antwort behalten',
  },
  clearsUp: (what) => `klärt: ${what}`,
  photo: 'bittet um ein Foto',
  up: (words) => `Nach oben: ${words}`,
  upShort: 'Hoch',
  change: (words) => `Anders schreiben: ${words}`,
  changeShort: 'Ändern',
  changed: 'Die Worte dieser Frage',
  asBefore: 'Wie zuvor',
  own: 'Eine eigene Frage',
  addOwn: 'Hinzufügen',
  removeOwn: (words) => `Herausnehmen: ${words}`,
  removeShort: 'Heraus',
  text: 'Die Nachricht',
  inYours: 'Dasselbe in deiner Sprache',
  language: 'Sprache der Nachricht',
  length: (characters) => `${characters} Zeichen`,
  limit: 'Wie viele Zeichen der Marktplatz höchstens annimmt, falls er sie begrenzt',
  split: (parts) => `Sie geht in ${parts} Teilen, getrennt zwischen Fragen: kopiere und schicke jeden für sich.`,
  part: (at, of, characters) => `Teil ${at} von ${of}, ${characters} Zeichen`,
  partTooLong: 'Dieser Teil ist schon allein zu lang: kürze seine Worte.',
  copyPart: (at) => `Teil ${at} kopieren`,
  copiedPart: (at, of) =>
    at < of
      ? `Teil ${at} ist kopiert. Füge ihn ein, dann kopiere Teil ${at + 1}.`
      : `Teil ${at}, der letzte, ist kopiert.`,
  edited: 'Von Hand geändert: Häkchen ändern sie nicht mehr.',
  later: 'Was angehakt ist, hat sich seit deiner Änderung geändert.',
  addAtEnd: 'Neues am Ende anfügen',
  writeAnew: 'Neu schreiben',
  copy: 'Die Nachricht kopieren',
  copied: 'Kopiert. Füge sie in die Nachrichten des Marktplatzes ein.',
  notCopied: 'Der Browser erlaubte das Kopieren nicht. Der Text ist markiert: drücke Strg C.',
  nothing: 'Das Angebot beantwortet, was zu fragen wäre. Du kannst eine eigene Frage hinzufügen.',
  inMessage: 'In der Nachricht',
  showWords: (words) => `„${words}“ auf der Seite`,
  notOnPage: 'Diese Worte stehen nicht mehr auf der Seite.',
  photoOf: (number) => `Foto ${number}`,
};
