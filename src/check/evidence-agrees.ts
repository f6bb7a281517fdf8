import * as z from 'zod';
import {
  type Dating,
  isDating,
  isTold,
  type Known,
  type Reasoning,
  statedOf,
  statedSchema,
  stretchSchema,
  toldTogether,
} from '../evidence';
import { askFor } from './asks';
import { defineCheck, practice, type Speech } from './frame';

/** The reasoning lists them hard ones first; what more a page full of dates gives would only bury them. */
const mostConflicts = 8;

const groupOf = ({ from }: Dating) =>
  from.kind === 'reading' || from.kind === 'system' || from.kind === 'plant' ? 'code' : from.kind;

const dataSchema = z.union([
  z.strictObject({
    over: z.enum(['date', 'place']),
    hard: z.boolean(),
    facts: z.array(statedSchema),
    /** A code of them is read by its shape alone, because no maker file knows it. */
    byShape: z.boolean(),
    /** The fact that, if it is wrong, leaves the rest in agreement on the stretch; not told of a code by its shape. */
    explained: z.strictObject({ fact: statedSchema, rest: z.enum(['all', 'hard']), ...stretchSchema.shape }).nullable(),
  }),
  z.strictObject({
    read: z.array(statedSchema),
    seen: z.array(statedSchema),
    said: z.array(statedSchema),
    stretch: stretchSchema,
  }),
]);

export const evidenceAgrees = defineCheck({
  id: 'evidence-agrees',
  family: 'time',
  kinds: ['contradiction', 'doubt', 'gap', 'agreement'],
  source: practice,
  data: dataSchema,
  needs: { evidence: true, reasoning: true, decodings: true, makerName: true, perhaps: ['date'] },
  run({ evidence, reasoning, decodings, makerName, fact: { date: dated } }) {
    const dating = evidence.filter(isDating);
    const known = new Map(dating.map((piece) => [piece.id, piece]));
    const pieces = (ids: string[]) => ids.flatMap((id) => known.get(id) ?? []);
    const quoted = new Set(decodings.filter(({ from }) => from.kind === 'claim').map(({ id }) => id));
    const [first] = reasoning.explanations;
    const fact = known.get(first?.evidence[0] ?? '');
    const explained =
      first && fact ? { fact: statedOf(fact), rest: first.rest, spans: first.spans, places: first.places } : null;
    const standsAgainstDate = againstDate('is' in dated ? known.get(dated.is.id) : undefined, pieces, reasoning);
    const conflicts = reasoning.conflicts
      // What an age, a size or a sum stands against is told by its own check.
      .filter(({ evidence: ids }) => ids.every((id) => known.has(id)))
      .filter(({ evidence: ids, rule }) => !isToldElsewhere(pieces(ids), rule, makerName, quoted))
      .filter(({ evidence: ids, rule }) => !(rule !== null && toldTogether.has(rule) && standsAgainstDate(ids)))
      .slice(0, mostConflicts);
    if (conflicts.length > 0)
      return conflicts.map(({ evidence: ids, over, strength }): Speech<z.infer<typeof dataSchema>> => {
        const facts = pieces(ids);
        const byShape = facts.some(isByShape);
        return {
          kind: byShape ? 'gap' : isContradiction(strength, facts) ? 'contradiction' : 'doubt',
          key: ids.join('+'),
          data: {
            over: over === 'place' ? over : 'date',
            hard: strength === 'hard',
            facts: facts.map(statedOf),
            byShape,
            explained: byShape ? null : explained,
          },
          evidence: ids,
          // What only the maker's list of codes tells no seller has to answer for.
          asks: byShape ? [] : [over === 'date' ? askFor('made-date', {}) : askFor('origin', {})],
        };
      });
    const most = reasoning.agreeing[0];
    // What holds together only with the room that loose dates have is no conflict, and nothing to praise; nor is what
    // the seller says alone.
    if (!reasoning.agrees || !most || !dating.every(isIn(most.evidence))) return [];
    const { date, place } = most.told;
    const counted = (known: Known) => [...new Set([...date[known], ...place[known]])];
    if (counted('read').length + counted('seen').length === 0) return [];
    const stated = (known: Known) => pieces(counted(known)).map(statedOf);
    const data = {
      read: stated('read'),
      seen: stated('seen'),
      said: stated('said'),
      // What only one fact says is not what they agree on.
      stretch: { spans: isTold(date) ? most.spans : [], places: isTold(place) ? most.places : [] },
    };
    return [{ kind: 'agreement', data, evidence: most.evidence }];
  },
});

/**
 * Whether a code is read by its shape alone. What shapes are usual says nothing of how this maker writes: that no date
 * fits is told, as what is not known of the maker, and held against nobody.
 */
const isByShape = ({ says }: Dating): boolean => says.kind === 'code' && says.by.some(({ maker }) => maker === null);

/** Two codes on one piece are no contradiction by themselves: one may be that of a repair, or of a part. */
const isContradiction = (strength: Dating['strength'], pieces: Dating[]): boolean =>
  strength === 'hard' && pieces.some((piece) => groupOf(piece) !== 'code');

/**
 * Whether one of the statements stands against the date of the piece itself as well: that is told by its own check, and
 * what it stands against besides says nothing more.
 */
function againstDate(
  date: Dating | undefined,
  pieces: (ids: string[]) => Dating[],
  { conflicts }: Pick<Reasoning, 'conflicts'>,
): (ids: string[]) => boolean {
  const sets = conflicts.map(({ evidence: ids }) => new Set(pieces(ids).map(({ basis }) => basis)));
  const against = new Set(
    sets.filter((set) => date && set.size === 2 && set.has(date.basis)).flatMap((set) => [...set]),
  );
  return (ids) => pieces(ids).some(({ basis }) => basis !== date?.basis && against.has(basis));
}

const isIn = (ids: string[]) => (piece: Dating) =>
  ids.includes(piece.id) || piece.spans.length + piece.places.length === 0;

/**
 * Two facts that a rule compares have a check of their own unless the rule says otherwise, or what follows from a code is not told at all; the checks of
 * codes need the maker's file: without one they are told here, or nowhere. One fact that contradicts itself is told by
 * the checks of codes as well.
 */
function isToldElsewhere(
  pieces: Dating[],
  rule: string | null,
  makerName: string | null,
  quoted: ReadonlySet<string>,
): boolean {
  const bases = new Set(pieces.map(({ basis }) => basis)).size;
  if (bases < 2) return true;
  if (bases > 2) return false;
  const codes = pieces.filter((piece) => groupOf(piece) === 'code');
  // A code that is quoted against one that is shown is a check of its own; two that are shown have none.
  if (codes.length === pieces.length) return new Set(codes.map(({ from }) => quoted.has(from.id))).size > 1;
  return rule !== null && !toldTogether.has(rule) && (makerName !== null || codes.length === 0);
}
