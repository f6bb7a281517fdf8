import type { Listing } from '../listing/types';
import { findMaker, plainName } from '../maker';
import type { MakerFile } from '../maker/types';
import { type Hit, phrasePattern, rightAhead, tableWords, textPattern, wordsOf } from '../text';
import { isOfAnotherThing } from './another-thing';
import { nameFinder } from './by-makers';
import { isHedgedName } from './hedged-authorship';
import { makerNamed, type NamedMaker, unknownInTitle } from './name-words';
import { namedTwice } from './named-twice';
import { type ClaimDraft, foldedRange, type Passage, saidIn, saidInData, titleOf } from './passage';
import type { Claim } from './types';
import { isUnsaid } from './unsaid';

/** Who made the piece, as the listing says it plainest. */
export interface StatedMaker {
  /** One name, or several of equal standing: then no file can be the maker's. */
  names: string[];
  file: MakerFile | null;
}

/**
 * The maker that the buyer names, else the listing: by the page's own field for it, else in the title, else in its text. Only this
 * maker's file may judge the piece; a stated maker without a file means that none does. Null when none is stated.
 */
export function statedMaker(
  claims: readonly (Pick<Claim, 'kind' | 'at'> & { maker?: string })[],
  makers: readonly MakerFile[],
): StatedMaker | null {
  for (const fields of [['user'], ['data'], ['title'], ['description', 'text', 'reply']]) {
    const said = claims.flatMap(({ maker, at }) => (maker !== undefined && fields.includes(at.field) ? [maker] : []));
    const names = [...new Map(said.map((name) => [plainName(name), name])).values()];
    const [only, ...more] = names;
    if (only !== undefined) return { names, file: more.length > 0 ? null : findMaker(only, makers) };
  }
  return null;
}

/** The files that may judge: the stated maker's own; all, each for itself, when no maker is stated. */
export const judgingFiles = (stated: StatedMaker | null, makers: readonly MakerFile[]): MakerFile[] =>
  stated ? (stated.file ? [stated.file] : []) : [...makers];

/**
 * Makers that the listing says made the piece: the page's own field, and names of makers on file in the title and the
 * text. A name that is denied, hedged, compared with, said of another thing or only listed as a word to be found by is
 * no such statement. Where the field or the title names another maker, or the title may, the text has to say "made by".
 */
export function makerClaims(passages: Passage[], listing: Listing, makers: MakerFile[]): ClaimDraft[] {
  const data = makerInData(listing, makers);
  const title = titleOf(passages);
  const inTitle = title ? mentions(title, makers) : [];
  const models = makers.flatMap((file) => file.models.flatMap(({ name, aliases }) => [name, ...(aliases ?? [])]));
  const stated = data?.maker ?? inTitle[0]?.value ?? (title ? unknownInTitle(title, models) : null);
  const inText = passages
    .filter((from) => from !== title)
    .flatMap((from) =>
      mentions(from, makers)
        .filter((hit) => stated === null || hit.value === stated || isMadeBy(from, hit))
        .map((hit): ClaimDraft => ({ kind: 'maker', maker: hit.value, ...saidIn(from, hit, 0.8) })),
    );
  const known = data !== null || inTitle.length > 0 || inText.length > 0;
  return [
    ...(known ? [] : withoutFile(passages, stated)),
    ...(title
      ? inTitle.map((hit): ClaimDraft => ({ kind: 'maker', maker: hit.value, ...saidIn(title, hit, 0.9) }))
      : []),
    ...inText,
    ...(data ? [{ kind: 'maker' as const, maker: data.maker, ...saidInData(data.words, data.confidence) }] : []),
  ];
}

/**
 * A maker that no file knows, where the title, which has this unknown name, or else the text names one beyond doubt, or
 * both have it.
 */
function withoutFile(passages: readonly Passage[], unknown: string | null): ClaimDraft[] {
  const claimOf = (from: Passage, named: NamedMaker | null): ClaimDraft[] =>
    named !== null && !namesNobody(named.name) && isSaidOfMaker(from, ...foldedRange(from, named))
      ? [{ kind: 'maker', maker: named.name, ...saidIn(from, { ...named, words: named.name }, 0.6) }]
      : [];
  for (const from of passages) {
    const found = claimOf(from, makerNamed(from, unknown));
    if (found.length > 0) return found;
  }
  const title = titleOf(passages);
  const twice = title && unknown !== null ? namedTwice(title, unknown, passages) : null;
  return twice ? claimOf(twice.from, twice) : [];
}

const mentions = (from: Passage, makers: MakerFile[]): Hit<string>[] =>
  nameFinder(makers)(from.folded).filter(({ foldedStart, foldedEnd }) => isSaidOfMaker(from, foldedStart, foldedEnd));

/** Whether a name, at a place of the folded text, is said of who made the piece: neither denied nor hedged, nor of another thing. */
const isSaidOfMaker = (from: Passage, foldedStart: number, foldedEnd: number): boolean =>
  !isUnsaid(from.folded.text, foldedStart, foldedEnd) &&
  !isHedgedName(from.folded.text, foldedStart, foldedEnd) &&
  !isOfAnotherThing(from, { foldedStart, foldedEnd });

/** "Made by", right before the name. */
const madeBy = textPattern(`(?:${phrasePattern(wordsOf('made-by')).source})\\s(?:the\\s)?$`);
/** "Merk Ondrasse", "Marke: Ondrasse", "stamped Ondrasse": named as what the maker is called. */
const labelled = textPattern(
  `(?:${phrasePattern([...tableWords('label').maker, ...wordsOf('code-cue', 'reads-there')]).source})(?:\\s(?:${phrasePattern(wordsOf('is')).source}))?\\s?[:：は]?\\s?["'«„“]?$`,
);
const isMadeBy = ({ folded }: Passage, { foldedStart }: Hit<string>) => {
  const ahead = rightAhead(folded.text, foldedStart);
  return madeBy.test(ahead) || labelled.test(ahead);
};

/** What sellers put into a field that must be filled: it names nobody. */
const nobody = new Set(wordsOf('names-nobody').map(plainName));
export const namesNobody = (name: string): boolean => plainName(name) === '' || nobody.has(plainName(name));

/** Words that stand beside a maker's name in its field and are no part of another name. */
const beside = new Set(wordsOf('beside-maker-name').map(plainName));

/** The page's own field for the maker, under the name of its file where the field names it and nobody beside it. */
function makerInData(
  listing: Listing,
  makers: MakerFile[],
): { maker: string; words: string; confidence: number } | null {
  const said = listing.maker.find(({ value }) => !namesNobody(value));
  if (!said) return null;
  const { value: words, confidence } = said;
  const exact = findMaker(words, makers);
  if (exact) return { maker: exact.maker, words, confidence };
  const hits = nameFinder(makers)(words);
  const [hit] = hits;
  const rest = hits.reduce((text, one) => text.replace(one.words, ' '), words);
  const alone = plainName(rest)
    .split(' ')
    .every((word) => word === '' || beside.has(word) || /^\d{4}$/.test(word));
  const one = hit !== undefined && alone && hits.every(({ value }) => value === hit.value);
  return { maker: one ? hit.value : words, words, confidence };
}
