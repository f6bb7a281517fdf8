import { describe, expect, it } from 'vitest';
import { oneOfMany } from '../../../src/check/one-of-many';
import { factsSaying, said } from './sample';

describe('one-of-many', () => {
  it.each([
    ['12 available.', '12 available'],
    ['Several available, used', 'Several available'],
    ['Noch 8 Stück auf Lager', '8 Stück auf Lager'],
    ['Mehrere vorhanden', 'Mehrere vorhanden'],
    ['3 exemplaires disponibles', '3 exemplaires disponibles'],
    ['4 pezzi disponibili', '4 pezzi disponibili'],
    ['Quedan 6 unidades disponibles', '6 unidades disponibles'],
    ['5 stuks op voorraad', '5 stuks op voorraad'],
    ['在庫3点', '在庫3点'],
  ])('asks which one on %j', (words, quoted) => {
    expect(said(oneOfMany, factsSaying(words))).toEqual([`gap: The listing says “${quoted}”.`]);
  });
  it.each([
    '1 available',
    'Not in stock any more',
    '2004 available',
    'Made in 1994',
    'Free parking available',
    '0 in stock',
  ])('is silent on %j', (words) => expect(said(oneOfMany, factsSaying(words))).toEqual(['silent']));
  it('does not apply to a shop that sells new ones', () => {
    expect(said(oneOfMany, factsSaying('Brand new. 12 available.'))).toEqual([
      'not-applicable: the pieces are sold as new, and new ones of a kind are alike',
    ]);
  });
});
