import { expect, test } from 'vitest';
import { said } from './read';

test.each([
  ['Pat. 1,060,378', 'Pat. 1,060,378 | 1913-04-29.. | hard'],
  ['Patent No. 504037', 'Patent No. 504037 | 1893-08-29.. | hard'],
  ['PAT. 2,717,437', 'PAT. 2,717,437 | 1955-09-13.. | hard'],
  ['hook-and-loop closure', 'hook-and-loop | 1955-09-13.. | soft'],
  ['a nylon coil zipper', 'nylon coil zipper | 1960-01-01.. | soft'],
])('%s', (text, expected) => expect(said('fastener', text)).toEqual([expected]));

test.each(['Pat. 1,060,379', 'metal zip', 'hook and eye', '1060378'])('nothing is read from "%s"', (text) =>
  expect(said('fastener', text)).toEqual([]),
);
