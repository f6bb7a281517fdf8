import type { WordsFor } from '../../finding-words';
import { sayAgreeing, sayApartByShape, sayConflict, sayExplanation } from '../../say-evidence';
import { systemName } from '../../system-name';
import { codeShown, readingsSaid } from '../codes';
import { claimed, datedSaid, markSaid } from '../dates';

export const time: WordsFor<
  | 'code-against-claimed-date'
  | 'code-system-in-use'
  | 'plant-in-use'
  | 'code-before-stamping'
  | 'bought-after-making'
  | 'claimed-dates-agree'
  | 'date-not-in-future'
  | 'evidence-agrees'
  | 'mark-against-claimed-date'
  | 'mark-against-code-date'
  | 'model-made-then'
> = {
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
      `the code system ${kit.quote(systemName(system))}: ${kit.span(date)}`,
      `the listing's words ${claimed(claim, kit)}`,
    ],
    innocent: 'The seller may give the year of purchase, repeat what an earlier seller said, or have misread the code.',
    settles: 'The seller’s own reading of the code, and how the year is known.',
  },
  'code-system-in-use': {
    title: "The code's system was in use at the code's own date",
    failureTitle: "The code's system was not in use at the code's own date",
    rule: 'A maker stamps in the layout of its day.',
    statement: ({ shown, date, system, maker, used }, kit) =>
      `${kit.sentence(codeShown(shown, kit))}: ${kit.span(date)} by the system ${kit.quote(systemName(system))}, which ${maker} used ${kit.during(used)}.`,
    innocent: 'The start or end of a system in the maker file may be off by some months, or a character misread.',
    settles: 'A sharper photo of the stamp, and another piece of that period to compare.',
  },
  'plant-in-use': {
    title: "The workshop worked at the code's date",
    failureTitle: "The workshop did not work at the code's date",
    rule: 'A workshop stamps pieces only while it works for the maker.',
    statement: ({ shown, date, plant, place, used }, kit, kind) => {
      const years = kit.list(used.map((one) => kit.span(one)));
      const named = `workshop ${plant} (${kit.place(place)})`;
      return kind === 'agreement'
        ? `${kit.sentence(codeShown(shown, kit))}: ${named} worked then (${years}).`
        : `${kit.sentence(codeShown(shown, kit))}: ${kit.span(date)}, but ${named} worked ${years}.`;
    },
    innocent: 'The workshop’s first or last year in the maker file may be off, or a character of the code misread.',
    settles: 'A sharper photo of the stamp.',
  },
  'code-before-stamping': {
    title: 'The maker stamped at the claimed time',
    failureTitle: 'The piece carries a code from before the maker stamped any',
    rule: 'A piece from before a maker’s first stamps carries no code.',
    statement: ({ shown, claim, maker, stamped }, kit) =>
      `${kit.sentence(codeShown(shown, kit))}, but the listing says ${claimed(claim, kit)} and ${maker} stamped only ${kit.span(stamped)}.`,
    innocent: 'The seller may have guessed the year, or the mark is of a later repair by the maker.',
    settles: 'How the year is known, and a photo of the whole stamp.',
  },
  'bought-after-making': {
    title: 'It was bought after it was made',
    failureTitle: 'It is said to be bought before it was made',
    rule: 'A piece is bought when it has been made.',
    statement: ({ making, purchase }, kit, kind) =>
      kind === 'agreement'
        ? `The listing says ${claimed(making, kit)} and ${claimed(purchase, kit)}, which go together.`
        : `The listing says ${claimed(making, kit)} and ${claimed(purchase, kit)}: bought before it was made.`,
    innocent: 'One of the two years may be a slip of memory.',
    settles: 'The receipt, or how the year of making is known.',
  },
  'claimed-dates-agree': {
    title: 'The dates that the listing gives agree',
    failureTitle: 'The listing gives dates that do not agree',
    rule: 'One piece has one date of making.',
    statement: ({ dates }, kit, kind) => {
      const said = dates.map((one) => claimed(one, kit));
      return kind === 'agreement'
        ? `The dates of the listing agree: ${said.join(', ')}.`
        : `The listing says ${said.join(' and also ')}.`;
    },
    innocent: 'One of the dates may be that of a similar piece, or a slip of the pen.',
    settles: 'Which date the seller means, and how it is known.',
  },
  'date-not-in-future': {
    title: 'The dates lie before the listing',
    failureTitle: 'A date lies after the day on which the piece is offered',
    rule: 'What is offered has been made.',
    statement: (data, kit) =>
      'claim' in data
        ? `The listing says ${claimed(data.claim, kit)}, after ${kit.day(data.today)}.`
        : `${kit.sentence(codeShown(data.shown, kit))}: ${readingsSaid(data.readings, kit)}, after ${kit.day(data.today)}.`,
    innocent: 'A digit of the code may be misread, or the listing has a slip.',
    settles: 'A sharper photo of the stamp.',
  },
  'evidence-agrees': {
    title: 'All that dates or places the piece can hold together',
    failureTitle: 'What dates or places the piece cannot all hold together',
    rule: 'A piece was made at one time and in one place, which everything about it allows.',
    statement(data) {
      if (!('facts' in data)) return `${sayAgreeing(data, 'en')}.`;
      return `${data.byShape ? sayApartByShape(data, 'en') : sayConflict(data, 'en')}.`;
    },
    innocent: 'One of the facts may be misread, or a part may be a later repair.',
    explained(data) {
      if (!('facts' in data)) return null;
      if (data.byShape) return 'This maker may write its codes in another way: only its own list would tell.';
      return data.explained ? `${sayExplanation(data.explained, data.explained.fact, 'en')}.` : null;
    },
    settles: 'Whichever of the facts named is easiest to show in a sharp photo.',
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
  'model-made-then': {
    title: 'The model was made at the date',
    failureTitle: 'The model was not made at the date',
    rule: 'A model is made from its first to its last year.',
    statement: ({ maker, model, made, again = [], dated }, kit, kind) =>
      `${maker} made the ${model} ${kit.either([made, ...again].map((one) => kit.during(one)))}, ${kind === 'agreement' ? 'and' : 'but'} ${datedSaid(dated, kit)}.`,
    innocent: 'The seller may use the name of a similar model, or the file’s years may be off.',
    settles: 'How the model is known, and a photo of the whole piece.',
  },
};
