import { describe, expect, it } from 'vitest';
import { codeSlotPossible } from '../../../src/check/code-slot-possible';
import { codeSystemInUse } from '../../../src/check/code-system-in-use';
import type { MakerFile } from '../../../src/maker/types';
import { isoWeekSpan } from '../../../src/span';
import { decoded, facts, kv0915, misfit, nearest, ondrasse, onlyFinding, reading, said } from './sample';

describe('code-slot-possible', () => {
  const month19 = (rest = {}) => decoded('KV1995', [], { misfits: [misfit('KV1995')], ...rest });
  it('contradicts a month that does not exist', () => {
    expect(said(codeSlotPossible, facts({ decodings: [month19()] }))).toEqual([
      'contradiction: The stamp in photo 1 reads KV1995: month “19” does not exist, expected 01 to 12.',
    ]);
  });
  it('only doubts when a look-alike character explains it', () => {
    expect(said(codeSlotPossible, facts({ decodings: [month19({ nearest: [nearest('KV0995', 0.4)] })] }))).toEqual([
      'doubt: The stamp in photo 1 reads KV1995: month “19” does not exist, expected 01 to 12. KV0995 would read (the third character differs).',
    ]);
  });
  it('only doubts a code that the listing quotes', () => {
    const quoted = month19({ from: { kind: 'claim', claimId: 'c' } });
    expect(said(codeSlotPossible, facts({ decodings: [quoted] }))).toEqual([
      'doubt: The listing quotes the code KV1995: month “19” does not exist, expected 01 to 12.',
    ]);
  });
  const plantQX = decoded('QX0915', [], {
    misfits: [misfit('QX0915', { slot: 'plant', value: 'QX', expected: 'a plant on file: KV, LT' })],
  });
  it('says only that the file does not list a plant, and asks the seller nothing, where the list may lack some', () => {
    const given = facts({ decodings: [plantQX] });
    expect(said(codeSlotPossible, given)).toEqual([
      'gap: The stamp in photo 1 reads QX0915: the file of Ondrasse does not list a plant “QX”, and does not say that it lists all.',
    ]);
    expect(onlyFinding(codeSlotPossible, given).asks).toEqual([]);
    const { innocent, settles } = onlyFinding(codeSlotPossible, given);
    expect(innocent).toBe('The maker may have had plants that nobody has entered into the file yet.');
    expect(settles).toBe('A maker file that lists all plants, or another piece that is known to be from this one.');
  });
  it('contradicts a plant that a complete list does not hold', () => {
    const maker = { ...ondrasse, plantsComplete: true };
    expect(said(codeSlotPossible, facts({ maker, decodings: [plantQX] }))).toEqual([
      'contradiction: The stamp in photo 1 reads QX0915: plant “QX” does not exist, expected a plant on file: KV, LT.',
    ]);
  });
  it('is silent on a code that reads', () => {
    expect(said(codeSlotPossible, facts({ decodings: [kv0915] }))).toEqual(['silent']);
  });
  it('cannot tell from an unclear stamp', () => {
    expect(said(codeSlotPossible, facts({ decodings: [month19({ accepted: false })] }))[0]).toMatch(/^cannot-tell/);
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
