import type { Claim, ClaimOf } from '../claim/types';
import { plainName } from '../maker';
import type { Construction, MakerFile } from '../maker/types';
import { periodSpan, type Span, unionOf } from '../span';
import { claimSaid } from './from-claims';
import { evidenceId } from './ids';
import { makerDates } from './room';
import type { Evidence } from './types';
import { fileWords, listOf } from './wording';

/**
 * Dated facts of the maker file that the listing's words call up: a material that a part was made of in some years
 * only, and a model that was made in some years only. The fact is hard as the file says; a model's years are soft,
 * because a file does not list every piece that was made before or after. The claim is the basis: the material
 * mentioned twice is two bases only if it stands in two claims. A part that the seller calls replaced dates nothing;
 * where the piece is said to be restored, without saying where, no part dates it for sure.
 */
export function fromMaker(claims: readonly Claim[], maker: MakerFile | null): Evidence[] {
  if (!maker) return [];
  const models = claims.filter((claim) => claim.kind === 'model').map((claim) => fold(claim.model));
  const replaced = claims.filter((claim) => claim.kind === 'replaced');
  const parts = new Set(replaced.flatMap((claim) => claim.parts));
  const restored = replaced.some((claim) => claim.parts.length === 0);
  return claims.flatMap((claim) => {
    if (claim.kind === 'material') return parts.has(claim.part) ? [] : material(claim, maker, models, restored);
    return claim.kind === 'model' ? model(claim, maker) : [];
  });
}

/** The name with a space at both ends, so that whole words are found in it. */
const fold = (words: string): string => ` ${plainName(words)} `;

const names = (said: string, name: string) => said.includes(fold(name));

function fits(fact: Construction, claim: ClaimOf<'material'>, models: string[]): boolean {
  if (fact.part !== claim.part) return false;
  if (fact.models && !fact.models.some((one) => models.some((said) => names(said, one)))) return false;
  const said = fold(claim.material);
  if (fact.not?.some((other) => names(said, other))) return false;
  return [fact.is, ...(fact.also ?? [])].some((name) => names(said, name));
}

function material(claim: ClaimOf<'material'>, maker: MakerFile, models: string[], restored: boolean): Evidence[] {
  const facts = maker.construction.filter((fact) => fits(fact, claim, models));
  const spans = unionOf(facts.map((fact) => periodSpan(fact.used)).filter((span) => span !== null));
  if (spans.length === 0 || isAnyDate(spans)) return [];
  return [
    {
      id: evidenceId.construction(claim.id),
      about: 'date',
      from: { kind: 'construction', id: claim.id },
      basis: `material:${claim.part}:${fold(facts[0]?.is ?? claim.material).trim()}`,
      ...makerDates(spans, !restored && facts.every((fact) => fact.strength === 'hard') ? 'hard' : 'soft'),
      places: [],
      says: {
        kind: 'material',
        ...claimSaid(claim),
        maker: maker.maker,
        part: claim.part,
        is: [...new Set(facts.map((fact) => fact.is))],
      },
      source: {
        kind: 'maker-file',
        text: `${fileWords(maker.maker, maker.invented)}: ${listOf([...new Set(facts.map((fact) => fact.source))])}`,
      },
    },
  ];
}

function model(claim: ClaimOf<'model'>, maker: MakerFile): Evidence[] {
  const said = fold(claim.model);
  const fact = maker.models.find((one) => [one.name, ...(one.aliases ?? [])].some((name) => fold(name) === said));
  const span = fact?.made ? periodSpan(fact.made) : null;
  if (!fact || !span) return [];
  return [
    {
      id: evidenceId.model(claim.id),
      about: 'date',
      from: { kind: 'construction', id: claim.id },
      basis: `model:${said.trim()}`,
      spans: [span],
      places: [],
      strength: 'soft',
      says: { kind: 'model', ...claimSaid(claim), maker: maker.maker, model: fact.name },
      source: {
        kind: 'maker-file',
        text: `${fileWords(maker.maker, maker.invented)}: ${fact.source ?? `model ${fact.name}`}`,
      },
    },
  ];
}

const isAnyDate = (spans: readonly Span[]) => spans.some((span) => span.from === null && span.to === null);
