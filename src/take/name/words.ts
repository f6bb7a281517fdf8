import { foldWords } from '../../text';
import { wholeWords } from '../words';

/** What stands around a maker's name, in a head as in a text. */
export const before = wholeWords('maker-before');
export const perhaps = wholeWords('maker-of');
export const things = wholeWords('heading-thing');
export const gathering = wholeWords('gathering');
export const siteNouns = wholeWords('site-noun');
export const authored = wholeWords('authored');
export const authoredGuides = wholeWords('authored-guide');
/** Workshops stand beside the name of their town as well. */
export const workshops = wholeWords('plant');
export const placesBefore = wholeWords('place-before');

/** A word as these lists have it; nothing where there is none. */
export const fold = (word: string | undefined): string => (word === undefined ? '' : foldWords(word).text);
