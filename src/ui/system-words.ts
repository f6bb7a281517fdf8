import type { Reading } from '../code/types';
import { placeName } from '../place';
import { spanWords } from '../span';
import { strings } from '../words';

/** Whose code system it is: "Ondrasse (invented), interleaved month". A family has no maker. */
export const systemWords = ({ maker, id, invented }: Reading['system']): string => {
  const name = id.replaceAll('-', ' ');
  if (maker === null) return strings.stamp.family(name);
  return `${invented ? strings.inventedName(maker) : maker}, ${name}`;
};

/** What a reading says: "January 1995, Belgium"; its text where it says nothing of date and place. */
export const readingWords = ({ span, places, text }: Reading): string =>
  [span && spanWords(span), places.map(placeName).join(' or ')].filter(Boolean).join(', ') || text;
