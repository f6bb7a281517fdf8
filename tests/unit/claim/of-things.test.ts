import { expect, it } from 'vitest';
import { claimsOf } from './listing-of';
import table from './of-things.json' with { type: 'json' };

/*
 * Sentences that speak of several things, of events and of other times: what is claimed of the piece, and nothing that
 * is said of something else. Kinds that sentences of other tables hold are left out.
 */

const elsewhere = /^(?:price|metal|(?:not )?leather)|= .*leather$/;
const rows = Object.entries(table).flatMap(([language, sentences]) =>
  sentences.map((row) => [language, ...(row as unknown as [string, string[]])] as const),
);

it.each(rows)('%s: %s', (language, sentence, expected) => {
  const claims = claimsOf(sentence, language, 'Ondrasse Satchel').filter((one) => !elsewhere.test(one));
  const own = claims.filter((one) => !/^(?:maker|model) /.test(one));
  expect(own).toEqual(expected);
});
