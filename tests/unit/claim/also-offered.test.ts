import { expect, it } from 'vitest';
import { findClaims } from '../../../src/claim';
import { listingOf } from './listing-of';

const made = (text: string) =>
  findClaims(listingOf('Leather satchel', text, null), []).flatMap((claim) =>
    claim.kind === 'made' ? [claim.span.from?.slice(0, 4)] : [],
  );

it.each([
  ['I also have half a cake of rosin, two bows that want hair (1970s, ask) and a wardrobe.'],
  ['Je vends aussi son encrier, daté de 1920.'],
  ['Ich verkaufe auch seinen Füller, von 1920.'],
  ['Vendo anche una radio, del 1962.'],
  ['También vendo su reloj, de 1962.'],
  ['Ik verkoop ook zijn pen, uit 1962.'],
])('takes no date of what is offered besides: %s', (text) => expect(made(text)).toEqual([]));
it('keeps the date of the piece in the sentence before', () => {
  expect(made('Made in 1987. I also have two bows (1970s).')).toEqual(['1987']);
  expect(made('The satchel was made in 1987, and I also have the box.')).toEqual(['1987']);
});
