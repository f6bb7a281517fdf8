import type { Doubt, ProposalKind } from '../../../take/types';
import { count } from './count';

/** The words of "take a maker file from a page". */
export const takeStrings = {
  way: 'Take it from a page',
  wayHint: 'A page that tells of the maker’s codes: a table, a list, an article.',
  fromThis: 'Take a maker file from this page',
  fromThisHint: 'Where it tells of a maker’s codes, workshops, models or prices.',
  reading: 'Reading the page…',
  nothing: 'This page tells nothing of codes, workshops, models or prices that could be taken.',
  title: 'Take a maker file from a page',
  about:
    'Open the page that tells of a maker, click the Tellstamp button there and choose “Take a maker file from this page”. Or bring the page here: as a saved file, or its source pasted.',
  choose: 'Choose a saved page',
  paste: 'Source of the page (HTML), or its text, as copied out of a PDF',
  pdf: 'A PDF is not read as a file. Open it, mark its text, copy it, and paste it below. If its pages are photos and nothing can be marked, there is no text to take: type what it tells.',
  pasteText: 'Paste its text',
  pasteTextHint: 'If it tells of a maker’s codes: mark the text in it, copy it, and paste it.',
  pasted: 'a pasted page',
  read: 'Read it',
  gone: 'What was read is gone, because the browser was closed. Read the page again.',
  found: (number: number, makers: number) =>
    makers > 1
      ? `This page tells ${count(number, 'thing', 'things')} of ${count(makers, 'maker', 'makers')}. Tick what goes into a file; each maker has its own.`
      : `This page tells ${count(number, 'thing', 'things')}. Tick what goes into the file.`,
  from: (title: string, address: string, day: string) => `“${title}”, ${address}, read on ${day}`,
  nothingSaved: 'Each is shown with the page’s own words. Nothing is saved until you open the draft.',
  noMaker: 'No maker named',
  makerField: 'Maker',
  askMaker: {
    title: 'Of which maker?',
    label: 'Maker’s name',
    check: 'The page does not say this plainly. Check the name, or type it as the maker writes it.',
    emptied: 'Choose one of the page’s names, or type the name as the maker writes it.',
    none: 'The page names no maker. Type the name as the maker writes it.',
    others: 'Other names on the page:',
  },
  askAmong: {
    about: 'The page may be of one of these makers alone, and name others in passing.',
    only: (maker: string) => `Only ${maker}`,
    each: 'Of each, as shown',
  },
  all: (number: number) => `All ${number} of this table`,
  allOfList: (number: number) => `All ${number} of this list`,
  allOfText: (number: number) => `All ${number} of this passage`,
  open: (number: number, maker: string) =>
    maker === '' ? `Open the ${number} ticked as a draft` : `Open the ${number} ticked as a draft for ${maker}`,
  addTo: (number: number, maker: string) => `Add the ${number} ticked to your file ${maker}`,
  step: (title: string) => `take from “${title.slice(0, 40)}”`,
  tryCode: {
    label: 'Try a code with what is ticked',
    reads: (says: string) => `With what is ticked it would read ${says}.`,
    nothing: 'Nothing that is ticked explains it.',
    unfinished: 'What is ticked makes no whole file by itself: open the draft to complete it.',
  },
  kinds: {
    plant: 'Workshops',
    'code-system': 'How codes are built',
    example: 'Codes whose date is told',
    'year-letter': 'Letters of years',
    serial: 'Numbers by year',
    stamped: 'When codes were stamped',
    carrier: 'Where the code sits',
    model: 'Models and sizes',
    construction: 'What it is made of',
    price: 'Prices when new',
  } satisfies Record<ProposalKind, string>,
  doubts: {
    contradicted: 'the page says otherwise elsewhere',
    withdrawn: 'the page takes this back',
    disputed: 'the page doubts this',
    backwards: 'the years were written backwards',
    'look-alike': 'letters that only look like Latin ones',
    'which-maker': 'of which maker is not said',
    'examples-disagree': 'its own examples read otherwise',
    'by-examples-only': 'only the examples tell how it is built',
  } satisfies Record<Doubt, string>,
  showOnPage: 'Show on the page',
  showOnPageOf: (entry: string) => `Show on the page: ${entry}`,
  notOnPage: 'The page no longer shows these words, or its tab is closed.',
  unknownPlace: 'country not said',
  still: 'still',
  yearsOpen: 'years not said',
  years: (from: string | null, to: string | null, aboutFrom: boolean, aboutTo: boolean) => {
    const first = from === null ? null : `${aboutFrom ? 'about ' : ''}${from}`;
    const last = to === null ? null : `${aboutTo ? 'about ' : ''}${to}`;
    if (first === null) return last === null ? 'years not said' : `until ${last}`;
    if (last === null) return `from ${first}`;
    return first === last ? first : `${first} to ${last}`;
  },
  numbers: (first: number, last: number | null) =>
    last === null ? `from number ${first}` : `numbers ${first} to ${last}`,
  letter: (letter: string, year: number) => `${letter} is ${year}`,
  reads: (code: string, reads: string) => `${code} is ${reads}`,
  newPrice: (sum: string, year: number) => `${sum} in ${year}`,
  stampedFrom: 'Codes were stamped',
};
