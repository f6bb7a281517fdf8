import { expect, it } from 'vitest';
import words from '../../../src/take/words.json';
import { lexiconSchema, twiceIn } from '../text/lexicon-form';

it.each(Object.entries(words))('words of pages that tell: “%s” has some in every language, none twice', (_, topic) => {
  expect(twiceIn(lexiconSchema.parse(topic))).toEqual([]);
});
