import * as z from 'zod';
import { partBeside } from '../claim';
import { askFor } from './asks';
import { defineCheck, practice } from './frame';
import { metalPairs } from './material-words';
import { listingText, statedPlaces, type WordTable } from './words';

export const metalWordsAgree = defineCheck({
  id: 'metal-words-agree',
  family: 'materials',
  kinds: ['doubt'],
  source: practice,
  data: z.strictObject({
    solid: z.string(),
    other: z.string(),
    /** As the listing names it; null for metal of which it names no part. */
    part: z.string().nullable(),
  }),
  needs: { listing: ['title', 'description', 'text'] },
  run({ listing }) {
    const text = listingText(listing);
    return metalPairs.flatMap(({ solid, other }) => {
      const pairs = saidOf(text, solid).flatMap((a) => saidOf(text, other).map((b) => ({ a, b })));
      const off = pairs.find(({ a, b }) => a.part === b.part);
      if (!off) return [];
      const data = { solid: off.a.words, other: off.b.words, part: off.a.part };
      return [{ kind: 'doubt' as const, key: off.a.words.toLowerCase(), data, asks: [askFor('worn-metal', {})] }];
    });
  },
});

/** The words of the table in the text, each with the part that stands beside it, in the text's own small letters. */
const saidOf = (text: string, table: WordTable): { words: string; part: string | null }[] =>
  statedPlaces(text, table).map(({ start, end }) => ({
    words: text.slice(start, end),
    part: partBeside(text, start, end)?.words.toLowerCase() ?? null,
  }));
