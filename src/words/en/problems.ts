import type { Disturbance, NotShown, ProblemData } from '../../problem';
import type { Kit } from '../kit';
import type { ProblemWords } from '../problem-words';
import { fieldNames } from './fields';
import { fileProblems } from './file-problems';
import { listProblems } from './list-problems';

const again = 'Read the page again, or type the code by hand.';
const openAndAgain = 'Open the photo on the page and read again, or type the code by hand.';
const otherPhoto =
  'Load or save the photo again, or ask the seller for it again, as JPEG, PNG, WebP, GIF, AVIF or BMP; or type the code by hand.';
const asJpeg =
  'Ask the seller for it as JPEG: telephones send photos as JPEG when told to use the most compatible format, and a picture viewer saves them so. Or take a screenshot of the stamp, as large as the screen shows it, and add that.';
const still = 'Keep the page in front and still, and read again.';
const front = 'Bring the tab to the front with the photo in view, and read again.';
const byHand = 'Read the photo again, or type the code by hand.';
const pointOpen = 'Open a listing, or point at its title and price on the page.';
const restRead = 'The rest of the page was read. Point at what is missing on the page, if anything is.';
const keptUntilUndone = 'It is kept: undo it if it no longer matters.';
const pointAgain = 'Point at it again, or undo the choice for this site.';
const pdf =
  'Save the photo out of it, or take a screenshot of the stamp, and read that as a photo. If it tells of a maker’s codes, copy its text and paste it under “Take a maker file from a page”.';

/** What a program says of itself, behind what it means. */
const report = (said: string, kit: Kit) => (said === '' ? '' : ` (the program reports ${kit.quote(said)})`);

const disturbed: Record<Disturbance, string> = {
  'in-background': 'the tab is in the background',
  'other-tab': 'another tab came to the front',
  'other-window': 'the tab was moved to another window',
  'other-page': 'the page went on to another',
  resized: 'the window changed its size',
  moved: 'the page was scrolled, or changed around the photo',
  'taken-off': 'the photo was taken off the page',
  gone: 'the photo is shown no more',
  'no-answer': 'the page did not answer',
  'other-shape': 'the picture has another shape than the window',
};
const notShown: Record<NotShown, string> = {
  'not-there': 'the page does not show the photo',
  'too-small': 'the page shows the photo too small',
  faded: 'the page shows the photo faded',
  filtered: 'the page shows the photo altered by a filter',
  turned: 'the page shows the photo turned or mirrored',
};
const formats: Record<ProblemData['photo-foreign-format']['format'], string> = {
  HEIC: 'a HEIC file, as many telephones keep their photos',
  CR3: 'a raw file of a camera (CR3)',
  PDF: 'inside a PDF document',
  TIFF: 'a raw file of a camera, or a TIFF file of a rare form',
  'JPEG XL': 'a JPEG XL file',
  'JPEG 2000': 'a JPEG 2000 file',
};
const fields: Record<string, string> = fieldNames;
const fieldOf = (field: string) => fields[field] ?? field;

