import type { Condition } from '../listing/types';
import { clauseAround, isAboutAnother, isNegated } from './clause';
import { conditionWords, newWords, pieceNouns } from './condition-words';
import { foldWords, type Said } from './fold';
import { type Hit, phraseFinder, phrasePattern } from './phrases';
import { Taken } from './taken';
import { accessoryWords, partWords } from './things';

const find = phraseFinder(conditionWords);
const findNew = phraseFinder({ new: newWords });
const things = phrasePattern(
  [...accessoryWords, ...Object.entries(partWords).flatMap(([part, words]) => (part === 'body' ? [] : words))],
  'u',
);
const nounBefore = new RegExp(`(?:${phrasePattern(pieceNouns).source})\\s{1,2}$`, 'u');
const nounAfter = new RegExp(`^\\s{0,2}(?:${phrasePattern(pieceNouns).source})`, 'u');
const stateBefore =
  /(?:condition|zustand|etat|stato|condizioni|estado|staat|conditie|状態|is|it's|its|ist|est|e|es|brand|fabrik|absolutely|completely|totally|komplett|ganz|totalement|completamente|helemaal|ganz|and|und|et|en|y)[\s:.-]{0,3}$/u;

const plainWords = (said: { words: string }) => foldWords(said.words).text;

/** Words that mean something else when these stand behind them, or when their accent is missing. */
const otherwise: { word: RegExp; behind: RegExp }[] = [
  // "I used my discount", "used to be": the verb, not the state.
  { word: /^used$/, behind: /^\s(?:my|to|as|for|by|an?|it|this|the|her|his)\s/u },
  // "Porté épaule" and "kann getragen werden" say how it is carried.
  {
    word: /^portee?$/,
    behind: /^\s{0,2}(?:a l'|a la |au |aux |sur |en |a )?(?:epaule|main|croise|travers|bandouliere|dos|bras|coude)/u,
  },
  { word: /^(?:getragen|gedragen)$/, behind: /^\s(?:werden|wird|worden)/u },
  { word: /^mint$/, behind: /^\s?-?(?:gr|colou?r|blue|leather|suede|vert|verde)/u },
  // "新品で購入": bought new, which says nothing of today.
  { word: /./u, behind: /^(?:で|を)(?:購入|買)/u },
];
const accentMatters = new Set(['use', 'porte', 'usage', 'usagee']);

const meansOtherwise = (said: { words: string }, text: string, end: number): boolean => {
  const word = plainWords(said);
  const behind = text.slice(end, end + 24);
  if (accentMatters.has(word) && /^[a-z]+$/i.test(said.words)) return true;
  return otherwise.some((rule) => rule.word.test(word) && rule.behind.test(behind));
};

/** What a denied condition leaves: "not new" is used; a denied flaw or "not worn" says nothing by itself. */
const denied: Record<Condition, Condition | null> = {
  new: 'used',
  unused: 'used',
  'as-new': 'used',
  'used-very-good': null,
  used: null,
  worn: null,
  damaged: null,
};

/** Whether "new" here is said of the piece: alone in its clause, after "condition", or before a word for the piece. */
function newOfPiece(text: string, start: number, end: number, opens: boolean): boolean {
  const clause = clauseAround(text, start, end);
  const before = text.slice(clause.start, start);
  const after = text.slice(end, clause.end);
  if (/^\s{0,2}(?:york|zealand|forest|delhi|orleans|england|wave|age)/.test(after)) return false;
  if (nounAfter.test(after)) return true;
  if (/(?:when|bought|purchased|cost|costs|neu gekauft|as)\s$/.test(before)) return false;
  const ends = /^[\s!]*$|^\s(?:and|und|et|e|y|en)\s/.test(after);
  if (ends && (before.trim() === '' || nounBefore.test(before) || stateBefore.test(before))) return true;
  if (/(?:condition|zustand|etat|stato|condizioni|estado|staat|conditie|状態)[\s:.-]{0,3}$/.test(before)) return true;
  return opens && before.trim() === '' && !things.test(after.slice(0, 24));
}

/** Whether the clause's subject, before the words, is a part or an accessory and not the piece. */
function isAboutThing(text: string, start: number, end: number): boolean {
  const clause = clauseAround(text, start, end);
  const before = text.slice(clause.start, start);
  if (things.test(before)) return !/(?:with|mit|avec|con|met|incl\w*|inkl\w*)\s/u.test(before);
  // "Unused dust bag": the words belong to the thing right behind them.
  const behind = things.exec(text.slice(end, clause.end));
  return behind !== null && /^\s{0,2}$/.test(text.slice(end, end + behind.index));
}

/**
 * Condition and grading words of a text in order, in the seven languages. "Never used" is unused, "not new" is used;
 * words said of parts, accessories or other pieces are left out. `opens` tells that the text is a title, where "New …"
 * at the start is said of the piece.
 */
export function findConditions(text: string, opens = false): Said<Condition>[] {
  const folded = foldWords(text);
  const found: Said<Condition>[] = [];
  const graded: Hit<Condition>[] = find(folded);
  const taken = new Taken(folded.text.length);
  for (const said of graded) taken.take(said.foldedStart, said.foldedEnd);
  const bare = new Set<Hit<Condition>>(
    findNew(folded).filter((said) => !taken.overlaps(said.foldedStart, said.foldedEnd)),
  );
  for (const said of [...graded, ...bare].sort((a, b) => a.start - b.start)) {
    const { foldedStart: start, foldedEnd: end } = said;
    if (meansOtherwise(said, folded.text, end)) continue;
    const negated = isNegated(folded.text, start, end);
    if (bare.has(said) && !negated && !newOfPiece(folded.text, start, end, opens)) continue;
    if (isAboutAnother(folded.text, start, end) || isAboutThing(folded.text, start, end)) continue;
    const value = negated ? denied[said.value] : said.value;
    if (value) found.push({ value, start: said.start, end: said.end, words: said.words });
  }
  return found;
}
