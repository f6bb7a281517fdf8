import type { ProblemWords } from '../problem-words';
import { fieldNames } from './fields';

const pointOpen = 'Open a listing, or point at its title and price on the page.';
const restRead = 'The rest of the page was read. Point at what is missing on the page, if anything is.';
const keptUntilUndone = 'It is kept: undo it if it no longer matters.';
const pointAgain = 'Point at it again, or undo the choice for this site.';
const pdf =
  'Save the photo out of it, or take a screenshot of the stamp, and read that as a photo. If it tells of a maker’s codes, copy its text and paste it under “Take a maker file from a page”.';
const fields: Record<string, string> = fieldNames;
const fieldOf = (field: string) => fields[field] ?? field;

/** Failures of a page and what it offers, and of what a hand set there. */
export const pageProblems = {
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
} satisfies Partial<ProblemWords>;
