import { describe, expect, it, test } from 'vitest';
import { comparableAddress } from '../../../src/listing/page/address';
import { listingKey } from '../../../src/watch/listing-key';

const page = 'https://attic-arcade.example/item/7?size=30';
const tracking = [
  'source=mail',
  'src=feed',
  'campaign=spring',
  'referrer=front',
  'ref=a',
  'ref_=b',
  'utm_source=x',
  'utm_id-2=x',
  'gclid=1',
  'dclid=1',
  'fbclid=1',
  'msclkid=1',
  'yclid=1',
  'igshid=1',
  'mc_cid=1',
  'mc_eid=1',
  '_ga=1',
  'spm=1',
  'scm=1',
  'trk=1',
];

test.each(tracking)('%s makes no second case, and no other page', (parameter) => {
  expect(listingKey(`${page}&${parameter}`)).toBe(listingKey(page));
  expect(comparableAddress(`${page}&${parameter}`, page)).toBe(comparableAddress(page, page));
});

test.each(['id=8', 'resource=8', 'variant=ref'])('%s is another piece', (parameter) => {
  expect(listingKey(`${page}&${parameter}`)).not.toBe(listingKey(page));
  expect(comparableAddress(`${page}&${parameter}`, page)).not.toBe(comparableAddress(page, page));
});

describe('the key of a listing', () => {
  it.each([
    'https://attic-arcade.example/item/7',
    'http://attic-arcade.example/item/7',
    'https://www.attic-arcade.example/item/7',
    'https://Attic-Arcade.example:443/item/7/',
    'https://attic-arcade.example/item/7?utm_source=mail&gclid=1',
    'https://attic-arcade.example/item/7#:~:text=carryall',
  ])('is the same for %s', (url) => {
    expect(listingKey(url)).toBe('attic-arcade.example/item/7');
  });

  it.each([
    'https://attic-arcade.example/item/8',
    'https://attic-arcade.example/Item/7',
    'https://attic-arcade.example/item/7?variant=red',
    'https://attic-arcade.example/item/7#carryall-25',
    'https://attic-arcade.example:8443/item/7',
    'https://shop.attic-arcade.example/item/7',
  ])('is another one for %s', (url) => {
    expect(listingKey(url)).not.toBe('attic-arcade.example/item/7');
  });

  it('does not depend on the order of parameters', () => {
    const one = listingKey('https://attic-arcade.example/item?id=7&size=30');
    expect(listingKey('https://attic-arcade.example/item?size=30&id=7')).toBe(one);
  });
});
