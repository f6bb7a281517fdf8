import { expect, test } from 'vitest';
import { orderReadings } from '../../../src/case/order-readings';
import type { Claim } from '../../../src/claim/types';
import { decodeText, readsOf } from '../../../src/code';
import { yearSpan } from '../../../src/span';

const decoding = decodeText('0512', { makers: [], maker: null, now: '2026-11-25' });
const claimed = (kind: 'made' | 'bought', year: number) => [{ kind, span: yearSpan(year) } as unknown as Claim];
const order = (claims: readonly Claim[]) => orderReadings(decoding, claims).readings.map(readsOf);

test('readings by shape alone that fit the claimed year come first, and none is left out', () => {
  expect(order([])).toEqual(['2005-12', '2012-05', '2012-W05', '2005-W12']);
  expect(order(claimed('made', 2012))).toEqual(['2012-05', '2012-W05', '2005-12', '2005-W12']);
  expect(order(claimed('bought', 2008))).toEqual(['2005-12', '2005-W12', '2012-05', '2012-W05']);
});
