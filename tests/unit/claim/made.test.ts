import { describe, expect, it } from 'vitest';
import { type Told, told } from './listing-of';

describe('a date is of what is said beside it', () => {
  it.each<Told>([
    ['My sister is 40 years old.', []],
    ['The bag is 40 years old.', ['made 1981-1991']],
    ['Facture d’une réparation de 1999.', []],
    ['Je vends des sacs depuis 1998.', []],
    ['Owned since 1994.', ['bought 1994-1994']],
    ['A present for my exam (2006).', ['bought 2006-2006']],
    ['Made in USA, 2002.', ['made 2002-2002']],
    ['The matching wallet, of 2004.', []],
    ['1952年創業の店です。', []],
    ['Founded in the 1990s.', []],
    ['We restored the bag in the 1960s.', []],
    ['2018 auf 400 Euro geschätzt.', []],
    ['The shop told me 1988, but the bag is from 1995.', ['made 1995-1995']],
    ['The shop told me that it is rare. Made in 1988, and bought in 1995.', ['made 1988-1988', 'bought 1995-1995']],
    ['2005 bei einer Auktion gekauft.', ['bought 2005-2005']],
    ['Bag of 1970, which he sold me in 1999.', ['made 1970-1970', 'bought 1999-1999']],
    ['8812 YD: December 1988.', ['made 1988-1988']],
    ['The restored bag was made in 1994.', ['made 1994-1994']],
    ['The bag was made and restored in 1994.', []],
    ['Made in 1988 the seller told me. It is from 1995.', ['made 1988-1988', 'made 1995-1995']],
    ['I was told it was made in 1988.', []],
    ['I was told it was bought in 1988.', ['bought 1988-1988']],
  ])('%s', (text, claims, title) => expect(told(['made', 'bought'], text, title)).toEqual(claims));
});
