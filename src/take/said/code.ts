/** Cyrillic and Greek capitals that look like Latin ones. Source: Unicode confusables, the capitals of UTS #39. */
const alike: Record<string, string> = Object.fromEntries(
  [...'АВСЕНІЈКМОРЅТХУΑΒΕΖΗΙΚΜΝΟΡΤΥΧ'].map((letter, at) => [letter, 'ABCEHIJKMOPSTXYABEZHIKMNOPTYX'[at]!]),
);
const foreign = new RegExp(`[${Object.keys(alike).join('')}]`, 'g');

/** A code as a maker file writes it, and whether letters stood in it that only look like Latin ones. */
export function plainCode(text: string): { code: string; lookAlike: boolean } {
  const wide = text.normalize('NFKC').trim();
  const code = wide.replace(foreign, (letter) => alike[letter]!);
  return { code, lookAlike: code !== wide };
}

/** A plant's code: one to three capitals, with digits at most behind them. */
export const isPlantCode = (text: string): boolean => /^[A-Z]{1,3}\d?$/.test(text);

/** A plant's code in a cell or entry, with what stands behind it in brackets. */
export interface ListedCode {
  code: string;
  lookAlike: boolean;
  behind: string | null;
}

/** The number of a workshop. */
export const isPlantNumber = (text: string): boolean => /^\d{1,2}$/.test(text);

const joints = /(?:\s?[,;/&+・、\n]\s?|\s(?:and|und|et|y|e|en|or)\s|\s)/;
const listed = new RegExp(`([^\\s,;()/&+・、]{1,8})\\s?(?:\\(([^()]{1,60})\\))?(?:${joints.source}|\\.?$)`, 'gu');

/** Several plants' codes in one cell or entry: "AB, AC (until 1998), AF"; null when anything else stands there. */
export function plantCodes(text: string): ListedCode[] | null {
  const plain = text.trim();
  const found: ListedCode[] = [];
  let reached = 0;
  for (const match of plain.matchAll(listed)) {
    if (match.index !== reached) return null;
    reached += match[0].length;
    const one = plainCode(match[1]!.replace(/[.:*†]$/, ''));
    if (!isPlantCode(one.code)) return null;
    found.push({ ...one, behind: match[2] ?? null });
  }
  return found.length > 0 && reached === plain.length ? found : null;
}
