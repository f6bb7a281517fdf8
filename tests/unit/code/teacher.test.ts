import { expect, test } from 'vitest';
import { decodeText, readsOf } from '../../../src/code';
import { type KnownCode, learnSystem, writeLearned } from '../../../src/code/teacher';
import { parseMakerFile } from '../../../src/maker';
import { chanceFrom } from '../../reference/number-systems';
import { families, normal } from './teacher-families';

const known = (...pairs: [string, string][]): KnownCode[] => pairs.map(([code, reads]) => ({ code, reads }));

test('a cycle that skips letters of its own is worked out, and the guess is told', () => {
  // A to K without C and G, one letter a year from 1970.
  const learned = learnSystem(
    known(
      ['A-0417', '1970'],
      ['B-1180', '1971'],
      ['D-9022', '1972'],
      ['E-3335', '1973'],
      ['F-2109', '1974'],
      ['H-7714', '1975'],
      ['K-5521', '1978'],
    ),
  );
  const [best] = learned.remaining;
  expect(best?.layout).toEqual([
    { year: 'cycle', letters: 'ABDEFHIJK', first: 1970 },
    { separator: '-' },
    { serial: 4 },
  ]);
  expect(best?.words[0]).toBe('year letter from 1970 in place 1, letters ABDEFHIJK; CG taken to be skipped');
});

test('a letter in a shape is learned as enclosed', () => {
  const learned = learnSystem(
    known(
      ['(A)2417', '1982-Q2'],
      ['(K)38180', '1990-Q3'],
      ['(Y)4202', '2001-Q4'],
      ['(C)1933', '1984-Q1'],
      ['(F)2700', '1987-Q2'],
      ['(P)4188', '1994-Q4'],
    ),
  );
  expect(learned.remaining[0]?.layout).toEqual([
    { year: 'cycle', letters: 'ABCDEFGHKLMNPRSTVWXY', first: 1982, enclosed: true },
    { quarter: 1 },
    { serial: { min: 3, max: 4 } },
  ]);
});

test('a running number of changing length is learned before and behind the date', () => {
  const dates: [string, string][] = [
    ['9503', '1995-03'],
    ['9811', '1998-11'],
    ['9107', '1991-07'],
    ['9912', '1999-12'],
    ['9301', '1993-01'],
  ];
  const numbers = ['17', '208', '9', '1144', '86'];
  const behind = learnSystem(dates.map(([code, reads], at) => ({ code: `${code}-${numbers[at]}`, reads })));
  expect(behind.remaining[0]?.layout).toEqual([
    { year: 2 },
    { month: 2 },
    { separator: '-' },
    { serial: { min: 1, max: 4 } },
  ]);
  const before = learnSystem(dates.map(([code, reads], at) => ({ code: `${numbers[at]}-${code}`, reads })));
  expect(before.remaining[0]?.layout).toEqual([
    { serial: { min: 1, max: 4 } },
    { separator: '-' },
    { year: 2 },
    { month: 2 },
  ]);
});

test(`one wrong example among eight is named (seeds 40 to 59)`, () => {
  const family = families.find(({ name }) => name === 'plant, interleaved month and year')!;
  for (let seed = 40; seed < 60; seed++) {
    const chance = chanceFrom(seed);
    const examples = Array.from({ length: 8 }, () => family.example(chance));
    const at = Math.floor(chance() * 8);
    const year = Number(examples[at]!.reads.slice(0, 4)) + 1;
    examples[at] = { ...examples[at]!, reads: `${year}${examples[at]!.reads.slice(4)}` };
    const learned = learnSystem(examples, { wrong: 1 });
    expect([seed, learned.remaining[0]?.wrong, normal(learned.remaining[0]!.layout)]).toEqual([
      seed,
      [at],
      normal(family.layout),
    ]);
  }
});

test('a running number becomes a table of what is known, and says no more than that', () => {
  const examples = known(
    ['1042210', '1976'],
    ['1101126', '1977'],
    ['1260448', '1980'],
    ['1633017', '1984'],
    ['1701126', '1985'],
    ['1901126', '1988'],
  );
  const [best] = learnSystem(examples).remaining;
  expect(best?.explains).toEqual([0, 1, 2, 3, 4, 5]);
  const slot = best?.layout[0];
  expect(slot && 'serial' in slot && slot.table?.slice(0, 3)).toEqual([
    { first: 1042210, last: 1042210, made: ['1976-01-01', '1976-12-31'] },
    { first: 1042211, last: 1101125, made: ['1976-01-01', '1977-12-31'] },
    { first: 1101126, last: 1101126, made: ['1977-01-01', '1977-12-31'] },
  ]);
});

const interleaved = known(
  ['KV0915', '1995-01, BE'],
  ['HJ1929', '1999-12, FR'],
  ['ZM0084', '2004-08, ES'],
  ['WQ1012', '2002-11, US'],
  ['KV0963', '1993-06, BE'],
  ['HJ0052', '2002-05, FR'],
);

test('a wrong example is tolerated when asked, and named', () => {
  const withWrong = [...interleaved, ...known(['KV0936', '1991-03, BE'])];
  expect(learnSystem(withWrong).remaining).toEqual([]);
  const learned = learnSystem(withWrong, { wrong: 1 });
  expect(learned.remaining.map(({ wrong }) => wrong)).toEqual([[6]]);
  expect(learned.words).toContain('Taken to be wrong: example 7.');
});

