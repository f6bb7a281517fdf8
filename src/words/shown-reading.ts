import type { Reading } from '../code/types';
import { kit, strings } from './screens';
import { systemName } from './system-name';

/** Whose code system it is: "Ondrasse (invented), interleaved month". A family has no maker. */
export const systemWords = ({ maker, id, invented }: Reading['system']): string => {
  const name = systemName(id);
  if (maker === null) return strings.stamp.family(strings.stamp.families[id] ?? name);
  return `${invented ? strings.inventedName(maker) : maker}, ${name}`;
};

/** What a reading says: "January 1995, Belgium"; its text where it says nothing of date and place. */
export const readingWords = ({ span, places, text }: Reading): string =>
  [span && kit.span(span), kit.either(places.map(kit.place))].filter(Boolean).join(', ') || text;
