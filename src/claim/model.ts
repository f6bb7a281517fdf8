import type { Listing } from '../listing/types';
import type { MakerFile } from '../maker/types';
import {
  anyLanguage,
  clauseAround,
  isAboutAnother,
  isLeftOpen,
  isNegated,
  jointWords,
  phraseFinder,
  phraseTest,
  rightBehind,
  textPattern,
  topics,
  wordsOf,
} from '../text';
import { rememberForMakers } from './by-makers';
import { type ClaimDraft, type Passage, saidIn, saidInData } from './passage';

const modelFinder = rememberForMakers((makers) => {
  const table: Record<string, string[]> = {};
  for (const { models } of makers)
    for (const { name, aliases } of models)
      table[name] = [...(table[name] ?? []), ...spellings([name, ...(aliases ?? [])])];
  return phraseFinder(table);
});

/** "Bought together with a Messenger 36": another piece than the one on offer. */
const besides = phraseTest(wordsOf('goes-along'));

/** "It looks like a Carryall 30", "in the style of the Messenger": what nearly is one is said with this confidence. */
const unsure = 0.4;
const hedges = ['looks-like', 'supposed', 'in-the-look-of', 'inspired-by', 'likened', 'hedge-before-name'] as const;
/** Right before the name, but for an article and the maker's own. */
const hedgeBefore = textPattern(
  `(?:${phraseTest(wordsOf(...hedges)).source})(?:[\\s:"'“„«]{1,3}[\\p{L}.&']{1,16}){0,4}[\\s:"'“„«]{0,3}$`,
);
const japaneseBehind = textPattern(`^[」』]?(?:だ|です)?(?:${phraseTest(topics['looks-like'].ja).source})`);
const leftOpenBehind = textPattern(
  `^\\s?(?:\\?|-?(?:style|type|ish)(?!\\p{L})|[,(]\\s?(?:${anyLanguage(jointWords.iThink)}))`,
);

const isHedged = (text: string, clauseStart: number, start: number, end: number): boolean =>
  hedgeBefore.test(text.slice(clauseStart, start)) ||
  japaneseBehind.test(rightBehind(text, end)) ||
  leftOpenBehind.test(rightBehind(text, end)) ||
  isLeftOpen(text, start, end);

/** Models of the maker files by name or alias. `sure`: the files are those of the maker that the listing states. */
export function modelClaims(passages: Passage[], listing: Listing, makers: MakerFile[], sure: boolean): ClaimDraft[] {
  const find = modelFinder(makers);
  const inText = passages.flatMap((from) =>
    find(from.folded).flatMap((hit): ClaimDraft[] => {
      const { text } = from.folded;
      const [start, end] = [hit.foldedStart, hit.foldedEnd];
      if (isNegated(text, start, end)) return [];
      const clause = clauseAround(text, start, end);
      if (from.field !== 'title' && besides.test(text.slice(clause.start, start))) return [];
      if (isHedged(text, clause.start, start, end))
        return [{ kind: 'model', model: hit.value, ...saidIn(from, hit, unsure) }];
      if (isAboutAnother(text, start, end)) return [];
      return [{ kind: 'model', model: hit.value, ...saidIn(from, hit, sure ? 0.9 : 0.6) }];
    }),
  );
  const data = listing.model[0];
  if (!data) return inText;
  const [known] = find(data.value);
  return [...inText, { kind: 'model', model: known?.value ?? data.value, ...saidInData(data.value, data.confidence) }];
}

/** "Carryall 30" is also written "Carryall30", and "one of my Carryall 30s". */
const spellings = (names: string[]) => [
  ...new Set(names.flatMap((name) => [name, name.replace(/ (?=\d)/g, ''), ...(/\d$/.test(name) ? [`${name}s`] : [])])),
];
