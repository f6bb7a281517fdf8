import { describe, expect, it } from 'vitest';
import { correction1 } from '../../../src/watch/record/correction-1';
import { correction2 } from '../../../src/watch/record/correction-2';
import { anyMoment1, digest1, moment1, pixels1, problem1, span1 } from '../../../src/watch/record/forms-1';
import { photoRead2 } from '../../../src/watch/record/photo-read-2';

const issueOf = (
  schema: { safeParse(value: unknown): { error?: { issues: { path: PropertyKey[]; message: string }[] } | undefined } },
  value: unknown,
) => {
  const issue = schema.safeParse(value).error?.issues[0];
  return issue ? `${issue.path.join('.')}: ${issue.message}` : null;
};
const detail = { stampScore: 0.5, engine: 'net', lattice: { steps: [{ a: 1 }] }, measurements: [], probability: 0.5 };
const observation = {
  id: 'o',
  what: 'stamp-line',
  value: 'KV',
  uncertainty: null,
  unit: null,
  where: null,
  by: 'machine',
  detail,
};
const read = (change: object, what = 'stamp-line') => ({
  state: 'read',
  photoId: 'p1',
  width: 1,
  height: 1,
  observations: [
    { ...observation, id: 'a', what: 'other', detail: 7 },
    { ...observation, what, detail: { ...detail, ...change } },
  ],
});

describe('a photo’s reading as it is kept', () => {
  it.each<[string, object[], object[]]>([
    ['stampScore', [{ stampScore: 0 }, { stampScore: 1 }], [{ stampScore: -0.1 }, { stampScore: 1.1 }]],
    ['probability', [{ probability: 0 }, { probability: 1 }], [{ probability: -0.1 }, { probability: 1.1 }]],
    ['engine', [{ engine: 'tesseract' }], [{ engine: '' }]],
    ['mayGoOn', [{ mayGoOn: true }], [{ mayGoOn: false }]],
    ['otherWay', [{ otherWay: { steps: [] } }], [{ otherWay: {} }]],
    [
      'lattice',
      [{ lattice: { steps: [{ '': 0 }] } }],
      [
        { lattice: { steps: [{ ab: 0 }] } },
        { lattice: { steps: [{ a: 1.1 }] } },
        { lattice: { steps: [{ a: -0.1 }] } },
      ],
    ],
    [
      'measurements',
      ['pitch', 'pitch-spread', 'tilt', 'baseline-spread', 'depth-slope', 'depth-spread', 'contrast', 'height'].flatMap(
        (what) =>
          ['px', 'degree', 'share'].map((unit) => ({ measurements: [{ what, value: -1, uncertainty: 0, unit }] })),
      ),
      [
        { measurements: [{ what: '', value: 1, uncertainty: 0, unit: 'px' }] },
        { measurements: [{ what: 'tilt', value: 1, uncertainty: -1, unit: 'px' }] },
        { measurements: [{ what: 'tilt', value: 1, uncertainty: 0, unit: '' }] },
      ],
    ],
    ['more', [], [{ more: 1 }]],
  ])('holds the detail of a stamped line to its form: %s', (name, good, bad) => {
    for (const change of good) expect(issueOf(photoRead2, read(change)), JSON.stringify(change)).toBeNull();
    for (const change of bad)
      expect(issueOf(photoRead2, read(change)), JSON.stringify(change)).toMatch(
        name === 'more' ? /^observations\.1\.detail: / : new RegExp(`^observations\\.1\\.detail\\.${name}`),
      );
  });

  it('holds no other detail to it, and nothing of a photo that was not read', () => {
    expect(issueOf(photoRead2, read({ stampScore: 7 }, 'printed'))).toBeNull();
    expect(
      issueOf(photoRead2, { state: 'unread', photoId: 'p', problem: { code: 'x', where: '', what: '', remedy: '' } }),
    ).toBeNull();
  });
});

describe('small forms that records are made of', () => {
  it.each<[string, Parameters<typeof issueOf>[0], unknown[], unknown[], string]>([
    ['a moment', moment1, ['2026-03-01T10:00:00.000Z'], ['2026-03-01T10:00:00Z', 'x'], ': no date and time'],
    [
      'a moment of a page',
      anyMoment1,
      ['2026-03-01T10:00:00Z', '2026-03-01T10:00:00.000Z'],
      ['2026-03-01'],
      ': no date and time',
    ],
    [
      'a name',
      digest1,
      ['0123456789abcdef'.repeat(4)],
      ['0'.repeat(63), '0'.repeat(65), 'G'.repeat(64)],
      ': no SHA-256',
    ],
    [
      'pixels',
      pixels1,
      ['data:image/png;base64,AA==', 'data:image/webp;base64,AA'],
      ['data:image/svg+xml;base64,AA', 'data:image/png;base64,', 'data:image/png,AA'],
      ': no JPEG, PNG or WebP picture',
    ],
    [
      'a day',
      span1,
      [{ from: '2026-01-01', to: null, precision: 'day' }],
      [{ from: '2026', to: null, precision: 'day' }],
      'from: a day as YYYY-MM-DD',
    ],
  ])('%s says what it is not', (_what, form, good, bad, said) => {
    for (const value of good) expect(issueOf(form, value)).toBeNull();
    for (const value of bad) expect(issueOf(form, value)).toBe(said);
  });

  it('a problem has a code of small letters, digits and hyphens', () => {
    const of = (code: string) => issueOf(problem1, { code, where: '', what: '', remedy: '' });
    expect([of('a-1'), of('A'), of('')].map((issue) => issue === null)).toEqual([true, false, false]);
  });

  it('pixels are four hundred thousand characters at most', () => {
    const of = (length: number) => issueOf(pixels1, 'data:image/png;base64,'.padEnd(length, 'A'));
    expect(of(400_000)).toBeNull();
    expect(of(400_001)).toMatch(/^: Too big/);
  });

  it('what a buyer set aside or chose has a reason of a thousand characters, and two to twelve pieces', () => {
    const aside = (reason: string, id = 'c') =>
      issueOf(correction2, { id, of: 'finding', target: { id: 'f', check: 'x', kind: 'doubt', data: {} }, reason });
    expect([1, 1000].map((length) => aside('r'.repeat(length)))).toEqual([null, null]);
    expect([0, 1001].map((length) => aside('r'.repeat(length))?.split(':')[0])).toEqual(['reason', 'reason']);
    expect([
      aside('r', 'i'.repeat(40)),
      aside('r', '')?.split(':')[0],
      aside('r', 'i'.repeat(41))?.split(':')[0],
    ]).toEqual([null, 'id', 'id']);
    const piece = (count: number) =>
      issueOf(correction2, { id: 'c', of: 'piece', among: Array(count).fill('x'), to: null });
    expect([piece(2), piece(12)]).toEqual([null, null]);
    expect([piece(1), piece(13)].map((issue) => issue?.split(':')[0])).toEqual(['among', 'among']);
    expect(correction1.options.length).toBeLessThan(correction2.options.length);
  });
});
