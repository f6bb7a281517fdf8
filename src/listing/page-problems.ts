import type { Problem } from '../problem';
import { pickProblem } from './pick-problem';
import type { PageExtract, PageNote } from './types';

/**
 * What the page script noted, in words for the buyer: words are added outside of pages, where their length costs no page
 * anything. `count` is the number of pieces that a tie is between.
 */
export function pageProblem({ code, where, count, field = 'title' }: PageNote): Problem {
  switch (code) {
    case 'page-is-picture':
      return {
        code,
        where,
        what: 'This tab shows a picture by itself; what the listing says is not here.',
        remedy: 'Read it as a photo, or go back to the page of the listing: its photos are read along.',
      };
    case 'page-is-pdf':
      return {
        code,
        where,
        what: 'This tab shows a PDF document, which is not read.',
        remedy: 'Save the photo out of it, or take a screenshot of the stamp, and read that as a photo.',
      };
    case 'which-product':
      return {
        code,
        where,
        what: `The page's data describes ${count} pieces that fit this page equally well.`,
        remedy: 'Point at the price and the title of the piece that you mean.',
      };
    case 'pick-the-variant':
      return {
        code,
        where,
        what: `The piece is offered in ${count} variants, and the page does not say which one is shown.`,
        remedy: 'Pick the variant on the page and read it again.',
      };
    case 'price-not-in-text':
      return {
        code,
        where,
        what: 'The page has a place for the price, but no text stands in it: the price is a picture or made by style.',
        remedy: 'Point at the price on the page, or type it.',
      };
    case 'frame-not-read':
      return {
        code,
        where,
        what: 'A part of the listing stands in a frame of another site and was not read.',
        remedy: 'Allow reading that site, or open the frame in a tab of its own.',
      };
    case 'page-changing':
      return {
        code,
        where,
        what: 'The page kept changing while it was read; what is shown may be of two states.',
        remedy: 'Wait until the page stands still and read it again.',
      };
    case 'page-still-loading':
      return {
        code,
        where,
        what: 'The page was still loading when it was read; what came later is missing.',
        remedy: 'Wait until the page is there and read it again.',
      };
    case 'pick-not-found':
    case 'pick-unreadable':
      return pickProblem(code, field, where);
    case 'data-unreadable':
      return {
        code,
        where,
        what: "A part of the page's data is broken and could not be repaired.",
        remedy: 'The rest of the page was read. Point at what is missing on the page, if anything is.',
      };
    case 'data-too-long-to-repair':
      return {
        code,
        where,
        what: `The page's data (${count} kB) is broken and too long to repair.`,
        remedy: 'The rest of the page was read. Point at what is missing on the page, if anything is.',
      };
    case 'data-cut':
      return {
        code,
        where,
        what: count > 0 ? `The page's data goes deeper than ${count} levels.` : "The page's data holds too many parts.",
        remedy: 'What lies beyond was left out; the rest was read.',
      };
    case 'photo-without-address':
      return {
        code,
        where,
        what: `${count} ${count === 1 ? 'photo is' : 'photos are'} made by the page itself and can be fetched from no address.`,
        remedy: 'Scroll through the photos on the page and read again, or type the code by hand.',
      };
    case 'data-stale':
      return {
        code,
        where,
        what: "The page's data describes another piece than the one shown; it was left from a page seen before.",
        remedy: 'What the page shows was used. Reload the page to get its own data.',
      };
  }
}

const counted = (count: number, one: string): string => `${count.toLocaleString('en')} ${one}${count === 1 ? '' : 's'}`;

/** What was left out of a page that is larger than the budget of one reading; none when all of it was read. */
export function cutProblems({ nodesRead, attributes, characters }: PageExtract['cut']): Problem[] {
  const parts = [
    ...(nodesRead === null ? [] : [`what follows its first ${nodesRead.toLocaleString('en')} elements and texts`]),
    ...(attributes > 0 ? [counted(attributes, 'attribute')] : []),
    ...(characters > 0 ? [`${counted(characters, 'character')} of long texts`] : []),
  ];
  if (parts.length === 0) return [];
  return [
    {
      code: 'page-cut',
      where: 'page',
      what: `The page is very large. Not read: ${parts.join('; ')}.`,
      remedy: 'Point at what is missing on the page, if anything is.',
    },
  ];
}