test('an example with the wrong place counts as wrong too', () => {
  const withWrong = [...interleaved, ...known(['KV0936', '1996-03, FR'], ['KV0947', '1997-04, BE'])];
  expect(learnSystem(withWrong, { wrong: 1 }).remaining[0]?.wrong).toEqual([6]);
});

test('codes that fit several layouts say so, with a code that would tell them apart', () => {
  const learned = learnSystem(known(['0101', '2001-01'], ['0202', '2002-02'], ['0303', '2003-03']));
  expect(learned.ambiguous).toBe(true);
  expect(learned.remaining.length).toBeGreaterThan(1);
  expect(new Set(learned.tellingCode?.readings).size).toBeGreaterThan(1);
  expect(learned.words).toMatch(/^\d+ layouts remain; .* would tell them apart/);
});

test('codes without a system give none', () => {
  const learned = learnSystem(
    known(
      ['KV0915', '1971-03'],
      ['HJ1929', '1988-05'],
      ['ZM0084', '1990-09'],
      ['WQ1012', '1978-12'],
      ['KV0963', '2003-02'],
    ),
  );
  expect(learned.remaining).toEqual([]);
  expect(learned.words).toBe('No layout explains these 5 codes.');
});

test('an example that cannot be read is named and the others are used', () => {
  const learned = learnSystem([...interleaved, { code: '---', reads: '1990' }, { code: 'KV0915', reads: 'soon' }]);
  expect(learned.unusable.map(({ index }) => index)).toEqual([6, 7]);
  expect(learned.remaining).toHaveLength(1);
});

test('separators, backward years, day and month letters, and check digits are learned', () => {
  const slashed = learnSystem(
    known(
      ['M3-214/98', '1998-08-02, IT'],
      ['T5-032/91', '1991-02-01, IT'],
      ['P4-366/00', '2000-12-31, PT'],
      ['R2 060/03', '2003-03-01, RO'],
      ['M3-100/95', '1995-04-10, IT'],
      ['P4-201/99', '1999-07-20, PT'],
    ),
  );
  expect(slashed.remaining[0]?.layout).toEqual([
    { plant: 2 },
    { separator: '- ' },
    { dayOfYear: 3 },
    { separator: '/' },
    { year: 2 },
  ]);
  const checked = learnSystem(
    known(
      ['14C50M31', '2005-03-14, IT'],
      ['02N71R28', '2017-12-02, RO'],
      ['29B02V70', '2020-02-29, VN'],
      ['11A60M30', '2006-01-11, IT'],
      ['23F31V72', '2013-06-23, VN'],
    ).map(({ code, reads }) => ({ code: withLuhn(code.slice(0, -1)), reads })),
  );
  expect(checked.remaining[0]?.layout).toEqual([
    { day: 2 },
    { month: 'letter', letters: 'ABCDEFGHKLMN' },
    { year: 2, reversed: true },
    { plant: 2 },
    { check: 'luhn' },
  ]);
});

/** Luhn's digit worked out here once more (ISO/IEC 7812-1 Annex B; letters as two digits). */
function withLuhn(body: string): string {
  const digits = [...body].flatMap((character) => [...String(Number.parseInt(character, 36))].map(Number)).reverse();
  const sum = digits.reduce((total, digit, at) => total + (at % 2 ? digit : digit > 4 ? digit * 2 - 9 : digit * 2), 0);
  return `${body}${(10 - (sum % 10)) % 10}`;
}

test('the chosen layout is written into a maker file that is accepted and reads further codes', () => {
  const [best] = learnSystem(interleaved).remaining;
  const empty = parseMakerFile({ format: 1, maker: 'Ondrasse' });
  if (!best || !empty.ok) throw new Error('nothing was learned');
  const written = parseMakerFile(JSON.parse(JSON.stringify(writeLearned(empty.file, best, interleaved, 'learned'))));
  if (!written.ok) throw new Error(written.problems.map(({ what }) => what).join('\n'));
  const { readings } = decodeText('ZM2922', { makers: [written.file], maker: 'Ondrasse' });
  expect(readings.map(readsOf)).toEqual([]);
  const sound = decodeText('ZM1909', { makers: [written.file], maker: 'Ondrasse' });
  expect(sound.readings.map(readsOf)).toEqual(['1999-10, ES']);
  expect(empty.file.codeSystems).toEqual([]);
});

test('one code cannot tell a layout, however often it is given, and none is called the likeliest', () => {
  const one = known(['KV0915', '1995-01, BE']);
  for (const examples of [one, [...one, ...one]]) {
    const learned = learnSystem(examples);
    expect(learned.remaining).toEqual([]);
    expect(learned.ambiguous).toBe(true);
    expect(learned.words).toBe(
      "One code cannot tell how a maker's codes are written: give more known codes, of different dates.",
    );
  }
  const two = learnSystem(known(['KV0915', '1995-01, BE'], ['HJ1929', '1999-12, FR']), { wrong: 1 });
  expect(two.remaining).toEqual([]);
  expect(two.words).toMatch(/^One code of 2, when 1 may be wrong, cannot tell/);
});

test('a single digit that is not explained is called one digit', () => {
  const learned = learnSystem(
    known(
      ['KV09157', '1995-01, BE'],
      ['HJ19292', '1999-12, FR'],
      ['ZM00849', '2004-08, ES'],
      ['WQ10125', '2002-11, US'],
      ['KV09631', '1993-06, BE'],
      ['HJ00528', '2002-05, FR'],
    ),
  );
  const words = [...learned.remaining, ...learned.others].flatMap((candidate) => candidate.words);
  expect(words).toContain('running number of one digit');
  expect(words.filter((said) => /\b1 digits/.test(said))).toEqual([]);
});
