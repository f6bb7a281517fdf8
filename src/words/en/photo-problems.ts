import type { Disturbance, NotShown, ProblemData } from '../../problem';
import type { ProblemWords } from '../problem-words';
import { report } from './report';

const again = 'Read the page again, or type the code by hand.';
const openAndAgain = 'Open the photo on the page and read again, or type the code by hand.';
const otherPhoto =
  'Load or save the photo again, or ask the seller for it again, as JPEG, PNG, WebP, GIF, AVIF or BMP; or type the code by hand.';
const asJpeg =
  'Ask the seller for it as JPEG: telephones send photos as JPEG when told to use the most compatible format, and a picture viewer saves them so. Or take a screenshot of the stamp, as large as the screen shows it, and add that.';
const still = 'Keep the page in front and still, and read again.';
const front = 'Bring the tab to the front with the photo in view, and read again.';
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

/** Failures of photos: of the way to them, and of their files. */
export const photoProblems = {
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
} satisfies Partial<ProblemWords>;
