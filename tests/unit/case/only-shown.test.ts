import { expect, test } from 'vitest';
import { answerOf, buildCase, findingsOf } from '../../../src/case';
import type { Lattice } from '../../../src/stamp';
import { photoRead } from '../../photo-read';
import { stampLine } from '../check/sample';
import { listingOf } from './sample-listing';

const sharp = (text: string): Lattice => ({ steps: [...text].flatMap((one) => [{ [one]: 0.999 }, { '': 1 }]) });
const line = (text: string, stampScore = 0.9) =>
  stampLine('p1', text, { lattice: sharp(text), free: { text, probability: 0.99 }, stampScore });
const caseOf = (...lines: ReturnType<typeof line>[]) =>
  buildCase({
    listing: listingOf('A bag of leather', 'Seen in a cellar.'),
    photos: [photoRead('p1', { lines: lines.map((one, at) => ({ ...one, id: `p1-line-${at + 1}` })) })],
    corrections: [],
    makers: [],
    now: '2026-11-25',
  });

test('a text longer than codes are is shown as no code, with why, and asks for nothing', () => {
  const kase = caseOf(line('SAL1A2A40SA606662'));
  expect(kase.decodings).toMatchObject([{ code: 'SAL1A2A40SA606662', accepted: false, open: [{ kind: 'too-long' }] }]);
  expect(answerOf(kase).stamp.kind).toBe('none');
  expect(findingsOf(kase).filter(({ check }) => check === 'stamp-legible')).toEqual([]);
});

test('it does not stand before a code of the same photo', () => {
  const kase = caseOf(line('SAL1A2A40SA606662', 0.99), line('834517', 0.8));
  expect(kase.decodings.map(({ code }) => code)).toEqual(['834517']);
});

test('words are not shown so, however long', () => {
  expect(caseOf(line('LEATHER OF THE FINEST')).decodings).toEqual([]);
});

test('a year among words is shown as no code, with why, asks for nothing, and does not stand before a code', () => {
  const words = line('VERITABLE CUIR', 0.2);
  const kase = caseOf(words, line('1874'));
  expect(kase.decodings).toMatchObject([
    { code: '1874', accepted: false, open: [{ kind: 'other-number', as: 'year' }] },
  ]);
  expect(answerOf(kase).stamp.kind).toBe('none');
  expect(findingsOf(kase).filter(({ check }) => check === 'stamp-legible')).toEqual([]);
  expect(caseOf(words, line('1874', 0.99), line('834517', 0.8)).decodings.map(({ code }) => code)).toEqual(['834517']);
});
