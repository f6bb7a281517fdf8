import { parseMakerFile } from '../../../src/maker';

/** Slots that no built-in maker uses, so that every kind is written and read back. */
export const rare = parseMakerFile({
  format: 1,
  maker: 'Slots that are rare',
  plants: [{ code: '7', place: 'PT', used: ['1970', null] }],
  codeSystems: [
    {
      id: 'right-to-left',
      used: ['1996', '2015'],
      reversed: true,
      layout: [{ year: 2 }, { literal: '·X', optional: true }, { week: 2, reversed: true }, { plant: 1 }],
      examples: [{ code: '71469', reads: '1996-W14, PT' }],
    },
    {
      id: 'letters',
      used: ['1970', '2030'],
      layout: [{ quarter: 'WXYZ' }, { year: 1 }, { any: 2 }, { check: 'mod97' }],
      examples: [{ code: 'W5AA30', reads: '1975-Q1 or 1985-Q1 or 1995-Q1' }],
    },
    {
      id: 'month-of-thirteen-signs',
      used: ['1970', '2030'],
      layout: [
        { year: 4 },
        { month: '1-9OND' },
        { day: 'units' },
        { day: 'tens' },
        { check: 'mod10', weights: [7, 3, 1] },
      ],
      examples: [{ code: '1995O121', reads: '1995-10-21' }],
    },
    {
      id: 'check-first',
      used: ['1950', '1999'],
      layout: [
        { check: 'mod11', over: 'all' },
        { year: 2 },
        { dayOfYear: 3, reversed: true },
        { serial: { min: 2, max: 4 } },
      ],
      examples: [{ code: 'X753210012', reads: '1975' }],
    },
  ],
});
