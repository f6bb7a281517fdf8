import { type Claim, type ClaimOf, partSchema } from '../claim/types';
import { plainName } from '../maker';
import type { Construction, MakerFile, Model } from '../maker/types';
import { strengthOf } from '../source';
import { complementOf, periodSpan, type Span, unionOf } from '../span';
import { exceptedSpans, isExcepted, isOfModel } from './exceptions';
import { fileSource } from './file-source';
import { claimSaid } from './from-claims';
import { evidenceId } from './ids';
import { datesOfModel } from './model-runs';
import { namedModel } from './named-sides';
import { isSure, makerDates, modelDates } from './room';
import type { Dating, EvidenceAbout } from './types';

/**
 * Dated facts of the maker file that the listing's words call up: a material that a part was made of in some years
 * only, or was not in some years, and a model that was made in some years only. The fact is hard as the file says and
 * where nothing disputes it; a model's years are soft unless it says otherwise, because a file does not list every piece that was made before or after. The claim is the
 * basis: the material mentioned twice is two bases only if it stands in two claims. A part that the seller calls
 * replaced dates nothing; where the piece is said to be restored, without saying where, no part dates it for sure, nor
 * where it is of an edition, a re-issue or a collaboration: those are often made otherwise. `words`: what else names it.
 */
export function fromMaker(
  claims: readonly Claim[],
  maker: MakerFile | null,
  words: readonly string[] = [],
): (Dating | Later)[] {
  if (!maker) return [];
  const models = claims.filter((claim) => claim.kind === 'model');
  const model = namedModel(maker.models, { model: models, fields: [] })?.model;
  const editions = model ? editionsNamed(model, words) : [];
  const replaced = claims.filter((claim) => claim.kind === 'replaced');
  const parts = new Set(replaced.flatMap((claim) => claim.parts));
  const restored = replaced.some((claim) => claim.parts.length === 0);
  const piece: OfPiece = {
    named: model ? [model.name, ...editions] : [],
    otherwise: restored || editions.length > 0,
  };
  return claims.flatMap((claim): (Dating | Later)[] => {
    if (claim.kind === 'material') {
      const dates = material(claim, maker, piece);
      return parts.has(claim.part) ? dates.flatMap(asLater) : dates;
    }
    // "It looks like a Carryall 30" dates nothing.
    return claim.kind === 'model' && isSure(claim) ? modelYears(claim, maker) : [];
  });
}

/** What the piece is called, and whether it may be made otherwise than the usual make. */
interface OfPiece {
  /** Its model, and the editions of it that the words name. */
  named: readonly string[];
  otherwise: boolean;
}

/** Editions, re-issues and collaborations of a model that the words name. */
export const editionsNamed = ({ runs = [] }: Model, words: readonly string[]): string[] =>
  runs.flatMap(({ kind, name }) =>
    kind !== undefined && name !== undefined && words.some((said) => names(fold(said), name)) ? [name] : [],
  );

type Later = EvidenceAbout<'age'>;

/** What a replaced part is of dates that part, and is held against the date of the piece by itself. */
const asLater = ({ id, basis, spans, source, says, from }: Dating): Later[] =>
  says.kind === 'material' || says.kind === 'other-material'
    ? [
        {
          id,
          about: 'age',
          from: { kind: 'claim', id: from.id },
          basis: `later-${basis}`,
          spans,
          places: [],
          strength: 'soft',
          source,
          says: {
            kind: 'later-material',
            field: says.field,
            words: says.words,
            maker: says.maker,
            part: says.part,
            is: says.is,
            used: says.kind === 'other-material' ? says.used : spans,
            other: says.kind === 'other-material',
          },
        },
      ]
    : [];

/** The name with a space at both ends, so that whole words are found in it. */
const fold = (words: string): string => ` ${plainName(words)} `;

const names = (said: string, name: string) => said.includes(fold(name));
/** A file may call a material with its part, "cotton lining"; so it is said where the seller's words do as well. */
function withPart({ material, part, words }: ClaimOf<'material'>): string {
  const last = `${material.split(' ').at(-1)} ${part}`;
  return names(fold(words), last) ? `${material} ${part}` : material;
}

const excludes = (said: string, { not }: Construction) => not?.some((other) => names(said, other)) ?? false;

/**
 * Facts of the part in question that hold for the model that the listing names, with dates that can be read. Where the
 * words name a finer part than the listing is sorted by ("brass clasp" among the metal parts), its own facts say all.
 */
