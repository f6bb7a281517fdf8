import { practice } from './frame';
import { notThisPieceWords } from './text-words';
import { askPhoto, listWords, quote } from './wording';
import { listingText, statedWords } from './words';
import { defineWritten, type WrittenSpeech } from './written';

export const notThisPiece = defineWritten({
  id: 'not-this-piece',
  family: 'photos',
  title: 'The photos are of the piece itself',
  failureTitle: 'The photos are said not to be of the piece itself',
  kinds: ['doubt'],
  basis: 'Look for pictures of the actual item.',
  innocent: 'The seller may use a better picture for the first photo only.',
  settles: 'Photos of the piece itself, with today’s date on a slip of paper.',
  source: practice,
  needs: { listing: ['title', 'description', 'text'] },
  run({ listing }) {
    const found = [...new Set(statedWords(listingText(listing), notThisPieceWords))];
    if (found.length === 0) return [];
    const speech: WrittenSpeech = {
      kind: 'doubt',
      statement: `The listing says ${listWords(found.slice(0, 3).map(quote))}.`,
      asks: [
        askPhoto(
          'own-photo',
          'Could you add photos of the piece itself, one of them with today’s date on a slip of paper?',
        ),
      ],
    };
    return [speech];
  },
});
