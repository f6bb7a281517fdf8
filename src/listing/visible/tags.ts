import { foldedSet, foldWords } from '../../text/fold';
import { japanese } from '../../text/japanese';
import { labelOf } from '../../text/label';
import { wordsOf } from '../../text/lexicon';
import { colourWords } from '../../text/material-words';
import { literally, phraseTest, textPattern } from '../../text/phrases';
import { findPlaces } from '../../text/place';
import { plainWords } from '../../text/plain-words';
import { type Draft, likeliest, type Provenance, propose } from '../draft';
import type { Labelled } from '../extract-types';
import { sideBySide } from './pairs';
import { readConditionWords } from './words';

/*
 * Apps show what a piece is as short words side by side, without labels: "Ondrasse", "Black", "Very good". A colour and
 * a grade are told by their words. A name that no list knows is the maker's where the title or the text has it too, or
 * where it stands between both, alone. Two colours, two grades or two such names are a choice, and say nothing.
 */

const colours = foldedSet(Object.values(colourWords).flat());
const nobody = foldedSet(wordsOf('names-nobody'));
const isColour = (tag: string): boolean => colours.has(foldWords(tag).text.trim());

/** "Sac seau Ondrasse": a title. */
const namesPiece = phraseTest(wordsOf('bag', 'kind-of-piece', 'piece'));

/** Whether a tag has the form of a name, and a word that is no plain one. */
function isName(tag: string): boolean {
  const { text } = foldWords(tag);
  if (/\d/.test(tag) || !/^[\p{Lu}\p{Lo}]/u.test(tag) || nobody.has(text.trim())) return false;
  if (!japanese.test(tag) && namesPiece.test(text)) return false;
  return /\p{L}{3}/u.test(text.replace(plainWords(), ' ')) && findPlaces(tag).length === 0;
}

/** What rows of tags tell of the piece. */
export function readTags(labelled: readonly Labelled[], draft: Draft): void {
  const rows = labelled.filter(({ name }) => name === sideBySide);
  if (rows.length === 0) return;
  const told = foldWords(`${likeliest(draft.title)} ${likeliest(draft.description)}`).text;
  for (const { name, value, ...from } of rows) readRow(value, told, draft, from);
}

/** What the tags of one row tell; `told` is what the title and the description have, folded. */
function readRow(row: string, told: string, draft: Draft, from: Provenance): void {
  const tags = [...new Set(row.split('\n').map((tag) => tag.trim()))];
  if (labelOf(tags[0] ?? '') !== null || tags.includes(likeliest(draft.title))) return;
  const ofColour = tags.filter(isColour);
  const graded = tags.filter((tag) => !isColour(tag) && readConditionWords(tag) !== null);
  if (ofColour.length > 1 || graded.length > 1) return;
  const others = tags.filter((tag) => !ofColour.includes(tag) && !graded.includes(tag));
  const isTold = (name: string) =>
    textPattern(`(?<!\\p{L})${literally(foldWords(name).text.trim())}(?!\\p{L})`).test(told);
  const names = others.filter((tag) => isName(tag) && tag !== likeliest(draft.seller.name));
  const maker = names.filter(isTold);
  const known = maker.length === 1 ? maker[0] : undefined;
  const between = ofColour.length + graded.length === 2 && names.length === 1 ? names[0] : undefined;
  const name = known ?? between;
  // A word that nothing knows may be the label of the one beside it.
  if (name === undefined && (others.length > 0 || ofColour.length + graded.length < 2)) return;
  if (name !== undefined) propose(draft.maker, name, { ...from, confidence: 0.5 });
  for (const colour of ofColour) propose(draft.colour, colour, { ...from, confidence: 0.5 });
  for (const grade of graded) propose(draft.condition, readConditionWords(grade), { ...from, confidence: 0.6 }, grade);
}
