import { describe, expect, it } from 'vitest';
import { textsLeftOpen } from '../../../src/evidence/texts-left-open';

describe('the texts that a code may be', () => {
  const alike = (place: number, ...may: string[]) => ({ kind: 'alike', place, may }) as const;
  it.each([
    ['itself', 'AB', [], ['AB']],
    ['either of a character', 'AB', [alike(1, 'B', '8')], ['AB', 'A8']],
    ['each of several', '0B', [alike(0, '0', 'O'), alike(1, 'B', '8')], ['0B', '08', 'OB', 'O8']],
    [
      'itself where something else is left open',
      'AB',
      [{ kind: 'too-long' }, { kind: 'upside-down', text: 'X' }],
      ['AB'],
    ],
    [
      'eight at most, the best first',
      '0000',
      [alike(0, '0', 'O'), alike(1, '0', 'O'), alike(2, '0', 'O'), alike(3, '0', 'O')],
      ['0000', '000O', '00O0', '00OO', '0O00', '0O0O', '0OO0', '0OOO'],
    ],
    ['of characters beyond the first plane as well', '𝟘B', [alike(1, 'B', '8')], ['𝟘B', '𝟘8']],
  ] as const)('are %s', (_, code, open, wanted) => {
    expect(
      textsLeftOpen(
        code,
        open.map((one) => ({ ...one, ...('may' in one ? { may: [...one.may] } : {}) })),
      ),
    ).toEqual(wanted);
  });
});
