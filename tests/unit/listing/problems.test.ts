import { describe, expect, it } from 'vitest';
import type { PageNote } from '../../../src/listing/extract-types';
import { isOfThePiece, kindProblem } from '../../../src/listing/kind-problem';
import { languageOfText } from '../../../src/listing/page-language';
import { cutProblems, pageProblem } from '../../../src/listing/page-problems';
import { pickProblem } from '../../../src/listing/pick-problem';
import { isTracking } from '../../../src/listing/tracking';
import type { Problem } from '../../../src/problem';
import { problemInEnglish } from '../../said';

const said = (code: PageNote['code'], count = 3, field?: PageNote['field']) => {
  const { what, remedy, ...rest } = seen(pageProblem({ code, where: 'here', count, ...(field ? { field } : {}) }));
  expect(rest).toEqual({ code, where: 'here' });
  return `${what} | ${remedy}`;
};
/** As a screen shows it: a sentence of its own. */
function seen(problem: Problem) {
  const said = problemInEnglish(problem);
  return { ...said, what: `${said.what.charAt(0).toUpperCase()}${said.what.slice(1)}.` };
}

describe('what is said of a page', () => {
  it.each<[PageNote['code'], number, string]>([
    [
      'page-is-picture',
      0,
      'This tab shows a picture by itself; what the listing says is not here. | Read it as a photo, or go back to the page of the listing: its photos are read along.',
    ],
    [
      'page-is-pdf',
      0,
      'This tab shows a PDF document, which is not read. | Save the photo out of it, or take a screenshot of the stamp, and read that as a photo. If it tells of a maker’s codes, copy its text and paste it under “Take a maker file from a page”.',
    ],
    [
      'which-product',
      3,
      "The page's data describes 3 pieces that fit this page equally well. | Point at the price and the title of the piece that you mean.",
    ],
    [
      'pick-the-variant',
      3,
      'The piece is offered in 3 variants, and the page does not say which one is shown. | Pick the variant on the page and read it again.',
    ],
    [
      'price-not-in-text',
      0,
      'The page has a place for the price, but no text stands in it: the price is a picture or made by style. | Point at the price on the page, or type it.',
    ],
    [
      'frame-not-read',
      0,
      'A part of the listing stands in a frame of another site and was not read. | Allow reading that site, or open the frame in a tab of its own.',
    ],
    [
      'page-changing',
      0,
      'The page kept changing while it was read; what is shown may be of two states. | Wait until the page stands still and read it again.',
    ],
    [
      'page-still-loading',
      0,
      'The page was still loading when it was read; what came later is missing. | Wait until the page is there and read it again.',
    ],
    [
      'data-unreadable',
      0,
      "A part of the page's data is broken and could not be repaired. | The rest of the page was read. Point at what is missing on the page, if anything is.",
    ],
    [
      'data-too-long-to-repair',
      1200,
      "The page's data (1,200 kB) is broken and too long to repair. | The rest of the page was read. Point at what is missing on the page, if anything is.",
    ],
    ['data-cut', 64, "The page's data goes deeper than 64 levels. | What lies beyond was left out; the rest was read."],
    ['data-cut', 1, "The page's data goes deeper than 1 levels. | What lies beyond was left out; the rest was read."],
    ['data-cut', 0, "The page's data holds too many parts. | What lies beyond was left out; the rest was read."],
    [
      'photo-without-address',
      1,
      '1 photo is made by the page itself and can be fetched from no address. | Scroll through the photos on the page and read again, or type the code by hand.',
    ],
    [
      'photo-without-address',
      2,
      '2 photos are made by the page itself and can be fetched from no address. | Scroll through the photos on the page and read again, or type the code by hand.',
    ],
    [
      'data-stale',
      0,
      "The page's data describes another piece than the one shown; it was left from a page seen before. | What the page shows was used. Reload the page to get its own data.",
    ],
  ])('%s (%i): %s', (code, count, words) => {
    expect(said(code, count)).toBe(words);
  });

  it('names the field that was pointed at', () => {
    expect(said('pick-not-found', 0, 'maker')).toBe(
      'What you pointed at as maker on this site is not on this page. | Point at it again, or undo the choice for this site.',
    );
    expect(said('pick-unreadable', 0, 'price')).toBe(
      'What you pointed at as price could not be read as one. | Point at it again, or undo the choice for this site.',
    );
    expect(said('pick-not-found', 0)).toContain('as title on');
    expect(pickProblem('pick-unreadable', 'price', '#p').where).toBe('#p');
  });

  it.each([
    [{ nodesRead: null, attributes: 0, characters: 0 }, []],
    [
      { nodesRead: 60_000, attributes: 0, characters: 0 },
      ['The page is very large; not read: what follows its first 60,000 elements and texts.'],
    ],
    [{ nodesRead: null, attributes: 1, characters: 0 }, ['The page is very large; not read: 1 attribute.']],
    [
      { nodesRead: null, attributes: 0, characters: 1 },
      ['The page is very large; not read: 1 character of long texts.'],
    ],
    [
      { nodesRead: null, attributes: 0, characters: 1234 },
      ['The page is very large; not read: 1,234 characters of long texts.'],
    ],
    [
      { nodesRead: 0, attributes: 5000, characters: 7 },
      [
        'The page is very large; not read: what follows its first 0 elements and texts, 5,000 attributes and 7 characters of long texts.',
      ],
    ],
  ])('of what the budget left out (%j)', (cut, wanted) => {
    const problems = cutProblems(cut);
    expect(problems.map((problem) => seen(problem).what)).toEqual(wanted);
    for (const problem of problems)
      expect(seen(problem)).toMatchObject({
        code: 'page-cut',
        where: 'page',
        remedy: 'Point at what is missing on the page, if anything is.',
      });
  });
});

