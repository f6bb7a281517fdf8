import type { ScreenWords } from '../../screen-words';

const cases = (number: number) => (number === 1 ? '1 Fall' : `${number} Fälle`);
const records = (number: number) => (number === 1 ? '1 Eintrag' : `${number} Einträge`);

/** Some titles by name, the rest by number. */
function named(titles: readonly string[]): string {
  const most = 5;
  const rest = titles.length - most;
  return rest > 0 ? `${titles.slice(0, most).join(', ')} und ${rest} weitere` : titles.join(', ');
}

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
  of: (title) => `von ${title}`,
  note: 'Notiz',
  saveNote: 'Notiz sichern',
  noteSaved: 'Notiz gesichert.',
  bothNotesSaved: 'Notiz gesichert. Ein anderes Fenster hatte sie inzwischen geändert: Dessen Text steht darunter.',
  hasNote: 'Notiz',
  hasOtherNotes: (number) => (number === 1 ? '1 andere Notiz' : `${number} andere Notizen`),
  dated: {
    title: 'Weißt du anders, wann es gemacht wurde?',
    about:
      'Aus einem Beleg, der Antwort des Verkäufers oder dem Stück in deiner Hand. Mit seinem Code ist es ein Beispiel dafür, wie der Hersteller Daten geschrieben hat.',
    date: 'Gemacht',
    country: 'Land',
    by: 'Bekannt aus',
    ways: {
      receipt: 'einem Beleg',
      answer: 'der Antwort des Verkäufers',
      own: 'dem Stück selbst',
      elsewhere: 'einer anderen Quelle',
    },
    keep: 'Diese Zeit behalten',
    noDate: 'Es ist keine Zeit angegeben.',
    takeBack: 'Zurücknehmen',
    says: (date, from) => `Gemacht: ${date}, bekannt aus ${from}.`,
    give: (code, maker) => `${code} der Datei zu ${maker} als Beispiel geben`,
    noExample: 'Ohne Code und Hersteller ist es kein Beispiel für eine Datei.',
  },
  otherNotes: 'Andere Notizen',
  otherNoteFrom: {
    import: (day) => `Aus einer Datei, eingelesen am ${day}`,
    window: (day) => `Aus einem anderen Fenster, ${day}`,
    bin: (day) => `Aus einem gelöschten Fall desselben Angebots, ${day}`,
  },
  otherStatus: (status) => `Stand dort: ${status}`,
  takeNote: 'Unter meine Notiz setzen',
  takeStatus: 'Diesen Stand nehmen',
  dropNote: 'Entfernen',
  earlierLooks: 'Frühere Blicke',
  foundOtherwise: (day) => `Am ${day} wurde anderes gefunden als heute`,
  foundThen: 'Was damals gefunden wurde',
  foundNow: 'Was heute gefunden wird',
  nothingElse: 'Nichts weiter.',
  judgedBy: (version) =>
    version === null ? 'Damals von einer früheren Fassung beurteilt.' : `Damals von Fassung ${version} beurteilt.`,
  makerFile: {
    same: (maker) => `Die Herstellerdatei von ${maker} ist dieselbe wie damals.`,
    changed: (maker) => `Die Herstellerdatei von ${maker} hat sich seither geändert.`,
    gone: (maker) => `Die Herstellerdatei von ${maker} ist nicht mehr da.`,
    unknown: (maker) => `Welche Herstellerdatei von ${maker} benutzt wurde, ist nicht vermerkt.`,
  },
  back: 'Zurück zur Liste',
  close: 'Schließen',
  page: 'Zum Angebot',
  remove: 'Löschen',
  removed: (title) => `Gelöscht: ${title}`,
  undo: 'Rückgängig',
  bin: 'Gelöscht, 30 Tage aufgehoben',
  restore: 'Zurückholen',
  exportAll: 'Als Datei ausgeben',
  severalFiles: ({ files, photos }) =>
    `${photos === 1 ? 'Ein ganz aufgehobenes Foto passt' : `${photos} ganz aufgehobene Fotos passen`} nicht mit in eine Datei, deshalb werden es ${files}. Sichere sie alle: In beliebiger Reihenfolge eingelesen, bringen sie alles zurück.`,
  saveFile: (file, of) => `Datei ${file} von ${of} sichern`,
  allFilesSaved: 'Fertig',
  importFile: 'Datei einlesen',
  imported: ({ added, joined, bothNotes, same, stayDeleted, newer, leftOut, file, filled }) => [
    `${added} hinzugefügt, ${same} wie hier.`,
    ...(joined.length > 0
      ? [`${cases(joined.length)} schon hier, nun mit dem, was die Datei mehr hat: ${named(joined)}.`]
      : []),
    ...(bothNotes.length > 0 ? [`Deine Notiz ist geblieben, die andere steht daneben: ${named(bothNotes)}.`] : []),
    ...(stayDeleted > 0 ? [`${cases(stayDeleted)}, seither von dir gelöscht: noch unter den gelöschten.`] : []),
    ...(newer > 0 ? [`${records(newer)} einer neueren Fassung, unverändert aufgehoben.`] : []),
    ...(filled > 0
      ? [filled === 1 ? 'Ein Bild, das hier fehlte, kam dazu.' : `${filled} Bilder, die hier fehlten, kamen dazu.`]
      : []),
    ...(file !== null ? [`Das war Datei ${file.number} von ${file.of} einer Ausgabe: Lies auch die anderen ein.`] : []),
    ...(leftOut > 0
      ? [
          leftOut === 1
            ? 'Für ein Foto in voller Größe war in der Datei kein Platz: von ihm kam das kleine Bild mit.'
            : `Für ${leftOut} Fotos in voller Größe war in der Datei kein Platz: von ihnen kam das kleine Bild mit.`,
        ]
      : []),
  ],
  refused: (number) => (number === 1 ? 'Ein Eintrag abgewiesen:' : `${number} Einträge abgewiesen:`),
  /** `where`: the record's number in the file, and its title. */
  refusedRecord: (where, what) => `Eintrag ${where}: ${what}`,
  untitled: 'Ein Eintrag ohne Titel',
  newer: 'Von einer neueren Fassung gesichert. Wird unverändert gezeigt und nicht angetastet; die Ausgabe enthält es.',
  damaged: 'Dieser Eintrag ist nicht lesbar. Er bleibt, wie er ist; die Ausgabe enthält ihn.',
  lost: ({ kind, before }) => {
    const held = before === null ? '' : ` Sie hatte ${records(before)}, als sie zuletzt geändert wurde.`;
    return kind === 'gone'
      ? `Der Browser hat die Merkliste entfernt, die hier war.${held} Lies deine letzte Ausgabe ein.`
      : `Die Merkliste ist eine ältere Kopie ihrer selbst, oder ein Teil von ihr fehlt.${held} Lies deine letzte Ausgabe ein.`;
  },
  understood: 'Ich weiß: mit dieser Liste weiter',
  saved: (day) => `gesichert am ${day}`,
  filter: 'Zeigen',
  find: 'Suchen',
  countedOf: (number, of) => `${number} von ${of === 1 ? '1 Fall' : `${of} Fällen`}`,
  all: 'alle',
};
