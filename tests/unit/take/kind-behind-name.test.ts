import { parseHTML } from 'linkedom';
import { expect, it } from 'vitest';
import { readPage } from '../../../src/take';

const source = { address: 'https://pages.example/a', day: '2026-12-01' };
const named = (title: string, body: string) =>
  readPage(parseHTML(`<html><head><title>${title}</title></head><body>${body}</body></html>`).document, source).named;

it('takes a name before a bag of some kind for the maker, in a head and in the text', () => {
  const { makers } = named(
    'Mossop Vane shoulder bag from the loft | Strap Forum',
    '<p>We found a Mossop Vane shoulder bag, dark green. The code is W4188.</p><p>Keith was here.</p>',
  );
  expect(makers).toEqual(['Mossop Vane']);
});
it('takes no word for one that only asks about bags, or about the bags of another', () => {
  expect(named('Query about bags by Tarambel', '<p>My Tarambel has 1180.</p>').makers).toEqual(['Tarambel']);
  expect(named('Penhallow codes', '<p>A Penhallow bag. Wexcombe other bags.</p>').makers).toEqual(['Penhallow']);
});
it('takes nobody for the maker who edited a post', () => {
  const { offers } = named(
    'Strap codes',
    '<p>The lining was tartan until 1983.</p><p>Last edit: January 09, 2015, 18:40 by Ludo, spelling</p>',
  );
  expect(offers.map(({ name }) => name)).not.toContain('Ludo');
});
it('takes the maker of a list of facts without a colon, and no quality behind such a word', () => {
  const facts = (maker: string) =>
    named('Vanity case – Museum of Trades', `<h1>Vanity case</h1><ul><li>Number 147</li><li>${maker}</li></ul>`);
  expect(facts('<b>Maker</b> Corrimoor').makers).toEqual(['Corrimoor']);
  expect(facts('Brand New').offers.map(({ name }) => name)).not.toContain('New');
});
