import { expect, it } from 'vitest';
import { findClaims } from '../../../src/claim';
import { listingOf } from './listing-of';

const sidesIn = (description: string) =>
  findClaims(listingOf('Tilda', description), []).flatMap((one) => (one.kind === 'measure' ? [one.measure.mm] : []));

it('sizes that are stated once more, in another language or at the end, are the same sides', () => {
  expect(sidesIn('FR : sac en cuir, 24 x 20 x 14 cm, bon état.\nEN: leather bag, 24 x 20 x 14 cm, good.')).toEqual([
    240, 200, 140,
  ]);
  expect(sidesIn('26 x 27 x 26 cm. Lined in olive.')).toEqual([260, 270, 260]);
  expect(sidesIn('24 x 20 x 14 cm, so it says. I make it 25 x 20 x 14 cm.')).toEqual([240, 200, 140, 250, 200, 140]);
});
