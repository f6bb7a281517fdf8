import type { ScreenWords } from '../../screen-words';

/** The sentence over the stamp's picture, and the rows that show how its code is built. */
export const answerStrings: ScreenWords['answer'] = {
  title: 'Was der Stempel sagt',
  seenIn: {
    photo: (number, copy) =>
      `Der Stempel in ${number === null ? 'einem Foto' : `Foto ${number}`}${copy ? ', gelesen aus einer kleinen Kopie,' : ''}`,
    listing: 'Der Code, den das Angebot nennt,',
    typed: 'Der Code, den du eingegeben hast,',
  },
  reads: (what, says) => `${what} bedeutet ${says}.`,
  readsOnly: (what, code) => `${what} lautet ${code}.`,
  said: (words) => `Das Angebot sagt ${words}.`,
  saidNothing: 'Das Angebot nennt kein Jahr.',
  saidAcquired: (days) => `Das Angebot sagt nur, wann das Stück erworben wurde: ${days}.`,
  choose: 'Wähle das Stück, dann steht daneben, was das Angebot davon sagt.',
  saidNothingOf: (piece) => `Das Angebot nennt kein Jahr für: ${piece}.`,
  lot: {
    title: (pieces) =>
      pieces === 0
        ? 'Hier werden mehrere Stücke angeboten'
        : 'Hier werden zwei Stücke angeboten. Auf welchem ist der Stempel?',
    unnamed: 'Die Worte unterscheiden sie nicht; was gesagt wird, wird daher keinem vorgehalten.',
    onePiece: 'Es ist ein Stück',
    because: (words) => `Erkannt an „${words}“ im Titel.`,
    none: 'Bis du wählst, wird nichts vorgehalten, was nur von einem gesagt sein kann.',
    notPlaced: (words) => `Gesagt, und nicht klar wovon: ${words}. Es wird keinem vorgehalten.`,
    price: 'Der Preis gilt für alle und wird keinem vorgehalten.',
    stampIsOn: (piece) => `Dieser Stempel ist auf dem anderen Stück: ${piece}`,
  },
  several: (codes) => `Die Fotos zeigen verschiedene Codes: ${codes}.`,
  unexplained: (maker, guess) => {
    if (maker !== '') return `Noch erklärt ihn keine Datei zu ${maker}.`;
    return guess === null
      ? 'Das Angebot nennt keinen Hersteller, also erklärt ihn keine Datei.'
      : `Noch erklärt ihn keine Datei; der Hersteller ist vielleicht „${guess}“.`;
  },
  unexplainedAlone: 'Keine deiner Dateien erklärt ihn.',
  noneFits: (maker) => `Die Datei zu ${maker} erklärt ihn nicht.`,
  forms: 'Was die Form allein zulässt',
  formShares: 'Wie oft jede gemeint ist',
  formShare: (share) => (share < 0.05 ? 'selten' : `etwa ${Math.max(1, Math.round(share * 10))} von 10`),
  formFits: (said) => `Passt zu ${said}.`,
  formFitsNot: (said) => `Passt nicht zu ${said}.`,
  formsNote: 'Übliche Praxis vieler Hersteller, ohne Quelle: Dieser Hersteller schreibt seine Codes vielleicht anders.',
  noDate: 'eine laufende Nummer: keine Zeit ohne die Tabelle des Herstellers',
  unsure: (what, text) =>
    text === '' ? `${what} ist nicht sicher zu lesen.` : `${what} ist nicht sicher zu lesen: vielleicht ${text}.`,
  none: (read, unread) =>
    unread === 0
      ? `Auf ${read === 1 ? 'dem Foto' : `den ${read} Fotos`} war kein Stempel zu sehen.`
      : `Auf ${read} ${read === 1 ? 'Foto' : 'Fotos'} war kein Stempel zu sehen; ${unread} ließen sich nicht ansehen.`,
  unopened: (photos) =>
    photos === 0
      ? 'Die Seite zeigt kein Foto.'
      : photos === 1
        ? 'Das Foto ließ sich nicht öffnen.'
        : 'Die Fotos ließen sich nicht öffnen.',
  looking: 'Der Stempel wird gesucht.',
  byFile: (maker, invented) =>
    invented ? `nach der Datei zu ${maker}: erfunden, zur Vorführung` : `nach der Datei zu ${maker}`,
  beside: (text, kind, means) => `„${text}“ daneben gehört nicht zum Code, sondern ist ${kind}: ${means}`,
  besideKinds: {
    repair: 'ein Zeichen für eine Reparatur',
    size: 'ein Zeichen für die Größe',
    shop: 'das Zeichen eines Ladens',
    seconds: 'ein Zeichen für zweite Wahl',
    other: 'ein Zeichen',
  },
  byHand: 'von dir gesetzt',
  correct: 'Von Hand berichtigen',
  closer: (number) => `Foto ${number} näher ansehen`,
  rows: 'Wie der Code gebaut ist',
  parts: {
    year: (year) => `Jahr ${year}`,
    quarter: (quarter) => `Quartal ${quarter}`,
    month: (month) => month,
    week: (week) => `Woche ${week}`,
    day: (day) => `Tag ${day}`,
    dayOfYear: (day) => `Tag ${day} des Jahres`,
    workshop: (code, place) => `Werkstatt ${code}${place === '' ? '' : `: ${place}`}`,
    number: (number) => `laufende Nummer ${number}`,
    check: 'ein Prüfzeichen, und es stimmt',
    any: 'unerklärt',
    fixed: 'steht immer da',
  },
};
