import { describe, expect, it } from 'vitest';
import { apartFromRange, type LabColour } from '../../../src/evidence/nearest-colour';
import { type KnownPiece, numbersThen } from '../../../src/evidence/numbers-then';
import type { FileNumber } from '../../../src/maker/types';
import { partialDateSpan, type Span } from '../../../src/span';

const number = (least: number, more: Partial<FileNumber> = {}): FileNumber =>
  ({ of: 'stitches', part: 'tab', least, most: least + 2, ...more }) as FileNumber;
const year = (text: string, about = false): Span => ({
  ...(partialDateSpan(text) as Span),
  ...(about ? { about } : {}),
});
const piece = (dates: Span[] = [], ...named: string[]): KnownPiece => ({ named, dates });
const nineties = { used: ['1990', '1999'] } as Partial<FileNumber>;
const later = { used: ['2000', null] } as Partial<FileNumber>;

/** Which of a file's numbers may hold for a piece, by their places. */
const held = (numbers: FileNumber[], known: KnownPiece) =>
  numbersThen({ numbers }, { of: 'stitches', part: 'tab' }, known).map(({ number: found, at }) => {
    expect(found).toBe(numbers[at]);
    return at;
  });

describe('the numbers of a file that may hold for a piece', () => {
  it.each<[string, FileNumber[], KnownPiece, number[]]>([
    ['none of none', [], piece(), []],
    [
      'those of its kind and part',
      [number(1, { of: 'stitch-pitch' }), number(2, { part: 'base' }), number(3)],
      piece(),
      [2],
    ],
    ['those of any model', [number(1)], piece([], 'Carryall 30'), [0]],
    [
      'those of its own model alone',
      [number(1), number(2, { models: ['carryall 30'] })],
      piece([], 'Carryall 30'),
      [1],
    ],
    ['none of another model', [number(1), number(2, { models: ['Boulevard 25'] })], piece([], 'Carryall 30'), [0]],
    ['those for every model, named by an empty list', [number(1, { models: [] }), number(2)], piece(), [0, 1]],
    ['those of no time', [number(1), number(2)], piece([year('1994')]), [0, 1]],
    ['those of its time', [number(1, nineties), number(2, later)], piece([year('1994')]), [0]],
    ['those of both its times', [number(1, nineties), number(2, later)], piece([year('1994'), year('2005')]), [0, 1]],
    ['those of no time beside one of another', [number(1), number(2, later)], piece([year('1994')]), [0]],
    ['none where a time is not known', [number(1), number(2, later)], piece(), []],
    ['those of no time where no time is known', [number(1), number(2)], piece(), [0, 1]],
    ['none of a time that the file tells nothing of', [number(1, nineties)], piece([year('1994'), year('1985')]), []],
    ['none of another time', [number(1, nineties)], piece([year('1985')]), []],
    ['none where its time is about the edge', [number(1, nineties)], piece([year('1999', true)]), []],
    ['those whose times join', [number(1, nineties), number(2, later)], piece([year('1999', true)]), [0, 1]],
    [
      'none where an exception is of its model',
      [number(1, { exceptions: [{ models: ['Carryall 30'] }] as FileNumber['exceptions'] })],
      piece([], 'Carryall 30'),
      [],
    ],
    [
      'those whose exception is of another model',
      [number(1, { exceptions: [{ models: ['Boulevard 25'] }] as FileNumber['exceptions'] })],
      piece([], 'Carryall 30'),
      [0],
    ],
    [
      'none where an exception is of a model and none is named',
      [number(1, { exceptions: [{ models: ['Boulevard 25'] }] as FileNumber['exceptions'] })],
      piece(),
      [],
    ],
    [
      'none where an exception is of its time',
      [number(1, { exceptions: [{ used: ['1990', '1995'] }] as FileNumber['exceptions'] })],
      piece([year('1994')]),
      [],
    ],
    [
      'those whose exception is of another time',
      [number(1, { exceptions: [{ used: ['1990', '1995'] }] as FileNumber['exceptions'] })],
      piece([year('2004')]),
      [0],
    ],
    [
      'none where an exception has a time and none is known',
      [number(1, { exceptions: [{ used: ['1990', '1995'] }] as FileNumber['exceptions'] })],
      piece(),
      [],
    ],
    [
      'none where an exception is of a model’s time and no model is named',
      [number(1, { exceptions: [{ models: ['Boulevard 25'], used: ['1990', '1995'] }] as FileNumber['exceptions'] })],
      piece([year('1994')]),
      [],
    ],
    [
      'those whose exception is of the time of another model',
      [number(1, { exceptions: [{ models: ['Boulevard 25'], used: ['1990', '1995'] }] as FileNumber['exceptions'] })],
      piece([year('1994')], 'Carryall 30'),
      [0],
    ],
  ])('are %s', (_, numbers, known, wanted) => {
    expect(held(numbers, known)).toEqual(wanted);
  });
});

describe('how far a colour is from a range', () => {
  const straight = (one: LabColour, other: LabColour) =>
    Math.hypot(...one.map((value, at) => value - (other[at] as number)));
  const range: [number, number][] = [
    [10, 20],
    [0, 8],
    [-5, -3],
  ];

  it.each<[LabColour, number]>([
    [[15, 4, -4], 0],
    [[10, 0, -5], 0],
    [[20, 8, -3], 0],
    [[9, 4, -4], 1],
    [[22, 4, -4], 2],
    [[15, -3, -4], 3],
    [[15, 12, -4], 4],
    [[15, 4, -10], 5],
    [[15, 4, 3], 6],
    [[6, 11, -4], 5],
  ])('%j: %f', (colour, off) => {
    expect(apartFromRange(colour, range, straight)).toBeCloseTo(off, 9);
  });

  it('is the least to the eye, which another corner may be', () => {
    // Lightness and red make up for each other: the nearest by the axes is ten away, the one with as much red none.
    const mixed = ([l, a, b]: LabColour, [otherL, otherA, otherB]: LabColour) =>
      Math.abs(l - otherL + (a - otherA)) + Math.abs(b - otherB);
    const wide: [number, number][] = [
      [0, 10],
      [0, 10],
      [5, 5],
    ];
    expect(apartFromRange([20, 0, 5], wide, mixed)).toBe(0);
    expect(apartFromRange([13.3, 0, 5], wide, mixed)).toBeLessThan(0.06);
    expect(apartFromRange([25, 0, 5], wide, mixed)).toBeCloseTo(5, 9);
    const swapped = ([l, a, b]: LabColour, [otherL, otherA, otherB]: LabColour) =>
      mixed([b, a, l], [otherB, otherA, otherL]);
    expect(
      apartFromRange(
        [5, 0, 20],
        [
          [5, 5],
          [0, 10],
          [0, 10],
        ],
        swapped,
      ),
    ).toBe(0);
  });
});
