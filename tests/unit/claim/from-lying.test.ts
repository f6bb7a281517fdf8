import { describe, expect, it } from 'vitest';
import { findClaims } from '../../../src/claim';
import { listingOf } from './listing-of';

const wear = (text: string) =>
  findClaims(listingOf('A brown bag', text), []).flatMap((claim) =>
    claim.kind === 'wear' ? [claim.fromLying ?? false] : [],
  );

describe('signs that no use has left', () => {
  it.each([
    'Never used, a dent from storage.',
    'Jamais porté, une griffure du stockage.',
    'Ungetragen, eine Druckstelle vom Lagern.',
    'Mai usata, un graffio da magazzino.',
    'Sin estrenar. La hebilla tiene un arañazo de la tienda.',
    'Nooit gebruikt, een krasje uit de winkel.',
    '未使用ですが、保管時の傷があります。',
  ])('are told as such: %s', (text) => expect(wear(text)).toEqual([true]));
  it.each([
    'Never used, but scratches on the base. I took it from the shop home.',
    'Ein Kratzer am Boden, vom Lagern ist der Staubbeutel gelb.',
    'A scratch on the base.',
  ])('and no others: %s', (text) => expect(wear(text)).toEqual([false]));
});
