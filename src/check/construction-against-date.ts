import type { Part } from '../claim/types';
import { roomDays } from '../evidence';
import { plainName } from '../maker';
import type { Construction } from '../maker/types';
import { periodSpan, type Span, spanWords } from '../span';
import { dateOf } from './dated';
import { daysApart } from './dates';
import { fromMakerFile, makerFileSource } from './frame';
import { namedModel } from './models';
import { askPhoto, quote } from './wording';
import { defineWritten, type WrittenSpeech } from './written';

export const constructionAgainstDate = defineWritten({
  id: 'construction-against-date',
  family: 'construction',
  title: 'Material, lining, stitching, trim and metal are those of the date',
  failureTitle: 'Material, lining, stitching, trim or metal is not that of the date',
  kinds: ['contradiction', 'doubt', 'agreement'],
  basis: 'A maker changes its materials at known times; a piece carries those of its own time.',
  innocent: 'The part may have been replaced in a repair, or the seller used a loose word for the material.',
  settles: 'A sharp photo of the part, and whether it was ever repaired.',
  source: makerFileSource,
  needs: {
    maker: ['construction'],
    models: true,
    listing: ['model', 'title'],
    claims: ['made', 'material', 'model', 'replaced'],
    decodings: true,
    photos: 'any',
  },
  run(facts) {
    const { maker, claims } = facts;
    if (claims.material.length === 0) return { notApplicable: 'the listing names no material of a part' };
    const replaced = new Set(claims.replaced.flatMap(({ parts }) => parts));
    const original = claims.material.filter(({ part }) => !replaced.has(part));
    if (original.length === 0)
      return {
        notApplicable: `the listing says that these parts were replaced: ${claims.replaced.map(({ words }) => quote(words)).join(', ')}`,
      };
    // Restored, without saying which part: any of them may be another than the maker's.
    const restored = claims.replaced.some(({ parts }) => parts.length === 0);
    const dated = dateOf(facts, maker.name);
    if (!dated) return { cannotTell: 'neither a code nor the listing gives a date' };
    const fields = [facts.listing.model, facts.listing.title];
    const model = namedModel(facts.models, { model: claims.model, fields })?.model.name;
    const rowsOf = (part: Part) => maker.construction.filter((row) => row.part === part && isOf(row, model));
    const fits = (claim: (typeof claims.material)[number]) =>
      rowsOf(claim.part).some((row) => names(row, claim.material) && apartFrom(row, dated.spans) === 0);
    const fitting = new Set(original.filter(fits).map(({ part }) => part));
    return original.flatMap((claim): WrittenSpeech[] => {
      const rows = rowsOf(claim.part);
      // Where the listing also names the right material, the other may be that of an extra or of another piece.
      const hard = dated.hard && !restored && !fitting.has(claim.part);
      const named = rows.filter((row) => names(row, claim.material));
      const then = rows.filter((row) => apartFrom(row, dated.spans) === 0);
      const common = {
        key: claim.id,
        photos: dated.photos,
        claims: [claim.id, ...dated.claims],
        evidence: dated.evidence,
      };
      const holds = named.find((row) => apartFrom(row, dated.spans) === 0);
      const said = `The listing says ${quote(claim.words)}`;
      if (holds) {
        const statement = `${said}; ${maker.name}'s ${claim.part} was ${holds.is} ${periodWords(holds)}, and ${dated.words}.`;
        return [{ kind: 'agreement', statement, source: fromMakerFile(maker.name, holds.source), ...common }];
      }
      const asks = [
        askPhoto(
          `part-${claim.part}`,
          `Could you add a sharp photo of the ${claim.part.replace('-', ' ')}, and was it ever repaired or replaced?`,
        ),
      ];
      const early = named[0];
      if (early) {
        const apart = Math.min(...named.map((row) => apartFrom(row, dated.spans)));
        const sure = hard && named.every((row) => row.strength === 'hard') && apart > roomDays.makerPeriod;
        const statement = `${said}, but ${maker.name} used ${early.is} ${periodWords(early)}, and ${dated.words}.`;
        return [
          {
            kind: sure ? 'contradiction' : 'doubt',
            statement,
            source: fromMakerFile(maker.name, early.source),
            ...common,
            asks,
          },
        ];
      }
      const against = then.find((row) => row.not?.some((word) => holdsWords(claim.material, word)));
      if (!against) return [];
      const alone = then.every((row) => row.not?.some((word) => holdsWords(claim.material, word)));
      if (!alone) return [];
      const sure = hard && against.strength === 'hard';
      const statement = `${said}, but ${maker.name}'s ${claim.part} was ${against.is} ${periodWords(against)}, and ${dated.words}.`;
      return [
        {
          kind: sure ? 'contradiction' : 'doubt',
          statement,
          source: fromMakerFile(maker.name, against.source),
          ...common,
          asks,
        },
      ];
    });
  },
});

/** Whether a row holds for the model that the listing names; a row for certain models holds for no other. */
const isOf = (row: Construction, model: string | undefined) =>
  !row.models?.length || (model !== undefined && row.models.includes(model));

const holdsWords = (text: string, words: string) => ` ${plainName(text)} `.includes(` ${plainName(words)} `);
const names = (row: Construction, material: string) =>
  [row.is, ...(row.also ?? [])].some((word) => holdsWords(material, word));

/** Days between a row's period and the nearest of the dates; 0 when they meet or the period cannot be read. */
function apartFrom(row: Construction, spans: Span[]): number {
  const used = periodSpan(row.used);
  return used ? Math.min(...spans.map((span) => daysApart(used, span))) : 0;
}

function periodWords(row: Construction): string {
  const used = periodSpan(row.used);
  if (!used) return 'at a time that the file does not say';
  const words = spanWords(used);
  return /^(from|up to)/.test(words) ? words : `from ${words}`;
}
