import { describe, expect, it } from 'vitest';
import type { Claim } from '../../../src/claim/types';
import { fromNumbers } from '../../../src/evidence/from-numbers';
import type { LabColour } from '../../../src/evidence/nearest-colour';
import type { FileNumber, MakerFile } from '../../../src/maker/types';
import { claim } from '../check/sample';
import { inFile, ondrasse } from './samples';

type Given = Parameters<typeof fromNumbers>[0]['observations'][number];

const straight = (one: LabColour, other: LabColour) =>
  Math.hypot(...one.map((value, at) => value - (other[at] as number)));
const seen = (
  what: Given['what'],
  value: Given['value'],
  uncertainty: number | null,
  over: Partial<Given> = {},
): Given => ({
  ...{ id: 'o1', photoId: 'p1', mark: 2, on: 'Tab', what, value, uncertainty },
  ...over,
});
const stitches = (least: number, most: number, over: Partial<FileNumber> = {}): FileNumber =>
  ({ of: 'stitches', part: 'tab', least, most, ...over }) as FileNumber;
const file = (...numbers: FileNumber[]): MakerFile => ({ ...ondrasse, numbers });
const of = (observations: Given[], maker: MakerFile | null, claims: Claim[] = []) =>
  fromNumbers({ observations, apart: straight }, claims, maker, { named: [], dates: [] });

const plain = { about: 'value', spans: [], places: [] } as const;

describe('what was measured on a part', () => {
  it('is told whole, with the numbers of the file: a count of stitches', () => {
    const maker = file(stitches(6, 8, { sources: ['ledger'], strength: 'hard' }), stitches(10, 12));
    expect(of([seen('count', 9, 0.5)], maker)).toEqual([
      {
        ...plain,
        id: 'measured-o1',
        from: { kind: 'photo', id: 'o1' },
        basis: 'measured:o1',
        amounts: [
          { of: 'number-0', unit: 'stitch', least: 8.5, most: 9.5 },
          { of: 'number-1', unit: 'stitch', least: 8.5, most: 9.5 },
        ],
        strength: 'soft',
        says: {
          ...{ kind: 'measured-number', photo: 'p1', mark: 2, on: 'Tab', part: 'tab' },
          is: { of: 'stitches', value: 9, within: 0.5 },
        },
        source: { kind: 'photo' },
      },
      {
        ...plain,
        id: 'file-number-0',
        from: { kind: 'maker-file', id: '0' },
        basis: 'file-number:0',
        amounts: [{ of: 'number-0', unit: 'stitch', least: 6, most: 8 }],
        strength: 'hard',
        says: { kind: 'file-number', maker: 'Ondrasse', part: 'tab', is: { of: 'stitches', least: 6, most: 8 } },
        source: { ...inFile, sources: ['ledger'] },
      },
      {
        ...plain,
        id: 'file-number-1',
        from: { kind: 'maker-file', id: '1' },
        basis: 'file-number:1',
        amounts: [{ of: 'number-1', unit: 'stitch', least: 10, most: 12 }],
        strength: 'soft',
        says: { kind: 'file-number', maker: 'Ondrasse', part: 'tab', is: { of: 'stitches', least: 10, most: 12 } },
        source: { ...inFile, sources: [] },
      },
    ]);
  });

  it('is a pitch in millimetres, as far off as the slower of the two ends', () => {
    const pitch = { of: 'stitch-pitch', part: 'tab', least: 2, most: 3 } as FileNumber;
    const [measured, held] = of([seen('stitches-per-cm', 4, 1)], file(pitch));
    expect(measured?.amounts).toEqual([
      { of: 'number-0', unit: 'mm', least: expect.closeTo(2.5 - 10 / 12, 9), most: expect.closeTo(10 / 3, 9) },
    ]);
    expect(measured?.says).toMatchObject({ is: { of: 'stitch-pitch', value: 2.5, within: 10 / 3 - 2.5 } });
    expect(held?.amounts).toEqual([{ of: 'number-0', unit: 'mm', least: 2, most: 3 }]);
  });

  it('is a colour by how far it is from each of the file', () => {
    const colour = (lightness: [number, number]): FileNumber =>
      ({ of: 'colour', part: 'tab', lightness, greenRed: [0, 8], blueYellow: [-5, -3] }) as FileNumber;
    const [measured, near, far] = of([seen('lab', [22, 4, -4], 1.5)], file(colour([10, 20]), colour([40, 50])));
    expect(measured?.amounts).toEqual([
      { of: 'number-0', unit: 'de2000', least: expect.closeTo(0.5, 6), most: expect.closeTo(3.5, 6) },
      { of: 'number-1', unit: 'de2000', least: expect.closeTo(16.5, 6), most: expect.closeTo(19.5, 6) },
    ]);
    expect(measured?.says).toMatchObject({ is: { of: 'colour', lab: [22, 4, -4], within: 1.5 } });
    expect([near, far].map((one) => [one?.amounts, one?.says])).toEqual(
      [
        [0, [10, 20]],
        [1, [40, 50]],
      ].map(([at, lightness]) => [
        [{ of: `number-${at}`, unit: 'de2000', least: 0, most: 0 }],
        {
          ...{ kind: 'file-number', maker: 'Ondrasse', part: 'tab' },
          is: { of: 'colour', lightness, greenRed: [0, 8], blueYellow: [-5, -3] },
        },
      ]),
    );
  });

  it('holds each number of the file once, whatever was measured of it', () => {
    const both = [seen('count', 7, 0.5), seen('count', 9, 0.5, { id: 'o2' })];
    expect(of(both, file(stitches(6, 8))).map(({ id }) => id)).toEqual(['measured-o1', 'measured-o2', 'file-number-0']);
  });

  const all = file(
    stitches(6, 8),
    { of: 'stitch-pitch', part: 'tab', least: 2, most: 3 } as FileNumber,
    { of: 'colour', part: 'tab', lightness: [0, 9], greenRed: [0, 9], blueYellow: [0, 9] } as FileNumber,
  );
  it.each<[string, Given, number]>([
    ['a count', seen('count', 7, 0), 2],
    ['it is not known how well', seen('count', 7, null), 0],
    ['a count that is no number', seen('count', 'seven', 0), 0],
    ['a colour that is no colour', seen('lab', 7, 0), 0],
    ['a colour in words', seen('lab', 'red', 0), 0],
    ['a pitch that is no number', seen('stitches-per-cm', 'four', 0), 0],
    ['a pitch that may be none', seen('stitches-per-cm', 4, 4), 0],
    ['a pitch that is hardly known', seen('stitches-per-cm', 4, 3.9), 2],
    ['what no file gives numbers of', seen('length', 7, 0), 0],
    ['of a part that nobody names', seen('count', 7, 0, { on: 'somewhere' }), 0],
    ['of a part without numbers', seen('count', 7, 0, { on: 'handle' }), 0],
  ])('tells something where there is a number of it: %s', (_, one, pieces) => {
    expect(of([one], all)).toHaveLength(pieces);
  });

  it('tells nothing of a part that was replaced, and nothing without a file', () => {
    const replaced = (...parts: ('tab' | 'zip')[]) => claim('replaced', 'r', { parts });
    expect(of([seen('count', 7, 0)], all, [replaced('zip', 'tab')])).toEqual([]);
    expect(of([seen('count', 7, 0)], all, [replaced('zip')])).toHaveLength(2);
    expect(of([seen('count', 7, 0)], all, [replaced()])).toHaveLength(2);
    expect(of([seen('count', 7, 0)], null)).toEqual([]);
    expect(of([seen('count', 7, 0)], file())).toEqual([]);
  });
});
