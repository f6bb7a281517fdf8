import { partBeside } from '../claim';
import { practice } from './frame';
import { metalPairs } from './material-words';
import { askPhoto, quote } from './wording';
import { listingText, statedPlaces, type WordTable } from './words';
import { defineWritten, type WrittenSpeech } from './written';

export const metalWordsAgree = defineWritten({
  id: 'metal-words-agree',
  family: 'materials',
  title: 'The words for the metal agree',
  failureTitle: 'The listing gives two metals for the same part that exclude each other',
  kinds: ['doubt'],
  basis:
    'A part of solid gold or silver is neither plated nor of that tone only, and no solid metal is a zinc alloy. Solid brass may be plated.',
  innocent: 'The words may be meant of different buckles, rivets or zips.',
  settles: 'A close photo of the metal where it is worn.',
  source: practice,
  needs: { listing: ['title', 'description', 'text'] },
  run({ listing }) {
    const text = listingText(listing);
    const ask = askPhoto('part-hardware', 'Could you add a close photo of the metal parts where they are most worn?');
    return metalPairs.flatMap(({ solid, other }): WrittenSpeech[] => {
      const pairs = saidOf(text, solid).flatMap((a) => saidOf(text, other).map((b) => ({ a, b })));
      const off = pairs.find(({ a, b }) => a.part === b.part);
      if (!off) return [];
      const statement = `The listing says ${quote(off.a.words)} and also ${quote(off.b.words)} of the ${off.a.part ?? 'metal'}.`;
      return [{ kind: 'doubt', key: off.a.words.toLowerCase(), statement, asks: [ask] }];
    });
  },
});

/** The words of the table in the text, each with the part that stands beside it, in the text's own small letters. */
const saidOf = (text: string, table: WordTable): { words: string; part: string | null }[] =>
  statedPlaces(text, table).map(({ start, end }) => ({
    words: text.slice(start, end),
    part: partBeside(text, start, end)?.words.toLowerCase() ?? null,
  }));
