// @vitest-environment jsdom
import { render } from 'preact';
import { expect, test } from 'vitest';
import { answerOf, buildCase, type Case } from '../../../src/case';
import type { Listing } from '../../../src/listing/types';
import { Answer, answerWords } from '../../../src/ui/parts/Answer';
import { StampSection } from '../../../src/ui/parts/StampSection';
import { listingOf } from '../case/sample-listing';

const caseOf = (listing: Listing): Case =>
  buildCase({ listing, photos: [], corrections: [], makers: [], now: '2026-01-15T10:00:00Z' });

const shown = (code: string, whole = false): HTMLElement => {
  const kase = caseOf(listingOf('Velmar Lane tote', `Date code ${code}.`, 1));
  const room = document.createElement('div');
  render(<Answer kase={kase} answer={answerOf(kase)} pictureOfLine={() => null} whole={whole} />, room);
  return room;
};
const step = (room: HTMLElement) =>
  [...room.querySelectorAll('details')].find(({ textContent }) => textContent?.startsWith('How often each is meant'));

test('how often each way to read a form is meant stands behind a step', () => {
  const room = shown('AB1203');
  expect(room.querySelectorAll('.forms > li').length).toBeGreaterThan(1);
  expect(step(room)?.open).toBe(false);
  expect(step(room)?.textContent).toMatch(/about \d+ in 10/);
  step(room)?.remove();
  expect(room.textContent).not.toMatch(/ in 10/);
});

test('one way alone, and paper, on which nothing opens, name no share', () => {
  const alone = shown('2496');
  expect(alone.querySelectorAll('.forms > li').length).toBe(1);
  expect(step(alone)).toBeUndefined();
  expect(step(shown('AB1203', true))).toBeUndefined();
});

test('a maker that the title may name is told as that, with the code that no file explains', () => {
  const heading = shown('AB1203').querySelector('h2')?.textContent;
  expect(heading).toBe(
    'The code that the listing quotes reads AB1203. No file explains it yet; the maker may be “Velmar”.',
  );
});

test('a year of buying alone is told as that', () => {
  const heading = (description: string) => {
    const kase = caseOf(listingOf('Velmar Lane tote', description, 1));
    return answerWords(answerOf(kase), kase, false);
  };
  expect(heading('I bought it new in 1979.')).toMatch(/ The listing says only when it was acquired: 1979\.$/);
  expect(heading('A present from my aunt, about 1984.')).toMatch(/ only when it was acquired: about 1984\.$/);
  expect(heading('Bought in 1979, made in 1976.')).toMatch(/ The listing says 1976\.$/);
  expect(heading('Hardly used.')).toMatch(/ The listing names no year\.$/);
});

test('that no file explains the code is said once', () => {
  const listing = listingOf('Velmar Lane tote', 'Date code H7 05.', 1);
  const room = document.createElement('div');
  render(<StampSection kase={caseOf(listing)} pictureOfLine={() => null} />, room);
  expect(room.textContent?.match(/No file explains it yet/g)).toHaveLength(1);
});
