import { type Expected, expectedWords } from '../../../code';
import type { WordsFor } from '../../finding-words';
import { systemName } from '../../system-name';
import { codeShown, differencesSaid, nearest, readingsSaid } from '../codes';
import { claimed } from '../dates';

/** The trade's word in place of the file's. */
const expectedSaid = (expected: Expected): string =>
  expected.kind === 'plant' ? `a workshop on file: ${expected.codes}` : expectedWords(expected);

export const code: WordsFor<'codes-agree' | 'code-denied' | 'code-shown' | 'code-fits-maker' | 'code-slot-possible'> = {
  'codes-agree': {
    title: 'The code shown is the code quoted',
    failureTitle: 'The listing quotes another code than the photo shows',
    rule: 'A code that a listing quotes is meant to be the one on the piece. A piece may carry further marks, so this never contradicts.',
    statement: ({ shown, quoted }, kit, kind) =>
      kind === 'agreement'
        ? `${kit.sentence(codeShown(shown, kit))}, as the listing quotes it.`
        : `${kit.sentence(codeShown(shown, kit))}, but the listing quotes ${kit.code(quoted)}.`,
    innocent:
      'The seller may have mistyped a worn stamp, quoted another mark of the piece, or copied the text of an earlier listing.',
    settles: 'A sharp photo of the stamp, and the code as the seller reads it.',
  },
  'code-denied': {
    title: 'No code is shown where the seller finds none',
    failureTitle: 'A photo shows a code where the seller finds none',
    rule: 'A seller who finds no code shows none. It is easily overlooked, and what a photo shows may be another mark.',
    statement: ({ shown, denied }, kit) =>
      `${kit.sentence(codeShown(shown, kit))}, but the seller finds no code: ${kit.quote(denied)}.`,
    innocent:
      'The seller may have overlooked it, or take it for something other than a date code; it may be a mark of a zip or a repair.',
    settles: 'A photo that shows where on the piece the mark sits.',
  },
  'code-shown': {
    title: 'A code is shown or quoted',
    failureTitle: 'No code is shown, though the maker stamped at the claimed time',
    rule: 'A maker that stamped at the claimed time put a code on every piece.',
    statement: ({ claim, maker, stamped, denied }, kit) =>
      denied === null
        ? `The listing says ${claimed(claim, kit)}, when ${maker} stamped (${kit.span(stamped)}). No photo shows a code and the text quotes none.`
        : `The listing says ${claimed(claim, kit)}, when ${maker} stamped (${kit.span(stamped)}), but the seller finds no code: ${kit.quote(denied)}.`,
    innocent: 'The stamp may be worn flat, hidden in a pocket, or simply not photographed.',
    settles: 'A photo of the place where this maker stamps.',
  },
  'code-fits-maker': {
    title: "The code reads under one of the maker's code systems",
    failureTitle: "The code reads under none of the maker's code systems",
    rule: "A code that the maker stamped follows one of the maker's code systems.",
    statement: ({ shown, maker, system, readings, near }, kit) => {
      const said = kit.sentence(codeShown(shown, kit));
      if (system !== null)
        return `${said}: ${readingsSaid(readings, kit)}, by ${maker}'s system ${kit.quote(systemName(system))}.`;
      return `${said}, which fits none of ${maker}'s code systems.${near ? ` ${nearest(near, kit)}` : ''}`;
    },
    innocent:
      'A character may be misread, the mark may be a repair or batch number, or the maker file may lack a system.',
    settles: 'A sharper photo of the stamp, straight from above.',
  },
  'code-slot-possible': {
    title: 'Month, week and workshop of the code exist',
    failureTitle: 'The code names a month, week or workshop that does not exist',
    rule: 'A year has 12 months and 52 or 53 weeks (ISO 8601). A workshop that the maker file does not list speaks against the code only where the file says that its list is complete.',
    statement: ({ shown, slot, value, expected, unlistedBy, near }, kit) => {
      const wrong =
        unlistedBy === null
          ? `${slot === 'plant' ? 'workshop' : slot} ${kit.quote(value)} does not exist, expected ${expectedSaid(expected)}`
          : `the file of ${unlistedBy} does not list a workshop ${kit.quote(value)}, and does not say that it lists all`;
      const hint = near ? ` ${kit.code(near.code)} would read${differencesSaid(near.differences)}.` : '';
      return `${kit.sentence(codeShown(shown, kit))}: ${wrong}.${hint}`;
    },
    innocent: 'One worn or badly lit character may have been taken for another.',
    explained: ({ unlistedBy }) =>
      unlistedBy === null ? null : 'The maker may have had workshops that nobody has entered into the file yet.',
    settles: 'A sharper photo of the stamp, straight from above.',
    settled: ({ unlistedBy }) =>
      unlistedBy === null
        ? null
        : 'A maker file that lists all workshops, or another piece that is known to be from this one.',
  },
};
