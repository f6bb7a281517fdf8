import type { Disturbance, NotShown, ProblemData } from '../../problem';
import type { Kit } from '../kit';
import type { ProblemWords } from '../problem-words';
import { fieldNames } from './fields';
import { fileProblems } from './file-problems';
import { listProblems } from './list-problems';

const again = 'Lies die Seite noch einmal, oder gib den Code von Hand ein.';
const openAndAgain = 'Öffne das Foto auf der Seite und lies noch einmal, oder gib den Code von Hand ein.';
const otherPhoto =
  'Lade oder sichere das Foto noch einmal, oder lass es dir als JPEG oder PNG schicken; oder gib den Code von Hand ein.';
const still = 'Lass die Seite vorn und ruhig stehen und lies noch einmal.';
const front = 'Hole den Tab mit dem Foto im Bild nach vorn und lies noch einmal.';
const byHand = 'Lies das Foto noch einmal, oder gib den Code von Hand ein.';
const asJpeg =
  'Bitte um das Foto als JPEG: Telefone senden Fotos so, wenn sie auf größte Verträglichkeit gestellt sind, und ein Bildbetrachter sichert sie so. Oder mach eine Aufnahme des Stempels, so groß der Schirm ihn zeigt, und gib diese dazu.';
const restRead = 'Alles Übrige wurde gelesen. Zeige auf der Seite auf das, was fehlt, wenn etwas fehlt.';
const pointAgain = 'Zeige noch einmal darauf, oder nimm die Wahl für diese Website zurück.';

/** What a program says of itself, behind what it means. */
const report = (said: string, kit: Kit) => (said === '' ? '' : ` (das Programm meldet ${kit.quote(said)})`);

const disturbed: Record<Disturbance, string> = {
  'in-background': 'der Tab ist im Hintergrund',
  'other-tab': 'kam ein anderer Tab nach vorn',
  'other-window': 'kam der Tab in ein anderes Fenster',
  'other-page': 'ging die Seite zu einer anderen über',
  resized: 'änderte das Fenster seine Größe',
  moved: 'wurde die Seite gerollt oder änderte sich um das Foto',
  'taken-off': 'verschwand das Foto von der Seite',
  gone: 'war das Foto nicht mehr zu sehen',
  'no-answer': 'antwortete die Seite nicht',
  'other-shape': 'bekam das Bild eine andere Form als das Fenster',
};
const notShown: Record<NotShown, string> = {
  'not-there': 'die Seite zeigt das Foto nicht',
  'too-small': 'die Seite zeigt das Foto zu klein',
  faded: 'die Seite zeigt das Foto verblasst',
  filtered: 'die Seite zeigt das Foto durch einen Filter verändert',
  turned: 'die Seite zeigt das Foto gedreht oder gespiegelt',
};
const formats: Record<ProblemData['photo-foreign-format']['format'], string> = {
  HEIC: 'eine HEIC-Datei, wie viele Telefone ihre Fotos aufheben',
  CR3: 'die Rohdatei einer Kamera (CR3)',
  PDF: 'in einem PDF',
  TIFF: 'die Rohdatei einer Kamera oder eine TIFF-Datei seltener Form',
  'JPEG XL': 'eine JPEG-XL-Datei',
  'JPEG 2000': 'eine JPEG-2000-Datei',
};
const fields: Record<string, string> = fieldNames;
const fieldOf = (field: string) => fields[field] ?? field;

