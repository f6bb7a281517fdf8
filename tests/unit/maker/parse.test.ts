import { expect, test } from 'vitest';
import { builtInMakers, findMaker, parseMakerFile, readMakerFileText } from '../../../src/maker';
import { sayProblem } from '../../../src/words';

/** The example of the design, as it is printed there. */
const printed = () => ({
  format: 1,
  maker: 'Ondrasse',
  aliases: ['ondrasse bruxelles'],
  sources: [],
  plants: [{ code: 'KV', place: 'BE', used: ['1988', '2003'] }],
  codeSystems: [
    {
      id: 'interleaved-month',
      used: ['1990-01', '2006-12'],
      layout: [{ plant: 2 }, { month: 'tens' }, { year: 'tens' }, { month: 'units' }, { year: 'units' }],
      examples: [{ code: 'KV0915', reads: '1995-01, BE' }],
    },
  ],
  construction: [
    { part: 'lining', is: 'olive twill', used: ['1970', null], strength: 'soft', source: 'a catalogue of the maker' },
  ],
  models: [{ name: 'Carryall 30', size: { width: 30, height: 21, depth: 17, unit: 'cm', tolerance: 1 } }],
  trade: { discounts: 'never', newPriceFloor: [{ amount: 620, currency: 'EUR', year: 2015 }] },
});

const problemsOf = (value: unknown) => {
  const result = parseMakerFile(value);
  return result.ok ? [] : result.problems.map((problem) => `${problem.where}: ${sayProblem(problem, 'en').what}`);
};

const withExample = (code: string, reads: string) => {
  const file = printed();
  file.codeSystems[0]!.examples.push({ code, reads });
  return file;
};

test('the file that the design prints is accepted', () => {
  expect(problemsOf(printed())).toEqual([]);
});

test('a file with nothing but a maker and its format is accepted and its lists are empty', () => {
  const result = parseMakerFile({ format: 1, maker: 'Ondrasse' });
  expect(result.ok && [result.file.plants, result.file.codeSystems, result.file.trade]).toEqual([[], [], {}]);
});

test.each([
  ['KV0915', '1995-02, BE', '"KV0915" reads 1995-01, BE, but the example says "1995-02, BE"'],
  ['KV0915', '1995-01, FR', '"KV0915" reads 1995-01, BE, but the example says "1995-01, FR"'],
  ['KV9915', '1995-01, BE', '"KV9915" does not fit the system\'s layout: month "91" should be 01 to 12'],
  ['QQ0915', '1995-01', '"QQ0915" does not fit the system\'s layout: plant "QQ" should be a plant on file: KV'],
  ['KV091', '1995-01', '"KV091" does not fit the system\'s layout'],
  ['KV0715', '1975-01', '"KV0715" reads 1975-01, which lies outside the system\'s period'],
  ['KV0915', 'soon', '"soon" in "soon" is neither a date nor a place code'],
  ['KV0915', 'nothing', '"KV0915" reads 1995-01, BE, not nothing'],
])('a file whose example %s is said to read %s is refused at that example', (code, reads, what) => {
  expect(problemsOf(withExample(code, reads))).toEqual([`codeSystems[0].examples[1]: ${what}`]);
});

test.each([
  ['KV0915', '1995'],
  ['KV0915', '1995-01'],
  ['KV0915', 'BE'],
  ['KV9915', 'nothing'],
])('an example may say less than the code: %s reads %s', (code, reads) => {
  expect(problemsOf(withExample(code, reads))).toEqual([]);
});

test('faults are told at their field in plain words', () => {
  const file = printed() as Record<string, unknown> & ReturnType<typeof printed>;
  file.plants[0]!.used = ['1988', '1970'];
  expect(problemsOf(file)).toEqual(['plants[0].used: 1988 comes after 1970']);
  expect(problemsOf({ ...printed(), format: '1' })).toContain('format: "1" is not possible here');
  expect(problemsOf({ ...printed(), maker: undefined })).toEqual(['maker: the field is missing']);
  expect(problemsOf({ ...printed(), prices: [] })).toEqual(['the file: "prices" is not a field here']);
  const system = { ...printed().codeSystems[0]!, layout: [{ month: 'half' }, { colour: 2 }, { month: 'tens' }] };
  expect(problemsOf({ ...printed(), codeSystems: [system] })).toEqual([
    'codeSystems[0].layout[0].month: "half" is not possible for month',
    'codeSystems[0].layout[1]: a group of fields is not a slot',
  ]);
  const lone = { ...printed().codeSystems[0]!, layout: [{ plant: 2 }, { month: 'tens' }] };
  expect(problemsOf({ ...printed(), codeSystems: [lone] })).toEqual([
    'codeSystems[0].layout: the month has only its tens or only its units',
  ]);
});

