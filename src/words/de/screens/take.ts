import type { ScreenWords } from '../../screen-words';

/** The words of "take a maker file from a page". */
export const takeStrings: ScreenWords['take'] = {
  way: 'Von einer Seite übernehmen',
  wayHint: 'Eine Seite, die von den Codes des Herstellers erzählt: Tabelle, Liste, Artikel.',
  fromThis: 'Herstellerdatei von dieser Seite übernehmen',
  fromThisHint: 'Wo sie von Codes, Werkstätten, Modellen oder Preisen eines Herstellers erzählt.',
  reading: 'Die Seite wird gelesen …',
  nothing: 'Diese Seite sagt nichts von Codes, Werkstätten, Modellen oder Preisen, das sich übernehmen ließe.',
  title: 'Herstellerdatei von einer Seite übernehmen',
  about:
    'Öffne die Seite, die von einem Hersteller erzählt, klicke dort auf den Knopf von Tellstamp und wähle „Herstellerdatei von dieser Seite übernehmen“. Oder bring die Seite hierher: als gespeicherte Datei oder mit eingefügtem Quelltext.',
  choose: 'Gespeicherte Seite wählen',
  paste: 'Quelltext der Seite (HTML) oder ihr Text, etwa aus einem PDF kopiert',
  pdf: 'Ein PDF wird nicht als Datei gelesen. Öffne es, markiere seinen Text, kopiere ihn und füge ihn unten ein. Sind seine Seiten Fotos, in denen sich nichts markieren lässt, gibt es keinen Text: Tippe ab, was dort steht.',
  pasteText: 'Text einfügen',
  pasteTextHint: 'Wenn es von Codes eines Herstellers erzählt: Markiere den Text darin, kopiere ihn und füge ihn ein.',
  pasted: 'eine eingefügte Seite',
  read: 'Lesen',
  gone: 'Das Gelesene ist fort, weil der Browser geschlossen wurde. Lies die Seite noch einmal.',
  found: (number, makers) =>
    makers > 1
      ? `Diese Seite sagt ${number} Dinge von ${makers} Herstellern. Wähle, was in eine Datei kommt; jeder Hersteller hat seine eigene.`
      : `Diese Seite sagt ${number === 1 ? 'eines' : `${number} Dinge`}. Wähle, was in die Datei kommt.`,
  from: (title, address, day) => `„${title}“, ${address}, gelesen am ${day}`,
  nothingSaved: 'Zu jedem stehen die Worte der Seite. Gespeichert wird erst, wenn du den Entwurf öffnest.',
  noMaker: 'Kein Hersteller genannt',
  makerField: 'Hersteller',
  askMaker: {
    title: 'Von welchem Hersteller?',
    label: 'Name des Herstellers',
    check: 'Die Seite sagt das nicht deutlich. Prüfe den Namen oder schreib ihn so, wie der Hersteller ihn schreibt.',
    emptied: 'Wähle einen der Namen von der Seite oder schreib ihn so, wie der Hersteller ihn schreibt.',
    none: 'Die Seite nennt keinen Hersteller. Schreib den Namen so, wie der Hersteller ihn schreibt.',
    others: 'Andere Namen auf der Seite:',
  },
  askAmong: {
    about: 'Die Seite handelt vielleicht nur von einem dieser Hersteller und erwähnt andere nebenbei.',
    only: (maker: string) => `Nur ${maker}`,
    each: 'Von jedem, wie gezeigt',
  },
  all: (number) => `Alle ${number} dieser Tabelle`,
  allOfList: (number) => `Alle ${number} dieser Liste`,
  allOfText: (number) => `Alle ${number} dieses Absatzes`,
  open: (number, maker) =>
    maker === ''
      ? `Die ${number} gewählten als Entwurf öffnen`
      : `Die ${number} gewählten als Entwurf für ${maker} öffnen`,
  addTo: (number, maker) => `Die ${number} gewählten in deine Datei ${maker} übernehmen`,
  step: (title) => `von „${title.slice(0, 40)}“ übernehmen`,
  tryCode: {
    label: 'Einen Code mit dem Angekreuzten probieren',
    reads: (says) => `Mit dem Angekreuzten würde er ${says} bedeuten.`,
    nothing: 'Nichts Angekreuztes erklärt ihn.',
    unfinished: 'Das Angekreuzte ist für sich keine ganze Datei: Öffne den Entwurf und ergänze ihn.',
  },
  kinds: {
    plant: 'Werkstätten',
    'code-system': 'Wie Codes gebaut sind',
    example: 'Codes, deren Datum genannt ist',
    'year-letter': 'Buchstaben der Jahre',
    serial: 'Nummern nach Jahren',
    stamped: 'Wann gestempelt wurde',
    carrier: 'Wo der Code sitzt',
    model: 'Modelle und Maße',
    construction: 'Woraus es gemacht ist',
    price: 'Neupreise',
  },
  doubts: {
    contradicted: 'an anderer Stelle sagt die Seite etwas anderes',
    withdrawn: 'die Seite nimmt es zurück',
    disputed: 'die Seite bezweifelt es',
    backwards: 'die Jahre standen verkehrt herum',
    'look-alike': 'Buchstaben, die nur wie lateinische aussehen',
    'which-maker': 'von welchem Hersteller, ist nicht gesagt',
    'examples-disagree': 'die eigenen Beispiele lesen sich anders',
    'by-examples-only': 'wie er gebaut ist, sagen nur die Beispiele',
  },
  showOnPage: 'Auf der Seite zeigen',
  showOnPageOf: (entry) => `Auf der Seite zeigen: ${entry}`,
  notOnPage: 'Die Seite zeigt diese Worte nicht mehr, oder ihr Tab ist geschlossen.',
  unknownPlace: 'Land nicht genannt',
  still: 'noch',
  yearsOpen: 'Jahre nicht genannt',
  years: (from, to, aboutFrom, aboutTo) => {
    const first = from === null ? null : `${aboutFrom ? 'etwa ' : ''}${from}`;
    const last = to === null ? null : `${aboutTo ? 'etwa ' : ''}${to}`;
    if (first === null) return last === null ? 'Jahre nicht genannt' : `bis ${last}`;
    if (last === null) return `ab ${first}`;
    return first === last ? first : `${first} bis ${last}`;
  },
  numbers: (first, last) => (last === null ? `ab Nummer ${first}` : `Nummern ${first} bis ${last}`),
  letter: (letter, year) => `${letter} ist ${year}`,
  reads: (code, reads) => `${code} ist ${reads}`,
  newPrice: (sum, year) => `${sum} im Jahr ${year}`,
  stampedFrom: 'Codes wurden gestempelt',
};
