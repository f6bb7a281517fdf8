import { expect, test } from 'vitest';
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
