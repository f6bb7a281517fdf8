/**
 * Whether a text that no code system explains has the look of a code and not of words: short, and at least two digits
 * that make up two fifths of it ("CALDERWICK & ROOK" read with an 8 for the & has not). Common practice, no source.
 */
export function looksLikeCode(text: string): boolean {
  const bare = text.replace(/[^A-Z0-9]/g, '');
  const digits = bare.replace(/[^0-9]/g, '').length;
  return bare.length >= 3 && bare.length <= 14 && digits >= 2 && digits / bare.length >= 0.4;
}
