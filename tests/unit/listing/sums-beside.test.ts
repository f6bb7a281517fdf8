import { expect, it } from 'vitest';
import { parsePrices } from '../../../src/text/price';
import { findShipping } from '../../../src/text/shipping';
import { readHtml } from './page';

const kinds = (text: string) => parsePrices(text, { language: null }).map(({ price }) => price.kind);

it.each([
  ['Can post for £5', 'shipping'],
  ['Ich verschicke für 6,99 €', 'shipping'],
  ['Je peux envoyer pour 7 €', 'shipping'],
  ['Spedisco con 8 €', 'shipping'],
  ['Lo mando por 5 €', 'shipping'],
  ['Opsturen kost € 7', 'shipping'],
  ['送料は別途800円', 'shipping'],
  ['NP 740,- €', 'was'],
  ['Stima € 300 - 450', 'estimate'],
  ['Schätzpreis: 200 €', 'estimate'],
  ['Estimate £200–300', 'estimate'],
])('a sum is what stands beside it: %s', (text, kind) => {
  expect(kinds(text)).toEqual([kind]);
});

it('a verb says what postage costs where a sum follows', () => {
  const said = (text: string) => findShipping(text).map(({ words }) => words);
  expect(said('Afhalen of versturen voor 6,50')).toEqual(['Afhalen of versturen voor 6,50']);
  expect(said('Sped. 7 €, no perditempo')).toEqual(['Sped. 7 €, no perditempo']);
  expect(said('Versturen')).toEqual([]);
  expect(said('Je peux envoyer 3 photos')).toEqual([]);
});

it('what a piece cost when new stands beside what is asked', async () => {
  const { kind, price } = await readHtml(
    '<main><h1>Velmar Lane Tilda</h1><p>Verkaufe meine Tilda, NP 740,- €. VB 160 €, Porto 5 €.</p></main><aside>Anbieter: <a href="/u/klara">klara</a></aside>',
  );
  expect(kind).toBe('listing');
  expect(price[0]?.value).toMatchObject({ kind: 'sale', minor: 16_000 });
  expect(price.find(({ value }) => value.kind === 'was')?.caveats).toContain('when-new');
});
