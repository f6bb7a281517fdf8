import { expect, it } from 'vitest';
import { findClaims, isDataTerm } from '../../../src/claim';
import { partWords, tableWords } from '../../../src/text';
import { colourWords, materialWords } from '../../../src/text/material-words';
import germanic from './germanic.json' with { type: 'json' };
import japanese from './japanese.json' with { type: 'json' };
import { claimsOf, listingOf, ondrasse, shortClaim } from './listing-of';
import otherThings from './other-things.json' with { type: 'json' };
import romance from './romance.json' with { type: 'json' };

/* `npm test -- unit/claim/kept --update` writes anew what is kept. */

it('each material, colour and part, as it stands beside others', async () => {
  const said = (...sentences: string[]) =>
    sentences.map((sentence) => claimsOf(sentence, 'en').join(', ') || 'nothing').join(' | ');
  const out = [
    ...Object.keys(materialWords).map(
      (name) =>
        `material ${name}: ${said(`${name} bag`, `A ${name} lining`, `Made of ${name}.`, `With ${name} fittings on a bag`)}`,
    ),
    ...Object.keys(colourWords).map(
      (name) => `colour ${name}: ${said(`${name} leather bag`, `Lining in ${name}`, `${name} bag`)}`,
    ),
    ...Object.entries(partWords).map(
      ([name, [word = '']]) =>
        `part ${name}: ${said(`The ${word} is red suede`, `${word} replaced`, `Brass ${word}`, `New ${word}`, `The ${word} is from 2019`)}`,
    ),
    ...Object.entries(tableWords('condition')).map(
      ([name, [word = '']]) => `condition ${name}: ${said(word, `The box is ${word}`)}`,
    ),
  ];
  await expect(`${out.join('\n')}\n`).toMatchFileSnapshot('./kept/tables.txt');
});

it.each<[boolean, string]>([
  [true, 'https://schema.org/UsedCondition'],
  [true, 'http://www.schema.org/UsedCondition'],
  [true, 'schema:UsedCondition'],
  [true, ' UsedCondition '],
  [true, 'MerchantReturnNotPermitted'],
  [false, 'good condition'],
  [false, 'Condition'],
  [false, 'https://schema.org/'],
  [false, 'https://schema.org/Used Condition'],
  [false, 'MerchantReturn'],
  [false, 'see https://schema.org/UsedCondition'],
])('%s: words of the data are %s', (is, words) => {
  expect(isDataTerm(words)).toBe(is);
});

type Table = Record<string, [string, string[]][]>;
const rows = Object.values({ germanic, romance, japanese, otherThings } as unknown as Record<string, Table>).flatMap(
  (table) => Object.entries(table).flatMap(([language, all]) => all.map(([sentence]) => [language, sentence] as const)),
);

it('a character that prints nothing moves what is claimed and changes nothing of it', () => {
  const whole = (sentence: string, language: string, moved: number) =>
    findClaims(listingOf('', sentence, language), [ondrasse]).map((claim) => ({
      says: shortClaim(claim),
      id: claim.id,
      words: claim.words,
      at: { ...claim.at, start: claim.at.start - moved, end: claim.at.end - moved },
    }));
  for (const [language, sentence] of rows)
    expect(whole(`\u00ad${sentence}`, language, 1), sentence).toEqual(whole(sentence, language, 0));
});

it('what stands on lines before and behind changes nothing of what a sentence claims', () => {
  const before = 'Hello and welcome.\n\n';
  const whole = (sentence: string, language: string, moved: number) =>
    findClaims(listingOf('', sentence, language), [ondrasse]).map(
      ({ words, at, ...claim }) => `${shortClaim({ words, at, ...claim } as never)} “${words}” ${at.start - moved}`,
    );
  const differing = rows.flatMap(([language, sentence]) => {
    const [alone, among] = [
      whole(sentence, language, 0),
      whole(`${before}${sentence}\n\nThank you.`, language, before.length),
    ];
    return alone.join() === among.join() ? [] : [sentence, ...alone, '→', ...among];
  });
  expect(differing).toEqual([]);
});