/** Failures in English. */
export const problems: ProblemWords = {
  ...fileProblems,
  ...listProblems,
  'page-is-picture': [
    'this tab shows a picture by itself; what the listing says is not here',
    'Read it as a photo, or go back to the page of the listing: its photos are read along.',
  ],
  'page-is-pdf': ['this tab shows a PDF document, which is not read', pdf],
  'page-is-a-list': [
    'this page offers many pieces; it is not a listing of one',
    'Open one of the listings and read that page.',
  ],
  'page-is-an-article': [
    'this page is an article; it tells of things and offers none',
    'Open a listing, or point at its title and price on the page if one is offered here.',
  ],
  'page-too-large-to-tell': [
    'the page is too large to be read whole, and what was read does not tell what it offers',
    'Point at the title and the price of the piece on the page.',
  ],
  'page-is-a-wanted-ad': [
    'somebody looks for a piece on this page; none is offered',
    'Point at the title and the price if one is offered here after all.',
  ],
  'no-listing': ['no listing was found on this page', pointOpen],
  'page-empty': ['the page gave no text', 'Reload the page, or save it and choose the file.'],
  'page-busy': [
    'the page is so busy that it let nothing be read',
    'Wait until the page answers again, or reload it, and read it then.',
  ],
  'page-not-readable': [
    'the browser lets no extension read this page',
    'Open a listing and click the toolbar button there.',
  ],
  'page-changing': [
    'the page kept changing while it was read; what is shown may be of two states',
    'Wait until the page stands still and read it again.',
  ],
  'page-still-loading': [
    'the page was still loading when it was read; what came later is missing',
    'Wait until the page is there and read it again.',
  ],
  'page-cut': [
    ({ nodesRead, attributes, characters }, kit) =>
      `the page is very large; not read: ${kit.list([
        ...(nodesRead === null ? [] : [`what follows its first ${kit.number(nodesRead)} elements and texts`]),
        ...(attributes > 0 ? [kit.count(attributes, { one: '# attribute', other: '# attributes' })] : []),
        ...(characters > 0
          ? [kit.count(characters, { one: '# character of long texts', other: '# characters of long texts' })]
          : []),
      ])}`,
    'Point at what is missing on the page, if anything is.',
  ],
  'tab-gone': ['the tab was closed', 'Open the listing again.'],
  'right-lapsed': ['the right to read this tab has lapsed', 'Click the toolbar button on the page.'],
  'which-product': [
    ({ pieces }, kit) => `the page's data describes ${kit.number(pieces)} pieces that fit this page equally well`,
    'Point at the price and the title of the piece that you mean.',
  ],
  'pick-the-variant': [
    ({ variants }, kit) =>
      `the piece is offered in ${kit.number(variants)} variants, and the page does not say which one is shown`,
    'Pick the variant on the page and read it again.',
  ],
  'pick-not-found': [
    ({ field }) => `what you pointed at as ${fieldOf(field)} on this site is not on this page`,
    pointAgain,
  ],
  'pick-unreadable': [({ field }) => `what you pointed at as ${fieldOf(field)} could not be read as one`, pointAgain],
  'price-not-in-text': [
    'the page has a place for the price, but no text stands in it: the price is a picture or made by style',
    'Point at the price on the page, or type it.',
  ],
  'price-conflict': [
    ({ inData, seen }) => `the page's data gives another price (${inData}) than the page shows (${seen})`,
    'Ask the seller for the price, or point at the right one.',
  ],
  'frame-not-read': [
    'a part of the listing stands in a frame of another site and was not read',
    'Allow reading that site, or open the frame in a tab of its own.',
  ],
  'data-unreadable': ["a part of the page's data is broken and could not be repaired", restRead],
  'data-too-long-to-repair': [
    ({ kilobytes }, kit) => `the page's data (${kit.number(kilobytes)} kB) is broken and too long to repair`,
    restRead,
  ],
  'data-cut': [
    ({ levels }) =>
      levels === null ? "the page's data holds too many parts" : `the page's data goes deeper than ${levels} levels`,
    'What lies beyond was left out; the rest was read.',
  ],
  'data-stale': [
    "the page's data describes another piece than the one shown; it was left from a page seen before",
    'What the page shows was used. Reload the page to get its own data.',
  ],
  'no-maker-file': [
    ({ names, possible }, kit) =>
      names.length > 1
        ? `the listing names several makers: ${names.map(kit.quote).join(', ')}`
        : names[0] !== undefined
          ? `no maker file fits ${kit.quote(names[0])}`
          : possible !== null
            ? `no maker on file is named; it may be ${kit.quote(possible)}`
            : 'the listing names no maker',
    'Import a maker file, or point at the maker on the page. Until then no maker’s rules judge the piece.',
  ],
  'correction-photo-gone': [
    'something that you set belongs to a photo that the listing does not show any more',
    keptUntilUndone,
  ],
  'correction-not-there': ['something that you set right is not read or said any more as it was', keptUntilUndone],
  'correction-found-otherwise': [
    'what you set aside is not found any more, or is found otherwise now',
    keptUntilUndone,
  ],

  'photos-not-read': [
    ({ unread, of, reasons }, _, say) => `${unread} of ${of} photos not read: ${reasons.map(say).join('; ')}`,
    again,
  ],
  'photo-not-fetched': ['the photo was not fetched', 'Read the listing again, or give the photo as a file.'],
  'photo-unknown': ['the page was not read, or has changed since', openAndAgain],
  'photo-empty': ['the photo holds no bytes', otherPhoto],
  'photo-svg': ['this is a drawing (SVG), not a photograph, and drawings can hold programs', otherPhoto],
  'photo-not-image': [
    'this file is not an image that can be read: its first bytes are of no known photo format',
    otherPhoto,
  ],
  'photo-truncated': ['the photo file ends before it says how large it is', otherPhoto],
  'photo-damaged': [
    'the photo is damaged or cut off: it could not be decoded to its end',
    'Load or save the photo again, or ask the seller for it again.',
  ],
  'photo-foreign-format': [({ format }) => `the photo is ${formats[format]}, which is not read here`, asJpeg],
  'photo-no-size': [({ width, height }) => `the photo says it is ${width} × ${height} pixels`, otherPhoto],
  'photo-too-small': [
    ({ width, height }) => `the photo is ${width} × ${height} pixels, too small to hold a stamp`,
    'Ask the seller for a larger photo.',
  ],
  'photo-too-large': [
    (photo) =>
      'megabytes' in photo
        ? `the file is larger than ${photo.megabytes} MB`
        : `the photo is ${photo.width} × ${photo.height} pixels; at most ${photo.most[0]} million, and ${photo.most[1]} a side, are read`,
    'Ask the seller for a smaller version of the photo, or for a picture of the stamp alone; or type the code by hand.',
  ],
  'photo-is-drawing': [
    'the page gives it as a drawing (SVG), not as a photograph',
    'If it shows the stamp, type the code by hand, or ask the seller for the photo as a JPEG or PNG.',
  ],
  'photo-missing': [({ status }) => `the server answered ${status}`, openAndAgain],
  'photo-unreachable': ['the page may not fetch it, or the server did not answer', openAndAgain],
  'photo-redirected': ['its address leads on to another, which cannot be seen', openAndAgain],
  'photo-late': [
    ({ seconds, all }) =>
      seconds === null
        ? 'the page did not bring the photo in time'
        : `the photo did not arrive within ${all ? `the ${seconds} seconds for all photos` : `${seconds} seconds`}`,
    openAndAgain,
  ],
  'photo-without-address': [
    ({ photos }, kit) =>
      kit.count(photos, {
        one: '# photo is made by the page itself and can be fetched from no address',
        other: '# photos are made by the page itself and can be fetched from no address',
      }),
    'Scroll through the photos on the page and read again, or type the code by hand.',
  ],
  'photo-not-shown': [({ why }) => notShown[why], openAndAgain],
  'photo-covered': [
    'something else on the page lies over the photo',
    'Close what lies over it and read again, allow its host, or type the code by hand.',
  ],
  'photo-file-gone': ['the photo is not there any more', 'Choose the file again.'],
  'photo-reading-failed': [({ said }, kit) => `reading the photo failed${report(said, kit)}`, 'Type the code by hand.'],
  'over-budget': [
    ({ most }) => `only the first ${most} photos are read`,
    'Type the code by hand if the stamp is in a later photo.',
  ],
  'address-refused': ['its address is private, or not an http address', openAndAgain],
  'host-not-granted': [({ host }) => `reading from ${host} was not allowed`, openAndAgain],
  'capture-disturbed': [
    ({ why }) =>
      why === 'in-background'
        ? disturbed[why]
        : `the picture of it was thrown away, because ${disturbed[why]} while it was taken`,
    still,
  ],
  'capture-failed': [
    ({ why }) =>
      why === 'late' ? 'the page did not show the photo in time' : 'the browser gave no picture of the tab',
    front,
  ],

  'no-stamp-engine': ['no text reader could be started, so no photo was looked at', 'Type the code by hand.'],
  'stamp-engine-failed': [
    ({ said }, kit) => `the text reader failed on this photo${report(said, kit)}`,
    'Read the photo again, or type the code.',
  ],
  'nets-not-loaded': [
    ({ why, said }, kit) =>
      `${{ 'card-not-json': 'the model card is not JSON', 'card-unfit': 'the model card does not fit', 'not-started': 'the nets did not start' }[why]}${report(said, kit)}`,
    'Install the extension again. Until then stamps are read by the print reader, which reads few blind ones.',
  ],
  'reader-failed': [({ said }, kit) => `the reader failed${report(said, kit)}`, byHand],
  'reader-late': [({ seconds }) => `reading took longer than ${seconds} seconds`, byHand],
  'reader-stopped': [({ said }, kit) => `the reader was stopped${report(said, kit)}`, byHand],
  'measuring-failed': [
    ({ said }, kit) => `measuring failed${report(said, kit)}`,
    'Move the mark, or open the photo again.',
  ],
  'message-refused': [
    ({ why, said }, kit) =>
      `${
        {
          'no-handler': 'a message between parts of the extension has nobody who handles it',
          'not-from': 'a message came from a part of the extension that may not send it',
          'from-nowhere': 'a message came from no part of the extension',
          malformed: 'a message between parts of the extension was malformed',
        }[why]
      }${report(said, kit)}`,
    'Reload the extension if this stays.',
  ],
  'no-answer': ['a part of the extension did not answer', 'Click the toolbar button on the listing again.'],
  'reply-malformed': [
    ({ said }, kit) => `a part of the extension answered otherwise than agreed${report(said, kit)}`,
    'Reload the page and read it again.',
  ],
  unforeseen: [
    ({ said }, kit) => `something unforeseen happened${report(said, kit)}`,
    'Try again; if it stays, report it.',
  ],
};
