import { expect, test } from 'vitest';
import { orderReadings } from '../../../src/case/order-readings';
import type { Claim } from '../../../src/claim/types';
import { decodeText, readsOf } from '../../../src/code';
import { fitsClaims } from '../../../src/evidence';
import { type Span, yearSpan } from '../../../src/span';
import { claim } from '../check/sample';

const decoding = decodeText('0512', { makers: [], maker: null, now: '2026-11-25' });
const claimed = (kind: 'made' | 'bought', year: number) => [claim(kind, String(year), { span: yearSpan(year) })];
const order = (claims: readonly Claim[]) => orderReadings(decoding, claims).readings.map(readsOf);

test('readings by shape alone that fit the claimed year come first, and none is left out', () => {
  expect(order([])).toEqual(['2005-12', '2012-05', '2012-W05', '2005-W12']);
  expect(order(claimed('made', 2012))).toEqual(['2012-05', '2012-W05', '2005-12', '2005-W12']);
  expect(order(claimed('bought', 2008))).toEqual(['2005-12', '2005-W12', '2012-05', '2012-W05']);
});

const fits = (claims: readonly Claim[]) =>
  orderReadings(decoding, claims).readings.map(({ span }) => fitsClaims(span, claims));
const about = (year: number): Span => ({ ...yearSpan(year), about: true });

test('what is shown to fit stands first, for a year of purchase as for one of making', () => {
  expect(fits(claimed('made', 2012))).toEqual([true, true, false, false]);
  expect(fits(claimed('bought', 2008))).toEqual([true, true, false, false]);
  expect(fits([...claimed('made', 2012), ...claimed('bought', 2008)])).toEqual([false, false, false, false]);
  expect(fits([])).toEqual([null, null, null, null]);
});

test('within the room of a loose year nothing is said of a reading, one year beyond it does not fit', () => {
  expect(fits([claim('made', 'about 2009', { span: about(2009) })])).toEqual([null, null, null, null]);
  // 2005 lies six years and more from 2011 and later, 2012 within five.
  expect(fits([claim('made', 'about 2012', { span: about(2012) })])).toEqual([true, true, false, false]);
});

test('where nothing is said, readings of years that are common in the trade stand before older ones', () => {
  const byTurns = decodeText('BK0516', { makers: [], maker: null, now: '2026-11-25' });
  const first = (claims: readonly Claim[]) => orderReadings(byTurns, claims).readings.map(readsOf);
  expect(byTurns.readings.map(readsOf)[0]).toBe('1956-01');
  expect(first([])[0]).toBe('2016-05');
  expect(first(claimed('made', 1956))[0]).toBe('1956-01');
  expect([...first([])].sort()).toEqual(byTurns.readings.map(readsOf).sort());
});

test('a purchase that any older piece fits as well does not bring the oldest to the front', () => {
  const { readings } = orderReadings(
    decodeText('MV0516', { makers: [], maker: null, now: '2026-11-25' }),
    claimed('bought', 2006),
  );
  expect(readings.map(readsOf)[0]).toBe('2005-W16');
});
