import { expect, it } from 'vitest';
import { type FoundDate, parseDates } from '../../src/text/date';
import { describeWithFixture } from './fixture';

interface Case {
  test: string;
  text: string;
  expected: string;
}

/** Rows whose upstream test passes no settings. */
const settingsFree = /^test_dates_parsing(?:_|$)|^test_parsing_with_utc_offsets$/;
/** Letters or words of languages that this project does not read. */
const otherLanguages =
  /[^\0-\u024f\u3000-\u30ff\u4e00-\u9fff]|Setembro|Haziran|iunie|\bPeb\b|\bhun$|\bNi\b|\bip\.|maalis|tammi|\bklo\b|travnja|studeno|velja|Bre'|Th[\u1ee9\u1eed]|Tháng|\bu \d\d:|晚|时/u;

const matches = (date: FoundDate, day: string) =>
  [date.span, ...(date.ambiguous ?? [])].some((span) => span.from === day && span.to === day);
/** A month or a year that holds the day is coarser than it, not wrong. */
const holds = (date: FoundDate, day: string) =>
  (date.span.from === null || date.span.from <= day) && (date.span.to === null || date.span.to >= day);

describeWithFixture<{ cases: Case[] }>(
  'dates as a published date parser reads them',
  'fixtures/dates-absolute.json',
  ({ cases }) => {
    const rows = cases.filter((item) => settingsFree.test(item.test) && !otherLanguages.test(item.text));
    const read = rows.map((item) => ({ item, found: parseDates(item.text, { language: null, now: '2012-11-13' }) }));
    const describeRow = ({ item, found }: (typeof read)[number]) =>
      `${item.text} → ${found.map((date) => `${date.words}: ${date.span.from}`).join('; ') || 'nothing'}, not ${item.expected}`;

    it('holds rows to compare', () => expect(rows.length).toBeGreaterThanOrEqual(50));

    it('is never silently wrong in more than 1% of the rows', () => {
      const wrong = read.filter(
        ({ item, found }) =>
          found.length > 0 && !found.some((date) => matches(date, item.expected) || holds(date, item.expected)),
      );
      expect(wrong.length / rows.length, wrong.map(describeRow).join('\n')).toBeLessThanOrEqual(0.01);
    });

    it('reads the day, or marks it ambiguous, in at least 93% of the rows', () => {
      const missed = read.filter(({ item, found }) => !found.some((date) => matches(date, item.expected)));
      expect(missed.length / rows.length, missed.map(describeRow).join('\n')).toBeLessThanOrEqual(0.07);
    });
  },
);
