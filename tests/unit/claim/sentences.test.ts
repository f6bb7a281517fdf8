import { describe, expect, it } from 'vitest';
import germanic from './germanic.json' with { type: 'json' };
import japanese from './japanese.json' with { type: 'json' };
import { claimsOf } from './listing-of';
import otherThings from './other-things.json' with { type: 'json' };
import romance from './romance.json' with { type: 'json' };

type Table = Record<string, [string, string[]][]>;

/** Sentences as sellers write them, each with every claim it makes in the order of the text, and no other. */
for (const [family, table] of Object.entries({ germanic, romance, japanese } as unknown as Record<string, Table>))
  describe(`sentences in ${family} languages`, () => {
    for (const [language, rows] of Object.entries(table))
      it.each(rows)(`${language}: %s`, (sentence, expected) => expect(claimsOf(sentence, language)).toEqual(expected));
  });

/** Of what comes along, of a model's years, of another piece; denied, asked, supposed: nothing is held against the piece. */
describe('sentences that speak of something else, or state nothing', () => {
  for (const [language, rows] of Object.entries(otherThings as unknown as Table))
    it.each(rows)(`${language}: %s`, (sentence, expected) => expect(claimsOf(sentence, language)).toEqual(expected));
});
