import * as z from 'zod';
import { partSchema } from '../claim/types';
import { conditionSchema } from '../listing/types';
import { carrierKinds, layoutSchema } from '../maker/schema';
import { partialDate } from '../span/types';

/** First and last date, both included. `null` first: the page does not say when it began; `null` last: still, or not said. */
const takenPeriod = z.tuple([partialDate.nullable(), partialDate.nullable()]);
export type TakenPeriod = z.infer<typeof takenPeriod>;

/** Which ends of a period the page hedges: "until about 1998". */
const about = z.array(z.enum(['from', 'to'])).optional();

/** Where on the page the words stand: a selector that finds the element again, and the table with its row or entry. */
const placeOnPage = z.strictObject({
  selector: z.string(),
  /** Number of the table, list, or paragraph among the page's blocks, from 0; entries of one block are ticked together. */
  block: z.number().int(),
  form: z.enum(['table', 'list', 'definition', 'prose']),
});
export type PlaceOnPage = z.infer<typeof placeOnPage>;

/**
 * Why a proposal is not ticked: the page says otherwise elsewhere (`contradicted`), takes it back or doubts it, wrote a range
 * backwards, used letters that only look like Latin ones, names several makers and does not say which, gives a layout
 * that its own examples do not fit, or a layout that only its examples tell.
 */
const doubt = z.enum([
  'contradicted',
  'withdrawn',
  'disputed',
  'backwards',
  'look-alike',
  'which-maker',
  'examples-disagree',
  'by-examples-only',
]);
export type Doubt = z.infer<typeof doubt>;

const told = {
  /** The maker as the page names it; null where it names none. */
  maker: z.string().nullable(),
  /** Exactly as the page says it. */
  words: z.string(),
  at: placeOnPage,
  /** Further places of the page that say the same. */
  also: z.array(placeOnPage).optional(),
  source: z.strictObject({ address: z.string(), day: z.string() }),
  doubts: z.array(doubt),
  /** What the entry is in a maker file where the page takes it back or doubts it; left out, it stands. */
  standing: z.strictObject({ is: z.enum(['disputed', 'withdrawn']) }).optional(),
  ticked: z.boolean(),
};

const dated = { used: z.union([takenPeriod, z.array(takenPeriod).min(2)]).optional(), about };
const number = z.number().nonnegative();

/** What a page proposes for a maker file, one entry each, with the maker file's own fields. */
export const proposalSchema = z.discriminatedUnion('kind', [
  /** `place` is ISO 3166, ZZ where the page names a town or nothing; `name` is the town or workshop as written. */
  z.strictObject({
    kind: z.literal('plant'),
    ...told,
    ...dated,
    code: z.string(),
    place: z.string(),
    name: z.string().optional(),
  }),
  z.strictObject({
    kind: z.literal('code-system'),
    ...told,
    ...dated,
    layout: layoutSchema,
    examples: z.array(z.strictObject({ code: z.string(), reads: z.string() })),
  }),
  /** A code whose date the page tells, and no layout explains. */
  z.strictObject({ kind: z.literal('example'), ...told, code: z.string(), reads: z.string() }),
  z.strictObject({ kind: z.literal('year-letter'), ...told, letter: z.string(), year: z.number().int() }),
  z.strictObject({
    kind: z.literal('serial'),
    ...told,
    first: z.number().int().nonnegative(),
    last: z.number().int().nonnegative().optional(),
    made: takenPeriod,
  }),
  /** When the maker stamped at all. */
  z.strictObject({ kind: z.literal('stamped'), ...told, ...dated }),
  /** Where the code sits, and on what (the maker file's `kind` of a carrier); on some label, the page does not say on what. */
  z.strictObject({
    kind: z.literal('carrier'),
    ...told,
    ...dated,
    on: z.enum(carrierKinds).optional(),
    where: z.string(),
    model: z.string().optional(),
  }),
  z.strictObject({
    kind: z.literal('model'),
    ...told,
    name: z.string(),
    made: takenPeriod.optional(),
    about,
    size: z
      .strictObject({
        width: number,
        height: number.optional(),
        depth: number.optional(),
        unit: z.enum(['cm', 'mm', 'in']),
      })
      .optional(),
  }),
  z.strictObject({
    kind: z.literal('construction'),
    ...told,
    ...dated,
    part: partSchema,
    is: z.string(),
    models: z.array(z.string()).optional(),
  }),
  z.strictObject({
    kind: z.literal('price'),
    ...told,
    model: z.string().optional(),
    condition: conditionSchema,
    amount: number,
    currency: z.string(),
    year: z.number().int(),
  }),
]);
export type Proposal = z.infer<typeof proposalSchema>;
export type ProposalKind = Proposal['kind'];
