import { readdirSync, readFileSync } from 'node:fs';
import { readMakerFileText } from '../../src/maker';
import type { MakerFile } from '../../src/maker/types';

const folder = new URL('./systems/', import.meta.url);

/** The published number systems written as maker files, by file name. */
export const systemNames = readdirSync(folder)
  .filter((name) => name.endsWith('.json'))
  .map((name) => name.slice(0, -5));

export function readSystem(name: string): MakerFile {
  const result = readMakerFileText(readFileSync(new URL(`${name}.json`, folder), 'utf8'));
  if (result.ok) return result.file;
  throw new Error(result.problems.map(({ where, what }) => `${name} ${where}: ${what}`).join('\n'));
}

/** A repeatable source of chance (mulberry32); the seed is printed by the tests that use it. */
export function chanceFrom(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

export const pick = <T>(chance: () => number, from: ArrayLike<T>): T => from[Math.floor(chance() * from.length)]!;
export const pickText = (chance: () => number, from: string, length: number): string =>
  Array.from({ length }, () => pick(chance, from)).join('');

/** One character changed, two neighbours swapped, or one left out. */
export function corrupt(chance: () => number, code: string, alphabet: string): string {
  const at = Math.floor(chance() * code.length);
  const way = Math.floor(chance() * 3);
  if (way === 0) return code.slice(0, at) + pick(chance, alphabet) + code.slice(at + 1);
  if (way === 1 && at > 0) return code.slice(0, at - 1) + code[at] + code[at - 1] + code.slice(at + 1);
  return way === 1 ? code : code.slice(0, at) + code.slice(at + 1);
}
