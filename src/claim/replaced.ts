import {
  aheadInSentence,
  clauseAround,
  foldedSet,
  foldWords,
  type Hit,
  isAboutAnother,
  isLeftOpen,
  isNegated,
  phrasePattern,
  phraseTest,
  rightAhead,
  rightBehind,
  sourceRange,
  topicFinder,
  wordsOf,
} from '../text';
import { datesIn } from './dates-in';
import { detailsOf } from './event-details';
import { partsIn } from './parts';
import { type ClaimDraft, foldedRange, type Passage, saidIn } from './passage';
import { partsOf, relined } from './replaced-parts';
import { isBeforeAccessory, isOfAccessory } from './subject';
import { isSupposed } from './supposed';
import type { ClaimOf, Part } from './types';

const findWords = topicFinder(
  'replaced',
  'restored',
  're-dyed',
  'dyed',
  'repair-noun',
  'new-before-part',
  'new-behind-part',
);
/** What may be said of the whole piece. */
const ofPiece = new Set<string>(['restored', 're-dyed', 'dyed', 'repair-noun']);

/** Hearsay and guesses say too little to lift anything: they are told with this confidence. */
const unsure = 0.4;

/** What may be, should be or will be done was not: "the zip can be replaced", "muss ersetzt werden". */
const notYet = phraseTest(wordsOf('not-yet'));
/** "Had to be replaced" is done. */
const done = phrasePattern(wordsOf('done'));
/** Told from what is done by their accents alone, which folding takes away: "müsste ersetzt werden". */
const doneFolded = foldedSet(wordsOf('done'));
const notYetByAccent = wordsOf('not-yet').filter((words) => doneFolded.has(foldWords(words).text));

/** "Nothing was repaired": a denial that only these words make. */
const nothing = phraseTest(wordsOf('nothing'));

/**
 * What the seller tells of parts that are not as the maker left them: each claim names the parts, or none where the
 * piece was restored or dyed without saying where, and when, by whom and with which paper, where it is said. It speaks
 * of what was done; denials, wishes and offers are left out.
 */
export function replacedClaims(passages: Passage[], readAt: string): ClaimDraft[] {
  return passages.flatMap((from) => {
    const parts = partsIn(from);
    const drafts = findWords(from.folded).flatMap((word): Replaced[] => {
      const { text } = from.folded;
      if (isLeftOut(from, word, readAt)) return [];
      const named = partsOf(from, parts, word);
      if (
        named.length === 0 &&
        (!ofPiece.has(word.value) ||
          isOfAccessory(text, word.foldedStart, from.title) ||
          isBeforeAccessory(text, word.foldedEnd, from.title))
      )
        return [];
      const details = detailsOf(from, word.foldedStart, word.foldedEnd, readAt);
      // "Tracolla nuova" may only be as good as new.
      if (isBareNew(word, named) && !details.span && !details.by && !isOfRepair(text, word)) return [];
      // Any leather is dyed: again only where it is said when or by whom.
      if (word.value === 'dyed' && !details.span && !details.by) return [];
      // "Repairs since 1962" is a shop's; "a repair of 1999" was one.
      if (word.value === 'repair-noun' && !(details.span?.to && isOfYear(text, word))) return [];
      const start = Math.min(word.start, ...named.map((part) => part.start));
      const end = Math.max(word.end, ...named.map((part) => part.end));
      const words = from.text.slice(start, end);
      const each = [...new Set(named.map(({ value }) => value))];
      const said = saidIn(
        from,
        { start, end, words },
        isSupposed(text, word.foldedStart, word.foldedEnd) ? unsure : 0.85,
      );
      return [{ kind: 'replaced', parts: each, ...howDone(text, word), ...details, ...said }];
    });
    return saidOnce(from, drafts);
  });
}

type Replaced = Extract<ClaimDraft, { kind: 'replaced' }>;

