import { practice } from './frame';
import { hurryWords } from './text-words';
import { commonAsks, listWords, quote } from './wording';
import { allWords, listingText } from './words';
import { defineWritten, type WrittenSpeech } from './written';

export const pressureWords = defineWritten({
  id: 'pressure-words',
  family: 'seller',
  title: 'The text leaves time and room for questions',
  failureTitle: 'The text hurries the buyer or refuses questions',
  kinds: ['doubt'],
  basis: 'Who hurries a buyer leaves no time for the questions that would settle a doubt.',
  innocent: 'The seller may be moving house or tired of idle messages.',
  settles: 'Whether the seller answers a short, polite question.',
  source: practice,
  needs: { listing: ['title', 'description', 'text'] },
  run({ listing }) {
    const found = [...new Set(allWords(listingText(listing), hurryWords))];
    if (found.length === 0) return [];
    const speech: WrittenSpeech = {
      kind: 'doubt',
      statement: `The listing says ${listWords(found.slice(0, 3).map(quote))}.`,
      asks: [commonAsks.payment],
    };
    return [speech];
  },
});
