import type { ProblemWords } from '../problem-words';
import { fieldNames } from './fields';

const restRead = 'Alles Übrige wurde gelesen. Zeige auf der Seite auf das, was fehlt, wenn etwas fehlt.';
const pointAgain = 'Zeige noch einmal darauf, oder nimm die Wahl für diese Website zurück.';
const fields: Record<string, string> = fieldNames;
const fieldOf = (field: string) => fields[field] ?? field;

/** Failures of a page and what it offers, and of what a hand set there. */
export const pageProblems = {
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
  'right-lapsed': [
    'das Recht, diesen Tab zu lesen, ist erloschen',
    'Klicke auf der Seite auf den Knopf der Erweiterung.',
  ],
  'tab-gone': ['der Tab wurde geschlossen', 'Öffne das Angebot noch einmal.'],
} satisfies Partial<ProblemWords>;
