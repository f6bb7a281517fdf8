import { readFileSync, writeFileSync } from 'node:fs';
import * as fc from 'fast-check';
import { decodeExactly } from '../../../src/code';
import { openBook } from '../../../src/code/book';
import type { MakerFile } from '../../../src/maker';
import { spanHolds } from '../../../src/span';
import { soundCodes } from '../../unit/code/random-codes';
import { benchMaker } from './bench-maker';

/** A code and the id of the system that it was written under. */
export interface DrawnCode {
  code: string;
  system: string;
}

/** No code is younger than this: the day as of which the bench judges lies in the same year. */
const latestYear = 2025;

/** Whether a code can have been stamped: its date lies in the system's period and its plant worked then. */
export function couldBeStamped({ code, system }: DrawnCode, file: MakerFile): boolean {
  const until = { from: null, to: `${latestYear}-12-31`, precision: 'range' as const };
  return decodeExactly(code, file, latestYear)
    .filter((reading) => reading.system.id === system)
    .some(
      ({ span, systemUsed, plant }) =>
        span === null ||
        ([systemUsed, until].every((outer) => spanHolds(outer, span)) &&
          (plant === null || plant.used.some((used) => spanHolds(used, span)))),
    );
}

/** So many different codes, every system as often as the others, from a seed. */
export function drawCodes(file: MakerFile, count: number, seed: number): DrawnCode[] {
  const share = Math.ceil(count / file.codeSystems.length);
  const { systems, maker } = openBook(file);
  const drawn = systems.map((system, at) => {
    const sound = soundCodes({ systems: [system], maker })
      .map(({ id, code }) => ({ code, system: id }))
      .filter((made) => couldBeStamped(made, file));
    const codes = new Map(
      fc.sample(sound, { numRuns: share * 3, seed: seed + at }).map((made) => [made.code, made] as const),
    );
    return [...codes.values()].slice(0, share);
  });
  return Array.from({ length: share }, (_, row) => drawn.flatMap((codes) => codes[row] ?? [])).flat();
}

/** usage: npx tsx tests/bench/stamp/draw-codes.ts OUT.json COUNT SEED [EXPECTED.json of a set that has its codes already] */
if (import.meta.url === `file://${process.argv[1]}`) {
  const [out, count, seed, other] = process.argv.slice(2);
  if (out === undefined || !Number(count) || !Number(seed)) throw new Error('usage: draw-codes.ts OUT.json COUNT SEED');
  const taken = other === undefined ? [] : (JSON.parse(readFileSync(other, 'utf8')) as { code: string | null }[]);
  const codes = drawCodes(benchMaker(), Number(count), Number(seed)).filter(
    (made) => !taken.some(({ code }) => code === made.code),
  );
  writeFileSync(out, `[\n${codes.map((made) => JSON.stringify(made)).join(',\n')}\n]\n`);
}
