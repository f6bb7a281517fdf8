import { defineMark, type MarkFound, standsOnPiece } from './define';
import { foundByRow, rowOf, rowsById } from './rows';
import table from './tables/codes-and-web.json';

const rows = rowsById(table.rows);
/** The digits under a barcode, grouped as they are printed. */
const digits = /(?<![\d.,-])(?:\d[ ]?){11,12}\d(?![\d.,-])/gu;
const qrCode = /\bQR[\s-]?code\b/giu;
const caution = 'dates-tag';

/** Whether 8, 12, 13 or 14 digits carry a right check digit. Source: GS1 General Specifications 7.9. */
export function isTradeNumber(text: string): boolean {
  if (!/^(?:\d{8}|\d{12,14})$/.test(text)) return false;
  const sum = [...text].reverse().reduce((total, digit, at) => total + Number(digit) * (at % 2 === 0 ? 1 : 3), 0);
  return sum % 10 === 0;
}

/** Retail barcodes are scanned since 26 June 1974: the tag is no older. */
export const barcode = defineMark({
  id: 'barcode',
  find: (text, where) =>
    [...byDigits(text), ...byQrCode(text)]
      .filter(({ start }) => standsOnPiece(text, start, where))
      .sort((a, b) => a.start - b.start),
});

function byDigits(text: string): MarkFound[] {
  return [...text.matchAll(digits)].flatMap((match) => {
    const number = match[0].replaceAll(' ', '');
    const [start, end] = [match.index, match.index + match[0].length];
    if (!isTradeNumber(number)) return [];
    const any = foundByRow(rowOf(rows, 'barcode'), start, end, caution);
    // Thirteen digits that begin with 0 are a twelve-digit number written long.
    const isLong = number.length === 13 && !number.startsWith('0');
    return isLong ? [...any, ...foundByRow(rowOf(rows, 'ean-13'), start, end, caution)] : any;
  });
}

const byQrCode = (text: string): MarkFound[] =>
  [...text.matchAll(qrCode)].flatMap((match) =>
    foundByRow(rowOf(rows, 'qr-code'), match.index, match.index + match[0].length, caution),
  );
