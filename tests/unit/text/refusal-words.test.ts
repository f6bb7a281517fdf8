import { expect, it } from 'vitest';
import { findReturns } from '../../../src/text/returns';

it.each([
  ['Envoi 7 €. Les retours ne sont pas possibles.', 'retours ne sont pas possibles'],
  ['Il reso non è possibile, scrivetemi pure.', 'reso non è possibile'],
  ['Non è possibile il reso della borsa.', 'Non è possibile il reso'],
  ['Retourneren is niet mogelijk.', 'Retourneren is niet mogelijk'],
  ['Sorry, no returns.', 'no returns'],
  ['No se puede devolver.', 'No se puede devolver'],
  ['Bolso usado, no se puede devolver, lo siento.', 'no se puede devolver'],
  ['Die Tasche kann nicht zurückgegeben werden.', 'Die Tasche kann nicht zurückgegeben werden'],
  ["We cannot take things back, I'm afraid.", 'We cannot take things back'],
  ['Used. It cannot be sent back, sorry.', 'It cannot be sent back'],
  ["L'article ne peut pas être retourné.", "L'article ne peut pas être retourné"],
  ['Non si può restituire!', 'Non si può restituire'],
  ['De tas kan niet teruggestuurd worden.', 'De tas kan niet teruggestuurd worden'],
])('a refusal is quoted with what makes it one: %s', (text, words) => {
  expect(findReturns(text)).toEqual([expect.objectContaining({ value: { accepted: false, days: null }, words })]);
});