/** "Strap not original (replaced in 2011)": what a sentence says twice of a part is one event, told by what says more. */
function saidOnce({ text }: Passage, drafts: readonly Replaced[]): Replaced[] {
  const tellsMore = (one: Replaced) => [one.how, one.span, one.by, one.invoice].filter(Boolean).length;
  return drafts.filter(
    (draft, index) =>
      draft.parts.length === 0 ||
      tellsMore(draft) > 0 ||
      !drafts.some((other, at) => {
        if (at === index || !draft.parts.every((part) => other.parts.includes(part))) return false;
        const [first, last] = draft.at.start < other.at.start ? [draft, other] : [other, draft];
        const isApart = /[.!?;。\n]/.test(text.slice(first.at.end, last.at.start));
        return !isApart && (tellsMore(other) > 0 || at < index);
      }),
  );
}

/** "A repair of 1999", "1999年の修理": the year right beside it; "of a 1996 Messenger beyond repair" has it elsewhere. */
const isOfYear = (text: string, { foldedStart, foldedEnd }: Hit<string>): boolean =>
  /^(?:\s\p{L}{1,4}){0,2}\s?\(?(?:19|20)\d\d/u.test(rightBehind(text, foldedEnd)) ||
  /(?:19|20)\d\d年の$/u.test(rightAhead(text, foldedStart));

function howDone(text: string, { value, foldedStart, foldedEnd }: Hit<string>): Pick<ClaimOf<'replaced'>, 'how'> {
  if (value === 're-dyed' || value === 'dyed') return { how: 're-dyed' };
  if (value === 'restored' || value === 'repair-noun') return { how: 'repaired' };
  return relined.test(text.slice(foldedStart, foldedEnd)) ? { how: 'relined' } : {};
}

function isLeftOut(from: Passage, { foldedStart, foldedEnd, words }: Hit<string>, readAt: string): boolean {
  const { text } = from.folded;
  // "Not original" is a denial only of what it is not.
  if (!/original/iu.test(words) && isNegated(text, foldedStart, foldedEnd)) return true;
  if (isAboutAnother(text, foldedStart, foldedEnd) || isLeftOpen(text, foldedStart, foldedEnd)) return true;
  const clause = clauseAround(text, foldedStart, foldedEnd);
  const said = (start: number, end: number) => withoutDates(from, readAt, start, end);
  const near = `${said(Math.max(clause.start, foldedStart - 40), foldedStart)}|${said(foldedEnd, Math.min(clause.end, foldedEnd + 20))}`;
  if (isByAccent(from, clause, foldedStart)) return true;
  return nothing.test(near) || notYet.test(near.replace(done, ''));
}

/** Whether a clause says before a place that something is still to be done, in a word that its accent tells apart. */
function isByAccent({ folded }: Passage, clause: { start: number }, place: number): boolean {
  const { words } = sourceRange(folded, clause.start, place);
  const written = words.toLowerCase().normalize('NFC');
  return notYetByAccent.some((one) => written.includes(one));
}

/** "Replaced in May 2016": the month is no word of what may be done. */
function withoutDates(from: Passage, readAt: string, start: number, end: number): string {
  let said = from.folded.text.slice(start, end);
  for (const date of datesIn(from, readAt)) {
    const [first, last] = foldedRange(from, date);
    const [opens, closes] = [Math.max(first, start) - start, Math.min(last, end) - start];
    if (opens < closes) said = said.slice(0, opens) + ' '.repeat(closes - opens) + said.slice(closes);
  }
  return said;
}

const repairs = phraseTest(wordsOf('restored', 'repair-noun'));
/** "Restaurado en 2010: cierre nuevo". */
const isOfRepair = (text: string, { foldedStart }: Hit<string>): boolean =>
  repairs.test(aheadInSentence(text, foldedStart));
const isBareNew = (word: Hit<string>, named: readonly Hit<Part>[]): boolean =>
  word.value === 'new-before-part' && named.some(({ foldedEnd }) => foldedEnd <= word.foldedStart);
