import { describe, expect, test } from 'vitest';
import type { Claim } from '../../src/claim/types';
import { gatherEvidence, reason } from '../../src/evidence';
import { findMarks } from '../../src/mark';
import { type Span, yearSpan } from '../../src/span';
import { decadeSpan } from '../unit/span/decade';
import { readFixture } from './fixture';

interface Case {
  claim: string;
  sees: string;
  expect: string;
}
const wording = readFixture<{ test_cases: Case[] }>('reference/origin_wording_eras.json');
const labels = readFixture<{ test_cases: unknown[] }>('reference/us_textile_labels.json');
const skipped = 'skipped: not present';

const claimed = (words: string): Span =>
  words.endsWith('s') ? decadeSpan(Number(words.slice(0, 4))) : yearSpan(Number(words));

/** 'conflict': a hard contradiction; 'unlikely': only soft evidence stands against it; 'consistent': nothing does. */
function verdict(claim: Span, print: string): 'conflict' | 'unlikely' | 'consistent' {
  const made: Claim = {
    kind: 'made',
    id: 'c',
    words: 'as claimed',
    at: { field: 'title', start: 0, end: 1 },
    confidence: 1,
    span: claim,
  };
  const marks = findMarks(print, { foundIn: 'photo', photoId: 'p' });
  const { conflicts, agrees } = reason(gatherEvidence({ claims: [made], decodings: [], marks, maker: null }));
  if (conflicts.some(({ strength }) => strength === 'hard')) return 'conflict';
  return agrees ? 'consistent' : 'unlikely';
}

/** What a published case allows here: "ask" and "no verdict" may be anything but a conflict. */
const allowed = (words: string): string[] => {
  if (words.startsWith('conflict')) return ['conflict'];
  return /^consistent|^no information/.test(words) ? ['consistent'] : ['unlikely', 'consistent'];
};

/** The case names the mark; this is print that carries it. */
const print = (sees: string): string =>
  sees.replace('ZIP 60614', 'Chicago, IL 60614').replace('EAN-13 barcode', '4006381333931');

describe.skipIf(!wording)(
  `wording of origin and label formats (reference/origin_wording_eras.json; ${skipped})`,
  () => {
    test.each(wording?.test_cases ?? [])('claimed $claim, seen "$sees": $expect', ({ claim, sees, expect: words }) => {
      expect(allowed(words)).toContain(verdict(claimed(claim), print(sees)));
    });
  },
);

describe.skipIf(!labels)(`US labels (reference/us_textile_labels.json; ${skipped})`, () => {
  test.each([
    [decadeSpan(1940), 'WPL 500', 'consistent'],
    [decadeSpan(1930), 'WPL 500', 'conflict'],
    [decadeSpan(1950), 'symbols-only care label for the US market', 'conflict'],
    [decadeSpan(1990), 'RN 9000', 'consistent'],
    [decadeSpan(1990), 'WPL 13670', 'consistent'],
    [decadeSpan(1950), 'RN 13670', 'consistent'],
    [decadeSpan(1940), 'RN 13670', 'conflict'],
  ])('%o with "%s" is %s', (claim, sees, expected) => expect(verdict(claim, sees)).toBe(expected));
});
