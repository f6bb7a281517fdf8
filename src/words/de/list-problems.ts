import type { RecordFault } from '../../problem';
import type { ProblemWords } from '../problem-words';

const exported = 'Nichts wurde geändert. Wähle eine Datei, die hier ausgeführt wurde, oder führe sie noch einmal aus.';
const kept = 'Der Eintrag bleibt, wie er ist: Führe ihn aus und melde, was hier steht.';
const update = 'Aktualisiere die Erweiterung. Nichts wurde geändert.';

const faults: Record<RecordFault, string> = {
  missing: 'fehlt',
  'wrong-kind': 'ist von anderer Art, als es sein sollte',
  'too-large': 'ist zu groß oder zu lang',
  'too-small': 'ist zu klein oder zu kurz',
  'not-possible': 'enthält etwas, das dort nicht möglich ist',
  more: 'enthält mehr, als es darf',
};
const placed = ({ place, fault }: { place: string; fault: RecordFault }) =>
  `${place === '' ? 'der Eintrag' : `„${place}“`} ${faults[fault]}`;

/** Failures of the watch list and of files that it wrote. */
export const listProblems = {
  'watch-list-newer': ['eine neuere Fassung der Erweiterung hat die Merkliste geschrieben', update],
  'watch-list-closed': [
    'der Browser hat die Merkliste nicht geöffnet',
    'Schließe andere Fenster der Erweiterung und lade diese Seite neu; prüfe den freien Platz.',
  ],
  'watch-list-failed': [
    'der Browser hat die Änderung nicht ausgeführt',
    'Nichts wurde geändert. Versuche es noch einmal.',
  ],
  'disk-full': [
    'auf dem Datenträger ist kein Platz mehr',
    'Schaffe Platz und sichere noch einmal. Nichts wurde geändert.',
  ],
  'case-not-shown': [
    'dieser Fall enthält etwas, das sich nicht zeigen lässt',
    'Er bleibt, wie er ist, und wird mit ausgeführt.',
  ],
  'record-newer': [
    ({ version, differs }) =>
      differs
        ? 'eine neuere Fassung hat ihn geschrieben, und in der Liste steht er anders'
        : `eine neuere Fassung der Erweiterung hat ihn geschrieben${version === null ? '' : ` (Version ${version})`}`,
    ({ differs }) =>
      differs
        ? 'Aktualisiere die Erweiterung und lies die Datei noch einmal ein.'
        : 'Aktualisiere die Erweiterung; bis dahin wird der Eintrag gezeigt und nicht geändert.',
  ],
  'record-older': ['eine ältere Fassung hat ihn geschrieben', 'Lade diese Seite neu: Dann wird er übertragen.'],
  'record-missing': [
    'der Fall steht nicht mehr in der Merkliste',
    'Er wurde gelöscht, vielleicht in einem anderen Fenster.',
  ],
  'record-none': ['das ist kein Eintrag einer Merkliste', kept],
  'record-not-raised': [({ to }) => `der Eintrag ließ sich nicht in die Form ${to} bringen`, kept],
  'record-damaged': [(fault) => `der Eintrag ist beschädigt: ${placed(fault)}`, kept],
  'record-refused': [
    (refused) =>
      'reply' in refused
        ? 'die Antwort ist leer, schon aufgehoben oder eine zu viel'
        : `er lässt sich nicht sichern: ${placed(refused)}`,
    (refused) =>
      'reply' in refused
        ? 'Nichts wurde geändert.'
        : 'Nichts wurde geändert. Kürze die Notiz, oder lies die Seite noch einmal.',
  ],
  'record-here-unread': [({ why }, _, say) => `die Liste hat ihn schon, und dort gilt: ${say(why)}`, kept],
  'look-missing': ['ein Blick, den der Eintrag nennt, fehlt', kept],
  'look-spoilt': ['ein Blick des Eintrags ist abgeschnitten oder verändert', kept],
  'import-too-large': ['die Datei ist zu groß für eine Ausfuhr', exported],
  'import-cut-off': ['die Datei ist abgeschnitten: ihr Ende fehlt', exported],
  'import-not-json': ['die Datei ist keine Ausfuhr der Merkliste', exported],
  'import-other-format': ['die Datei ist keine Ausfuhr der Merkliste', exported],
  'import-newer': ['eine neuere Fassung der Erweiterung hat die Datei geschrieben', exported],
} satisfies Partial<ProblemWords>;
