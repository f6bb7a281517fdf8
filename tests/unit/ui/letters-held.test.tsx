// @vitest-environment jsdom
import { render } from 'preact';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { HandMark, HandMeasure } from '../../../src/photo';
import { LettersHeld } from '../../../src/ui/bench/LettersHeld';
import type { KeptLettering } from '../../../src/watch';
import { chooseLanguage } from '../../../src/words';

const corners = [
  { x: 0, y: 0.4 },
  { x: 1, y: 0.4 },
  { x: 1, y: 0.6 },
  { x: 0, y: 0.6 },
];
/** A line whose characters are so many hundredths of it wide, five apart. */
function line(name: string, ...widths: number[]): { mark: HandMark; measured: HandMeasure[] } {
  let from = 0;
  const points = widths.flatMap((width) => {
    const ends = [
      { x: from / 100, y: 0.4 },
      { x: (from + width) / 100, y: 0.6 },
    ];
    from += width + 5;
    return ends;
  });
  const mark: HandMark = { number: 1, kind: 'lettering', points: corners, within: 0.002, mm: null, name };
  const where = { form: 'polygon' as const, points };
  return { mark, measured: [{ what: 'letters', value: widths.length, uncertainty: null, unit: 'letter', where }] };
}
const kept = (id: string, ...of: Parameters<typeof line>): KeptLettering => ({
  id,
  title: `Case ${id}`,
  maker: 'Calderwick & Rook',
  ...line(...of),
});
const show = (lines: KeptLettering[], maker: string | null = 'Calderwick & Rook', one = line('ROOK', 10, 20, 20, 10)) =>
  render(<LettersHeld one={one} maker={maker} references={{ lines, typefaces: [] }} />, document.body);

beforeEach(() => chooseLanguage('en'));
afterEach(() => render(null, document.body));

describe('a measured line beside others of its maker', () => {
  it('tells the numbers and no distance with fewer than three to compare with', () => {
    show([kept('1', 'K ROO', 10, 10, 20, 20), kept('2', 'ROOK', 12, 20, 20, 8)]);
    expect(document.body.textContent).toContain('fewer than 3: no distance is told');
    const rows = [...document.querySelectorAll('tbody tr')].map((row) => row.textContent);
    // R, O and K are 10, 20 and 10 of a mean of 13.3 here.
    expect(rows).toEqual(['R75%75% to 90%', 'O150%150%', 'K75%60% to 75%']);
  });

  it('tells a distance beside that of the known lines from each other, and judges nothing', () => {
    show(['1', '2', '3'].map((id) => kept(id, 'ROOK', 12, 20, 20, 8)));
    expect(document.querySelector('.letters-beside p')?.textContent).toBe(
      'Its characters differ in width from those of 3 known lines by 12% of a character; these differ from each other by 0%.',
    );
  });

  it('has nothing to compare with where the maker is not known, or no line shares three characters', () => {
    show([], null);
    expect(document.body.textContent).toContain('The maker is not known here');
    show([kept('1', 'TAN', 10, 10, 10)]);
    expect(document.body.textContent).toContain('None of your other cases');
    expect(document.querySelector('table')).toBeNull();
    chooseLanguage('de');
    render(null, document.body);
    show([kept('1', 'ROK', 10, 10, 10)]);
    expect(document.body.textContent).toContain('Eine Zeile aus deinen anderen Fällen zum Vergleichen, weniger als 3');
  });

  it('shows nothing while its characters are not told apart', () => {
    const { mark } = line('ROOK', 10, 20, 20, 10);
    show([], 'Calderwick & Rook', {
      mark,
      measured: [{ what: 'letters', value: null, uncertainty: null, unit: null, where: null, why: 'not-parted' }],
    });
    expect(document.body.textContent).toBe('');
  });
});
