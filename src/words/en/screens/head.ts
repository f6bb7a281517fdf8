/** What stands at the head of a case. */
export const headStrings = {
  title: 'What stands',
  against: 'Speaks against',
  open: 'Still open',
  notLookedAt: 'Not looked at',
  nothing: 'Nothing was found in what was looked at.',
  nothingWithoutFile: 'Nothing was found by what holds for any bag.',
  aside: 'You set something aside: it stands below.',
  nothingOpen: 'Nothing more in what was looked at.',
  more: 'And more below.',
  failed: (checks: string[]) =>
    `A part of Tellstamp failed here, and what it looks at is not judged: ${checks.join(', ')}.`,
  photos: (numbers: number[]) => `${numbers.length === 1 ? 'Photo' : 'Photos'} ${numbers.join(', ')}: not read.`,
  withoutFile: (maker: string) =>
    `What only a file on ${maker || 'the maker'} could tell: period, workshop, sizes, materials.`,
  untold: (reasons: string[], more: boolean) =>
    `Some could not be told: ${reasons.join('; ')}${more ? '; more below' : ''}.`,
  never: 'Who made it: no photo can show that. Leather, stitches, metal, colours: not measured.',
  onlyMarked:
    'Who made it: no photo can show that. Leather, stitches, metal, colours: measured only where you marked them.',
} as const;
