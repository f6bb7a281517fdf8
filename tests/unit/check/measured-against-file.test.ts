import { describe, expect, it } from 'vitest';
import type { Facts } from '../../../src/check';
import { measuredAgainstFile } from '../../../src/check/measured-against-file';
import { gatherEvidence } from '../../../src/evidence';
import type { FileNumber, MakerFile } from '../../../src/maker/types';
import { ciede2000 } from '../../../src/photo';
import { testRule } from '../../rule-tester';
import { claim, facts, madeIn, ondrasse, said, stated, withPhotos } from './sample';

type Observed = NonNullable<Parameters<typeof gatherEvidence>[0]['measured']>['observations'][number];
const stitches: FileNumber = { of: 'stitches', part: 'tab', least: 10, most: 12, sources: ['invented pattern card'] };
const pitch: FileNumber = { of: 'stitch-pitch', part: 'handle', least: 3, most: 4 };
const thread: FileNumber = {
  of: 'colour',
  part: 'stitching',
  lightness: [60, 70],
  greenRed: [0, 10],
  blueYellow: [30, 50],
};
const file = (...numbers: FileNumber[]): MakerFile => ({ ...ondrasse, numbers });
const count = (value: number, rest: Partial<Observed> = {}): Observed => ({
  id: 'p3-mark-1-count',
  photoId: 'p3',
  mark: 1,
  on: 'tab',
  what: 'count',
  value,
  uncertainty: 1,
  ...rest,
});
const perCm = (value: number, uncertainty: number | null = 0.1): Observed =>
  count(value, { id: 'p3-mark-2-stitches-per-cm', mark: 2, what: 'stitches-per-cm', on: 'handle', uncertainty });
const lab = (l: number, a: number, b: number, uncertainty = 4): Observed =>
  count(0, { id: 'p3-mark-4-lab', mark: 4, what: 'lab', on: 'thread', value: [l, a, b], uncertainty });

/** A case with these measures on the third of its photos. */
function measured(observations: Observed[], numbers: FileNumber[] = [stitches], rest: Partial<Facts> = {}): Facts {
  const listing = withPhotos(3, { title: stated('Ondrasse Carryall 30') });
  const { evidence: _, reasoning: __, ...given } = facts({ listing, maker: file(...numbers), ...rest });
  return facts({ ...given, evidence: gatherEvidence({ ...given, measured: { observations, apart: ciede2000 } }) });
}
const kindOf = (given: Facts) => {
  const outcome = measuredAgainstFile.judge(given);
  return outcome.outcome === 'speaks' ? outcome.findings.map(({ kind }) => kind).join(' ') : outcome.outcome;
};

const basis = [
  'A maker sews a part with so many stitches and uses certain colours; the number in the file is held against what you measured, within its uncertainty.',
];
const common = { basis, photos: ['p3'], source: 'maker file of Ondrasse' };

