import type { Listing } from '../listing/types';
import type { MakerFile } from '../maker/types';
import { clauseAround, isAboutAnother, isNegated, phraseFinder, phrasePattern, wordsOf } from '../text';
import { rememberForMakers } from './by-makers';
import { type ClaimDraft, type Passage, saidIn, saidInData } from './passage';

const modelFinder = rememberForMakers((makers) => {
  const table: Record<string, string[]> = {};
  for (const { models } of makers)
    for (const { name, aliases } of models)
      table[name] = [...(table[name] ?? []), ...spellings([name, ...(aliases ?? [])])];
  return Object.keys(table).length > 0 ? phraseFinder(table) : () => [];
});

/** "Bought together with a Messenger 36": another piece than the one on offer. */
const besides = phrasePattern(wordsOf('goes-along'), 'u');

/** Models of the maker files by name or alias. `sure`: the files are those of the maker that the listing states. */
export function modelClaims(passages: Passage[], listing: Listing, makers: MakerFile[], sure: boolean): ClaimDraft[] {
  const find = modelFinder(makers);
  const inText = passages.flatMap((from) =>
    find(from.folded).flatMap((hit): ClaimDraft[] => {
      const { text } = from.folded;
      if (isNegated(text, hit.foldedStart, hit.foldedEnd) || isAboutAnother(text, hit.foldedStart, hit.foldedEnd))
        return [];
      const ahead = text.slice(clauseAround(text, hit.foldedStart, hit.foldedEnd).start, hit.foldedStart);
      if (from.field !== 'title' && besides.test(ahead)) return [];
      return [{ kind: 'model', model: hit.value, ...saidIn(from, hit, sure ? 0.9 : 0.6) }];
    }),
  );
  const data = listing.model[0];
  if (!data) return inText;
  const [known] = find(data.value);
  return [...inText, { kind: 'model', model: known?.value ?? data.value, ...saidInData(data.value, data.confidence) }];
}

/** "Carryall 30" is also written "Carryall30". */
const spellings = (names: string[]) => [...new Set(names.flatMap((name) => [name, name.replace(/ (?=\d)/g, '')]))];
