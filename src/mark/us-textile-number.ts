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

export const usTextileNumber = defineMark({
  id: 'us-textile-number',
  title: 'RN or WPL number',
  says: "Dates the company's registration in the United States: not before, never made in.",
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
        const statement = `No ${series} number ${Number(number)} was given out, so it is most likely misread`;
        return {
          ...at,
          spans: [],
          strength: 'soft',
          statement,
          caution: 'A sharper photo of the label would show it.',
        };
      }
      return {
        ...at,
        spans: [
          { ...yearsSpan(read.from, null), from: rangeOf(series, Number(number))?.inForce ?? `${read.from}-01-01` },
        ],
        strength: 'hard',
        statement: `${series} ${Number(number)} was given to a company in ${read.from} or later, so the label is no older`,
        caution:
          'The number dates the company’s registration, not the piece, and says nothing of the country of making.',
      };
    }),
});
