import { getISOWeek, getISOWeekYear } from 'date-fns';
import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { decodeExactly, decodeText, encodeReading } from '../../../src/code';
import { openBook } from '../../../src/code/book';
import { builtInMakers } from '../../../src/maker';
import type { MakerFile } from '../../../src/maker/types';
import { readSystem, systemNames } from '../../reference/number-systems';
import { soundCodes } from './random-codes';
import { rare } from './rare-slots';

test('the file of rare slots is accepted, its check characters worked out by hand', () => {
  expect(rare.ok ? [] : rare.problems).toEqual([]);
});

const files: MakerFile[] = [...builtInMakers, ...systemNames.map(readSystem), ...(rare.ok ? [rare.file] : [])];
const seed = 20_251_125;

describe.each(files.map((file) => [file.maker, file] as const))('%s', (_, file) => {
  test(`encode(decode(x)) = x for sound codes (seed ${seed})`, () => {
    fc.assert(
      fc.property(soundCodes(openBook(file)), ({ id, code }) => {
        const readings = decodeExactly(code, file).filter(({ system }) => system.id === id);
        expect(readings.length, `${code} under ${id}`).toBeGreaterThan(0);
        for (const reading of readings) expect(encodeReading(reading, [file])).toBe(code);
      }),
      { seed, numRuns: 300 },
    );
  }, 60_000);

  test(`every code of the maker that names its own date is read from typed text (seed ${seed})`, () => {
    fc.assert(
      fc.property(soundCodes(openBook(file)), ({ code }) => {
        const exact = decodeExactly(code, file, 2026).filter(({ reasons }) =>
          reasons.every(({ kind }) => !/not-in-use/.test(kind)),
        );
        fc.pre(exact.length > 0);
        const decoding = decodeText(code, { makers: [file], maker: file.maker, now: '2026-11-25' });
        const said = [...decoding.readings, ...decoding.nearest.map(({ reading }) => reading)].map(({ text }) => text);
        expect(said, code).toContain(code);
      }),
      { seed, numRuns: 40 },
    );
  }, 60_000);
});

test('a maker file is opened once', () => {
  const [file] = builtInMakers as [MakerFile];
  expect(openBook(file)).toBe(openBook(file));
  expect(openBook({ ...file })).not.toBe(openBook(file));
});

test('a day near the turn of a year is written with the week and year that ISO 8601 counts it in, as date-fns has it', () => {
  const [base] = builtInMakers as [MakerFile];
  const weeks: MakerFile = {
    ...base,
    maker: 'Weeks',
    plants: [],
    codeSystems: [{ id: 'weeks', used: ['1970', '2030'], layout: [{ year: 4 }, { week: 2 }], examples: [] }],
  };
  const [reading] = decodeExactly('199810', weeks);
  for (let year = 1975; year < 2029; year++)
    for (const day of [
      `${year}-12-28`,
      `${year}-12-31`,
      `${year + 1}-01-01`,
      `${year + 1}-01-03`,
      `${year + 1}-01-05`,
    ]) {
      const noon = new Date(`${day}T12:00:00`);
      const written = encodeReading({ ...reading!, span: { from: day, to: day, precision: 'day' } }, [weeks]);
      expect(written, day).toBe(`${getISOWeekYear(noon)}${String(getISOWeek(noon)).padStart(2, '0')}`);
    }
});
