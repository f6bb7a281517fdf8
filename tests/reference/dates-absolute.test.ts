import { expect, it } from 'vitest';
import { type FoundDate, parseDates } from '../../src/text/date';
import { describeWithFixture } from './fixture';

interface Case {
  test: string;
  text: string;
  expected: string;
}

const matches = (date: FoundDate, day: string) =>
  [date.span, ...(date.ambiguous ?? [])].some((span) => span.from === day && span.to === day);
/** A month or a year that holds the day is coarser than it, not wrong. */
const holds = (date: FoundDate, day: string) =>
  (date.span.from === null || date.span.from <= day) && (date.span.to === null || date.span.to >= day);

describeWithFixture<{ cases: Case[] }>(
  'dates as a published date parser reads them',
  'fixtures/dates-absolute.json',
  ({ cases }) => {
    // All of them: many in languages that are not read here, some that its own tests read with settings of their own.
    const rows = cases;
    const read = rows.map((item) => ({ item, found: parseDates(item.text, { language: null, now: '2012-11-13' }) }));
    const describeRow = ({ item, found }: (typeof read)[number]) =>
      `${item.text} → ${found.map((date) => `${date.words}: ${date.span.from}`).join('; ') || 'nothing'}, not ${item.expected}`;

    it('holds rows to compare', () => expect(rows.length).toBeGreaterThanOrEqual(50));

    it('is silently wrong in at most 5% of all rows', () => {
      const wrong = read.filter(
        ({ item, found }) =>
          found.length > 0 && !found.some((date) => matches(date, item.expected) || holds(date, item.expected)),
      );
      expect(wrong.length / rows.length, wrong.map(describeRow).join('\n')).toBeLessThanOrEqual(0.05);
    });

    it('reads the day, or marks it ambiguous, in at least 32% of all rows', () => {
      const missed = read.filter(({ item, found }) => !found.some((date) => matches(date, item.expected)));
      expect(missed.length / rows.length, missed.map(describeRow).join('\n')).toBeLessThanOrEqual(0.68);
    });
  },
);
