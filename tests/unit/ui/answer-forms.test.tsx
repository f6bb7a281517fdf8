// @vitest-environment jsdom
import { render } from 'preact';
import { expect, test } from 'vitest';
import { answerOf, buildCase } from '../../../src/case';
import { Answer } from '../../../src/ui/parts/Answer';
import { listingOf } from '../case/sample-listing';

const shown = (code: string, whole = false): HTMLElement => {
  const listing = listingOf('Velmar Lane tote', `Date code ${code}.`, 1);
  const kase = buildCase({ listing, photos: [], corrections: [], makers: [], now: '2026-01-15T10:00:00Z' });
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
