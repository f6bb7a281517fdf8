import { describe, expect, it } from 'vitest';
import { type Told, told } from './listing-of';

describe('a bare "from" is of the making where the piece is what it is said of', () => {
  it.each<Told>([
    ['From 1994.', ['made 1994-1994']],
    ['It is from 1994.', ['made 1994-1994']],
    ['Das ist von 1994.', ['made 1994-1994']],
    ['Die stammt von 1994.', ['made 1994-1994']],
    ['My daughter is from 1994.', []],
    ['Het bonnetje erin is van 1994.', []],
    ['Die Lampe ist von 1994.', []],
    ['The Ledger is from 1994.', ['made 1994-1994'], 'Velmont Ledger'],
    ['The Ledger is from 1994.', [], 'Velmont Roost'],
    ['Bucket 26 of 2004.', ['made 2004-2004'], 'Velmont Bucket 26'],
    ['A belt of 1994.', ['made 1994-1994'], 'Ondrasse belt'],
    ['A belt of 1994.', [], 'Ondrasse bag'],
    ['Carryall 30 of 1994.', ['made 1994-1994']],
    ['Boulevard of 1994.', ['made 1994-1994']],
    ['A 1970s Ondrasse.', ['made 1970-1979']],
    ['Circa 1993 as far as I know.', ['made 1993-1993']],
    ['Circa 1993 in my attic.', []],
    ['2001年のもの。', ['made 2001-2001']],
    ['2001年の結婚式で一度使用。', []],
  ])('%s', (text, claims, title) => expect(told(['made'], text, title)).toEqual(claims));
});

describe('a year by itself is of the making where the piece stands beside it', () => {
  it.each<Told>([
    ['1994.', ['made 1994-1994']],
    ['1994 leather bag.', ['made 1994-1994']],
    ['1994 Ondrasse.', ['made 1994-1994']],
    ['1994 was a good year.', []],
    ['Cartable 1991, marron.', ['made 1991-1991']],
    ['In the attic 1991, brown.', []],
    ['Est. 1962.', []],
    ['1991年製。', ['made 1991-1991']],
  ])('%s', (text, claims, title) => expect(told(['made'], text, title)).toEqual(claims));
});

describe('what a code right ahead is read for', () => {
  it.each<Told>([
    ['8812 YD: December 1988.', ['made 1988-1988']],
    ['YD 8812 = December 1988.', ['made 1988-1988']],
    ['(8812YD): 1988.', ['made 1988-1988']],
    ['Chapter 12: December 1988.', []],
  ])('%s', (text, claims, title) => expect(told(['made'], text, title)).toEqual(claims));
});
