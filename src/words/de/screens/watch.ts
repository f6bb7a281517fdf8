import type { ScreenWords } from '../../screen-words';

const cases = (number: number) => (number === 1 ? '1 Fall' : `${number} Fälle`);

/** The words of the watch list. */
export const watchStrings: ScreenWords['watch'] = {
  title: 'Merkliste',
  empty: 'Noch nichts gesichert. Öffne ein Angebot, klicke auf Tellstamp und sichere es aus der Seitenleiste.',
  counted: cases,
  statuses: {
    watching: 'beobachtet',
    asked: 'gefragt',
    answered: 'beantwortet',
    bought: 'gekauft',
    passed: 'verzichtet',
  },
  status: 'Stand',
  note: 'Notiz',
  saveNote: 'Notiz sichern',
  noteSaved: 'Notiz gesichert.',
  open: 'Öffnen',
  close: 'Schließen',
  page: 'Zum Angebot',
  remove: 'Löschen',
  removed: (title) => `Gelöscht: ${title}`,
  undo: 'Rückgängig',
  bin: 'Gelöscht, 30 Tage aufgehoben',
  restore: 'Zurückholen',
  exportAll: 'Als Datei ausgeben',
  importFile: 'Datei einlesen',
  imported: (added, renewed, kept) => `${added} hinzugefügt, ${renewed} erneuert, ${kept} so geblieben.`,
  refused: (number) => (number === 1 ? 'Ein Eintrag abgewiesen:' : `${number} Einträge abgewiesen:`),
  newer: 'Von einer neueren Fassung gesichert. Wird unverändert gezeigt und nicht angetastet; die Ausgabe enthält es.',
  damaged: 'Dieser Eintrag ist nicht lesbar. Er bleibt, wie er ist; die Ausgabe enthält ihn.',
  wiped:
    'Der Browser hat die Daten dieser Erweiterung entfernt: Die Liste ist leer, obwohl Fälle gesichert waren. Lies deine letzte Ausgabe ein.',
  understood: 'Mit einer leeren Liste beginnen',
  saved: (day) => `gesichert am ${day}`,
  filter: 'Zeigen',
  all: 'alle',
};
