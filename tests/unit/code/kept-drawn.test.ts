import { describe, expect, test } from 'vitest';
import {
  decodeLattice,
  decodeText,
  encodeReading,
  freeDecode,
  type KnownCode,
  learning,
  slotKinds,
  typedLattice,
} from '../../../src/code';
import { builtInMakers } from '../../../src/maker';
import type { MakerFile } from '../../../src/maker/types';
import type { Lattice } from '../../../src/stamp/types';
import { drawList } from '../../bench/teacher/lists';
import { drawPiece, drawSystem, type Truth } from '../../bench/teacher/systems';
import { chanceFrom, corrupt } from '../../reference/number-systems';
import { wholeDecoding, wholeLearned } from './said-whole';
import { families } from './teacher-families';

/*
 * What is told of drawn systems, marks and lists, whole. Where it changes on purpose, `npm test -- kept-drawn --update`
 * writes it anew; the difference is looked at before it is committed.
 */

const today = '2026-11-01';
const kept = (name: string, lines: string[]) => expect(`${lines.join('\n')}\n`).toMatchFileSnapshot(`./kept/${name}`);

function drawnFile(seed: number): { file: MakerFile; codes: string[] } {
  const chance = chanceFrom(seed);
  const truth = drawSystem(chance, 1960 + (seed % 40));
  const [base] = builtInMakers;
  const file: MakerFile = {
    ...base!,
    maker: `Drawn ${seed}`,
    plants: truth.plants.map(([code, place]) => ({ code, place, used: [String(truth.from), null] })),
    codeSystems: [{ id: 'drawn', used: [String(truth.from), String(truth.to)], layout: truth.layout, examples: [] }],
  };
  const codes = Array.from({ length: 3 }, () => drawPiece(truth, chance).code);
  return { file, codes: [...codes, corrupt(chance, codes[0]!, 'ABCDEFGHJKLMNPQRSTUVWXYZ0123456789')] };
}

describe.each([1, 2, 3])('systems of the draw, part %i', (part) => {
  test('their codes, a slip in one of them, and how they are written again are as they are kept', async () => {
    const lines: string[] = [];
    for (let seed = part; seed <= 45; seed += 3) {
      const { file, codes } = drawnFile(seed);
      lines.push(`drawn ${seed}: ${JSON.stringify(file.codeSystems[0]!.layout)}`);
      for (const code of codes) {
        const decoding = decodeText(code, { makers: [file], maker: file.maker, now: today });
        lines.push(...wholeDecoding(decoding, 2));
        lines.push(...decoding.readings.slice(0, 2).map((reading) => `  written ${encodeReading(reading, [file])}`));
      }
    }
    await kept(`drawn-systems-${part}.txt`, lines);
  });
});

/** What a net may say of a stamped text: each character less sure than the last, with a look-alike beside it. */
function blurred(text: string, seed: number): Lattice {
  const chance = chanceFrom(seed);
  const twins: Record<string, string> = { 0: 'O', 1: 'I', 8: 'B', 5: 'S', 2: 'Z', 6: 'G', O: '0', B: '8', S: '5' };
  const { steps, ...rest } = typedLattice(text);
  return {
    ...rest,
    steps: steps.map((step) => {
      const [sign] = Object.keys(step).filter((one) => one !== '');
      if (sign === undefined) return step;
      const sure = seed % 2 === 0 ? 0.93 + 0.06 * chance() : 0.4 + 0.55 * chance();
      const twin = twins[sign] ?? String.fromCharCode(65 + Math.floor(chance() * 26));
      return { [sign]: sure, [twin]: (1 - sure) * 0.7, '': (1 - sure) * 0.3 };
    }),
  };
}

test('marks that are read without certainty are told as they are kept', async () => {
  const lines = builtInMakers.flatMap((file, at) =>
    file.codeSystems.flatMap(({ examples }, system) =>
      (examples ?? []).slice(0, 2).flatMap(({ code }, example) =>
        [null, file.maker].flatMap((maker) => {
          const lattice = blurred(code, 100 * at + 10 * system + example);
          const decoding = decodeLattice(lattice, { makers: builtInMakers, maker, now: today, temperature: 1.3 });
          return [
            `${code} of ${maker ?? 'any'}; by itself ${JSON.stringify(freeDecode(lattice))}`,
            ...wholeDecoding(decoding, 3),
          ];
        }),
      ),
    ),
  );
  await kept('uncertain.txt', lines);
});

