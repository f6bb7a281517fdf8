import type { WordsFor } from '../../finding-words';
import { codeShown, readingsSaid } from '../codes';
import { claimed, markSaid } from '../dates';

export const time: WordsFor<'code-against-claimed-date' | 'mark-against-claimed-date' | 'mark-against-code-date'> = {
  'code-against-claimed-date': {
    title: "The code's date is the claimed date",
    failureTitle: "The code's date is not the claimed date",
    rule: 'A piece was made when its code says, and not before.',
    statement: ({ shown, readings, claim, inside }, kit, kind) => {
      const said = `${kit.sentence(codeShown(shown, kit))}: ${readingsSaid(readings, kit)}`;
      if (kind !== 'agreement') return `${said}. The listing says ${claimed(claim, kit)}.`;
      return `${said}, ${inside ? 'inside' : 'which allows'} the listing's ${claimed(claim, kit)}.`;
    },
    basis: ({ system, date, claim }, kit) => [
      `${system}: ${kit.span(date)}`,
      `the listing's words ${claimed(claim, kit)}`,
    ],
    innocent: 'The seller may give the year of purchase, repeat what an earlier seller said, or have misread the code.',
    settles: 'The seller’s own reading of the code, and how the year is known.',
  },
  'mark-against-claimed-date': {
    title: "The marks' dates allow the claimed date",
    failureTitle: "A mark's date does not allow the claimed date",
    rule: 'A patent number, registered design or hallmark dates a piece whoever made it.',
    statement: ({ mark, claim }, kit, kind) =>
      kind === 'agreement'
        ? `${kit.sentence(markSaid(mark, kit))}, which allows the listing's ${claimed(claim, kit)}.`
        : `${kit.sentence(markSaid(mark, kit))}. The listing says ${claimed(claim, kit)}.`,
    innocent: 'The marked part (a zip, a lock, a label) may have been replaced later, or the number misread.',
    settles: 'A sharp photo of the mark and the part it is on.',
  },
  'mark-against-code-date': {
    title: "The marks' dates allow the code's date",
    failureTitle: "A mark's date does not allow the code's date",
    rule: 'The code and the public marks of a piece date the same making.',
    statement: ({ shown, readings, mark }, kit) =>
      `${kit.sentence(codeShown(shown, kit))}: ${readingsSaid(readings, kit)}; ${markSaid(mark, kit)}.`,
    innocent: 'The marked part may have been replaced later, or one of the two misread.',
    settles: 'Sharp photos of the stamp and of the mark.',
  },
};
