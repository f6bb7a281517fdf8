import { expect, it } from 'vitest';
import { findReturns } from '../../../src/text/returns';

it.each([
  ['Envoi 7 €. Les retours ne sont pas possibles.', 'retours ne sont pas possibles'],
  ['Il reso non è possibile, scrivetemi pure.', 'reso non è possibile'],
  ['Non è possibile il reso della borsa.', 'Non è possibile il reso'],
  ['Retourneren is niet mogelijk.', 'Retourneren is niet mogelijk'],
  ['Sorry, no returns.', 'no returns'],
])('a refusal is quoted with what makes it one: %s', (text, words) => {
  expect(findReturns(text)).toEqual([expect.objectContaining({ value: { accepted: false, days: null }, words })]);
});