test('what an editor shows of each kind of slot is as it is kept', async () => {
  const settings = [{}, { year: 'cycle' }, { year: 2 }, { month: 'letter' }, { week: 2 }, { over: 'all' }];
  const lines = slotKinds.flatMap(({ kind, fresh, fields }) => [
    `${kind}: ${JSON.stringify(fresh)}`,
    ...fields.map(({ when, ...field }) => {
      const slots = [fresh, ...settings] as Record<string, unknown>[];
      const choices = 'choices' in field ? field.choices : [];
      const offered = typeof choices === 'function' ? slots.map((slot) => choices(slot)) : choices;
      return `  ${JSON.stringify({ ...field, choices: offered })} shown ${slots.map((slot) => (when ? when(slot) : 'always')).join(' ')}`;
    }),
  ]);
  await kept('slots.txt', lines);
});

/** What is learned, and how much work that was: its budget hangs on it. */
function wholeWork(examples: readonly KnownCode[]): string[] {
  const work = learning(examples);
  let turns = 0;
  let done = { steps: 0, tried: 0 };
  for (let next = work.next(); ; next = work.next()) {
    if (next.done)
      return [`  ${turns} turns, ${done.steps} steps, ${done.tried} tried`, ...wholeLearned(next.value).slice(0, 6)];
    turns += 1;
    done = { ...next.value };
  }
}

test('short lists, and lists with one wrong date, teach what is kept', async () => {
  const lines = Array.from({ length: 16 }, (_, at) => at + 31).flatMap((seed) => [
    `list ${seed}`,
    ...wholeWork(drawList(seed, chanceFrom(seed)).rows.slice(0, 3 + (seed % 4))),
  ]);
  await kept('learned-short.txt', lines);
}, 60_000);

const kinds = {
  'a letter for the year': ({ cycle }: Truth) => cycle !== null,
  'a running number': ({ running }: Truth) => running,
  'a number of changing length': ({ layout }: Truth) =>
    layout.some((slot) => 'serial' in slot && typeof slot.serial === 'object'),
  'a check character': ({ layout }: Truth) => layout.some((slot) => 'check' in slot),
  separators: ({ layout }: Truth) => layout.some((slot) => 'separator' in slot),
};

test.each(Object.entries(kinds))(
  'lists of codes with %s teach what is kept',
  async (kind, has) => {
    const lists: string[][] = [];
    for (let seed = 1; lists.length < 3; seed++) {
      const chance = chanceFrom(seed);
      const truth = drawSystem(chance, 1970);
      if (!has(truth)) continue;
      const rows = Array.from({ length: 6 }, () => drawPiece(truth, chance)).map(({ code, day }) => ({
        code,
        reads: day.slice(0, 7),
      }));
      const slipped = rows.map((row, at) => (at === 2 ? { ...row, reads: '1955' } : row));
      lists.push([`system ${seed}`, ...wholeWork(rows.slice(0, 5)), ' with a slip', ...wholeWork(slipped)]);
    }
    await kept(`learned-${kind.replaceAll(' ', '-')}.txt`, lists.flat());
  },
  60_000,
);

test('lists of each family, with codes of other lengths and other signs beside, teach what is kept', async () => {
  const lines = families.flatMap(({ name, example }, at) => {
    const chance = chanceFrom(at + 1);
    const rows = Array.from({ length: 7 }, () => example(chance));
    const odd = [
      { ...rows[0]!, code: `${rows[0]!.code}7` },
      { ...rows[1]!, reads: '1901' },
      { code: '??', reads: '1990' },
    ];
    return [name, ...wholeWork(rows.slice(0, 5)), ' with odd ones', ...wholeWork([...rows, ...odd])];
  });
  await kept('learned-families.txt', lines);
}, 60_000);
