import { describe, expect, it } from 'vitest';
import { findClaims } from '../../../src/claim';
import { listingOf, ondrasse } from './listing-of';

/** Each code, and whether the seller leaves open that it is another. */
const codes = (text: string) =>
  findClaims(listingOf('Ondrasse Carryall 30', text), [ondrasse]).flatMap((claim) =>
    claim.kind === 'code' ? [[claim.code, claim.oneOf ?? false]] : [],
  );

describe('one of two codes that the seller cannot tell apart', () => {
  it.each([
    'The code on the tab looks like KV0915 or KV0975.',
    'Numéro KV0915 ? ou KV0975.',
    'Im Leder steht KV0915 oder KV0975.',
    'Codice KV0915 o KV0975.',
    'Código KV0915 o KV0975.',
    'Code KV0915 of KV0975.',
    '刻印はKV0915またはKV0975です。',
  ])('stands for nothing: %s', (text) => {
    const found = codes(text);
    expect(found[0]).toEqual(['KV0915', true]);
    expect(found.every(([, open]) => open)).toBe(true);
  });
  it.each(['The code is KV0915, or so I was told in 1995.', 'Code KV0915 or ask me for a photo.', 'Code KV0915.'])(
    'one by itself does: %s',
    (text) => expect(codes(text)).toEqual([['KV0915', false]]),
  );
});
