import type { ProblemWords } from '../problem-words';
import { fileProblems } from './file-problems';

const again = 'Lies die Seite noch einmal, oder gib den Code von Hand ein.';
const openAndAgain = 'Öffne das Foto auf der Seite und lies noch einmal, oder gib den Code von Hand ein.';
const otherPhoto =
  'Lade oder sichere das Foto noch einmal, oder lass es dir als JPEG oder PNG schicken; oder gib den Code von Hand ein.';
const still = 'Lass die Seite vorn und ruhig stehen und lies noch einmal.';
const front = 'Hole den Tab mit dem Foto im Bild nach vorn und lies noch einmal.';
const byHand = 'Lies das Foto noch einmal, oder gib den Code von Hand ein.';
const exported = 'Wähle eine Datei, die hier ausgeführt wurde, oder führe sie noch einmal aus.';
const kept = 'Der Eintrag bleibt, wie er ist, und wird mit ausgeführt.';
const update = 'Aktualisiere die Erweiterung. Nichts wurde geändert.';

/** Failures in German. Numbers and names of a failure stand beside it in its own words. */
export const problems: ProblemWords = {
  ...fileProblems,
  'address-refused': ['die Adresse des Fotos ist privat oder keine Webadresse', again],
  'capture-disturbed': ['das Bild der Seite wurde verworfen, weil sie sich bewegt hat oder nicht vorn war', still],
  'capture-failed': ['der Browser gab in der Zeit kein Bild der Seite', front],
  'case-not-shown': ['dieser Fall enthält etwas, das sich nicht zeigen lässt', kept],
  'correction-found-otherwise': [
    'was du zurückgestellt hast, wird nicht mehr oder jetzt anders befunden',
    'Es bleibt aufgehoben: Nimm es zurück, wenn es nichts mehr zur Sache tut.',
  ],
  'correction-not-there': [
    'etwas, das du gesetzt hast, wird nicht mehr so gelesen oder gesagt, wie es war',
    'Es bleibt aufgehoben: Nimm es zurück, wenn es nichts mehr zur Sache tut.',
  ],
  'correction-photo-gone': [
    'etwas, das du gesetzt hast, gehört zu einem Foto, das das Angebot nicht mehr zeigt',
    'Es bleibt aufgehoben: Nimm es zurück, wenn es nichts mehr zur Sache tut.',
  ],
  'data-stale': [
    'die Daten der Seite beschreiben ein anderes Stück als das gezeigte; sie blieben von einer früheren Seite stehen',
    'Genommen wurde, was die Seite zeigt. Lade sie neu, dann hat sie ihre eigenen Daten.',
  ],
  'data-too-long-to-repair': [
    'die Daten der Seite sind fehlerhaft und zu lang zum Ausbessern',
    'Alles übrige wurde gelesen.',
  ],
  'data-unreadable': ['die Daten der Seite sind fehlerhaft', 'Alles übrige wurde gelesen.'],
  'disk-full': [
    'auf dem Datenträger ist kein Platz mehr',
    'Schaffe Platz und sichere noch einmal. Nichts wurde geändert.',
  ],
  'frame-not-read': [
    'ein Teil des Angebots steht in einem Rahmen einer anderen Website und wurde nicht gelesen',
    'Erlaube, von dort zu lesen, oder öffne den Rahmen in einem eigenen Tab.',
  ],
  'data-cut': ['die Daten der Seite sind zu groß und wurden nur zum Teil gelesen', 'Alles übrige wurde gelesen.'],
  'host-not-granted': ['von dieser Adresse zu lesen wurde nicht erlaubt', again],
  'import-cut-off': ['die Datei ist abgeschnitten: ihr Ende fehlt', exported],
  'import-newer': ['eine neuere Fassung der Erweiterung hat die Datei geschrieben', update],
  'import-not-json': ['die Datei ist keine Ausfuhr der Merkliste', exported],
  'import-other-format': ['die Datei ist keine Ausfuhr der Merkliste', exported],
  'import-too-large': ['die Datei ist zu groß für eine Ausfuhr', exported],
  'look-missing': ['ein Blick, den der Eintrag nennt, fehlt', kept],
  'look-spoilt': ['ein Blick des Eintrags ist abgeschnitten oder verändert', kept],
  'message-refused': [
    'eine Nachricht zwischen Teilen der Erweiterung wurde abgewiesen',
    'Lade die Erweiterung neu, wenn es so bleibt.',
  ],
  'more-problems': ['weitere Felder stimmen nicht', 'Verbessere zuerst die genannten.'],
  'nets-not-loaded': [
    'die Leser für Stempel ließen sich nicht laden',
    'Installiere die Erweiterung noch einmal. Bis dahin liest der Leser für Gedrucktes, und der erkennt nur wenige Prägungen.',
  ],
  'no-answer': [
    'ein Teil der Erweiterung hat nicht geantwortet',
    'Klicke auf der Seite des Angebots noch einmal auf den Knopf der Erweiterung.',
  ],
  'no-maker-file': [
    'zu diesem Hersteller liegt keine Datei vor',
    'Lies eine Herstellerdatei ein, oder zeige auf der Seite auf den Hersteller. Bis dahin gelten keine Regeln eines Herstellers.',
  ],
  'no-recogniser': ['der Leser für Schrift fehlt', 'Installiere die Erweiterung noch einmal.'],
  'no-stamp-engine': [
    'kein Leser für Schrift ließ sich starten, also wurde kein Foto angesehen',
    'Gib den Code von Hand ein.',
  ],
  'over-budget': [
    'so viele Fotos werden nicht gelesen',
    'Gib den Code von Hand ein, wenn der Stempel auf einem späteren Foto steht.',
  ],
  'no-listing': [
    'auf dieser Seite wurde kein Angebot gefunden',
    'Öffne ein Angebot, oder zeige auf der Seite auf Titel und Preis.',
  ],
  'page-changing': [
    'die Seite änderte sich beim Lesen immer wieder; was hier steht, kann aus zwei Zuständen sein',
    'Warte, bis die Seite ruhig steht, und lies sie noch einmal.',
  ],
  'page-is-a-list': [
    'diese Seite zeigt viele Stücke und nicht das Angebot eines einzelnen',
    'Öffne eines der Angebote und lies jene Seite.',
  ],
  'page-is-an-article': [
    'diese Seite ist ein Artikel; sie erzählt von Dingen und bietet keines an',
    'Öffne ein Angebot oder zeige auf Titel und Preis, falls hier doch eines angeboten wird.',
  ],
  'page-is-pdf': [
    'dieser Tab zeigt ein PDF, das nicht gelesen wird',
    'Sichere das Foto daraus, oder mach eine Aufnahme des Stempels auf dem Schirm, und lies diese als Foto.',
  ],
  'page-is-picture': [
    'dieser Tab zeigt ein Bild allein; was das Angebot sagt, steht nicht hier',
    'Lies es als Foto, oder geh zurück auf die Seite des Angebots: Ihre Fotos werden mitgelesen.',
  ],
  'page-too-large-to-tell': [
    'die Seite ist zu groß, um ganz gelesen zu werden, und was gelesen wurde, sagt nicht, was sie anbietet',
    'Zeige auf der Seite auf Titel und Preis des Stücks.',
  ],
  'page-still-loading': [
    'die Seite lud noch, als sie gelesen wurde; was später kam, fehlt',
    'Warte, bis die Seite da ist, und lies sie noch einmal.',
  ],
  'pick-the-variant': [
    'das Stück wird in mehreren Ausführungen angeboten, und die Seite sagt nicht, welche zu sehen ist',
    'Wähle auf der Seite die Ausführung und lies sie noch einmal.',
  ],
  'price-not-in-text': [
    'die Seite hat eine Stelle für den Preis, aber dort steht kein Text',
    'Zeige auf der Seite auf den Preis, oder gib ihn ein.',
  ],
  'which-product': [
    'die Daten der Seite beschreiben mehrere Stücke, die gleich gut zu ihr passen',
    'Zeige auf Preis und Titel des Stücks, das du meinst.',
  ],
  'page-empty': ['die Seite gab keinen Text her', 'Lade die Seite neu, oder speichere sie und wähle die Datei.'],
  'page-busy': [
    'die Seite ist so beschäftigt, dass nichts zu lesen war',
    'Warte, bis sie wieder antwortet, oder lade sie neu, und lies sie dann.',
  ],
  'page-cut': [
    'die Seite ist sehr groß und wurde nicht ganz gelesen',
    'Zeige auf der Seite auf das, was fehlt, wenn etwas fehlt.',
  ],
  'page-not-readable': [
    'der Browser lässt diese Seite von keiner Erweiterung lesen',
    'Öffne ein Angebot und klicke dort auf den Knopf der Erweiterung.',
  ],
  'photo-covered': [
    'über dem Foto liegt auf der Seite etwas anderes',
    'Schließe, was darüber liegt, und lies noch einmal, erlaube seine Adresse, oder gib den Code von Hand ein.',
  ],
  'photo-damaged': ['das Foto ist beschädigt oder abgeschnitten', otherPhoto],
  'photo-empty': ['das Foto enthält keine Daten', otherPhoto],
  'photo-file-gone': ['das Foto ist nicht mehr da', 'Wähle die Datei noch einmal.'],
  'photo-foreign-format': ['dieses Bildformat liest der Browser nicht', otherPhoto],
  'photo-is-drawing': [
    'die Seite gibt das Bild als Zeichnung (SVG) und nicht als Foto',
    'Zeigt sie den Stempel, gib den Code von Hand ein, oder bitte um das Foto als JPEG oder PNG.',
  ],
  'photo-late': ['das Foto kam nicht rechtzeitig an', openAndAgain],
  'photo-missing': ['der Server hat das Foto nicht', openAndAgain],
  'photo-no-size': ['das Foto nennt keine mögliche Größe', otherPhoto],
  'photo-not-fetched': ['das Foto wurde nicht geholt', 'Lies das Angebot noch einmal, oder gib das Foto als Datei.'],
  'photo-not-image': ['die Datei ist kein Foto', otherPhoto],
  'photo-not-shown': ['die Seite zeigt das Foto nicht groß genug oder gar nicht', openAndAgain],
  'photo-reading-failed': ['das Foto zu lesen ist misslungen', 'Gib den Code von Hand ein.'],
  'photo-redirected': ['die Adresse des Fotos führt an eine andere, die nicht zu sehen ist', openAndAgain],
  'photo-too-large': ['die Datei ist zu groß', openAndAgain],
  'photo-svg': [
    'das Bild ist eine Zeichnung (SVG) und kein Foto',
    'Zeigt sie den Stempel, gib den Code von Hand ein, oder bitte um das Foto als JPEG oder PNG.',
  ],
  'photo-too-small': ['das Foto ist zu klein für einen Stempel', 'Bitte um ein größeres Foto.'],
  'photo-truncated': ['die Datei endet, bevor sie ihre Größe nennt', otherPhoto],
  'photo-unknown': ['die Seite wurde nicht gelesen oder hat sich seitdem geändert', again],
  'photo-unreachable': ['die Seite darf es nicht holen, oder der Server hat nicht geantwortet', openAndAgain],
  'photo-without-address': [
    'die Seite macht das Foto selbst; es hat keine Adresse',
    'Blättere auf der Seite durch die Fotos und lies noch einmal, oder gib den Code von Hand ein.',
  ],
  'photos-not-read': ['nicht alle Fotos wurden gelesen', again],
  'pick-not-found': [
    'worauf du auf dieser Website gezeigt hast, ist auf dieser Seite nicht da',
    'Zeige noch einmal darauf, oder nimm die Wahl für diese Website zurück.',
  ],
  'pick-unreadable': [
    'worauf du gezeigt hast, ließ sich nicht als das Gewünschte lesen',
    'Zeige noch einmal darauf, oder nimm die Wahl für diese Website zurück.',
  ],
  'price-conflict': [
    'die Daten der Seite nennen einen anderen Preis, als die Seite zeigt',
    'Frage nach dem Preis, oder zeige auf den richtigen.',
    'detail',
  ],
  'measuring-failed': [
    'das Messen ist gescheitert',
    'Verschiebe die Marke, oder öffne das Foto noch einmal.',
    'detail',
  ],
  'reader-failed': ['der Leser ist gescheitert', byHand, 'detail'],
  'reader-late': ['das Lesen dauerte zu lange', byHand],
  'reader-stopped': ['der Leser ist stehen geblieben', byHand],
  'record-damaged': ['der Eintrag ist beschädigt', kept, 'detail'],
  'record-missing': [
    'der Fall steht nicht mehr in der Merkliste',
    'Er wurde gelöscht, vielleicht in einem anderen Fenster.',
  ],
  'record-newer': ['eine neuere Fassung der Erweiterung hat ihn geschrieben', update],
  'record-older': ['eine ältere Fassung hat ihn geschrieben', 'Lade diese Seite neu: Dann wird er übertragen.'],
  'record-none': ['das ist kein Eintrag einer Merkliste', kept],
  'record-not-raised': ['der Eintrag ließ sich nicht in die heutige Form bringen', kept],
  'record-refused': [
    'er lässt sich nicht sichern',
    'Nichts wurde geändert. Kürze die Notiz, oder lies die Seite noch einmal.',
    'detail',
  ],
  'reply-malformed': [
    'ein Teil der Erweiterung hat unverständlich geantwortet',
    'Lade die Seite neu und lies sie noch einmal.',
  ],
  'right-lapsed': [
    'das Recht, diesen Tab zu lesen, ist erloschen',
    'Klicke auf der Seite auf den Knopf der Erweiterung.',
  ],
  'stamp-engine-failed': ['ein Leser für Schrift ist an diesem Foto gescheitert', 'Gib den Code von Hand ein.'],
  'tab-gone': ['der Tab wurde geschlossen', 'Öffne das Angebot noch einmal.'],
  unforeseen: ['etwas Unerwartetes ist geschehen', 'Versuche es noch einmal; bleibt es dabei, melde es.', 'detail'],
  'watch-list-closed': [
    'der Browser hat die Merkliste nicht geöffnet',
    'Schließe andere Fenster der Erweiterung und lade diese Seite neu; prüfe den freien Platz.',
  ],
  'watch-list-failed': [
    'der Browser hat die Änderung nicht ausgeführt',
    'Nichts wurde geändert. Versuche es noch einmal.',
  ],
  'watch-list-newer': ['eine neuere Fassung der Erweiterung hat die Merkliste geschrieben', update],
};
