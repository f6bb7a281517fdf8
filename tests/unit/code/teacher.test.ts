import { expect, test } from 'vitest';
import { decodeText, readsOf } from '../../../src/code';
import { type KnownCode, type Learned, learning, learnSystem, writeLearned } from '../../../src/code/teacher';
import { parseMakerFile } from '../../../src/maker';
import { chanceFrom } from '../../reference/number-systems';
import { families, normal } from './teacher-families';

/** The best explanation's one layout. */
const layoutOf = ({ remaining: [best] }: Learned) => (best?.eras.length === 1 ? best.eras[0]!.layout : null);
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
  const best = learned.remaining[0]?.eras[0];
  expect(best?.layout).toEqual([
    { year: 'cycle', letters: 'ABDEFHIJK', first: 1970 },
    { separator: '-' },
    { serial: 4 },
  ]);
  const [says] = best?.says ?? [];
  expect(says).toEqual({ kind: 'year-letter', first: 1970, place: 1, letters: 'ABDEFHIJK', skipped: 'CG' });
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
  expect(layoutOf(learned)).toEqual([
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
  expect(layoutOf(behind)).toEqual([{ year: 2 }, { month: 2 }, { separator: '-' }, { serial: { min: 1, max: 4 } }]);
  const before = learnSystem(dates.map(([code, reads], at) => ({ code: `${numbers[at]}-${code}`, reads })));
  expect(layoutOf(before)).toEqual([{ serial: { min: 1, max: 4 } }, { separator: '-' }, { year: 2 }, { month: 2 }]);
});