test('a plant stands in a country that there is or was', () => {
  const withPlace = (place: string) => ({
    ...printed(),
    codeSystems: [],
    plants: [{ code: 'KV', place, used: ['1988', null] }],
  });
  expect(['BE', 'CSHH', 'DDDE'].flatMap((place) => problemsOf(withPlace(place)))).toEqual([]);
  expect(problemsOf(withPlace('UK'))).toEqual(['plants[0].place: "UK" is no country']);
  expect(problemsOf(withPlace('QQ'))).toEqual(['plants[0].place: "QQ" is no country']);
});

test('signs that take two places are refused in a layout', () => {
  const system = { ...printed().codeSystems[0]!, layout: [{ literal: '👜' }, ...printed().codeSystems[0]!.layout] };
  expect(problemsOf({ ...printed(), codeSystems: [system] })).toEqual([
    'codeSystems[0].layout[0].literal: "👜" is not characters that can be seen or a space',
  ]);
});

test('problems of a text name the line', () => {
  const text = JSON.stringify(withExample('KV0915', '1995-02'), null, 1);
  const result = readMakerFileText(text);
  const line = text.slice(0, text.lastIndexOf('"KV0915"')).split('\n').length - 1;
  expect(result.ok ? null : result.problems[0]?.line).toBe(line);
});

test.each(['', '{', 'null', '[]', '"Ondrasse"', '{"format":1,"maker":"Ondrasse"', '\u0000', 'maker;code\nOndrasse;KV'])(
  'the text %j is refused with a reason',
  (text) => {
    const result = readMakerFileText(text);
    expect(result.ok ? [] : result.problems.map((problem) => sayProblem(problem, 'en').remedy)).toContainEqual(
      expect.stringMatching(/\w/),
    );
  },
);

test('built-in makers are found by name and alias, however they are written', () => {
  expect(builtInMakers.map(({ maker, invented }) => [maker, invented])).toEqual([
    ['Ondrasse', true],
    ['Calderwick & Rook', true],
    ['Tessaro Vell', true],
  ]);
  expect(findMaker('CALDERWICK AND ROOK', builtInMakers)?.maker).toBe('Calderwick & Rook');
  expect(findMaker(' Ondrasse, Bruxelles ', builtInMakers)?.maker).toBe('Ondrasse');
  expect(findMaker('Somebody', builtInMakers)).toBeNull();
});

test('what is wrong inside a slot is told at its own field, of the form that the slot has', () => {
  const wrong = (...slots: unknown[]) => {
    const file = { ...printed(), codeSystems: [{ ...printed().codeSystems[0], layout: slots }] };
    const result = parseMakerFile(file);
    return result.ok
      ? []
      : result.problems.map((problem) => `${problem.where.split('layout')[1]}: ${sayProblem(problem, 'en').what}`);
  };
  expect(wrong({ year: 'cycle', letters: 'abc' })).toEqual([
    '[0].letters: "abc" is not capital letters or digits',
    '[0].first: the field is missing',
  ]);
  expect(wrong({ month: 'letter', letters: 'ABC' })).toEqual(['[0].letters: "ABC" is too short']);
  expect(wrong({ serial: { max: 6 } })).toEqual(['[0].serial.min: the field is missing']);
  expect(wrong({ year: 7 })).toEqual(['[0].year: 7 is not possible for year']);
  const row = { first: 1, last: null, made: ['19', null] };
  expect(wrong({ serial: 4, table: [row] })).toEqual([
    '[0].table[0].made[0]: "19" is not a date as 1994, 1994-03 or 1994-03-21',
  ]);
  expect(wrong({ check: 'mod11', weights: [1, 'x'] })).toEqual(['[0].weights[1]: "x" is not a number']);
});

test('of several periods of a plant, the one that is wrong is named', () => {
  const used = [
    ['1988', '2003'],
    ['2010', '2005'],
  ];
  const result = parseMakerFile({ ...printed(), plants: [{ code: 'KV', place: 'BE', used }] });
  expect(result).toMatchObject({ ok: false, problems: [{ where: 'plants[0].used[1]' }] });
});
