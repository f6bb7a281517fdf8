import { filesUnder, lineOf, parseFile } from '../unit/layout/source-files';
import { type Change, changesOf } from './changes';

export const folders = ['text', 'claim', 'code', 'evidence', 'check', 'question', 'watch', 'listing'] as const;
export type Folder = (typeof folders)[number];

export interface Mutant extends Change {
  path: string;
  folder: Folder;
  line: number;
  /** The line as it stands, without its indentation, and where in it the change begins. */
  stands: string;
  column: number;
  was: string;
  code: string;
}

/** All mutants of a folder. */
export function mutantsOf(folder: Folder): Mutant[] {
  return filesUnder(`src/${folder}`).flatMap((file) =>
    changesOf(file.code, parseFile(file).program).map((change): Mutant => {
      const line = lineOf(file.code, change.start);
      const was = file.code.slice(change.start, change.end);
      const code = file.code.slice(0, change.start) + change.text + file.code.slice(change.end);
      const whole = file.code.split('\n')[line - 1] as string;
      const before = change.start - (file.code.lastIndexOf('\n', change.start - 1) + 1);
      const column = before - (whole.length - whole.trimStart().length);
      return { ...change, path: file.path, folder, line, stands: whole.trim(), column, was, code };
    }),
  );
}

/** Numbers from 0 to 1 that the seed alone decides (mulberry32). */
export function randomFrom(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296;
  };
}

/** Draws `count` mutants, as evenly over the folders as they have them. */
export function draw(chosen: readonly Folder[], count: number, seed: number): Mutant[] {
  const random = randomFrom(seed);
  const shuffled = chosen.map((folder) => {
    const all = mutantsOf(folder).map((mutant) => ({ mutant, at: random() }));
    return all.sort((a, b) => a.at - b.at).map(({ mutant }) => mutant);
  });
  const drawn: Mutant[] = [];
  for (let turn = 0; drawn.length < count && shuffled.some((own) => turn < own.length); turn++)
    for (const own of shuffled) {
      const mutant = own[turn];
      if (mutant && drawn.length < count) drawn.push(mutant);
    }
  return drawn;
}
