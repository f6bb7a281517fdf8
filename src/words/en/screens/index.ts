import { fieldNames } from '../fields';
import { fileParts } from '../parts';
import { answerStrings } from './answer';
import { axisStrings } from './axis';
import { benchStrings } from './bench';
import { byHandStrings } from './by-hand';
import { changesStrings } from './changes';
import { claimsStrings } from './claims';
import { type Copies, copiesStrings } from './copies';
import { count } from './count';
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

/** Every word of the screens, in one typed place. Functions take what a sentence needs and give the whole sentence. */
export const screens = {
  product: 'Tellstamp',
  language: 'Language',
  stage: {
    opening: 'Opening…',
    page: 'Reading the page…',
    photos: (done: number, of: number, now: { photo: number; likely: boolean } | null) => {
      const count = `${done} of ${of} done…`;
      if (now === null) return done === 0 ? `Looking for the photo of the stamp, ${count}` : `Reading photos, ${count}`;
      const which = now.likely ? `photo ${now.photo}, the likeliest to show the stamp` : `photo ${now.photo}`;
      const left = of - done - 1;
      return `Reading ${which}${left > 0 ? `, then ${left} more` : ''}; ${count}`;
    },
    stopped: (read: number, of: number) => `Stopped after ${read} of ${count(of, 'photo', 'photos')}.`,
    done: (of: number, copies: Copies) =>
      of === 0 ? 'Page read.' : `Page and ${count(of, 'photo', 'photos')} read${copiesStrings.among(copies, of)}.`,
    doneBut: (read: number, of: number, copies: Copies, late: number) =>
      `Page read, and ${read} of ${count(of, 'photo', 'photos')}${copiesStrings.among(copies, read)}.${late === 0 ? '' : ` ${late} did not answer so far.`}`,
    stop: 'Stop',
    goOn: 'Read the rest',
    again: 'Read again',
  },

  lapsed: {
    title: 'This page cannot be read yet',
    first:
      'Tellstamp reads a page only when you ask. Click the Tellstamp button in the browser’s toolbar to read this one.',
    moved:
      'The tab shows another page now, and the right to read it ended with the last one. Click the Tellstamp button in the browser’s toolbar to read this page.',
  },
  moved: { text: 'The page has changed since it was read.', read: 'Read this page' },
  trouble: { title: 'That did not work', tryAgain: 'Try again' },
  notListing: {
    none: 'No listing was found on this page. Open the page of one piece and read again.',
    article: 'This page is an article and offers nothing. Open the page of one piece and read again.',
    cut: 'This page is too large to be read whole. Point at the title and the price of the piece and read again.',
    list: 'This page shows many pieces. Open the page of one of them and read again.',
    wanted: 'Somebody looks for a piece on this page; none is offered. Open the page of one piece and read again.',
    picture:
      'This tab shows a photo by itself. Its stamp can be read; what the listing says stands on the listing’s own page.',
    pdf: 'This tab shows a PDF document, which no extension can read there. Its text can be pasted; of a photo in it, a screenshot of the stamp can be read.',
  },
  demoMaker: 'The maker file is invented, for demonstration.',
  inventedName: (maker: string) => `${maker} (invented)`,
  makerFile: (maker: string) => `Checked against the maker file “${maker}”.`,

  head: headStrings,
  findings: findingsStrings,
  stamp: stampStrings,
  marks: {
    title: 'Marks on the piece',
    inListing: 'Named in the listing',
    notVerified: 'Not verified.',
  },
  answer: answerStrings,
  message: messageStrings,
  waysOn: {
    title: 'Ways on',
    start: 'Start a file from this listing',
    startHint: 'Name, model, size, code and date are filled in; you check each.',
    bring: 'Bring in a file',
    bringHint: 'From someone who knows the maker: drop or choose it.',
    other: 'It is another maker',
    otherHint: (maker: string, guess: string | null) => {
      if (maker !== '') return `Now it is read as of “${maker.slice(0, 60)}”. Type or point at the right one.`;
      return guess === null
        ? 'The page does not say whose it is: type the maker, or point at it.'
        : 'The page does not say plainly whose it is. It may be this maker: use the name, type another, or point at it.';
    },
    name: 'Maker',
    use: 'Use this maker',
    point: 'Point at it on the page',
    note: (url: string, code: string, said: string) =>
      [`Begun from ${url}.`, code === '' ? '' : `Its code reads ${code}`, said === '' ? '' : `the listing says ${said}`]
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
    title: 'Something was read wrong, or not at all?',
    field: 'Field',
    point: 'Point at it on the page',
    invite: (field: string) => `Click: ${field}. Arrow keys go to the elements around it, Enter takes it, Escape ends.`,
    waiting: 'Click it on the page. Escape ends.',
    end: 'Stop pointing',
    nothing: 'Nothing was chosen.',
    kept: 'Pointed at by you, remembered for this site:',
    undo: (field: string) => `Forget ${field}`,
    fields: fieldNames,
  },
  questions: {
    title: 'What to ask the seller',
    photo: 'photo',
  },
  notRead: { title: 'What was not looked at' },
  save: {
    save: 'Keep',
    update: 'Keep this look too',
    saved: (day: string) => `Kept on ${day}`,
    savedNow: 'Kept.',
    open: 'Watch list',
    openCase: 'Open the kept case',
    private: 'This is a private window: nothing is stored.',
    changed: 'The kept case differs from what is read now.',
  },
  cautions: {
    title: 'Before you rely on this',
    lines: [
      'This sets facts side by side. It does not say who made the piece: for that, ask a qualified authenticator.',
      'Pay inside the marketplace, where its protection holds. If something is wrong, report it to the platform, not in public.',
      'What you may do after buying depends on the law where you and the seller live.',
    ],
  },
  watch: watchStrings,
  makers: makerStrings,
  start: startStrings,
  take: takeStrings,
  travel: travelStrings,
  dossier: dossierStrings,
  tabs: { label: 'Sections', watch: 'Watch list', makers: 'Maker files', photo: 'Read a photo', start: 'Start' },
} as const;
