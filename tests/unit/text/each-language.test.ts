import { describe, expect, it } from 'vitest';
import { parseDates } from '../../../src/text';
import * as age from '../../../src/text/age';
import * as dates from '../../../src/text/date-words';
import * as grades from '../../../src/text/grade-words';
import * as joints from '../../../src/text/joint-words';
import * as place from '../../../src/text/place-words';
import * as units from '../../../src/text/unit-words';

const languages = ['en', 'fr', 'de', 'it', 'es', 'nl', 'ja'] as const;

/** Every row of an export that is one, or holds some. */
function rowsIn(name: string, value: unknown): [name: string, row: readonly string[]][] {
  if (typeof value === 'string' || typeof value !== 'object' || value === null || value instanceof Map) return [];
  if (Array.isArray(value) && value.length > 0 && value.every((one) => typeof one === 'string')) return [[name, value]];
  return Object.entries(value).flatMap(([key, one]) => rowsIn(`${name}.${key}`, one));
}
const modules = { age, dates, grades, joints, place, units };
const rows = Object.values(modules).flatMap((module) =>
  Object.entries(module).flatMap(([name, value]) => rowsIn(name, value)),
);

/** Where a language has no word of the row, and why. */
const without: Record<string, string> = {
  'asCross ja': 'it writes the cross',
  'madeBehind fr': 'it stands before the adjective',
  'madeBehind it': 'it stands before the adjective',
  'madeBehind es': 'it stands before the adjective',
  'madeBeforeAdjective en': 'it stands behind the adjective',
  'madeBeforeAdjective de': 'it stands behind the adjective',
  'madeBeforeAdjective nl': 'it stands behind the adjective',
  'madeBeforeAdjective ja': 'it stands behind the name',
  'moreMonths ja': 'months are numbers',
  'moreWeekdays nl': 'CLDR has all that are written',
  'moreWeekdays ja': 'CLDR has all that are written',
  'moreThan ja': 'it stands behind the number, in the row of ages',
  'namedDecade ja': 'the decades of a reign are counted so as well: read in digits only',
  'beforeDecade en': 'it stands behind the digits',
  'beforeDecade de': 'it stands behind the digits',
  'beforeDecade ja': 'it stands behind the digits',
  'behindDecade fr': 'it stands before the digits',
  'behindDecade it': 'it stands before the digits',
  'behindDecade es': 'it stands before the digits',
  'behindDecade nl': 'it stands before the digits',
  'doubtOpens de': 'all its words are among those for "whether"',
  'doubtOpens ja': 'it stands behind what is doubted',
  'behindDoubt ja': 'the doubt stands behind what is doubted, and ends its clause',
  'youWord it': 'the verb says who is spoken to',
  'youWord ja': 'nobody is named',
  'measuresVerb ja': 'a particle leads to the size',
  'beforeShortYear ja': 'it stands behind the digits',
  'behindShortYear ja': 'what goes on behind the year is one pattern of its own',
  'beforeWords ja': 'it stands behind the date',
  'untilWords ja': 'it stands behind the date',
  'afterWords ja': 'it stands behind the date',
  'alongWith ja': 'it stands behind what comes along',
  'oneMore ja': 'nouns have no article',
  'named ja': 'nouns have no article',
  'asOne ja': 'the number of pieces in one stands before the noun',
  'original ja': 'its denials end in a verb',
  'needsName en': 'its words of style name a maker by themselves',
  'needsName de': 'its words of style name a maker by themselves',
  'needsName es': 'its words of style name a maker by themselves',
  'needsName nl': 'its words of style name a maker by themselves',
  'needsName ja': 'its words of style name a maker by themselves',
  'comparedWith ja': 'what is compared stands before it',
  'madeAhead ja': 'the verb stands behind the date',
  'refuses ja': 'the verb ends the sentence, and is one of those that refuse behind',
  'ofAge ja': 'the year of a birth stands ahead of the verb',
  'wasOnce ja': 'the verb closes the sentence, and tells no time of a state alone',
  'theOne ja': 'a particle behind the year says it',
  'ofWhat ja': 'a particle behind the thing says it',
  'whoWants ja': 'it stands behind what is wanted',
  'wardrobe ja': 'a clearance has a word of its own',
  'which ja': 'such a clause stands ahead of its noun',
  'conditional ja': 'it closes the clause',
  'looksSo ja': 'it stands behind the word',
  'doneBy ja': 'a particle stands behind whoever did it',
  'insteadOf ja': 'it stands behind what is not to be',
  'holds ja': 'the verb stands behind what is held',
  'foundedShort ja': 'nothing is cut short with a stop',
  'iThink ja': 'the verb ends the sentence, and no comma parts it from the name',
  'whose ja': 'whose it is stands before the thing',
  'inPlace ja': 'its word stands behind the place',
  'allOfIt ja': 'what is of one material is named',
  'wasMade ja': 'the verb stands behind the date, among those of making',
  'wasMadeBy ja': 'the verb stands behind the maker: it is the row madeBehind',
  'madeAtEnd en': 'the verb stands before the date',
  'madeAtEnd fr': 'the verb stands before the date',
  'madeAtEnd it': 'the verb stands before the date',
  'madeAtEnd es': 'the verb stands before the date',
  'madeAtEnd ja': 'the verb is among those of making',
  'itself ja': 'nobody names the piece by a pronoun',
  'limitedTo ja': 'it stands before the verb',
  'madeBehindName ja': 'it is the row madeBehind',
  'inCountry ja': 'its word stands behind the country',
  'brandWord ja': 'a title names the house itself',
  'firmWord ja': 'a title names the house itself',
  'byWhom it': 'its word also says where a piece comes from and what it is for',
  'byWhom es': 'its word also says for how much a piece goes',
  'byWhom ja': 'whose it is stands before the thing',
  'notBefore ja': 'it stands behind what is not accepted',
  'notBehind it': 'it stands before what is not accepted',
  'notBehind es': 'it stands before what is not accepted',
  'unitWords.ft fr': 'lengths are not measured in feet',
  'unitWords.ft de': 'lengths are not measured in feet',
  'unitWords.ft it': 'lengths are not measured in feet',
  'unitWords.ft es': 'lengths are not measured in feet',
  'unitWords.ft nl': 'lengths are not measured in feet',
  'andQuarter ja': 'only halves are told so',
  'unitWords.ft ja': 'lengths are not measured in feet',
};