test(`one wrong example among eight is named (seeds 40 to 59)`, () => {
  const family = families.find(({ name }) => name === 'plant, interleaved month and year')!;
  for (let seed = 40; seed < 60; seed++) {
    const chance = chanceFrom(seed);
    const examples = Array.from({ length: 8 }, () => family.example(chance));
    const at = Math.floor(chance() * 8);
    const year = Number(examples[at]!.reads.slice(0, 4)) + 1;
    examples[at] = { ...examples[at]!, reads: `${year}${examples[at]!.reads.slice(4)}` };
    const learned = learnSystem(examples);
    expect([seed, learned.remaining[0]?.wrong, normal(layoutOf(learned)!)]).toEqual([
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
  const slot = best?.eras[0]?.layout[0];
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

test('a wrong example is weighed without being asked, and named with what its code says', () => {
  const learned = learnSystem([...interleaved, ...known(['KV0936', '1991-03, BE'])]);
  expect(learned.remaining.map(({ wrong }) => wrong)).toEqual([[6]]);
  expect(learned.doubted).toEqual([{ index: 6, reads: '1996-03, BE' }]);
  expect(learned.open).toBeNull();
});

test('an example with the wrong place counts as wrong too', () => {
  const withWrong = [...interleaved, ...known(['KV0936', '1996-03, FR'], ['KV0947', '1997-04, BE'])];
  expect(learnSystem(withWrong).remaining[0]?.wrong).toEqual([6]);
});

test('a code that does not fit is named as that', () => {
  const learned = learnSystem([...interleaved, ...known(['KV09', '1996-03, BE'])]);
  expect(learned.doubted).toEqual([{ index: 6, reads: null }]);
});

test('a wrong year in a short list does not make another system that explains all of it', () => {
  // Six codes of which one has a wrong year: a system explaining six of six was called certain once.
  const list = interleaved.map((one, at) => (at === 2 ? { ...one, reads: '2001-08, ES' } : one));
  const learned = learnSystem(list);
  expect(layoutOf(learned)).toEqual([
    { plant: 2 },
    { month: 'tens' },
    { year: 'tens' },
    { month: 'units' },
    { year: 'units' },
  ]);
  expect(learned.doubted).toEqual([{ index: 2, reads: '2004-08' }]);
});

const twoEras = known(
  ['853', '1985-03'],
  ['869', '1986-09'],
  ['847', 'July 1984'],
  ['881', '1988'],
  ['875', '1987-05'],
  ['KV0915', '1995-01'],
  ['HJ1929', '1999-12'],
  ['KV0963', '1993-06'],
  ['HJ0052', 'May 2002'],
  ['ZM0084', '2004'],
);

test('two eras in one list are told apart, and each is written as a system of its own', () => {
  const learned = learnSystem(twoEras);
  const [best] = learned.remaining;
  expect(best?.eras.map(({ layout, used }) => [layout, used])).toEqual([
    [
      [{ year: 2 }, { month: '1-9' }],
      ['1984', '1988'],
    ],
    [
      [{ plant: 2 }, { month: 'tens' }, { year: 'tens' }, { month: 'units' }, { year: 'units' }],
      ['1993', '2004'],
    ],
  ]);
  expect(best?.wrong).toEqual([]);
  const empty = parseMakerFile({ format: 1, maker: 'Ondrasse' });
  if (!best || !empty.ok) throw new Error('nothing was learned');
  const written = parseMakerFile(writeLearned(empty.file, best, twoEras, 'learned'));
  if (!written.ok) throw new Error(written.problems.map(({ what }) => what).join('\n'));
  expect(written.file.codeSystems.map(({ id, examples }) => [id, examples.length])).toEqual([
    ['learned', 5],
    ['learned-later', 5],
  ]);
});

test('two eras of one length are not all read by the later', () => {
  // Month and year interleaved until 2006, then week and year: the same six characters.
  const learned = learnSystem(
    known(
      ['KV0915', '1995-01'],
      ['HJ1929', '1999-12'],
      ['KV0963', '1993-06'],
      ['HJ0052', '2002-05'],
      ['KV2057', '2007-W25'],
      ['HJ4179', '2019-W47'],
      ['KV3120', '2010-W32'],
      ['ZM5112', '2012-W51'],
      ['HJ1068', '2008-W16'],
    ),
  );
  expect(learned.remaining[0]?.eras.map(({ layout }) => layout.map((slot) => Object.keys(slot)[0]))).toEqual([
    ['plant', 'month', 'year', 'month', 'year'],
    ['plant', 'week', 'year', 'week', 'year'],
  ]);
  expect(learned.remaining[0]?.wrong).toEqual([]);
});

test('vague dates are taken as spans', () => {
  const learned = learnSystem(
    known(
      ['KV0915', 'about 1996, BE'],
      ['HJ1929', '1990s'],
      ['ZM0084', 'bought 2006'],
      ['KV0963', '1993-06, BE'],
      ['HJ0052', '2002-05'],
      ['WQ1012', 'not before 1998'],
      ['KV0936', 'March 1996'],
      ['ZM1010', '2000'],
    ),
  );
  expect(learned.unusable).toEqual([]);
  expect(layoutOf(learned)).toEqual([
    { plant: 2 },
    { month: 'tens' },
    { year: 'tens' },
    { month: 'units' },
    { year: 'units' },
  ]);
  expect(learned.doubted).toEqual([]);
});

test('an example whose date is vaguer than its code is written with what the code says', () => {
  const examples = known(
    ['9503', 'about 1996'],
    ['9811', '1998-11'],
    ['9107', '1991'],
    ['9912', '1999-12'],
    ['9301', 'bought 1995'],
    ['9004', '1990-04'],
  );
  const [best] = learnSystem(examples).remaining;
  const empty = parseMakerFile({ format: 1, maker: 'Ondrasse' });
  if (!best || !empty.ok) throw new Error('nothing was learned');
  const written = parseMakerFile(writeLearned(empty.file, best, examples, 'learned'));
  if (!written.ok) throw new Error(written.problems.map(({ what }) => what).join('\n'));
  expect(written.file.codeSystems[0]?.examples.map(({ reads }) => reads)).toEqual([
    '1995-03',
    '1998-11',
    '1991',
    '1999-12',
    '1993-01',
    '1990-04',
  ]);
});

test('a plant whose place is not given is read all the same, and names no place', () => {
  const examples = interleaved.map((one, at) => (at === 3 ? { ...one, reads: '2002-11' } : one));
  const [best] = learnSystem(examples).remaining;
  expect(best?.explains).toEqual([0, 1, 2, 3, 4, 5]);
  expect(best?.eras[0]?.plants.find(({ code }) => code === 'WQ')?.place).toBe('ZZ');
  const empty = parseMakerFile({ format: 1, maker: 'Ondrasse' });
  if (!best || !empty.ok) throw new Error('nothing was learned');
  const written = parseMakerFile(writeLearned(empty.file, best, examples, 'learned'));
  if (!written.ok) throw new Error('not accepted');
  const [reading] = decodeText('WQ1012', { makers: [written.file], maker: 'Ondrasse' }).readings;
  expect(reading?.places).toEqual([]);
  expect(reading?.plant).toBeNull();
});

test('which letters a cycle leaves out is called a guess where the codes leave a choice', () => {
  // F is 1988 and I 1990: G or H is left out, and nothing says which.
  const learned = learnSystem(
    known(
      ['A1', '1984-01'],
      ['B4', '1985'],
      ['D7', '1986-09'],
      ['F5', '1988'],
      ['I8', '1990-12'],
      ['J2', '1991-03'],
      ['A9', '1984'],
      ['J7', '1991'],
    ).map(({ code, reads }) => ({ code: `${code[0]}-${code[1]}0`, reads })),
  );
  expect(learned.remaining[0]?.wrong).toEqual([]);
  expect(learned.open).toBe('letters');
});

test('two codes that do not fit leave it open whether there is another system', () => {
  const learned = learnSystem([...interleaved, ...known(['KV0936', '1991-03'], ['HJ0947', '1982-04'])]);
  expect(learned.doubted.map(({ index }) => index)).toEqual([6, 7]);
  expect(learned.open).toBe('two');
});

test('a search says how much it has done, in turns that are short beside the whole', () => {
  const search = learning([...interleaved, ...twoEras.slice(5)]);
  const turns: number[] = [];
  for (let before = 0; ; ) {
    const step = search.next();
    if (step.done) break;
    turns.push(step.value.steps - before);
    before = step.value.steps;
  }
  const all = turns.reduce((sum, steps) => sum + steps, 0);
  expect(all).toBeLessThan(1_000_000);
  expect(Math.max(...turns)).toBeLessThan(60_000);
});

test('codes that fit several layouts say so, with a code that would tell them apart', () => {
  const learned = learnSystem(known(['0101', '2001-01'], ['0202', '2002-02'], ['0303', '2003-03']));
  expect(learned.ambiguous).toBe(true);
  expect(learned.remaining.length).toBeGreaterThan(1);
  expect(new Set(learned.tellingCode?.readings).size).toBeGreaterThan(1);
  expect(learned.open).toBe('rivals');
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
  expect(learned.open).toBe('none');
});

test('an example that cannot be read is named and the others are used', () => {
  const learned = learnSystem([...interleaved, { code: '---', reads: '1990' }, { code: 'KV0915', reads: 'soon' }]);
  expect(learned.unusable.map(({ index }) => index)).toEqual([6, 7]);
  expect(learned.remaining[0]?.explains).toEqual([0, 1, 2, 3, 4, 5]);
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
  expect(layoutOf(slashed)).toEqual([
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
  expect(layoutOf(checked)).toEqual([
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
    expect(learned.open).toBe('codes');
  }
  const two = learnSystem(known(['KV0915', '1995-01, BE'], ['HJ1929', '1999-12, FR']));
  expect(two.ambiguous).toBe(true);
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
  const said = [...learned.remaining, ...learned.others].flatMap(({ eras }) => eras.flatMap(({ says }) => says));
  expect(said).toContainEqual({ kind: 'serial', digits: 1 });
});

test.each([
  ['as they are', (year: string) => year, { year: 4 }],
  ['backwards', (year: string) => [...year].reverse().join(''), { year: 4, reversed: true }],
])('four digits of a year are learned %s', (_, written, slot) => {
  const years = ['1984', '1991', '1997', '2002', '2013', '1976'];
  const learned = learnSystem(years.map((year, at) => ({ code: `${written(year)}-${'KTRWZM'[at]}`, reads: year })));
  expect(layoutOf(learned)?.[0]).toEqual(slot);
});

test('two figures that may be the day of the month are not settled as a running number', () => {
  const rows: [string, string][] = [
    ['27X8050', 'about 1980, DE'],
    ['06I8220', '1982, FR'],
    ['15I7221', 'December 1972, FR'],
    ['19X7601', 'October 1976, DE'],
    ['26I8111', '1980 to 1981, FR'],
    ['01X7470', '1970s, DE'],
  ];
  expect(learnSystem(known(...rows)).open).toBe('days');
  // Inside a longer number they are no other.
  const longer = rows.map(([code, reads], at): [string, string] => [
    `${code.slice(0, 2)}${[4, 9, 5, 8, 3, 7][at]}${code.slice(2)}`,
    reads,
  ]);
  expect(learnSystem(known(...longer)).open).toBe('days');
  // One of them beyond any month's last day settles it, and so does a date that is a day.
  expect(learnSystem(known(...rows, ['58I7330', 'March 1973, FR'])).open).toBeNull();
  const told = learnSystem(known(...rows.slice(0, 5), ['01X7470', '1974-07-01, DE'], ['11I7521', '1975-12-11, FR']));
  expect(layoutOf(told)).toContainEqual({ day: 2 });
});
