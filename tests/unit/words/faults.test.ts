import { describe, expect, it } from 'vitest';
import { type MakerFault, parseMakerFile, readMakerFileText } from '../../../src/maker';
import { sayExpected, sayFault, sayProblem } from '../../../src/words';

const text = (words: string) => ({ kind: 'text', text: words }) as const;

it.each<[MakerFault, string, string]>([
  [{ kind: 'missing', type: 'string' }, 'the field is missing', 'das Feld fehlt'],
  [
    { kind: 'half', group: 'dayOfYear' },
    'the day of the year has only its tens or only its units',
    'der Tag im Jahr hat nur die Zehner oder nur die Einer',
  ],
  [{ kind: 'twice', group: 'month' }, 'the month stands there twice', 'der Monat steht zweimal da'],
  [
    { kind: 'too-open', most: 5 },
    'more than 5 slots may be left out or change their length',
    'mehr als 5 Stellen dürfen fehlen oder ihre Länge ändern',
  ],
  [
    {
      kind: 'does-not-fit',
      code: '1395',
      impossible: { slot: 'month', value: '13', expected: { kind: 'range', first: '01', last: '12' } },
    },
    '"1395" does not fit the system\'s layout: month "13" should be 01 to 12',
    '„1395“ passt nicht zum Aufbau des Systems: der Monat ist „13“, erwartet 01 bis 12',
  ],
  [
    { kind: 'reads-otherwise', code: '0295', says: ['1995-02', '1895-02'], reads: '1995-03' },
    '"0295" reads 1995-02 or 1895-02, but the example says "1995-03"',
    '„0295“ liest sich als 1995-02 oder 1895-02, im Beispiel steht „1995-03“',
  ],
  [{ kind: 'unknown-fields', names: ['a', 'b'] }, '"a", "b" is not a field here', '„a“ und „b“ sind hier keine Felder'],
  [{ kind: 'wrong-type', value: { kind: 'list' }, type: 'string' }, 'a list is not text', 'eine Liste ist kein Text'],
  [
    { kind: 'wrong-form', value: text('"x"'), form: 'currency' },
    '"x" is not an ISO 4217 code',
    '"x" ist kein Code nach ISO 4217',
  ],
  [{ kind: 'too-small', value: text('"AB"'), limit: 3, unit: 'characters' }, '"AB" is too short', '"AB" ist zu kurz'],
  [{ kind: 'too-large', value: text('900'), limit: 500, unit: 'plain' }, '900 is too large', '900 ist zu groß'],
  [{ kind: 'backwards', from: '1988', to: '1970' }, '1988 comes after 1970', '1988 kommt nach 1970'],
  [
    { kind: 'file-characters', is: 2_500_000, most: 2_000_000 },
    'the file has 2500000 characters',
    'die Datei hat 2.500.000 Zeichen',
  ],
])('what is wrong with a maker file is said in both languages: %j', (fault, english, german) => {
  expect([sayFault(fault, undefined, 'en'), sayFault(fault, undefined, 'de')]).toEqual([english, german]);
});

it.each<[MakerFault, string, string]>([
  [{ kind: 'missing', type: 'int' }, 'a whole number', 'eine ganze Zahl'],
  [{ kind: 'empty', limit: 1, unit: 'characters' }, 'at least 1 character', 'mindestens 1 Zeichen'],
  [
    { kind: 'too-large', value: { kind: 'list' }, limit: 2, unit: 'entries' },
    'at most 2 entries',
    'höchstens 2 Einträge',
  ],
  [{ kind: 'not-possible', value: text('2'), known: ['1'] }, 'one of 1', 'eines von 1'],
  [
    { kind: 'wrong-form', value: text('x'), form: 'capitals' },
    'capital letters or digits',
    'Großbuchstaben oder Ziffern',
  ],
])('what was expected in its place is said in both languages: %j', (fault, english, german) => {
  expect([sayExpected(fault, 'en'), sayExpected(fault, 'de')]).toEqual([english, german]);
});

it('says nothing of what was expected where nobody can say', () => {
  const unknown: MakerFault[] = [{ kind: 'no-layout' }, { kind: 'not-possible', value: text('2'), known: [] }];
  expect(unknown.map((fault) => sayExpected(fault, 'de'))).toEqual([null, null]);
});

describe('a problem of a maker file', () => {
  const file = {
    format: 1,
    maker: 'Ondrasse',
    sources: ['invented'],
    plants: [{ code: 'KV', place: 'UK', used: ['1988', null] }],
    codeSystems: [],
  };
  it('is said whole in either language, with its line', () => {
    const result = readMakerFileText(JSON.stringify(file, null, 1));
    const [problem] = result.ok ? [] : result.problems;
    expect(problem && [sayProblem(problem, 'en').expected, sayProblem(problem, 'de').expected]).toEqual([
      'a code of ISO 3166-1, of ISO 3166-3 for a former country, or ZZ where it is not known',
      'ein Code nach ISO 3166-1, für ein früheres Land nach ISO 3166-3, oder ZZ, wo es nicht bekannt ist',
    ]);
    expect(problem && [sayProblem(problem, 'en').what, sayProblem(problem, 'de').what]).toEqual([
      'line 10: "UK" is no country',
      'ein Land ist nicht bekannt (Zeile 10: „UK“ ist kein Land)',
    ]);
  });

  it('has its sort and what to do in each language, whatever the form of a file refuses', () => {
    const wrong = {
      ...file,
      format: '2',
      maker: '',
      sources: 'x',
      more: 1,
      plants: [{ code: 'kv', place: 'BE', used: ['1988', null] }],
      codeSystems: Array(1000).fill({}),
    };
    const result = parseMakerFile(wrong);
    const problems = result.ok ? [] : result.problems;
    expect(problems.length).toBeGreaterThan(5);
    for (const problem of problems) {
      const [english, german] = [sayProblem(problem, 'en'), sayProblem(problem, 'de')];
      expect(english.remedy).toMatch(/^[A-Z].*[.]$/);
      expect([german.what, german.remedy]).not.toContain(english.what);
      expect(german.remedy).not.toBe(english.remedy);
    }
  });
});
