import { sinceSpan } from '../span';
import { defineMark, type MarkFound, rowSource } from './define';
import { foundByForms, type WrittenForm } from './forms';
import { groupedNumber, numberWords } from './number-series';
import { rowsById } from './rows';
import type { PatentedFastener } from './says';
import table from './tables/fasteners.json';

const rows = rowsById(table.rows);
/** "Pat. 2,717,437" and the like: the number needs the word before it. */
const patentNumber =
  /\bPat(?:ent)?s?\b\.?\s{0,8}(?:Nos?\b\.?|#)?[\s:]{0,8}(?:US\s)?(?<number>\d{1,3}(?:[,.]\d{3})+|\d{4,7})\b/giu;
const words: WrittenForm[] = [
  { row: 'hook-and-loop', pattern: /\bhook[\s-](?:and|&|n)[\s-]loop\b/giu },
  {
    row: 'nylon-coil',
    pattern: /\b(?:nylon|plastic|polyester)\s+coil\s+zip(?:per)?\b|\bcoil\s+zip(?:per)?\s+of\s+nylon\b/giu,
  },
];
const caution = 'fastener-replaced';

/**
 * The fastener is no older than its patent; softly where the kind alone is named.
 * Fasteners that did not exist before a patent: by their patent's number, or by their kind as the listing names it.
 */
export const fastener = defineMark({
  id: 'fastener',
  find: (text) => [...byPatent(text), ...foundByForms(words, rows, text, caution)].sort((a, b) => a.start - b.start),
});

function byPatent(text: string): MarkFound[] {
  return [...text.matchAll(patentNumber)].flatMap((match) => {
    const number = groupedNumber(match.groups?.number ?? '');
    const patent = table.patents.find((one) => one.number === number);
    if (!patent) return [];
    const verified = patent.verified === 'stored';
    return [
      {
        start: match.index,
        end: match.index + match[0].length,
        spans: [sinceSpan(patent.granted)],
        strength: verified ? 'hard' : 'soft',
        verified,
        source: rowSource(`US patent ${numberWords(number)}`, verified),
        says: { kind: 'fastener-patent', number, of: patent.what as PatentedFastener, granted: patent.granted },
        cautions: [{ kind: caution }],
      } satisfies MarkFound,
    ];
  });
}
