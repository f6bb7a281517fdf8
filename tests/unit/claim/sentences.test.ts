import { describe, expect, it } from 'vitest';
import germanic from './germanic.json' with { type: 'json' };
import japanese from './japanese.json' with { type: 'json' };
import { claimsOf } from './listing-of';
import romance from './romance.json' with { type: 'json' };

type Table = Record<string, [string, string[]][]>;

/** Sentences as sellers write them, each with every claim it makes in the order of the text, and no other. */
for (const [family, table] of Object.entries({ germanic, romance, japanese } as unknown as Record<string, Table>))
  describe(`sentences in ${family} languages`, () => {
    for (const [language, rows] of Object.entries(table))
      it.each(rows)(`${language}: %s`, (sentence, expected) => expect(claimsOf(sentence, language)).toEqual(expected));
  });
