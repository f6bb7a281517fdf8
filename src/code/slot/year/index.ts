import * as z from 'zod';
import { type Cell, classOf, digits } from '../cell';
import { letters, reversed } from '../forms';
import { defineSlot, halves } from '../kind';

const openers = '([{';
const closers = ')]}';
/** Letters as a maker is likely to have used them: without I, O and Q, which are taken for figures. */
const usualCycle = 'ABCDEFGHJKLMNPRSTUVWXYZ';
const isCycle = (slot: Record<string, unknown>) => slot.year === 'cycle';

const schemas = [
  z.strictObject({
    year: z.union([z.literal(4), z.literal(2), z.literal(1), z.literal('tens'), z.literal('units')]),
    reversed,
  }),
  /** One letter a year from `first` on, starting again after the last letter. Letters not listed were skipped. */
  z.strictObject({
    year: z.literal('cycle'),
    letters,
    first: z.number().int().min(1800).max(2200),
    /** Drawn inside a shape (circle, square, shield), written as brackets round the letter. */
    enclosed: z.boolean().optional(),
  }),
] as const;
type YearSlot = z.infer<(typeof schemas)[number]>;

/**
 * A year of four, two or one digits, or a letter of a cycle. Any digits keep the shape: whether the year lies in the
 * system's period is judged when the code is read, because a code dated outside its system is worth telling.
 */
export const yearSlot = defineSlot({
  kind: 'year',
  schemas,
  fresh: { year: 2 },
  fields: [
    {
      name: 'year',
      as: 'choice',
      label: 'written',
      choices: [[4, 'fourDigits'], [2, 'twoDigits'], [1, 'oneDigit'], ...halves.slice(1), ['cycle', 'letter']],
      // Another way to write the year needs other settings: the slot is made anew, so that none is left that does not fit.
      remake: (year, slot): YearSlot => {
        if (year === 'cycle') return { year, letters: usualCycle, first: 1990 };
        const kept = typeof slot.reversed === 'boolean' ? { reversed: slot.reversed } : {};
        return { year: year as 2, ...kept };
      },
    },
    { name: 'letters', as: 'text', label: 'lettersUsed', required: true, skipped: true, when: isCycle },
    { name: 'first', as: 'number', label: 'firstYear', when: isCycle },
    { name: 'enclosed', as: 'tick', label: 'enclosed', when: isCycle },
    { name: 'reversed', as: 'tick', label: 'reversed', when: (slot) => !isCycle(slot) },
  ],
  shape: (slot) => {
    if (slot.year === 'cycle') {
      const wide = classOf(slot.letters);
      const letter: Cell = { tight: slot.letters, wide, group: 'year', place: 0, optional: false };
      const bracket = (of: string): Cell => ({
        tight: of,
        wide: of,
        group: null,
        place: 0,
        optional: true,
        alone: true,
      });
      return {
        name: 'year letter',
        cells: slot.enclosed ? [bracket(openers), letter, bracket(closers)] : [letter],
        group: {
          name: 'year',
          writes: `cycle ${slot.first} ${slot.letters}`,
          width: 1,
          values: [...slot.letters],
          expected: { kind: 'one-of', slot: 'year', of: slot.letters },
        },
      };
    }
    const places = slot.year === 'tens' ? [0] : slot.year === 'units' ? [1] : [...Array(slot.year).keys()];
    const cells = places.map((place) => ({
      tight: digits,
      wide: digits,
      group: 'year' as const,
      place,
      optional: false,
    }));
    const width = typeof slot.year === 'number' ? slot.year : 2;
    const name = width === 2 && slot.year !== 2 ? `year ${slot.year}` : 'year';
    return {
      name,
      cells: slot.reversed ? cells.reverse() : cells,
      group: { name: 'year', writes: `${width} digits`, width, values: null, expected: { kind: 'any-year' } },
    };
  },
  write: ({ year }, group) => {
    const [kind, first, cycle] = group.writes.split(' ');
    if (kind === 'cycle') return cycle![(year - Number(first)) % cycle!.length] ?? null;
    return String(year).padStart(4, '0').slice(-group.width);
  },
  blamed: 4,
});
