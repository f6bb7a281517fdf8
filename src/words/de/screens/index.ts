import { kitFor } from '../../kit';
import type { ScreenWords } from '../../screen-words';
import { differencesSaid, expectedSaid } from '../codes';
import { fieldNames } from '../fields';
import { fileParts } from '../parts';
import { answerStrings } from './answer';
import { axisStrings } from './axis';
import { benchStrings } from './bench';
import { byHandStrings } from './by-hand';
import { changesStrings } from './changes';
import { copiesStrings } from './copies';
import { dossierStrings } from './dossier';
import { makerStrings } from './makers';
import { messageStrings } from './message';
import { observedStrings } from './observed';
import { overlayStrings } from './overlay';
import { partTagStrings } from './part-tags';
import { photoNoteStrings } from './photo-notes';
import { samePhotosStrings } from './same-photos';
import { sentStrings } from './sent';
import { startStrings } from './start';
import { takeStrings } from './take';
import { travelStrings } from './travel';
import { watchStrings } from './watch';

const photos = (number: number) => (number === 1 ? '1 Foto' : `${number} Fotos`);

/** Every word of the screens in German; whole sentences, and nobody is accused. */
export const screens: ScreenWords = {
  product: 'Tellstamp',
  language: 'Sprache',
  stage: {
    opening: 'Wird geöffnet…',
    page: 'Die Seite wird gelesen…',
    photos: (done, of, now) => {
      const count = `${done} von ${of} fertig…`;
      if (now === null)
        return done === 0 ? `Das Foto des Stempels wird gesucht, ${count}` : `Fotos werden gelesen, ${count}`;
      const which = now.likely ? `Foto ${now.photo}, am ehesten das des Stempels` : `Foto ${now.photo}`;
      const left = of - done - 1;
      return `Gelesen wird ${which}${left > 0 ? `, dann ${left} weitere${left === 1 ? 's' : ''}` : ''}; ${count}`;
    },
    stopped: (read, of) => `Angehalten nach ${read} von ${photos(of)}.`,
    done: (of, copies) =>
      of === 0 ? 'Seite gelesen.' : `Seite und ${photos(of)} gelesen${copiesStrings.among(copies, of)}.`,
    doneBut: (read, of, copies, late) =>
      `Seite gelesen, dazu ${read} von ${photos(of)}${copiesStrings.among(copies, read)}.${late === 0 ? '' : ` ${late} ${late === 1 ? 'hat' : 'haben'} bisher nicht geantwortet.`}`,
    stop: 'Anhalten',
    goOn: 'Den Rest lesen',
    again: 'Noch einmal lesen',
  },

  lapsed: {
    title: 'Diese Seite kann noch nicht gelesen werden',
    first:
      'Tellstamp liest eine Seite nur auf deinen Wunsch. Klicke in der Leiste des Browsers auf Tellstamp, um diese zu lesen.',
    moved:
      'Der Tab zeigt jetzt eine andere Seite, und das Recht, ihn zu lesen, ist mit der letzten erloschen. Klicke in der Leiste des Browsers auf Tellstamp, um diese Seite zu lesen.',
  },
  moved: { text: 'Die Seite hat sich geändert, seit sie gelesen wurde.', read: 'Diese Seite lesen' },
  trouble: { title: 'Das hat nicht geklappt', tryAgain: 'Noch einmal versuchen' },
  notListing: {
    none: 'Auf dieser Seite ist kein Angebot. Öffne die Seite eines Stücks und lies noch einmal.',
    article: 'Diese Seite ist ein Artikel und bietet nichts an. Öffne die Seite eines Stücks und lies noch einmal.',
    cut: 'Diese Seite ist zu groß, um ganz gelesen zu werden. Zeige auf Titel und Preis des Stücks und lies noch einmal.',
    list: 'Diese Seite zeigt viele Stücke. Öffne die Seite eines davon und lies noch einmal.',
    wanted:
      'Auf dieser Seite sucht jemand ein Stück; angeboten wird keines. Öffne die Seite eines Stücks und lies noch einmal.',
    picture:
      'Dieser Tab zeigt ein Foto allein. Sein Stempel lässt sich lesen; was das Angebot sagt, steht auf dessen eigener Seite.',
    pdf: 'Dieser Tab zeigt ein PDF, das dort keine Erweiterung lesen kann. Sein Text lässt sich einfügen; von einem Foto darin lässt sich eine Aufnahme des Stempels vom Schirm lesen.',
  },
  demoMaker: 'Die Herstellerdatei ist zur Vorführung erfunden.',
  inventedName: (maker) => `${maker} (erfunden)`,
  makerFile: (maker) => `Verglichen mit der Herstellerdatei „${maker}“.`,

  head: {
    title: 'Was feststeht',
    against: 'Dagegen spricht',
    open: 'Noch offen',
    notLookedAt: 'Nicht angesehen',
    nothing: 'In dem, was angesehen wurde, ist nichts gefunden worden.',
    nothingWithoutFile: 'Nach dem, was für jede Tasche gilt, ist nichts gefunden worden.',
    aside: 'Du hast etwas zurückgestellt: Es steht unten.',
    nothingOpen: 'Nichts weiter in dem, was angesehen wurde.',
    more: 'Weiter unten steht mehr.',
    failed: (checks) =>
      `Ein Teil von Tellstamp ist hier ausgefallen, und was er ansieht, ist nicht beurteilt: ${checks.join(', ')}.`,
    photos: (numbers) => `${numbers.length === 1 ? 'Foto' : 'Fotos'} ${numbers.join(', ')}: nicht gelesen.`,
    withoutFile: (maker) =>
      `Was nur eine Datei über ${maker || 'den Hersteller'} sagen könnte: Zeit, Werkstatt, Maße, Materialien.`,
    untold: (reasons, more) =>
      `Manches ließ sich nicht sagen: ${reasons.join('; ')}${more ? '; weiter unten mehr' : ''}.`,
    never: 'Wer es gemacht hat: Das kann kein Foto zeigen. Leder, Stiche, Metall, Farben: nicht gemessen.',
    onlyMarked:
      'Wer es gemacht hat: Das kann kein Foto zeigen. Leder, Stiche, Metall, Farben: nur gemessen, wo Sie es markiert haben.',
  },
  findings: {
    title: 'Befunde',
    against: 'Was dagegen spricht',
    contradictions: 'Was nicht beides wahr sein kann',
    doubts: 'Was ungewöhnlich ist',
    gaps: 'Was noch offen ist',
    agreements: 'Was passt',
    fitsNote:
      'Nur, was auch anders hätte ausfallen können. Dass etwas passt, zeigt ein ehrliches Angebot, und eine sorgfältige Kopie zeigt es auch.',
    little: 'Was passt, aber wenig sagt',
    basis: 'Beruht auf',
    tells: 'Warum es etwas besagt',
    innocent: 'Gewöhnlicher Grund',
    settles: 'Was es klären würde',
    source: 'Quelle',
    weight: 'Wie sicher ist das?',
    aside: {
      title: 'Von dir zurückgestellt',
      note: 'Danach wird nicht gefragt und nicht mehr geurteilt. Wird es anders befunden, steht es von selbst wieder da.',
      action: 'Zurückstellen',
      actionOf: (statement) => `Zurückstellen: ${statement}`,
      why: 'Warum stellst du es zurück?',
      done: 'So zurückstellen',
      leave: 'Lassen',
      because: (reason) => `Dein Grund: ${reason}`,
      undoOf: (statement) => `Nicht mehr zurückstellen: ${statement}`,
    },
    hardness: {
      contradiction: 'Beides zugleich kann nicht stimmen.',
      doubt: 'Ungewöhnlich.',
      gap: '',
      agreement: '',
    },
    cannotTell: 'Was sich sonst nicht sagen ließ, und warum',
    failed: (check, message) =>
      `${check}: Diese Prüfung ist hier ausgefallen; über das Angebot sagt das nichts. Alle anderen gelten. (${message})`,
  },
  stamp: {
    title: 'Was der Stempel sagt',
    waiting: 'Noch wurde kein Foto gelesen.',
    none: 'In den gelesenen Fotos wurde kein Stempel gefunden.',
    unsure: 'Nicht sicher genug, um als gelesen zu gelten',
    unclear: (number) =>
      `${number === 1 ? 'Eine weitere Zeile' : `${number} weitere Zeilen`}, nicht sicher genug, um als gelesen zu gelten`,
    candidates: 'Vielleicht',
    mayGoOn:
      'Er kann außerhalb des Fotos oder über den erfassten Teil hinaus weitergehen, oder ein Wort daneben wurde mitgelesen.',
    tooLong:
      'Er ist länger als ein Datumscode, und keine Datei erklärt ihn: eine Nummer anderer Art, oder Worte neben dem Code.',
    upsideDown: (text) => `Auf dem Kopf liest er sich als ${text}.`,
    alike: (place, may) => `Zeichen ${place} kann ${may.join(' oder ')} sein.`,
    share: (probability) => `${Math.round(probability * 100)} von 100`,
    noSystem: 'Keine Datei erklärt ihn bisher.',
    misfit: (slot, value, expected) => `${slot} ${value}: erwartet ${expectedSaid(expected, kitFor('de'))}`,
    nearest: (text, differences, system) =>
      `Nahe: ${text}${differencesSaid(differences, kitFor('de'))}, nach ${system}`,
    barely: (system, says) => `Nach ${system} wäre er ${says}, aber nicht sicher genug.`,
    inPhoto: (number, copy = '') => (copy === '' ? `Foto ${number}` : `Foto ${number}, ${copy}`),
    inListing: 'Im Angebot zitiert',
    typed: 'Von dir eingegeben',
    pictureOf: (number) => `Die gestempelte Zeile in Foto ${number}`,
    type: 'Gib den Code ein, wie du ihn siehst',
    typeHint: 'Buchstaben und Ziffern; Leerzeichen sind gleich.',
    typeTooLong: (most) => `Das ist kein Stempel: Ein Code hat höchstens ${most} Zeichen.`,
    typeAction: 'Deuten',
    remove: (code) => `${code} entfernen`,
    reading: (system) => `nach ${system}`,
    alone: (shape) => `Nur nach seiner Form ist er ${shape}. Üblich, ohne Quelle.`,
    family: (shape) => `nur seiner Form, ${shape}; üblich, ohne Quelle`,
    families: {
      'year-month': 'Jahr und Monat',
      'month-year': 'Monat und Jahr',
      'year-week': 'Jahr und Woche',
      'week-year': 'Woche und Jahr',
      'year-month-three-digits': 'Jahr und einstelliger Monat',
      'month-year-three-digits': 'einstelliger Monat und Jahr',
      'month-stroke-year': 'Monat und Jahr mit Strich oder Punkt dazwischen',
      'year-stroke-month': 'Jahr und Monat mit Strich oder Punkt dazwischen',
      'week-stroke-year': 'Woche und Jahr mit Strich oder Punkt dazwischen',
      'year-stroke-week': 'Jahr und Woche mit Strich oder Punkt dazwischen',
      'year-month-plant': 'Jahr, Monat und zwei Buchstaben eines Werks',
      'month-year-plant': 'Monat, Jahr und zwei Buchstaben eines Werks',
      'plant-year-month': 'zwei Buchstaben eines Werks, Jahr und Monat',
      'plant-month-year': 'zwei Buchstaben eines Werks, Monat und Jahr',
      'plant-week-year': 'zwei Buchstaben eines Werks, Woche und Jahr',
      'plant-year-week': 'zwei Buchstaben eines Werks, Jahr und Woche',
      'plant-interleaved-month': 'zwei Buchstaben eines Werks, die Ziffern von Monat und Jahr abwechselnd',
      'plant-interleaved-week': 'zwei Buchstaben eines Werks, die Ziffern von Woche und Jahr abwechselnd',
      'letter-cycle':
        'ein Buchstabe, der für ein Jahr einer Reihe stehen kann, und eine Zahl: nur die Liste des Herstellers datiert sie',
      'framed-letter':
        'ein gerahmter Buchstabe, der für ein Jahr einer Reihe stehen kann: nur die Liste des Herstellers datiert ihn',
      serial:
        'eine laufende Nummer, die ohne die Tabelle des Herstellers nichts datiert: vergleiche Aufkleber und Karte',
      'long-serial':
        'eine lange laufende Nummer, die ohne die Tabelle des Herstellers nichts datiert: vergleiche Aufkleber und Karte',
    },
    otherReadings: (number) => (number === 1 ? 'eine andere Lesart' : `${number} andere Lesarten`),
  },
  marks: {
    title: 'Zeichen am Stück',
    inListing: 'Im Angebot genannt',
    notVerified: 'Nicht geprüft.',
  },
  answer: answerStrings,
  message: messageStrings,
  waysOn: {
    title: 'Wie es weitergeht',
    start: 'Eine Datei aus diesem Angebot beginnen',
    startHint: 'Name, Modell, Größe, Code und Zeit sind eingetragen; du prüfst jedes.',
    bring: 'Eine Datei einlesen',
    bringHint: 'Von jemandem, der den Hersteller kennt: hineinziehen oder wählen.',
    other: 'Es ist ein anderer Hersteller',
    otherHint: (maker, guess) => {
      if (maker !== '')
        return `Jetzt wird es als von „${maker.slice(0, 60)}“ gelesen. Gib den richtigen ein, oder zeige auf ihn.`;
      return guess === null
        ? 'Die Seite sagt nicht, von wem es ist: Gib den Hersteller ein, oder zeige auf ihn.'
        : 'Die Seite sagt nicht deutlich, von wem es ist. Vielleicht ist es dieser: Übernimm den Namen, gib einen anderen ein, oder zeige auf ihn.';
    },
    name: 'Hersteller',
    use: 'Diesen nehmen',
    point: 'Auf der Seite zeigen',
    note: (url, code, said) =>
      [
        `Begonnen aus ${url}.`,
        code === '' ? '' : `Sein Code lautet ${code}`,
        said === '' ? '' : `das Angebot sagt ${said}`,
      ]
        .filter(Boolean)
        .join(' '),
  },
  axis: axisStrings,
  photos: {
    title: 'Fotos',
    alone: (number) => `Foto ${number}`,
    numbered: (numbers) => `${numbers.length === 1 ? 'Foto' : 'Fotos'} ${numbers.join(', ')}`,
    shows: 'zeigt einen Stempel',
    showsNone: 'kein Stempel gefunden',
    seesNone: 'kein Stempel zu sehen',
    tooWeak: 'zu schwach, um es zu sagen',
    unread: 'nicht gelesen',
    waiting: 'wartet',
    byHand: (number) => `Foto ${number} näher ansehen`,
    close: 'Schließen',
    turn: 'Nach rechts drehen',
    invert: 'Umkehren',
    zone: 'Zu lesender Ausschnitt',
    lineAt: (text) => `Die Zeile, die ${text} lautet`,
    cuts: (text) =>
      `Dieser Ausschnitt schneidet die Zeile an, die sich als ${text} liest, oder endet keine Zeichenbreite neben ihr: Was darin gelesen wird, gilt nicht als ganzer Code.`,
    takeIn: 'Die ganze Zeile einschließen',
    whole: 'Ganzes Foto',
    read: 'Diesen Ausschnitt lesen',
    reading: 'Wird gelesen…',
    found: (number) =>
      number === 0
        ? 'Hier wurde keine gestempelte Zeile gefunden.'
        : `${number === 1 ? 'Eine Zeile' : `${number} Zeilen`} gefunden.`,
    allow: (hosts) => `Lesen von ${hosts} erlauben`,
    noAllowing:
      'In einem privaten Fenster wird keine Website dauerhaft erlaubt: Der Browser würde ihren Namen behalten.',
    notRead: (unread, of) => `${unread} von ${photos(of)} nicht gelesen`,
  },
  copies: copiesStrings,
  byHand: byHandStrings,
  observed: observedStrings,
  overlay: overlayStrings,
  bench: benchStrings,
  samePhotos: samePhotosStrings,
  sent: sentStrings,
  partTags: partTagStrings,
  photoNotes: photoNoteStrings,
  changes: changesStrings,
  parts: fileParts,
  claims: {
    title: 'Was das Angebot sagt',
    none: 'Das Angebot sagt nichts, was sich prüfen lässt.',
    notPlaced: (count) => `Gesagt, nicht zugeordnet (${count})`,
    says: {
      conditions: {
        new: 'neu',
        unused: 'unbenutzt',
        'as-new': 'wie neu',
        'used-very-good': 'gebraucht, sehr gut',
        used: 'gebraucht',
        worn: 'abgenutzt',
        damaged: 'beschädigt',
      },
      channels: { discount: 'Nachlass', outlet: 'Outlet', 'sample-sale': 'Musterverkauf', seconds: 'zweite Wahl' },
      ofPart: (part, material) => `${part}: ${material}`,
      unsure: (words) => `${words}, wie der Verkäufer vermutet`,
      notPlacedNote: 'Wovon das gesagt ist, ist nicht klar. Es wird nichts damit verglichen.',
      takenBy: {
        words: (words: string) => `als Code genommen wegen ${words} davor`,
        place: (words: string) => `als Code genommen wegen seiner Stelle am Stück: ${words}`,
        layout: (maker: string) => `als Code genommen, weil er zu einem Aufbau von ${maker} passt`,
      },
      notPlaced: {
        date: (words) => `ein Datum, in ${words}`,
        material: (words) => `ein Material, in ${words}`,
        code: (words) => `ein Code, in ${words}`,
        measure: (words) => `ein Maß, in ${words}`,
      },
      event: {
        done: {
          replaced: (parts) => `ersetzt: ${parts}`,
          relined: (parts) => `neu gefüttert: ${parts}`,
          're-dyed': (parts) => `nachgefärbt: ${parts}`,
          repaired: (parts) => `repariert: ${parts}`,
        },
        whole: {
          replaced: 'ersetzt',
          relined: 'neu gefüttert',
          're-dyed': 'nachgefärbt',
          repaired: 'aufgearbeitet',
        },
        gifted: 'ein Geschenk',
        by: { maker: 'vom Hersteller', craftsman: 'von einem Handwerker', seller: 'vom Verkäufer selbst' },
        invoice: 'mit Rechnung oder Quittung',
        unsure: 'wie der Verkäufer vermutet',
      },
      noCode: 'keiner',
      paidOutside: 'außerhalb des Marktplatzes',
      returned: 'möglich',
      notReturned: 'ausgeschlossen',
      hedged: 'mit Vorbehalt genannt',
      denied: (words) => `nicht ${words}`,
    },
    sizes: {
      sides: { width: 'Breite', height: 'Höhe', depth: 'Tiefe', strap: 'Riemen', handle: 'Griff' },
      named: (side, length) => `${side} ${length}`,
      row: (lengths, sides) => `${lengths}; die Seiten sind nicht genannt, üblich ist ${sides}`,
      alone: (length) => `${length}; welche Seite, ist nicht gesagt`,
    },
    kinds: {
      made: 'Hergestellt',
      bought: 'Gekauft',
      condition: 'Zustand',
      material: 'Material',
      replaced: 'Ersetzt oder repariert',
      appraised: 'Begutachtet',
      measure: 'Größe',
      maker: 'Hersteller',
      model: 'Modell',
      origin: 'Herkunft',
      code: 'Code',
      'no-code': 'Code',
      price: 'Preis',
      'sale-channel': 'Wie gekauft',
      'payment-outside': 'Bezahlung',
      returns: 'Rückgabe',
      'hedged-authorship': 'Hersteller',
      'grade-of-copy': 'Handelswörter',
      'not-this-piece': 'Fotos',
      'in-stock': 'Mehrere gleicher Art',
      remade: 'Umgearbeitet',
      'not-vouched': 'Nicht verbürgt',
      'packaging-only': 'Was dazugehört',
      assurance: 'Zusicherung',
      hurry: 'Bedingungen',
      wear: 'Gebrauchsspuren',
      leather: 'Leder',
      metal: 'Metall',
      'fresh-part': 'Als frisch beschrieben',
      stored: 'Aufbewahrung',
      'age-word': 'Alter',
      'not-placed': 'Gesagt, nicht zugeordnet',
    },
  },
  pick: {
    title: 'Wurde etwas falsch gelesen oder gar nicht?',
    field: 'Feld',
    point: 'Auf der Seite zeigen',
    invite: (field) =>
      `Klicke auf: ${field}. Pfeiltasten gehen zu den Elementen ringsum, Enter nimmt es, Escape bricht ab.`,
    waiting: 'Klicke es auf der Seite an. Escape bricht ab.',
    end: 'Nicht mehr zeigen',
    nothing: 'Nichts wurde gewählt.',
    kept: 'Von dir gezeigt, für diese Website gemerkt:',
    undo: (field) => `${field} vergessen`,
    fields: fieldNames,
  },
  questions: {
    title: 'Was zu fragen ist',
    photo: 'Foto',
  },
  notRead: { title: 'Was nicht angesehen wurde' },
  save: {
    save: 'Behalten',
    update: 'Auch diesen Blick behalten',
    saved: (day) => `Behalten am ${day}`,
    savedNow: 'Behalten.',
    open: 'Merkliste',
    openCase: 'Den behaltenen Fall öffnen',
    private: 'Das ist ein privates Fenster: Nichts wird behalten.',
    changed: 'Der behaltene Fall ist anders als das, was jetzt zu lesen ist.',
  },
  cautions: {
    title: 'Bevor du dich darauf verlässt',
    lines: [
      'Hier werden Angaben nebeneinander gestellt. Wer das Stück gemacht hat, sagt das nicht: Frage dafür eine sachkundige Prüfstelle.',
      'Bezahle auf dem Marktplatz, wo sein Schutz gilt. Wenn etwas nicht stimmt, melde es dem Marktplatz und nicht öffentlich.',
      'Was du nach dem Kauf tun kannst, hängt vom Recht an deinem Ort und dem des Verkäufers ab.',
    ],
  },
  watch: watchStrings,
  makers: makerStrings,
  start: startStrings,
  take: takeStrings,
  travel: travelStrings,
  dossier: dossierStrings,
  tabs: { label: 'Bereiche', watch: 'Merkliste', makers: 'Herstellerdateien', photo: 'Foto lesen', start: 'Anfang' },
};