testRule(measuredAgainstFile, {
  speaks: {
    'of another number of stitches, asking for that part': [
      measured([count(8)]),
      {
        ...common,
        kind: 'doubt',
        data: {
          photo: 3,
          mark: 1,
          maker: 'Ondrasse',
          part: 'tab',
          is: { of: 'stitches', value: 8, within: 1 },
          file: [{ of: 'stitches', least: 10, most: 12 }],
        },
        says: 'Photo 3, mark 1: 8 ± 1 stitches on the handle tab; the maker file of Ondrasse says 10 to 12.',
        asks: [['measured-part', { part: 'tab' }]],
        evidence: ['measured-p3-mark-1-count', 'file-number-0'],
        source: 'maker file of Ondrasse: invented pattern card',
      },
    ],
    'for a pitch that is the file’s': [
      measured([perCm(2.5)], [pitch]),
      {
        ...common,
        kind: 'agreement',
        data: {
          photo: 3,
          mark: 2,
          maker: 'Ondrasse',
          part: 'handle',
          is: { of: 'stitch-pitch', value: 4, within: 10 / 2.4 - 4 },
          file: [{ of: 'stitch-pitch', least: 3, most: 4 }],
        },
        says: 'Photo 3, mark 2: 4 ± 0.17 mm from stitch to stitch on the handle; the maker file of Ondrasse says 3 to 4.',
        evidence: ['measured-p3-mark-2-stitches-per-cm', 'file-number-0'],
      },
    ],
    'of a colour of which one axis alone is off': [
      measured([lab(65, 5, 0)], [thread]),
      {
        ...common,
        kind: 'doubt',
        data: {
          photo: 3,
          mark: 4,
          maker: 'Ondrasse',
          part: 'stitching',
          is: { of: 'colour', lab: [65, 5, 0], within: 4 },
          file: [{ of: 'colour', lightness: [60, 70], greenRed: [0, 10], blueYellow: [30, 50] }],
        },
        says: 'Photo 3, mark 4: the colour of the stitching is L* 65, a* 5, b* 0 (CIEDE2000 ± 4); the maker file of Ondrasse says L* 60 to 70, a* 0 to 10, b* 30 to 50.',
        asks: [['measured-part', { part: 'stitching' }]],
        evidence: ['measured-p3-mark-4-lab', 'file-number-0'],
      },
    ],
  },
  silent: {},
  declines: {
    'where nothing was measured': [measured([]), 'cannot-tell', 'no-number-measured'],
    'where the file gives no number': [measured([count(8)], []), 'not-applicable', 'maker-file-silent'],
    'without a file': [measured([count(8)], [], { maker: null }), 'cannot-tell', 'no-maker-file'],
    'of several pieces': [measured([count(8)], [stitches], { severalPieces: true }), 'cannot-tell', 'several-pieces'],
    'of what the mark names in no words': [measured([count(8, { on: '' })]), 'cannot-tell', 'no-number-measured'],
    'where it is not known how well it was measured': [
      measured([count(8, { uncertainty: null })]),
      'cannot-tell',
      'no-number-measured',
    ],
  },
});

