import { practice } from './frame';
import { assuranceWords } from './text-words';
import { askFact, listWords, quote } from './wording';
import { allWords, listingText } from './words';
import { defineWritten, type WrittenSpeech } from './written';

export const readyMadeAssurance = defineWritten({
  id: 'ready-made-assurance',
  family: 'text',
  title: 'No ready-made assurance stands in for facts',
  failureTitle: 'A ready-made assurance stands in for facts',
  kinds: ['gap'],
  basis: 'An assurance without a fact that can be checked settles nothing.',
  innocent: 'Many sellers write it because buyers and marketplaces ask for it.',
  settles: 'What the assurance rests on: a receipt, the code, a qualified opinion.',
  source: practice,
  needs: { listing: ['title', 'description', 'text'] },
  run({ listing }) {
    const found = [...new Set(allWords(listingText(listing), assuranceWords))];
    if (found.length === 0) return [];
    const speech: WrittenSpeech = {
      kind: 'gap',
      statement: `The listing says ${listWords(found.slice(0, 3).map(quote))}.`,
      asks: [askFact('assurance', 'What does that rest on: a receipt, the code, or the opinion of someone qualified?')],
    };
    return [speech];
  },
});
