import { type Cell, capitals, classOf, digits, type SlotRule } from './cell';

const openers = '([{';
const closers = ')]}';

/**
 * A year of four, two or one digits, or a letter of a cycle. Any digits keep the shape: whether the year lies in the
 * system's period is judged when the code is read, because a code dated outside its system is worth telling.
 */
export const yearSlot: SlotRule<'year'> = {
  kind: 'year',
  shape: (slot) => {
    if (slot.year === 'cycle') {
      const wide = classOf(slot.letters);
      const letter: Cell = { tight: slot.letters, wide, group: 'year', place: 0, optional: false };
      const bracket = (of: string): Cell => ({ tight: of, wide: of, group: null, place: 0, optional: true });
      return {
        name: 'year letter',
        cells: slot.enclosed ? [bracket(openers), letter, bracket(closers)] : [letter],
        group: {
          name: 'year',
          writes: `cycle ${slot.first} ${slot.letters}`,
          width: 1,
          values: [...slot.letters],
          expected: `one of ${wide === capitals || wide === digits ? '' : 'the characters '}${slot.letters}`,
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
      group: { name: 'year', writes: `${width} digits`, width, values: null, expected: 'a year' },
    };
  },
};
