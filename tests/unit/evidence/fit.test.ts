import { expect, it } from 'vitest';
import type { Claim } from '../../../src/claim/types';
import { fitsClaims } from '../../../src/evidence';
import { type Span, sinceSpan, yearSpan, yearsSpan } from '../../../src/span';
import { claim } from '../check/sample';

const made = (span: Span, id = 'm') => claim('made', id, { span }, id);
const bought = (year: number) => claim('bought', 'b', { span: yearSpan(year) }, 'b');
const about = (year: number): Span => ({ ...yearSpan(year), about: true });

it.each<[string, Span | null, Claim[], boolean | null]>([
  ['nothing is said', yearSpan(1994), [], null],
  ['the reading has no date', null, [made(yearSpan(1994))], null],
  ['the year is the same', yearSpan(1994), [made(yearSpan(1994))], true],
  ['the year is another', yearSpan(1995), [made(yearSpan(1994))], false],
  ['only room joins the two', yearSpan(1996), [made(about(1994))], null],
  ['not even room does', yearSpan(2001), [made(about(1994))], false],
  ['one of two years fits', yearSpan(1995), [made(yearSpan(1994), 'x'), made(yearSpan(1995))], true],
  ['none of two years does', yearSpan(1996), [made(yearSpan(1994), 'x'), made(yearSpan(1995))], false],
  ['room joins it with one of two', yearSpan(1996), [made(yearSpan(1985), 'x'), made(about(1994))], null],
  ['it was bought later', yearSpan(1994), [bought(1996)], true],
  ['it was bought in that year', yearSpan(1996), [bought(1996)], true],
  ['it was bought before', yearSpan(1997), [bought(1996)], false],
  ['it was bought before, though a year fits', yearSpan(1997), [made(yearSpan(1997)), bought(1996)], false],
  ['another year is said, and a later purchase', yearSpan(1995), [made(yearSpan(1994)), bought(1996)], false],
  ['the reading is open at an end', sinceSpan('1990-01-01'), [made(yearSpan(1994))], true],
  ['something else is said', yearSpan(1994), [claim('origin', 'o', { place: 'FR' })], null],
  ['a country’s days are no claim of making', yearSpan(1999), [claim('origin', 'o', { place: 'DDDE' })], null],
  ['a range of years holds it', yearSpan(1994), [made(yearsSpan(1990, 1995))], true],
])('a reading fits what the seller says where %s', (_, span, claims, wanted) => {
  expect(fitsClaims(span, claims)).toBe(wanted);
});
