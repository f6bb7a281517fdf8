import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { decodeText } from '../../../src/code';
import { builtInMakers, parseMakerFile, readMakerFileText } from '../../../src/maker';
import { problemInEnglish } from '../../said';

const seed = 20_251_125;
const names = [
  'format',
  'maker',
  'plants',
  'codeSystems',
  'layout',
  'layouts',
  'examples',
  'used',
  'code',
  'reads',
  'table',
];

/** Any JSON, with the format's own field names among its keys. */
const anyJson = fc.letrec((tie) => ({
  value: fc.oneof(
    { maxDepth: 5 },
    fc.constantFrom(
      null,
      true,
      1,
      0,
      -1,
      2,
      1e300,
      '',
      'KV',
      'KV0915',
      '1995',
      '1990-01',
      'tens',
      'units',
      '__proto__',
    ),
    fc.string(),
    fc.array(tie('value'), { maxLength: 5 }),
    fc.dictionary(
      fc.oneof(fc.constantFrom(...names, 'year', 'month', 'plant', '__proto__'), fc.string()),
      tie('value'),
      {
        maxKeys: 5,
      },
    ),
  ),
})).value;

test(`any JSON gives problems in words or a file (seed ${seed})`, () => {
  fc.assert(
    fc.property(anyJson, (value) => {
      const result = parseMakerFile(value);
      if (result.ok) return;
      expect(result.problems.length).toBeGreaterThan(0);
      for (const { where, what, remedy } of result.problems.map(problemInEnglish))
        expect([where, what, remedy].every(Boolean)).toBe(true);
    }),
    { seed, numRuns: 500 },
  );
}, 60_000);

/** A sound file with one value anywhere replaced. */
test(`a sound file with one value replaced gives problems or a file (seed ${seed})`, () => {
  const places: (string | number)[][] = [];
  const walk = (value: unknown, path: (string | number)[]) => {
    places.push(path);
    if (typeof value !== 'object' || value === null) return;
    for (const key of Object.keys(value))
      walk(Reflect.get(value, key), [...path, Array.isArray(value) ? Number(key) : key]);
  };
  walk(builtInMakers[0], []);
  fc.assert(
    fc.property(fc.constantFrom(...places.slice(1)), anyJson, (path, value) => {
      const file = structuredClone(builtInMakers[0]) as object;
      const holder = path.slice(0, -1).reduce<object>((inside, key) => Reflect.get(inside, key) as object, file);
      Reflect.set(holder, path.at(-1)!, value);
      const result = parseMakerFile(file);
      if (result.ok) decodeText('KV0915', { makers: [result.file], maker: result.file.maker });
      else expect(result.problems.length).toBeGreaterThan(0);
    }),
    { seed, numRuns: 200 },
  );
}, 60_000);

/** Processor time in ms, the least of three runs: other work on the machine does not count. */
function quickest(run: () => void): number {
  const times = [1, 2, 3].map(() => {
    const started = process.cpuUsage();
    run();
    const { user, system } = process.cpuUsage(started);
    return (user + system) / 1000;
  });
  return Math.min(...times);
}

/** As many slots as may be left out or change their length. */
const manyOpenSlots = Array.from({ length: 4 }, () => [
  { separator: '-', optional: true },
  { serial: { min: 1, max: 6 } },
]).flat();

const plant = (index: number) => ({ code: `P${index % 1000}`, place: 'BE', used: ['1990', null] });
const large: [string, () => string][] = [
  [
    '5 MB of plants',
    () => JSON.stringify({ format: 1, maker: 'M', plants: Array.from({ length: 100_000 }, (_, i) => plant(i)) }),
  ],
  ['5 MB in one name', () => JSON.stringify({ format: 1, maker: 'M'.repeat(5_000_000) })],
  ['5 MB of brackets', () => '['.repeat(5_000_000)],
  ['a million brackets, closed', () => '['.repeat(900_000) + ']'.repeat(900_000)],
  ['1.9 MB of numbers', () => `{"format":1,"maker":"M","plants":[${'1,'.repeat(950_000)}1]}`],
  [
    '30,000 wrong plants',
    () => JSON.stringify({ format: 1, maker: 'M', plants: Array.from({ length: 30_000 }, () => 1) }),
  ],
];

test.each(large)('%s is answered within 200 ms', (_, make) => {
  const text = make();
  expect(readMakerFileText(text).ok).toBe(false);
  expect(quickest(() => readMakerFileText(text))).toBeLessThan(200);
});

test('a file made to take long in reading its examples is refused or read within half a second', () => {
  const slots = manyOpenSlots;
  const system = (id: number) => ({
    id: `s${id}`,
    used: ['1900', null],
    layouts: Array.from({ length: 20 }, () => slots),
    examples: Array.from({ length: 200 }, () => ({ code: '1'.repeat(20), reads: 'undated' })),
  });
  const file = { format: 1, maker: 'M', codeSystems: Array.from({ length: 60 }, (_, id) => system(id)) };
  expect(parseMakerFile(file).ok).toBe(false);
  expect(quickest(() => parseMakerFile(file))).toBeLessThan(500);
  const short = {
    ...file,
    codeSystems: [{ ...system(1), layouts: [slots], examples: [{ code: '1'.repeat(20), reads: 'undated' }] }],
  };
  expect(parseMakerFile(short).ok).toBe(true);
  expect(quickest(() => parseMakerFile(short))).toBeLessThan(500);
});

test('a code of 10,000 characters is answered at once under a layout of many open slots', () => {
  const slots = manyOpenSlots;
  const file = parseMakerFile({
    format: 1,
    maker: 'M',
    codeSystems: [
      { id: 's', used: ['1900', null], layout: slots, examples: [{ code: '1'.repeat(20), reads: 'undated' }] },
    ],
  });
  if (!file.ok) throw new Error(file.problems[0]?.code);
  for (const code of ['1'.repeat(10_000), '-'.repeat(10_000), '1-'.repeat(5_000)]) {
    expect(quickest(() => decodeText(code, { makers: [file.file], maker: 'M' }))).toBeLessThan(50);
  }
});
