import { type Hit, isAboutAnother, isNegated, phraseFinder } from '../listing/text';
import type { Listing } from '../listing/types';
import type { MakerFile } from '../maker/types';
import { rememberForMakers } from './by-makers';
import { isHedgedName } from './hedged-authorship';
import { type ClaimDraft, type Passage, saidIn, saidInData } from './passage';

const emptyFinder = () => [] as Hit<string>[];
const finder = (table: Record<string, string[]>) =>
  Object.values(table).some((names) => names.length > 0) ? phraseFinder(table) : emptyFinder;

const nameFinder = rememberForMakers((makers) =>
  finder(Object.fromEntries(makers.map((file) => [file.maker, [file.maker, ...file.aliases]]))),
);
const modelFinder = rememberForMakers((makers) => {
  const table: Record<string, string[]> = {};
  for (const { models } of makers)
    for (const { name, aliases } of models)
      table[name] = [...(table[name] ?? []), ...spellings([name, ...(aliases ?? [])])];
  return finder(table);
});

/** Makers of the files named in the text, or by the page's own data. "In the style of …" is no claim of its make. */
export function makerClaims(passages: Passage[], listing: Listing, makers: MakerFile[]): ClaimDraft[] {
  const find = nameFinder(makers);
  const inText = passages.flatMap((from) =>
    find(from.folded).flatMap((hit): ClaimDraft[] => {
      const { text } = from.folded;
      if (isNegated(text, hit.foldedStart, hit.foldedEnd) || isAboutAnother(text, hit.foldedStart, hit.foldedEnd))
        return [];
      if (isHedgedName(text, hit.foldedStart, hit.foldedEnd)) return [];
      return [{ kind: 'maker', maker: hit.value, ...saidIn(from, hit, from.field === 'title' ? 0.9 : 0.8) }];
    }),
  );
  const data = listing.maker[0];
  if (!data) return inText;
  const [known] = find(data.value);
  return [...inText, { kind: 'maker', maker: known?.value ?? data.value, ...saidInData(data.value, data.confidence) }];
}

/** Models of the maker files by name or alias; only of the makers named when there are any. */
export function modelClaims(
  passages: Passage[],
  listing: Listing,
  makers: MakerFile[],
  named: Set<string>,
): ClaimDraft[] {
  const files = makers.filter((file) => named.size === 0 || named.has(file.maker));
  const find = modelFinder(files);
  const inText = passages.flatMap((from) =>
    find(from.folded).flatMap((hit): ClaimDraft[] => {
      const { text } = from.folded;
      if (isNegated(text, hit.foldedStart, hit.foldedEnd) || isAboutAnother(text, hit.foldedStart, hit.foldedEnd))
        return [];
      return [{ kind: 'model', model: hit.value, ...saidIn(from, hit, named.size > 0 ? 0.9 : 0.6) }];
    }),
  );
  const data = listing.model[0];
  if (!data) return inText;
  const [known] = find(data.value);
  return [...inText, { kind: 'model', model: known?.value ?? data.value, ...saidInData(data.value, data.confidence) }];
}

/** "Carryall 30" is also written "Carryall30". */
const spellings = (names: string[]) => [...new Set(names.flatMap((name) => [name, name.replace(/ (?=\d)/g, '')]))];
