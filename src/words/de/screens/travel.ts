import type { ScreenWords } from '../../screen-words';

const changes = (number: number) => (number === 1 ? '1 Änderung' : `${number} Änderungen`);

/** The words of maker files that come in and that change where they are from. */
export const travelStrings = {
  more: 'Von einer Adresse oder als eingefügter Text',
  address: 'Adresse der Datei',
  addressHow:
    'Dein Browser fragt dich nach dem Recht für diese eine Adresse. Die Datei wird angefragt, wenn du den Knopf drückst, ohne Cookies.',
  fetch: 'Holen und ansehen',
  asking: 'Der Server wird gefragt …',
  paste: 'Text der Datei. Du kannst ihn auch irgendwo auf dieser Seite einfügen.',
  pasted: 'eingefügter Text',
  openText: 'Diesen Text öffnen',
  fetched: (maker) => `Eine Datei zu ${maker}. Noch ist nichts davon gesichert.`,
  kilobytes: (number) => `${number} kB.`,
  by: (authors) => `Geschrieben von ${authors}.`,
  byNobody: 'Sie sagt nicht, wer sie geschrieben hat.',
  licence: (licence) => `Lizenz: ${licence}.`,
  noLicence: 'Sie nennt keine Lizenz: Frage, bevor du sie weitergibst.',
  fromAddress: (address) => `Von ${address}`,
  sha256: (hash) => `SHA-256 ${hash}`,
  daily: 'Dort einmal am Tag nach Änderungen sehen, wenn Tellstamp geöffnet wird',
  use: 'Diese Datei nehmen',
  leave: 'Lassen',
  originTitle: 'Woher diese Datei ist',
  usedOn: (day) => `Genommen, wie sie am ${day} war.`,
  foundOn: (day) => `Wie sie am ${day} war.`,
  look: 'Jetzt nach Änderungen sehen',
  looked: 'Gefragt.',
  undoUpdate: 'Letzte Aktualisierung zurücknehmen',
  forget: 'Diese Adresse vergessen',
  waiting: (number, day) =>
    number === 0
      ? `Nichts wartet. Zuletzt gefragt am ${day}.`
      : `${changes(number)} ${number === 1 ? 'wartet' : 'warten'}; noch ist nichts davon übernommen.`,
  waitingShort: (number) => (number === 0 ? '' : `${changes(number)} ${number === 1 ? 'wartet' : 'warten'}.`),
  fromHost: (host) => `Von ${host}.`,
  lastFailed: 'Beim letzten Mal war nichts zu holen: Öffne sie, um zu sehen, warum.',
  unfinished: 'Die Änderungen warten, bis in dieser Datei nichts mehr zu verbessern ist.',
  changesTitle: 'Was sich dort geändert hat',
  plain: (number) => (number === 1 ? 'Das wird übernommen, wie es steht' : 'Diese werden übernommen, wie sie stehen'),
  tickAll: 'Alle ankreuzen',
  tickNone: 'Keine ankreuzen',
  kinds: { added: 'neu', changed: 'geändert', removed: 'entfernt' },
  fromTo: (old, now) => `${old} → ${now}`,
  conflict: (title) => `${title}: Du hast es auch geändert`,
  before: 'Vorher:',
  theirs: (kind) => `Von der Adresse (${kind})`,
  useChanges: (number) => (number === 0 ? 'Meines behalten' : `${changes(number)} übernehmen`),
  useHow:
    'Was du nicht ankreuzt, wird ein andermal wieder gezeigt. Deine eigenen Änderungen bleiben darüber stehen. Die Aktualisierung lässt sich zurücknehmen; was du danach änderst, bleibt.',
  updated: (number) => `${changes(number)} übernommen.`,
  undone: (kept) =>
    kept === 0
      ? 'Die letzte Aktualisierung ist zurückgenommen.'
      : `Die letzte Aktualisierung ist zurückgenommen, bis auf ${kept === 1 ? '1 Angabe, die' : `${kept} Angaben, die`} du seither geändert hast.`,
  steps: { update: 'Aktualisierung von der Adresse', undoUpdate: 'Aktualisierung zurücknehmen' },
} satisfies ScreenWords['travel'];
