import type { FindingKind } from '../../../check/types';
import { type Difference, type Expected, expectedWords } from '../../../code';
import { differencesSaid } from '../codes';
import { fieldNames } from '../fields';
import { fileParts } from '../parts';
import { answerStrings } from './answer';
import { axisStrings } from './axis';
import { benchStrings } from './bench';
import { byHandStrings } from './by-hand';
import { changesStrings } from './changes';
import { type Copies, copiesStrings } from './copies';
import { count } from './count';
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

  head: {
    title: 'What stands',
    against: 'Speaks against',
    open: 'Still open',
    notLookedAt: 'Not looked at',
    nothing: 'Nothing was found in what was looked at.',
    nothingWithoutFile: 'Nothing was found by what holds for any bag.',
    aside: 'You set something aside: it stands below.',
    nothingOpen: 'Nothing more in what was looked at.',
    more: 'And more below.',
    failed: (checks: string[]) =>
      `A part of Tellstamp failed here, and what it looks at is not judged: ${checks.join(', ')}.`,
    photos: (numbers: number[]) => `${numbers.length === 1 ? 'Photo' : 'Photos'} ${numbers.join(', ')}: not read.`,
    withoutFile: (maker: string) =>
      `What only a file on ${maker || 'the maker'} could tell: period, workshop, sizes, materials.`,
    untold: (reasons: string[], more: boolean) =>
      `Some could not be told: ${reasons.join('; ')}${more ? '; more below' : ''}.`,
    never: 'Who made it: no photo can show that. Leather, stitches, metal, colours: not measured.',
    onlyMarked:
      'Who made it: no photo can show that. Leather, stitches, metal, colours: measured only where you marked them.',
  },
  findings: {
    title: 'Findings',
    against: 'What speaks against it',
    contradictions: 'What cannot both be true',
    doubts: 'What is unusual',
    gaps: 'What is still open',
    agreements: 'What fits',
    fitsNote:
      'Only what could have come out otherwise. That things fit is what an honest listing shows, and what a careful copy shows too.',
    little: 'What fits but says little',
    basis: 'Rests on',
    tells: 'Why it tells something',
    innocent: 'Ordinary reason',
    settles: 'Would clear it up',
    source: 'Source',
    weight: 'How sure is this?',
    aside: {
      title: 'Set aside by you',
      note: 'It is asked of nobody and judged no more. It comes back by itself when it is found otherwise.',
      action: 'Set aside',
      actionOf: (statement: string) => `Set aside: ${statement}`,
      why: 'Why do you set it aside?',
      done: 'Set it aside',
      leave: 'Leave it',
      because: (reason: string) => `Your reason: ${reason}`,
      undoOf: (statement: string) => `Undo setting aside: ${statement}`,
    },
    hardness: { contradiction: 'Both cannot be true.', doubt: 'Unusual.', gap: '', agreement: '' } satisfies Record<
      FindingKind,
      string
    >,
    cannotTell: 'What else could not be told, and why',
    failed: (check: string, message: string) =>
      `${check}: this check failed here, which says nothing of the listing. All others stand. (${message})`,
  },
  stamp: {
    title: 'What the stamp says',
    waiting: 'No photo has been read yet.',
    none: 'No stamp was found in the photos that were read.',
    unsure: 'Not certain enough to count as read',
    unclear: (number: number) => `${count(number, 'more line', 'more lines')}, not certain enough to count as read`,
    candidates: 'It may be',
    mayGoOn: 'It may go on outside the photo or past the part that was framed, or a word beside it was read along.',
    tooLong:
      'It is longer than a date code is, and no file explains it: a number of another kind, or words beside the code.',
    upsideDown: (text: string) => `Upside down it reads ${text}.`,
    alike: (place: number, may: readonly string[]) => `Character ${place} may be ${may.join(' or ')}.`,
    share: (probability: number) => `${Math.round(probability * 100)} in 100`,
    noSystem: 'No file explains it yet.',
    misfit: (slot: string, value: string, expected: Expected) =>
      `${slot} ${value}: expected ${expectedWords(expected)}`,
    nearest: (text: string, differences: readonly Difference[], system: string) =>
      `Near: ${text}${differencesSaid(differences)}, by ${system}`,
    barely: (system: string, says: string) => `By ${system} it would read ${says}, which is not certain enough.`,
    inPhoto: (number: number, copy = '') => (copy === '' ? `Photo ${number}` : `Photo ${number}, from a ${copy}`),
    inListing: 'Quoted in the listing',
    typed: 'Typed by you',
    pictureOf: (number: number) => `The stamped line in photo ${number}`,
    type: 'Type the code as you see it',
    typeHint: 'Letters and digits; spaces do not matter.',
    typeTooLong: (most: number) => `That is no stamp: a code has at most ${most} characters.`,
    typeAction: 'Decode',
    remove: (code: string) => `Remove ${code}`,
    reading: (system: string) => `by ${system}`,
    alone: (shape: string) => `By its shape alone it is ${shape}. Common practice, no source.`,
    family: (shape: string) => `its shape alone, ${shape}; common practice, no source`,
    /** Shapes of codes without a maker, by their names in the decoder. */
    families: {
      'year-month': 'year and month',
      'month-year': 'month and year',
      'year-week': 'year and week',
      'week-year': 'week and year',
      'year-month-three-digits': 'year and month of one digit',
      'month-year-three-digits': 'month of one digit and year',
      'month-stroke-year': 'month and year with a stroke or dot between',
      'year-stroke-month': 'year and month with a stroke or dot between',
      'week-stroke-year': 'week and year with a stroke or dot between',
      'year-stroke-week': 'year and week with a stroke or dot between',
      'year-month-plant': 'year, month and two letters of a workshop',
      'month-year-plant': 'month, year and two letters of a workshop',
      'plant-year-month': 'two letters of a workshop, year and month',
      'plant-month-year': 'two letters of a workshop, month and year',
      'plant-week-year': 'two letters of a workshop, week and year',
      'plant-year-week': 'two letters of a workshop, year and week',
      'plant-interleaved-month': 'two letters of a workshop, the digits of month and year by turns',
      'plant-interleaved-week': 'two letters of a workshop, the digits of week and year by turns',
      'letter-cycle': 'a letter that may stand for a year of a cycle, and a number: only the maker’s list dates it',
      'framed-letter': 'a letter in a frame that may stand for a year of a cycle: only the maker’s list dates it',
      serial: 'a running number, which dates nothing without the maker’s table: compare the sticker and the card',
      'long-serial':
        'a long running number, which dates nothing without the maker’s table: compare the sticker and the card',
    } satisfies Record<string, string> as Record<string, string>,
    otherReadings: (number: number) => count(number, 'other reading', 'other readings'),
  },
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
  photos: {
    title: 'Photos',
    alone: (number: number) => `Photo ${number}`,
    numbered: (numbers: number[]) => `${numbers.length === 1 ? 'Photo' : 'Photos'} ${numbers.join(', ')}`,
    shows: 'shows a stamp',
    showsNone: 'read: no stamp',
    seesNone: 'no stamp seen',
    tooWeak: 'too blurred to read',
    unread: 'not read',
    waiting: 'waiting',
    byHand: (number: number) => `Look at photo ${number} by hand`,
    close: 'Close',
    turn: 'Turn right',
    invert: 'Invert',
    zone: 'Part to read',
    lineAt: (text: string) => `The line that reads ${text}`,
    cuts: (text: string) =>
      `This part cuts the line that reads ${text}, or ends within a character of it: what is read there will not count as a whole code.`,
    takeIn: 'Take in the whole line',
    whole: 'Whole photo',
    read: 'Read this part',
    reading: 'Reading…',
    found: (number: number) =>
      number === 0 ? 'No stamped line found here.' : `${count(number, 'line', 'lines')} found.`,
    allow: (hosts: string) => `Allow reading from ${hosts}`,
    noAllowing: 'In a private window no site is allowed for good: the browser would keep its name.',
    notRead: (unread: number, of: number) => `${unread} of ${count(of, 'photo', 'photos')} not read`,
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
    title: 'What the listing claims',
    sizes: {
      sides: { width: 'width', height: 'height', depth: 'depth', strap: 'strap', handle: 'handle' },
      named: (side: string, length: string) => `${side} ${length}`,
      row: (lengths: string, sides: string) => `${lengths}; the sides are not named, usually they are ${sides}`,
      alone: (length: string) => `${length}; which side is not said`,
    },
    none: 'The listing states nothing that can be checked.',
    notPlaced: (count: number) => `Said, not placed (${count})`,
    says: {
      conditions: {
        new: 'new',
        unused: 'unused',
        'as-new': 'as new',
        'used-very-good': 'used, very good',
        used: 'used',
        worn: 'worn',
        damaged: 'damaged',
      },
      channels: { discount: 'discount', outlet: 'outlet', 'sample-sale': 'sample sale', seconds: 'seconds' },
      ofPart: (part: string, material: string) => `${part}: ${material}`,
      unsure: (words: string) => `${words}, as the seller supposes`,
      notPlacedNote: 'It is not plain what this is said of. It is held against nothing.',
      takenBy: {
        words: (words: string) => `taken for a code by ${words} before it`,
        place: (words: string) => `taken for a code by its place on the piece: ${words}`,
        layout: (maker: string) => `taken for a code because it fits a layout of ${maker}`,
      },
      notPlaced: {
        date: (words: string) => `a date, in ${words}`,
        material: (words: string) => `a material, in ${words}`,
        code: (words: string) => `a code, in ${words}`,
        measure: (words: string) => `a size, in ${words}`,
      },
      event: {
        done: {
          replaced: (parts: string) => `replaced: ${parts}`,
          relined: (parts: string) => `relined: ${parts}`,
          're-dyed': (parts: string) => `dyed again: ${parts}`,
          repaired: (parts: string) => `repaired: ${parts}`,
        },
        whole: {
          replaced: 'replaced',
          relined: 'relined',
          're-dyed': 'dyed again',
          repaired: 'restored',
        },
        gifted: 'a present',
        by: { maker: 'by the maker', craftsman: 'by a craftsman', seller: 'by the seller' },
        invoice: 'with an invoice or receipt',
        unsure: 'as the seller supposes',
      },
      noCode: 'none',
      paidOutside: 'outside the marketplace',
      returned: 'accepted',
      notReturned: 'not accepted',
      hedged: 'said with a reservation',
      denied: (words: string) => `not ${words}`,
    },
    kinds: {
      made: 'Made',
      bought: 'Bought',
      condition: 'Condition',
      material: 'Material',
      replaced: 'Replaced or repaired',
      appraised: 'Appraised',
      measure: 'Size',
      maker: 'Maker',
      model: 'Model',
      origin: 'Origin',
      code: 'Code',
      'no-code': 'Code',
      price: 'Price',
      'sale-channel': 'Bought how',
      'payment-outside': 'Payment',
      returns: 'Returns',
      'hedged-authorship': 'Maker',
      'grade-of-copy': 'Trade words',
      'not-this-piece': 'Photos',
      'in-stock': 'Several of one kind',
      remade: 'Remade',
      'not-vouched': 'Not vouched for',
      'packaging-only': 'What comes',
      assurance: 'Assurance',
      hurry: 'Terms',
      wear: 'Signs of use',
      leather: 'Leather',
      metal: 'Metal',
      'fresh-part': 'Said to be fresh',
      stored: 'How it was kept',
      'age-word': 'Age',
      'not-placed': 'Said, not placed',
    },
  },
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
