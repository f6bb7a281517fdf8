import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { benchMaker } from '../../bench/stamp/bench-maker';
import { couldBeStamped, drawCodes } from '../../bench/stamp/draw-codes';

interface Expected {
  file: string;
  difficulty: 'clear' | 'fair' | 'hard' | 'no code';
  code: string | null;
  system: string | null;
  other: string[];
  strength?: number;
  capHeight?: number;
}

const sets = [
  { folder: 'tests/bench/stamp/photos/', each: [60, 60, 60, 60], most: 6_500_000 },
  { folder: 'tests/bench/stamp/photos-2/', each: [60, 60, 60, 60], most: 6_500_000 },
  { folder: 'tests/photos/stamps/', each: [20, 15, 10, 15], most: 4_000_000 },
];
const at = (folder: string, file: string) => new URL(`../../../${folder}${file}`, import.meta.url);
const listOf = (folder: string): Expected[] => JSON.parse(readFileSync(at(folder, 'expected.json'), 'utf8'));

describe.each(sets)('the photographs of $folder', ({ folder, each, most }) => {
  const list = listOf(folder);

  it('are as many of each class as said, and as many files', () => {
    const counts = (['clear', 'fair', 'hard', 'no code'] as const).map(
      (difficulty) => list.filter((photo) => photo.difficulty === difficulty).length,
    );
    expect(counts).toEqual(each);
    expect(list.filter(({ file }) => !existsSync(at(folder, file)))).toEqual([]);
    const files = readdirSync(at(folder, ''));
    expect(files.filter((file) => file.endsWith('.jpg'))).toHaveLength(list.length);
    expect(files.reduce((sum, file) => sum + statSync(at(folder, file)).size, 0)).toBeLessThan(most);
  });

  it('bear codes that decode under the system they were written in, and no digit elsewhere', () => {
    const file = benchMaker();
    const wrong = list.filter(
      ({ code, system }) => code !== null && !(system !== null && couldBeStamped({ code, system }, file)),
    );
    expect(wrong).toEqual([]);
    expect(list.flatMap(({ other }) => other).filter((text) => /\d/.test(text))).toEqual([]);
  });

  it('bear codes of every system, none twice', () => {
    const coded = list.filter(({ code }) => code !== null);
    expect(new Set(coded.map(({ system }) => system)).size).toBe(benchMaker().codeSystems.length);
    expect(new Set(coded.map(({ code }) => code)).size).toBe(coded.length);
  });
});

it('the sets share no code', () => {
  const codes = sets.flatMap(({ folder }) => listOf(folder).flatMap(({ code }) => code ?? []));
  expect(codes.filter((code, at) => codes.indexOf(code) !== at)).toEqual([]);
});

it('draws the same codes from the same seed, all of which could be stamped', () => {
  const file = benchMaker();
  const drawn = drawCodes(file, 55, 4);
  expect(drawn).toEqual(drawCodes(file, 55, 4));
  expect(drawn.length).toBe(55);
  expect(drawn.filter((made) => !couldBeStamped(made, file))).toEqual([]);
  // A plant that had closed, a month that does not exist, and a code of another system.
  for (const made of [
    { code: 'TI0000', system: 'interleaved-month' },
    { code: 'NJ0915', system: 'interleaved-month' },
    { code: '8613-KV', system: 'digits-plant' },
    { code: 'KV0915', system: 'running-number' },
  ]) {
    expect(couldBeStamped(made, file), made.code).toBe(false);
  }
});