describe('what was measured on a part', () => {
  it('is held against the one number that it agrees with, where several may hold', () => {
    const outcome = measuredAgainstFile.judge(measured([count(11)], [{ ...stitches, least: 20, most: 22 }, stitches]));
    expect(outcome.outcome === 'speaks' && outcome.findings.map(({ kind, data }) => [kind, data.file])).toEqual([
      ['agreement', [{ of: 'stitches', least: 10, most: 12 }]],
    ]);
  });
  it('is in doubt only beyond its uncertainty, on either side of the file’s range', () => {
    expect([8.99, 9, 10, 12, 13, 13.01].map((value) => kindOf(measured([count(value)])))).toEqual([
      'doubt',
      'agreement',
      'agreement',
      'agreement',
      'agreement',
      'doubt',
    ]);
  });

  it('is never a contradiction, not even of a rule without exception', () => {
    expect(kindOf(measured([count(2)], [{ ...stitches, strength: 'hard' }]))).toBe('doubt');
  });

  it('is a pitch with the uncertainty of its scale, and none where that leaves no end', () => {
    // 10 mm / 2.3 is 4.35, and 10 / 2.2 − 10 / 2.3 is 0.2.
    expect(kindOf(measured([perCm(2.3, 0.1)], [pitch]))).toBe('doubt');
    expect(kindOf(measured([perCm(2.3, 0.3)], [pitch]))).toBe('agreement');
    expect(kindOf(measured([perCm(2.3, 2.3)], [pitch]))).toBe('cannot-tell');
  });

  it('is a colour that agrees within its steps of CIEDE2000 from the nearest of the range', () => {
    const off = ciede2000([56, 5, 40], [60, 5, 40]);
    expect(off).toBeGreaterThan(3);
    expect(kindOf(measured([lab(56, 5, 40, off + 0.05)], [thread]))).toBe('agreement');
    expect(kindOf(measured([lab(56, 5, 40, 2)], [thread]))).toBe('doubt');
    expect(kindOf(measured([lab(65, 5, 40, 0)], [thread]))).toBe('agreement');
  });

  it('counts on the part that the mark names and nothing else', () => {
    const on = (words: string, own: Partial<MakerFile> = {}) =>
      kindOf(measured([count(8, { on: words })], [stitches], { maker: { ...file(stitches), ...own } }));
    expect(['tab', ' Tab ', 'handle tabs'].map((words) => on(words))).toEqual(['doubt', 'doubt', 'doubt']);
    const others = ['handle', 'tab of the strap', 'under the tab', 'not the tab', 'table', '?'];
    expect(others.map((words) => on(words))).toEqual(others.map(() => 'cannot-tell'));
    const belt = { parts: [{ id: 'belt-end', words: ['tongue', 'tab'] }] };
    // The file calls another part so as well.
    expect(on('tab', belt)).toBe('cannot-tell');
  });

  it('counts under the file’s own words for its own part', () => {
    const own = file({ ...stitches, part: 'belt-end' });
    const on = (words: string) =>
      kindOf(
        measured([count(8, { on: words })], [], {
          maker: { ...own, parts: [{ id: 'belt-end', words: ['tongue'] }] },
        }),
      );
    expect(['belt end', 'Tongue', 'belt'].map(on)).toEqual(['doubt', 'doubt', 'cannot-tell']);
  });

  it('is not held against a part that the seller calls replaced', () => {
    const replaced = claim('replaced', 'new tabs', { parts: ['tab'] });
    expect(kindOf(measured([count(8)], [stitches], { claims: [replaced] }))).toBe('cannot-tell');
    const other = claim('replaced', 'new zip', { parts: ['zip'] });
    expect(kindOf(measured([count(8)], [stitches], { claims: [other] }))).toBe('doubt');
  });

  it('is held against the numbers of its model, and of any piece only where there are none', () => {
    const of = (...models: string[]) => ({ ...stitches, models });
    expect(kindOf(measured([count(8)], [of('Carryall 30')]))).toBe('doubt');
    expect(kindOf(measured([count(8)], [of('Satchel')]))).toBe('cannot-tell');
    expect(kindOf(measured([count(8)], [stitches, { ...of('Carryall 30'), least: 7, most: 8 }]))).toBe('agreement');
    expect(kindOf(measured([count(11)], [stitches, { ...of('Carryall 30'), least: 7, most: 8 }]))).toBe('doubt');
  });

  it('is held against the numbers of its time, and against none where the time is not known or not told of', () => {
    const used: FileNumber[] = [
      { ...stitches, used: ['1980', '1989'] },
      { ...stitches, least: 7, most: 8, used: ['1990', '1999'] },
    ];
    const in_ = (...years: number[]) =>
      kindOf(measured([count(8)], used, { claims: years.map((year) => ({ ...madeIn(year), id: `m${year}` })) }));
    expect([in_(1985), in_(1995), in_(1985, 1995), in_(2005), in_(1985, 2005), in_()]).toEqual([
      'doubt',
      'agreement',
      'agreement',
      'cannot-tell',
      'cannot-tell',
      'cannot-tell',
    ]);
    expect(said(measuredAgainstFile, measured([count(3)], used, { claims: [madeIn(1985)] }))).toEqual([
      'doubt: Photo 3, mark 1: 3 ± 1 stitches on the handle tab; the maker file of Ondrasse says 10 to 12.',
    ]);
  });

  it('is not held against a number of which an exception may be meant', () => {
    const except = (exception: NonNullable<FileNumber['exceptions']>[number]) => [
      { ...stitches, exceptions: [exception] },
    ];
    const claims = [madeIn(1995)];
    const of = (exception: Parameters<typeof except>[0], rest: Partial<Facts> = {}) =>
      kindOf(measured([count(8)], except(exception), rest));
    const unnamed = withPhotos(3);
    expect(of({ what: 'a', models: ['Carryall 30'] })).toBe('cannot-tell');
    expect(of({ what: 'a', models: ['Satchel'] })).toBe('doubt');
    expect(of({ what: 'a', models: ['Satchel'] }, { listing: unnamed })).toBe('cannot-tell');
    expect(of({ what: 'a', used: ['1994', '1996'] }, { claims })).toBe('cannot-tell');
    expect(of({ what: 'a', used: ['1996', '1997'] }, { claims })).toBe('doubt');
    expect(of({ what: 'a', used: ['1996', '1997'] })).toBe('cannot-tell');
  });
});
