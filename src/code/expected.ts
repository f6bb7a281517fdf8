import * as z from 'zod';
import { spanWords } from '../span';
import { spanSchema } from '../span/types';

/** What a value of a code has to be where it is not; its words stand with the languages. */
export const expectedSchema = z.discriminatedUnion('kind', [
  /** "01 to 12" */
  z.strictObject({ kind: z.literal('range'), first: z.string(), last: z.string() }),
  /** One of these characters. */
  z.strictObject({ kind: z.literal('one-of'), slot: z.enum(['month', 'quarter', 'year']), of: z.string() }),
  z.strictObject({ kind: z.literal('any-year') }),
  z.strictObject({ kind: z.literal('letters') }),
  /** A plant of the file, the first of them named. */
  z.strictObject({ kind: z.literal('plant'), codes: z.string() }),
  /** A day or a week that one of the years has. */
  z.strictObject({ kind: z.literal('in-year'), years: z.array(z.number()) }),
  z.strictObject({ kind: z.literal('in-table') }),
  /** A number made at the code's own date; this one was made then. */
  z.strictObject({ kind: z.literal('own-date'), number: z.string(), made: z.array(spanSchema) }),
  /** The check character that fits; null where a character before it has no value in the rule. */
  z.strictObject({ kind: z.literal('check'), fits: z.string().nullable() }),
  /** As a case kept it before its words stood with the languages. */
  z.strictObject({ kind: z.literal('as-written'), words: z.string() }),
]);
export type Expected = z.infer<typeof expectedSchema>;

/** In English, for the command line and for what is wrong with a maker file. */
export function expectedWords(expected: Expected): string {
  switch (expected.kind) {
    case 'range':
      return `${expected.first} to ${expected.last}`;
    case 'one-of':
      if (expected.slot !== 'year') return `a ${expected.slot} as one of ${expected.of}`;
      return `one of ${/^(?:[A-Z]+|\d+)$/.test(expected.of) ? '' : 'the characters '}${expected.of}`;
    case 'any-year':
      return 'a year';
    case 'letters':
      return 'letters';
    case 'plant':
      return `a plant on file: ${expected.codes}`;
    case 'in-year':
      return `one that ${expected.years.join(' or ')} has`;
    case 'in-table':
      return 'a number that the table lists';
    case 'own-date':
      return `a number made at the code's own date; ${expected.number} was made ${expected.made.map(spanWords).join(' or ')}`;
    case 'check':
      return expected.fits ?? 'none: a character before it has no value in this rule';
    case 'as-written':
      return expected.words;
  }
}
