// @vitest-environment jsdom
import { render } from 'preact';
import { expect, test } from 'vitest';
import type { Case } from '../../../src/case';
import { findMarks } from '../../../src/mark';
import { Marks } from '../../../src/ui/parts/Marks';
import { listingOf } from '../case/sample-listing';

const caseOf = (marks: Case['marks']): Case => ({
  format: 1,
  listing: listingOf('Ondrasse Carryall 30', 'A bag.'),
  photos: [],
  corrections: [],
  maker: null,
  claims: [],
  decodings: [],
  marks,
  evidence: [],
  outcomes: [],
  questions: [],
  summary: { contradictions: 0, doubts: 0, gaps: 0, agreements: 0 },
  skipped: [],
});

function show(marks: Case['marks']): HTMLElement {
  const room = document.createElement('div');
  render(<Marks kase={caseOf(marks)} />, room);
  return room;
}

test('each mark stands with its words, what it says, its source and its caution', () => {
  const text = show(findMarks('RN 13670', { foundIn: 'photo', photoId: 'p1' })).textContent;
  expect(text).toContain('RN 13670');
  expect(text).toContain('was given to a company in 1959 or later');
  expect(text).toContain('US Federal Trade Commission');
  expect(text).toContain('not the piece');
  expect(text).not.toContain('Not verified');
});

test('a row from memory says that it is not verified', () => {
  const room = show(findMarks('Made in Yugoslavia', { foundIn: 'listing', photoId: null }));
  expect(room.textContent).toContain('Not verified.');
  expect(room.textContent).toContain('Named in the listing');
});

test('one mark with a firm and a loose statement stands once', () => {
  const room = show(findMarks('Made in West Germany', { foundIn: 'listing', photoId: null }));
  expect(room.querySelectorAll('li')).toHaveLength(1);
  expect(room.querySelectorAll('li p:not(.muted)')).toHaveLength(2);
});

test('without marks there is no section', () => {
  expect(show([]).innerHTML).toBe('');
});
