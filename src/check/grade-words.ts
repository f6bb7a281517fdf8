import { practice } from './frame';
import { copyGradeWords } from './text-words';
import { askFact, listWords, quote } from './wording';
import { listingText, statedWords } from './words';
import { defineWritten, type WrittenSpeech } from './written';

export const gradeWords = defineWritten({
  id: 'grade-words',
  family: 'text',
  title: 'No trade word for a copy stands in the text',
  failureTitle: 'The text holds a trade word for the grade of a copy',
  kinds: ['doubt'],
  basis: 'Words such as “mirror quality” or “1:1” are how the trade grades copies.',
  innocent: 'The word may belong to another thing (a mirror, a scale), or be denied in the same sentence.',
  settles: 'What the seller means by it, in writing.',
  source: practice,
  needs: { listing: ['title', 'description', 'text'] },
  run({ listing }) {
    const found = [...new Set(statedWords(listingText(listing), copyGradeWords))];
    if (found.length === 0) return [];
    const speech: WrittenSpeech = {
      kind: 'doubt',
      statement: `The listing says ${listWords(found.slice(0, 3).map(quote))}.`,
      asks: [askFact('authorship', 'Could you confirm in writing who made it, and how you know?')],
    };
    return [speech];
  },
});
