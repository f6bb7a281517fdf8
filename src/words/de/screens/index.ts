import type { ScreenWords } from '../../screen-words';
import { fieldNames } from '../fields';
import { fileParts } from '../parts';
import { answerStrings } from './answer';
import { axisStrings } from './axis';
import { benchStrings } from './bench';
import { byHandStrings } from './by-hand';
import { changesStrings } from './changes';
import { claimsStrings } from './claims';
import { copiesStrings } from './copies';
import { photos } from './count';
import { dossierStrings } from './dossier';
import { findingsStrings } from './findings';
import { headStrings } from './head';
import { makerStrings } from './makers';
import { messageStrings } from './message';
import { observedStrings } from './observed';
import { overlayStrings } from './overlay';
import { partTagStrings } from './part-tags';
import { photoNoteStrings } from './photo-notes';
import { photosStrings } from './photos';
import { samePhotosStrings } from './same-photos';
import { sentStrings } from './sent';
import { stampStrings } from './stamp';
import { startStrings } from './start';
import { takeStrings } from './take';
import { travelStrings } from './travel';
import { watchStrings } from './watch';

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

  head: headStrings,
  findings: findingsStrings,
  stamp: stampStrings,
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
  photos: photosStrings,
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
  claims: claimsStrings,
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
