const ending = /\.(?:pdf|docx?|odt|rtf|txt|xlsx?|ods|csv|pptx?|html?|jpe?g|png|tiff?)(?!\p{L})/iu;
const joint = /(?<=[\p{L}\d])[_-](?=[\p{L}\d])/gu;
/** What names a state of a file, and nothing in it: "v7", "final2", "(1)", "2019". */
const version = /(?<![\p{L}\d])(?:v\d{1,3}|final\d{0,2}|\(\d{1,2}\)|\d{1,8})(?![\p{L}\d])/giu;

/**
 * A title that is the name of a file, as words: "wexcombe-history-final2.pdf" → "Wexcombe History". One that is none is
 * given as it is.
 */
export function titleOfFile(title: string): string {
  // Behind a file's name stands the program that shows it.
  const file = title.split(/\s[|–—-]\s/u).find((piece) => ending.test(piece) || /[\p{L}\d]_[\p{L}\d]/u.test(piece));
  if (file === undefined) return title;
  return file
    .replace(ending, '')
    .replace(joint, ' ')
    .replace(version, '')
    .replace(/\s{1,200}/gu, ' ')
    .trim()
    .replace(/(?<!\p{L})\p{Ll}(?=\p{L}{3})/gu, (first) => first.toUpperCase());
}
