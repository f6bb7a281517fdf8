import { describe, expect, it } from 'vitest';
import { type Told, told } from './listing-of';

describe('a date of a thing, a part or a paper is none of the piece', () => {
  it.each<Told>([
    ['Comes with the suitcase, which is from 1988.', []],
    ['I sell the satchel, which is from 1988.', ['made 1988-1988']],
    ['2019年の箱が付きます。', []],
    ['The carton is from 2019.', []],
    ['With carton, it is from 1994.', ['made 1994-1994']],
    ['The zip is from 2010.', []],
    ['The strap was exchanged in 2016, I bought it in 1994.', ['bought 1994-1994']],
    ['The strap was sewn by a saddler in 2014.', []],
    ['Die Schachtel, von 2012.', []],
    ['La scatola è del 2012, la borsa del 1996.', ['made 1996-1996']],
    ['The saddler has been in town since 1962.', []],
    ['My aunt Hilde, born 1931, carried it.', []],
    ['The receipt in the pocket is for a jumper bought in 1987.', []],
    ['The receipt in the pocket is for the bag bought in 1987.', ['bought 1987-1987']],
    ['レシートは1989年に買った傘のものです。', []],
    ['レシートは1989年に買ったバッグのものです。', ['bought 1989-1989']],
    ['The box, made in 2012.', []],
    ['Sold without the box, made in 2012.', ['made 2012-2012']],
  ])('%s', (text, claims, title) => expect(told(['made', 'bought'], text, title)).toEqual(claims));
});

describe('nor is the place where such a thing was made', () => {
  it.each<Told>([
    ['The zip is made in Japan.', []],
    ['ファスナーは日本製です。', []],
    ['Dust bag made in China.', []],
    ['100% cotton pouch, made in Turkey.', []],
    ['The dust bag has a tag saying made in China.', []],
    ['The tag inside the bag says made in Italy.', ['origin IT']],
    ['The card is lost, made in Spain.', ['origin ES']],
    ['With dust bag, made in Spain.', ['origin ES']],
  ])('%s', (text, claims, title) => expect(told(['origin'], text, title)).toEqual(claims));
});

describe('what a clause shows is of the thing that it names', () => {
  it.each<Told>([
    ['The box has scratches.', []],
    ['With box and scratches.', ['wear']],
    ['Some scratches, with box.', ['wear']],
    ['The belt has scratches.', ['wear'], 'Ondrasse belt'],
    ['The belt has scratches.', [], 'Ondrasse bag'],
  ])('%s', (text, claims, title) => expect(told(['wear'], text, title)).toEqual(claims));
});
