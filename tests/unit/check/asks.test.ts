import { expect, it } from 'vitest';
import { type AskId, askedTopics, askFor } from '../../../src/check/asks';

/** What each ask wants, and under which topic it is one question with others. */
const asks: [AskId, 'photo' | 'fact', string][] = [
  ['stamp-photo', 'photo', 'stamp-photo'],
  ['whole-stamp', 'photo', 'whole-stamp'],
  ['made-date', 'fact', 'made-date'],
  ['origin', 'fact', 'origin'],
  ['measures', 'photo', 'measures'],
  ['returns', 'fact', 'returns'],
  ['not-as-described', 'fact', 'not-as-described'],
  ['purchase', 'fact', 'purchase'],
  ['payment', 'fact', 'payment'],
  ['larger-photos', 'photo', 'larger-photos'],
  ['lower-price', 'fact', 'price'],
  ['price', 'fact', 'price'],
  ['parts-not-shown', 'photo', 'parts'],
  ['parts-to-show', 'photo', 'parts'],
  ['first-photos', 'photo', 'parts'],
  ['own-photo', 'photo', 'own-photo'],
  ['which-one', 'photo', 'which-one'],
  ['gone-photos', 'photo', 'gone-photos'],
  ['description', 'fact', 'description'],
  ['why-changed', 'fact', 'changes'],
  ['changed-hands', 'fact', 'changes'],
  ['part', 'photo', 'part-lining'],
  ['measured-part', 'photo', 'part-lining'],
  ['authorship', 'fact', 'authorship'],
  ['remade-by', 'fact', 'remade-by'],
  ['what-comes', 'fact', 'what-comes'],
  ['trader', 'fact', 'trader'],
  ['seller', 'fact', 'seller'],
  ['assurance', 'fact', 'assurance'],
  ['condition', 'photo', 'condition'],
  ['leather', 'photo', 'leather'],
  ['worn-metal', 'photo', 'part-hardware'],
  ['aging', 'photo', 'aging'],
  ['model', 'fact', 'model'],
];

it.each(asks)('%s asks for a %s, under %s', (ask, wants, topic) => {
  const data = { part: 'lining', subject: 'made', parts: ['base'] };
  expect(askFor(ask, data as never)).toEqual({ ask, topic, wants, data });
});

it('names every topic, those of the parts by how they begin', () => {
  expect(askedTopics).toEqual(asks.map(([, , topic]) => (topic === 'part-lining' ? 'part-' : topic)));
});