/** Failures in German. */
export const problems: ProblemWords = {
  ...fileProblems,
  ...listProblems,
  'address-refused': ['die Adresse des Fotos ist privat oder keine Webadresse', again],
  'capture-disturbed': [
    ({ why }) =>
      why === 'in-background' ? disturbed[why] : `das Bild davon wurde verworfen: währenddessen ${disturbed[why]}`,
    still,
  ],
  'capture-failed': [
    ({ why }) =>
      why === 'late' ? 'die Seite zeigte das Foto nicht rechtzeitig' : 'der Browser gab kein Bild des Tabs',
    front,
  ],
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
    ({ kilobytes }, kit) =>
      `die Daten der Seite (${kit.number(kilobytes)} kB) sind fehlerhaft und zu lang zum Ausbessern`,
    restRead,
  ],
  'data-unreadable': ['ein Teil der Daten der Seite ist fehlerhaft und ließ sich nicht ausbessern', restRead],
  'frame-not-read': [
    'ein Teil des Angebots steht in einem Rahmen einer anderen Website und wurde nicht gelesen',
    'Erlaube, von dort zu lesen, oder öffne den Rahmen in einem eigenen Tab.',
  ],
  'data-cut': [
    ({ levels }) =>
      levels === null
        ? 'die Daten der Seite haben zu viele Teile'
        : `die Daten der Seite gehen tiefer als ${levels} Ebenen`,
    'Was dahinter liegt, wurde ausgelassen; das Übrige wurde gelesen.',
  ],
  'host-not-granted': [({ host }) => `von ${host} zu lesen wurde nicht erlaubt`, again],
  'message-refused': [
    ({ why, said }, kit) =>
      `${
        {
          'no-handler': 'eine Nachricht zwischen Teilen der Erweiterung nimmt niemand an',
          'not-from': 'eine Nachricht kam von einem Teil der Erweiterung, der sie nicht senden darf',
          'from-nowhere': 'eine Nachricht kam von keinem Teil der Erweiterung',
          malformed: 'eine Nachricht zwischen Teilen der Erweiterung war fehlerhaft',
        }[why]
      }${report(said, kit)}`,
    'Lade die Erweiterung neu, wenn es so bleibt.',
  ],
  'nets-not-loaded': [
    ({ why, said }, kit) =>
      `${{ 'card-not-json': 'die Karte der Leser für Stempel ist kein JSON', 'card-unfit': 'die Karte der Leser für Stempel passt nicht', 'not-started': 'die Leser für Stempel ließen sich nicht starten' }[why]}${report(said, kit)}`,
    'Installiere die Erweiterung noch einmal. Bis dahin liest der Leser für Gedrucktes, und der erkennt nur wenige Prägungen.',
  ],
  'no-answer': [
    'ein Teil der Erweiterung hat nicht geantwortet',
    'Klicke auf der Seite des Angebots noch einmal auf den Knopf der Erweiterung.',
  ],
  'no-maker-file': [
    ({ names, possible }, kit) =>
      names.length > 1
        ? `das Angebot nennt mehrere Hersteller: ${names.map(kit.quote).join(', ')}`
        : names[0] !== undefined
          ? `zu ${kit.quote(names[0])} passt keine Herstellerdatei`
          : possible !== null
            ? `genannt wird kein Hersteller, zu dem es eine Datei gibt; es könnte ${kit.quote(possible)} sein`
            : 'das Angebot nennt keinen Hersteller',
    'Lies eine Herstellerdatei ein, oder zeige auf der Seite auf den Hersteller. Bis dahin gelten keine Regeln eines Herstellers.',
  ],
  'no-stamp-engine': [
    'kein Leser für Schrift ließ sich starten, also wurde kein Foto angesehen',
    'Gib den Code von Hand ein.',
  ],
  'over-budget': [
    ({ most }) => `nur die ersten ${most} Fotos werden gelesen`,
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
  'page-is-a-wanted-ad': [
    'auf dieser Seite sucht jemand ein Stück; angeboten wird keines',
    'Zeige auf Titel und Preis, falls hier doch eines angeboten wird.',
  ],
  'page-is-pdf': [
    'dieser Tab zeigt ein PDF, das nicht gelesen wird',
    'Sichere das Foto daraus, oder mach eine Aufnahme des Stempels auf dem Schirm, und lies diese als Foto. Erzählt es von Codes eines Herstellers, kopiere seinen Text und füge ihn unter „Herstellerdatei von einer Seite übernehmen“ ein.',
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
    ({ variants }, kit) =>
      `das Stück wird in ${kit.number(variants)} Ausführungen angeboten, und die Seite sagt nicht, welche zu sehen ist`,
    'Wähle auf der Seite die Ausführung und lies sie noch einmal.',
  ],
  'price-not-in-text': [
    'die Seite hat eine Stelle für den Preis, aber dort steht kein Text',
    'Zeige auf der Seite auf den Preis, oder gib ihn ein.',
  ],
  'which-product': [
    ({ pieces }, kit) => `die Daten der Seite beschreiben ${kit.number(pieces)} Stücke, die gleich gut zu ihr passen`,
    'Zeige auf Preis und Titel des Stücks, das du meinst.',
  ],
  'page-empty': ['die Seite gab keinen Text her', 'Lade die Seite neu, oder speichere sie und wähle die Datei.'],
  'page-busy': [
    'die Seite ist so beschäftigt, dass nichts zu lesen war',
    'Warte, bis sie wieder antwortet, oder lade sie neu, und lies sie dann.',
  ],
  'page-cut': [
    ({ nodesRead, attributes, characters }, kit) =>
      `die Seite ist sehr groß; nicht gelesen: ${kit.list([
        ...(nodesRead === null ? [] : [`was nach ihren ersten ${kit.number(nodesRead)} Elementen und Texten kommt`]),
        ...(attributes > 0 ? [kit.count(attributes, { one: '# Attribut', other: '# Attribute' })] : []),
        ...(characters > 0
          ? [kit.count(characters, { one: '# Zeichen langer Texte', other: '# Zeichen langer Texte' })]
          : []),
      ])}`,
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
  'photo-foreign-format': [({ format }) => `das Foto ist ${formats[format]}; das wird hier nicht gelesen`, asJpeg],
  'photo-is-drawing': [
    'die Seite gibt das Bild als Zeichnung (SVG) und nicht als Foto',
    'Zeigt sie den Stempel, gib den Code von Hand ein, oder bitte um das Foto als JPEG oder PNG.',
  ],
  'photo-late': [
    ({ seconds, all }) =>
      seconds === null
        ? 'die Seite brachte das Foto nicht rechtzeitig'
        : `das Foto kam nicht ${all ? `in den ${seconds} Sekunden für alle Fotos` : `in ${seconds} Sekunden`} an`,
    openAndAgain,
  ],
  'photo-missing': [({ status }) => `der Server hat das Foto nicht herausgegeben (Antwort ${status})`, openAndAgain],
  'photo-no-size': [({ width, height }) => `das Foto nennt als Größe ${width} × ${height} Pixel`, otherPhoto],
  'photo-not-fetched': ['das Foto wurde nicht geholt', 'Lies das Angebot noch einmal, oder gib das Foto als Datei.'],
  'photo-not-image': ['die Datei ist kein Foto', otherPhoto],
  'photo-not-shown': [({ why }) => notShown[why], openAndAgain],
  'photo-reading-failed': [
    ({ said }, kit) => `das Foto zu lesen ist misslungen${report(said, kit)}`,
    'Gib den Code von Hand ein.',
  ],
  'photo-redirected': ['die Adresse des Fotos führt an eine andere, die nicht zu sehen ist', openAndAgain],
  'photo-too-large': [
    (photo) =>
      'megabytes' in photo
        ? `die Datei ist größer als ${photo.megabytes} MB`
        : `das Foto hat ${photo.width} × ${photo.height} Pixel; gelesen werden höchstens ${photo.most[0]} Millionen und ${photo.most[1]} an einer Seite`,
    'Bitte um eine kleinere Fassung des Fotos oder um ein Bild des Stempels allein; oder gib den Code von Hand ein.',
  ],
  'photo-svg': [
    'das Bild ist eine Zeichnung (SVG) und kein Foto',
    'Zeigt sie den Stempel, gib den Code von Hand ein, oder bitte um das Foto als JPEG oder PNG.',
  ],
  'photo-too-small': [
    ({ width, height }) => `das Foto hat ${width} × ${height} Pixel und ist zu klein für einen Stempel`,
    'Bitte um ein größeres Foto.',
  ],
  'photo-truncated': ['die Datei endet, bevor sie ihre Größe nennt', otherPhoto],
  'photo-unknown': ['die Seite wurde nicht gelesen oder hat sich seitdem geändert', again],
  'photo-unreachable': ['die Seite darf es nicht holen, oder der Server hat nicht geantwortet', openAndAgain],
  'photo-without-address': [
    ({ photos }, kit) =>
      kit.count(photos, {
        one: '# Foto macht die Seite selbst; es hat keine Adresse',
        other: '# Fotos macht die Seite selbst; sie haben keine Adresse',
      }),
    'Blättere auf der Seite durch die Fotos und lies noch einmal, oder gib den Code von Hand ein.',
  ],
  'photos-not-read': [
    ({ unread, of, reasons }, _, say) => `${unread} von ${of} Fotos nicht gelesen: ${reasons.map(say).join('; ')}`,
    again,
  ],
  'pick-not-found': [
    ({ field }) => `worauf du auf dieser Website als ${fieldOf(field)} gezeigt hast, das ist auf dieser Seite nicht da`,
    pointAgain,
  ],
  'pick-unreadable': [
    ({ field }) => `worauf du als ${fieldOf(field)} gezeigt hast, das ließ sich nicht so lesen`,
    pointAgain,
  ],
  'price-conflict': [
    ({ inData, seen }) => `die Daten der Seite nennen einen anderen Preis (${inData}), als die Seite zeigt (${seen})`,
    'Frage nach dem Preis, oder zeige auf den richtigen.',
  ],
  'measuring-failed': [
    ({ said }, kit) => `das Messen ist gescheitert${report(said, kit)}`,
    'Verschiebe die Markierung, oder öffne das Foto noch einmal.',
  ],
  'reader-failed': [({ said }, kit) => `der Leser ist gescheitert${report(said, kit)}`, byHand],
  'reader-late': [({ seconds }) => `das Lesen dauerte länger als ${seconds} Sekunden`, byHand],
  'reader-stopped': [({ said }, kit) => `der Leser ist stehen geblieben${report(said, kit)}`, byHand],
  'reply-malformed': [
    ({ said }, kit) => `ein Teil der Erweiterung hat anders geantwortet als vereinbart${report(said, kit)}`,
    'Lade die Seite neu und lies sie noch einmal.',
  ],
  'right-lapsed': [
    'das Recht, diesen Tab zu lesen, ist erloschen',
    'Klicke auf der Seite auf den Knopf der Erweiterung.',
  ],
  'stamp-engine-failed': [
    ({ said }, kit) => `ein Leser für Schrift ist an diesem Foto gescheitert${report(said, kit)}`,
    'Lies das Foto noch einmal, oder gib den Code von Hand ein.',
  ],
  'tab-gone': ['der Tab wurde geschlossen', 'Öffne das Angebot noch einmal.'],
  unforeseen: [
    ({ said }, kit) => `etwas Unerwartetes ist geschehen${report(said, kit)}`,
    'Versuche es noch einmal; bleibt es dabei, melde es.',
  ],
};