describe('a page that offers no piece', () => {
  it.each([
    [
      'list',
      'page-is-a-list',
      'This page offers many pieces; it is not a listing of one.',
      'Open one of the listings and read that page.',
    ],
    [
      'article',
      'page-is-an-article',
      'This page is an article; it tells of things and offers none.',
      'Open a listing, or point at its title and price on the page if one is offered here.',
    ],
    [
      'cut',
      'page-too-large-to-tell',
      'The page is too large to be read whole, and what was read does not tell what it offers.',
      'Point at the title and the price of the piece on the page.',
    ],
    [
      'none',
      'no-listing',
      'No listing was found on this page.',
      'Open a listing, or point at its title and price on the page.',
    ],
  ] as const)('says so: %s', (kind, code, what, remedy) => {
    expect(seen(kindProblem(kind))).toEqual({ code, where: 'page', what, remedy });
  });

  it('keeps what is said of the page, and leaves out what is said of a piece', () => {
    const of = (code: string) => isOfThePiece({ code, where: '' });
    for (const code of [
      'which-product',
      'pick-the-variant',
      'data-stale',
      'price-not-in-text',
      'price-conflict',
      'photo-without-address',
    ])
      expect(of(code), code).toBe(true);
    for (const code of ['page-cut', 'frame-not-read', 'page-is-pdf', '']) expect(of(code), code).toBe(false);
  });
});

describe('words of the address and of the language', () => {
  it('knows the parameters that only track the visitor', () => {
    for (const name of ['utm_source', 'gclid', 'FBCLID', 'mc_cid', 'mc_eid', 'ref', 'ref_', 'source', 'trk'])
      expect(isTracking(name), name).toBe(true);
    for (const name of ['id', 'utm_', 'refs', 'xref', 'mc_aid', 'color']) expect(isTracking(name), name).toBe(false);
  });

  it.each([
    ['de', 'Die Tasche ist und der Gurt'],
    ['fr', 'le sac et les anses pour une dame'],
    ['it', 'il manico della borsa sono molto belli per una'],
    ['es', 'el bolso y los herrajes por una del'],
    ['nl', 'het hengsel en een tas van zeer'],
    ['en', 'the bag and the strap of this'],
    ['ja', 'このバッグ'],
    [null, 'und der'],
    [null, 'Ondrasse Palma Tote'],
    [null, ''],
  ])('tells %s from its small words', (language, text) => {
    expect(languageOfText(text)).toBe(language);
  });

  it('is silent where two languages lead together, and looks at the first four thousand characters', () => {
    expect(languageOfText('der die das the and of')).toBeNull();
    expect(languageOfText('der die das und mit the and of with')).toBe('de');
    expect(languageOfText('der die das und mit nicht the and of with is')).toBeNull();
    expect(languageOfText(`${'x'.repeat(4_000)} the and of`)).toBeNull();
    expect(languageOfText(`${'x'.repeat(3_989)} the and of`)).toBe('en');
  });
});