function factsOf(claim: ClaimOf<'material'>, { construction, parts }: MakerFile, named: readonly string[]) {
  const words = fold(claim.words);
  const isNamed = (part: string) =>
    [part.replaceAll('-', ' '), ...parts.filter(({ id }) => id === part).flatMap((own) => own.words)].some((word) =>
      names(words, word),
    );
  const facts = construction.flatMap((fact) => {
    const spans = isOfModel(fact, named) && !isExcepted(fact, named) ? spansWithExceptions(fact, named) : null;
    return spans ? [{ fact, spans }] : [];
  });
  const finer = facts.filter(({ fact: { part } }) => !isListingPart(part) && isNamed(part));
  return finer.length > 0 ? finer : facts.filter(({ fact }) => fact.part === claim.part);
}

const isListingPart = (part: string): boolean => partSchema.safeParse(part).success;

/** The years of a fact, with those in which it makes an exception; null where they cannot be read. */
function spansWithExceptions(fact: Construction, named: readonly string[]): Span[] | null {
  const span = periodSpan(fact.used);
  return span ? [span, ...exceptedSpans(fact, named)] : null;
}

function material(claim: ClaimOf<'material'>, maker: MakerFile, { named, otherwise }: OfPiece): Dating[] {
  const said = fold(withPart(claim));
  const facts = factsOf(claim, maker, named);
  const own = facts.filter(({ fact }) => [fact.is, ...(fact.also ?? [])].some((name) => names(said, name)));
  const used = own.filter(({ fact }) => !excludes(said, fact));
  const other = facts.filter(({ fact }) => excludes(said, fact));
  const spansOf = (some: typeof facts) => some.flatMap(({ spans }) => spans);
  // Where the file tells when the material was used, that says all; else only when it was surely another.
  if (used.length > 0) return dated(claim, maker, used, { kind: 'material' }, unionOf(spansOf(used)), otherwise);
  if (own.length > 0 || other.length === 0) return [];
  const silent = spansOf(facts.filter((one) => !other.includes(one)));
  // What is hedged excludes only the years that it surely means, and what is outside them is hedged as well.
  const hedged = spansOf(other).some(({ about }) => about);
  const free = complementOf(spansOf(other)).map((span): Span => (hedged ? { ...span, about: true } : span));
  const spans = unionOf([...free, ...silent]);
  return dated(claim, maker, other, { kind: 'other-material', used: unionOf(spansOf(other)) }, spans, otherwise);
}

function dated(
  claim: ClaimOf<'material'>,
  maker: MakerFile,
  facts: readonly { fact: Construction }[],
  kind: { kind: 'material' } | { kind: 'other-material'; used: Span[] },
  spans: Span[],
  otherwise: boolean,
): Dating[] {
  if (spans.length === 0 || isAnyDate(spans)) return [];
  const all = facts.map(({ fact }) => fact);
  const is = [...new Set(all.map((fact) => fact.is))];
  const about = kind.kind === 'material' ? (is[0] ?? claim.material) : claim.material;
  return [
    {
      id: evidenceId.construction(claim.id),
      about: 'date',
      from: { kind: 'construction', id: claim.id },
      basis: `material:${claim.part}:${plainName(about)}`,
      ...makerDates(spans, !otherwise && all.every((fact) => strengthOf(fact, 'soft') === 'hard') ? 'hard' : 'soft'),
      places: [],
      says: { ...kind, ...claimSaid(claim), maker: maker.maker, part: all[0]?.part ?? claim.part, is },
      source: fileSource(maker, [...new Set(all.flatMap((fact) => fact.sources ?? []))]),
    },
  ];
}

function modelOf(claim: ClaimOf<'model'>, maker: MakerFile): Model | undefined {
  const said = fold(claim.model);
  return maker.models.find((one) => [one.name, ...(one.aliases ?? [])].some((name) => fold(name) === said));
}

function modelYears(claim: ClaimOf<'model'>, maker: MakerFile): Dating[] {
  const fact = modelOf(claim, maker);
  const dates = fact ? datesOfModel(fact) : null;
  if (!fact || !dates) return [];
  return [
    {
      id: evidenceId.model(claim.id),
      about: 'date',
      from: { kind: 'construction', id: claim.id },
      basis: `model:${plainName(claim.model)}`,
      ...modelDates(dates.spans, dates.strength),
      places: [],
      says: { kind: 'model', ...claimSaid(claim), maker: maker.maker, model: fact.name },
      source: fileSource(maker, dates.sources, dates.sources.length > 0 ? null : { of: 'model', name: fact.name }),
    },
  ];
}

const isAnyDate = (spans: readonly Span[]) => spans.some((span) => span.from === null && span.to === null);
