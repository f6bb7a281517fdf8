import { yearsSpan } from '../span';
import { defineMark, type MarkFound, rowSource } from './define';
import table from './tables/us-textile-numbers.json';

/** "RN 12345", "RN# 12345", "WPL-500"; capitals only, since "rn" and "Rn" are other things. */
const pattern = /\b(?<series>RN|WPL)(?:\s*(?:#|No\.?|N[°º]|:|-)\s*|\s+)(?<number>\d{3,6})\b(?![.,]\d)/gu;

export type SeriesNumber =
  /** Given to a company in or after that year. */
  | { state: 'issued'; from: number }
  /** Never given out: most likely misread. */
  | { state: 'not-issued' };

const rangeOf = (series: 'RN' | 'WPL', number: number) =>
  table.ranges.find((one) => one.series === series && number >= one.first && (one.last === null || number <= one.last));

/** Whether and since when an RN or WPL number exists. Source: see tables/us-textile-numbers.json. */
export function seriesNumber(series: 'RN' | 'WPL', number: number): SeriesNumber {
  const range = rangeOf(series, number);
  return range?.issued && range.issuedFrom ? { state: 'issued', from: range.issuedFrom } : { state: 'not-issued' };
}

/** Dates the company's registration in the United States: not before, never made in. */
export const usTextileNumber = defineMark({
  id: 'us-textile-number',
  find: (text) =>
    [...text.matchAll(pattern)].map((match): MarkFound => {
      const { series, number } = match.groups as { series: 'RN' | 'WPL'; number: string };
      const read = seriesNumber(series, Number(number));
      const at = {
        start: match.index,
        end: match.index + match[0].length,
        source: rowSource(table.source, true),
        verified: true,
      };
      if (read.state === 'not-issued') {
        return {
          ...at,
          spans: [],
          strength: 'soft',
          says: { kind: 'no-textile-number', series, number: Number(number) },
          cautions: [{ kind: 'sharper-photo' }],
        };
      }
      return {
        ...at,
        spans: [
          { ...yearsSpan(read.from, null), from: rangeOf(series, Number(number))?.inForce ?? `${read.from}-01-01` },
        ],
        strength: 'hard',
        says: { kind: 'textile-number', series, number: Number(number), from: read.from },
        cautions: [{ kind: 'company-not-piece' }],
      };
    }),
});
