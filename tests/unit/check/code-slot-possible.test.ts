import { describe, expect, it } from 'vitest';
import { codeSlotPossible } from '../../../src/check/code-slot-possible';
import { codeSystemInUse } from '../../../src/check/code-system-in-use';
import type { MakerFile } from '../../../src/maker/types';
import { isoWeekSpan } from '../../../src/span';
import { testRule } from '../../rule-tester';
import { decoded, facts, kv0915, misfit, nearest, ondrasse, onlyFinding, reading, said } from './sample';

const month19 = (rest = {}) => decoded('KV1995', [], { misfits: [misfit('KV1995')], ...rest });
const likely = (likelihood: number) => facts({ decodings: [month19({ nearest: [nearest('KV0995', likelihood)] })] });
const shown = { code: 'KV1995', from: 'photo', photo: 1 };
const what = { slot: 'month', value: '19', expected: { kind: 'range', first: '01', last: '12' }, unlistedBy: null };
const told = {
  kind: 'doubt' as const,
  basis: [
    'A year has 12 months and 52 or 53 weeks (ISO 8601). A workshop that the maker file does not list speaks against the code only where the file says that its list is complete.',
  ],
  asks: ['stamp-photo'],
  photos: ['p1'],
  source: 'maker file of Ondrasse: code system interleaved month',
};

testRule(codeSlotPossible, {
  speaks: {
    'against a month that does not exist': [
      facts({ decodings: [month19()] }),
      {
        ...told,
        kind: 'contradiction',
        data: { shown, ...what, near: null },
        says: 'The stamp in photo 1 reads KV1995: month “19” does not exist, expected 01 to 12.',
      },
    ],
    'of a doubt only when a look-alike character explains it': [
      likely(0.4),
      {
        ...told,
        data: {
          shown,
          ...what,
          near: { code: 'KV0995', differences: [{ kind: 'other', was: '1', is: '0', place: 3, alike: false }] },
        },
        says: 'The stamp in photo 1 reads KV1995: month “19” does not exist, expected 01 to 12. KV0995 would read ("1" in place 3 read as "0").',
      },
    ],
    'of a doubt only on a code that the listing quotes': [
      facts({ decodings: [month19({ from: { kind: 'claim', claimId: 'c' } })] }),
      {
        ...told,
        data: { shown: { ...shown, from: 'claim', photo: null }, ...what, near: null },
        photos: [],
        says: 'The listing quotes the code KV1995: month “19” does not exist, expected 01 to 12.',
      },
    ],
  },
  silent: {
    'on a code that reads': facts({ decodings: [kv0915] }),
    'on a code that reads by one system and not by another': facts({
      decodings: [{ ...kv0915, misfits: [misfit('KV0915')] }],
    }),
  },
  declines: {
    'from an unclear stamp': [facts({ decodings: [month19({ accepted: false })] }), 'cannot-tell', 'code-unclear'],
  },
  limits: {
    misreadExplains: { is: 0.2, step: 0.01, given: likely, under: 'contradiction', at: 'doubt', over: 'doubt' },
  },
});

describe('code-slot-possible, by what the file knows', () => {
  const plantQX = decoded('QX0915', [], {
    misfits: [misfit('QX0915', { slot: 'plant', value: 'QX', expected: { kind: 'plant', codes: 'KV, LT' } })],
  });
  it('says only that the file does not list a workshop, and asks the seller nothing, where the list may lack some', () => {
    const given = facts({ decodings: [plantQX] });
    expect(said(codeSlotPossible, given)).toEqual([
      'gap: The stamp in photo 1 reads QX0915: the file of Ondrasse does not list a workshop “QX”, and does not say that it lists all.',
    ]);
    expect(onlyFinding(codeSlotPossible, given).asks).toEqual([]);
    const { innocent, settles } = onlyFinding(codeSlotPossible, given);
    expect(innocent).toBe('The maker may have had workshops that nobody has entered into the file yet.');
    expect(settles).toBe('A maker file that lists all workshops, or another piece that is known to be from this one.');
  });
  it('contradicts a workshop that a complete list does not hold', () => {
    const maker = { ...ondrasse, plantsComplete: true };
    expect(said(codeSlotPossible, facts({ maker, decodings: [plantQX] }))).toEqual([
      'contradiction: The stamp in photo 1 reads QX0915: workshop “QX” does not exist, expected a workshop on file: KV, LT.',
    ]);
  });
  it('names the month that does not exist when the code reads only by a system of another time', () => {
    const weekSystem: MakerFile['codeSystems'][number] = {
      id: 'interleaved-week',
      used: ['2007', null],
      layout: [{ plant: 2 }, { week: 'tens' }, { year: 'tens' }, { week: 'units' }, { year: 'units' }],
      examples: [{ code: 'KV2047', reads: '2007-W24, BE' }],
    };
    const maker = { ...ondrasse, codeSystems: [...ondrasse.codeSystems, weekSystem] };
    const byWeek = reading('KV1953', isoWeekSpan(1993, 15), {
      system: { maker: 'Ondrasse', id: 'interleaved-week' },
      systemUsed: { from: '2007-01-01', to: null, precision: 'range' },
    });
    const given = facts({ maker, decodings: [decoded('KV1953', [byWeek])] });
    const finding = onlyFinding(codeSlotPossible, given);
    expect(finding.kind).toBe('contradiction');
    expect(finding.statement).toMatch(/^The stamp in photo 1 reads KV1953: month “15” does not exist/);
    expect(said(codeSystemInUse, given)).toEqual(['silent']);
  });
});