describe('words by language', () => {
  it('have a text for each of the seven, empty only where it is argued why', () => {
    expect(rows.length).toBeGreaterThan(15);
    const empty = rows.flatMap(([name, row]) =>
      languages.flatMap((one, at) => (row[at] === '' ? [`${name} ${one}`] : [])),
    );
    expect(empty.sort()).toEqual(Object.keys(without).sort());
  });

  it('count in tens from ten to ninety in each', () => {
    expect(dates.tens.map((row) => row.split(', ').length)).toEqual(languages.map(() => 9));
  });
});

const now = '2026-01-15T10:00:00Z';
const spans = (text: string) =>
  parseDates(text, { language: null, now }).map(({ span: { from, to } }) => `${from} ${to}`);

it.each([
  'sixty years old',
  'a soixante ans',
  'sechzig Jahre alt',
  'ha sessanta anni',
  'tiene sesenta años',
  'zestig jaar oud',
  '六十年前のバッグ',
])('an age in words of any ten is read in each language: %s', (words) => {
  expect(spans(words)).toEqual(['1961-01-01 1971-12-31']);
});

it.each([
  'an interwar handbag',
  'un sac de l’entre-deux-guerres',
  'aus der Zwischenkriegszeit',
  'una borsa, interbellico',
  'un bolso de entreguerras',
  'tas uit het interbellum',
  'バッグ 戦間期',
])('a period between the wars is read in each language: %s', (words) => {
  expect(spans(words)).toEqual(['1918-11-11 1939-09-01']);
});
