import type { WordsFor } from '../../finding-words';
import { parts as partNames } from '../parts';
import { saying } from '../saying';

type Photos =
  | 'photo-large-enough'
  | 'photo-reused'
  | 'photo-screenshot'
  | 'photo-stock-like'
  | 'photo-watermark'
  | 'photos-offered'
  | 'parts-shown'
  | 'stamp-close-up'
  | 'stamp-legible'
  | 'stamp-evenness'
  | 'not-this-piece'
  | 'one-of-many'
  | 'unused-against-photo';

const faults = {
  depth: 'its depth changes from one end to the other',
  pitch: 'its characters are unevenly spaced',
} as const;

const aged = {
  'open-leather': (by: string) => `leather that lay open, darker by ${by} steps than where it was covered`,
  rivet: (by: string) => `a rivet’s edge, greener by ${by} steps than its surround`,
  touched: (by: string) => `metal where hands touch it, ${by} steps off its colour where they do not`,
} as const;

export const photos: WordsFor<Photos> = {
  'photo-large-enough': {
    title: 'Photos are large enough to see details',
    failureTitle: 'All photos are too small to see details',
    rule: 'Details such as stitches and stamps need photos of some size.',
    statement: ({ longestPx }) => `The largest photo is ${longestPx} pixels long.`,
    innocent: 'Some marketplaces shrink what sellers upload.',
    settles: 'Larger photos, also by message.',
  },
  'photo-reused': {
    title: 'Every photo is another photo',
    failureTitle: 'The same photo is shown more than once',
    rule: 'A photo shown twice shows nothing more the second time.',
    statement: ({ photos: same }, kit) => `${kit.sentence(kit.list(same.map(kit.photo)))} show the same picture.`,
    innocent: 'Marketplaces and sellers upload a photo twice by mistake.',
    settles: 'Another photo in its place.',
  },
  'photo-screenshot': {
    title: 'No photo is a picture of a screen',
    failureTitle: 'A photo looks like a picture of a screen',
    rule: 'A screenshot shows what another page showed, not the piece in the seller’s hands.',
    statement: ({ photo, sign }, kit) =>
      `${kit.sentence(kit.photo(photo))} has the shape of a phone screen and shows ${kit.quote(sign)}.`,
    innocent: 'The seller may show a shop’s page for the size or the price.',
    settles: 'The same view as a photo of the piece itself.',
  },
  'photo-stock-like': {
    title: 'No photo stands on the even white ground of a catalogue picture',
    failureTitle: 'A photo looks like a catalogue picture',
    rule: 'Catalogue pictures stand on a perfectly even white ground; a camera at home leaves shade and grain there.',
    statement: ({ photos: even }, kit) =>
      `${kit.sentence(kit.list(even.map(kit.photo)))} ${even.length === 1 ? 'stands' : 'stand'} on an even white ground without the grain of a camera.`,
    innocent: 'A piece photographed at home on a white sheet, then cut out by the phone, looks the same.',
    settles: 'A photo of the piece itself where it lies, with today’s date on a slip of paper.',
  },
  'photo-watermark': {
    title: 'No photo carries the address of another site',
    failureTitle: 'A photo carries the address of another site',
    rule: 'A photo with another site’s address in it was first shown there.',
    statement: ({ photo, host }, kit) =>
      `${kit.sentence(kit.photo(photo))} carries the address ${kit.quote(host)}, which is not this marketplace.`,
    innocent: 'The seller may sell there too, or the address may be printed on the maker’s own label.',
    settles: 'A photo of the piece without the address.',
  },
  'photos-offered': {
    title: 'The listing has photos',
    failureTitle: 'The listing has no photo',
    rule: 'Look for pictures of the actual item.',
    statement: () => 'The page offers no photo of the piece.',
    innocent: 'The photos may load only after a click, or the page could not be read in full.',
    settles: 'Photos of the piece itself.',
  },
  'parts-shown': {
    title: 'There are as many photos as parts to be seen',
    failureTitle: 'There are fewer photos than parts to be seen',
    rule: 'One photo shows one part well; look for pictures of the actual piece.',
    statement: ({ photos: shown, parts, of }, kit) =>
      of
        ? `No photo is said to show ${kit.either(parts.map((part) => partNames(part)))}.`
        : `${kit.count(shown, { one: '# photo', other: '# photos' })} for ${parts.length + 1} parts to be seen: ${kit.list([...parts.map((part) => partNames(part)), 'the stamp'])}.`,
    innocent: 'One photo may show several parts, and some marketplaces allow only a few.',
    settles: 'Photos of the parts named.',
  },
  'stamp-close-up': {
    title: 'A photo shows the stamp',
    failureTitle: 'No photo shows the stamp close up',
    rule: 'The stamp is what dates a piece; a buyer should see it and not only be told.',
    statement: ({ photos: shown }, kit) =>
      kit.count(shown, {
        one: 'The one photo does not show the stamp.',
        other: 'None of the # photos shows the stamp.',
      }),
    innocent: 'Many sellers do not know that the stamp matters.',
    settles: 'A sharp, close photo of the stamp.',
  },
  'stamp-legible': {
    title: 'The stamp in the photo could be read',
    failureTitle: 'A stamp is shown but could not surely be read whole',
    rule: 'A code counts as read only when its characters are certain enough and all of it is in the photo.',
    statement: ({ photo, guess, open, other }, kit) =>
      open === 'may-go-on'
        ? `The stamp in ${kit.photo(photo)} may go on outside the photo or past the part that could be framed, or a word beside it was read along. What is seen of it reads ${kit.code(guess)}.`
        : open === 'upside-down'
          ? `The stamp in ${kit.photo(photo)} reads ${kit.code(guess)} from one side and ${kit.code(other ?? '')} from the other, and nothing says which side is up.`
          : guess === ''
            ? `The stamp in ${kit.photo(photo)} is too unclear to read.`
            : `The stamp in ${kit.photo(photo)} is too unclear to read. The best guess, ${kit.code(guess)}, is not certain enough to count.`,
    innocent: 'Blind stamps wear, a flat light hides them, and close-ups are easily framed too tightly.',
    settles: 'A sharper photo of the whole stamp, or its characters typed in by hand.',
  },
  'stamp-evenness': {
    title: 'The stamp is even in depth and spacing',
    failureTitle: 'The stamp looks uneven in depth or spacing',
    rule: 'Characters of one die are struck together, at one pitch; characters struck by hand one by one are not.',
    statement: ({ photo, faults: seen }, kit) =>
      `The stamp in ${kit.photo(photo)} looks uneven: ${kit.list(seen.map((fault) => faults[fault]))}. One photo cannot tell whether that is the light, wear or the way it was struck.`,
    innocent:
      'Many sound stamps are struck by hand, and worn or curved leather and light from one side make an even stamp look uneven.',
    settles: 'Two photos of the stamp with light from different sides.',
  },
  'not-this-piece': {
    title: 'The photos are of the piece itself',
    failureTitle: 'The photos are said not to be of the piece itself',
    rule: 'Look for pictures of the actual item.',
    statement: ({ words }, kit) => `The listing says ${kit.list(words.map(kit.quote))}.`,
    innocent: 'The seller may use a better picture for the first photo only.',
    settles: 'Photos of the piece itself, with today’s date on a slip of paper.',
  },
  'one-of-many': {
    title: 'It is plain which piece is sold',
    failureTitle: 'Several of one kind are on sale, and the photos may be of another one',
    rule: 'A used piece is bought by its own photos.',
    statement: ({ words }, kit) => `The listing says ${kit.list(words.map(kit.quote))}.`,
    innocent: 'The number may be a setting of the page, or the pieces may be alike.',
    settles: 'Which of them is sent, and photos of that one.',
  },
  'unused-against-photo': {
    title: 'What is called new or unused shows no age in the photos',
    failureTitle: 'The piece is called new or unused, and a photo shows age or use',
    rule: 'Untreated leather darkens, rivets tarnish and plating wears where light and hands reach; what is new or unused differs little there.',
    statement: ({ said, photo, mark, place, by, within }, kit) =>
      `${saying(said, kit)}, but on photo ${photo} you measured at mark ${mark} ${aged[place](`${kit.number(by, 1)} ± ${kit.number(within, 1)}`)}.`,
    innocent:
      'The light may fall differently on the two places. Cleaning, care, a shop window or years of storage change leather and metal too, and a part may have been replaced.',
    settles: 'A photo of both places in even daylight, and how the piece was kept.',
  },
};
