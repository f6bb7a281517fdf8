import { expect, it } from 'vitest';
import { findClaims } from '../../../src/claim';
import { listingOf, ondrasse } from './listing-of';

const datedBy = (text: string, language: string) =>
  findClaims(listingOf('Ondrasse Carryall 30', text, language), [ondrasse]).flatMap((claim) =>
    claim.kind === 'made' || claim.kind === 'bought' ? [`${claim.kind} ${claim.span.from?.slice(0, 4)}`] : [],
  );

it.each([
  ['The receipt in the side pocket is for a scarf of 1987.', 'en'],
  ['The receipt in the side pocket is for a scarf bought in 1987.', 'en'],
  ['La facture dans la poche est pour une écharpe achetée en 1987.', 'fr'],
  ['Die Rechnung in der Tasche ist über einen Schal von 1987.', 'de'],
  ['Lo scontrino nella tasca è di una sciarpa del 1987.', 'it'],
  ['El recibo del bolsillo es de una bufanda de 1987.', 'es'],
  ['De bon in het vakje is van een sjaal uit 1987.', 'nl'],
  ['ポケットのレシートは1987年に買ったマフラーのものです。', 'ja'],
])('a paper of another thing dates no bag: %s', (text, language) => expect(datedBy(text, language)).toEqual([]));

it.each([
  ['The receipt in the side pocket is for the bag, bought in 1987.', 'en'],
  ['Die Rechnung in der Tasche ist über die Tasche, gekauft 1987.', 'de'],
])('a paper of the bag does: %s', (text, language) => expect(datedBy(text, language)).toEqual(['bought 1987']));
