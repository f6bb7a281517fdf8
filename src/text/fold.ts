/**
 * Text folded for matching, with the way back: characters that print nothing are dropped, the many spaces, quotes and
 * digits become the plain ones. `at[i]` is where folded character `i` stands in the source.
 */
export interface Folded {
  source: string;
  text: string;
  /** Null when nothing was dropped, so that positions are the same. */
  at: Uint32Array | null;
}

const single: Record<string, string> = {
  '’': "'",
  '‘': "'",
  ʼ: "'",
  ʻ: "'",
  '′': "'",
  '‵': "'",
  '`': "'",
  '´': "'",
  '″': '"',
  '“': '"',
  '”': '"',
  '„': '"',
  '−': '-',
  '‐': '-',
  '‑': '-',
  '‒': '-',
  '٬': ',',
  '٫': '.',
  '￡': '£',
  '￥': '¥',
};

/** Soft hyphen, zero-width characters, bidi marks and isolates, the byte order mark, combining accents. */
const silent = /[\u00ad\u061c\u200b-\u200f\u202a-\u202e\u2060-\u2069\ufeff]|[\u0300-\u036f]/g;
const spaces = /[\u00a0\u2000-\u200a\u202f\u205f\u3000]/g;
const digits = /[\u0660-\u0669\u06f0-\u06f9\u0966-\u096f\u2080-\u2089]/g;
const fullWidth = /[\uff01-\uff5e]/g;
const quotes = new RegExp(`[${Object.keys(single).join('')}]`, 'g');
const anyOfThem = new RegExp([silent, spaces, digits, fullWidth, quotes].map((pattern) => pattern.source).join('|'));
const digitZeros = [0x660, 0x6f0, 0x966, 0x2080];

/** The characters that are replaced one for one, so that positions stay. */
const plainUnits = (text: string): string =>
  text
    .replace(spaces, ' ')
    .replace(quotes, (unit) => single[unit] as string)
    .replace(fullWidth, (unit) => String.fromCharCode(unit.charCodeAt(0) - 0xfee0))
    .replace(digits, (unit) => {
      const code = unit.charCodeAt(0);
      const zero = digitZeros.find((first) => code >= first && code <= first + 9) as number;
      return String(code - zero);
    });

/** Where the characters that are kept stand in the source; null when all are kept. */
function keptPositions(source: string): Uint32Array | null {
  const at = new Uint32Array(source.length);
  let [length, from] = [0, 0];
  const keepUpTo = (to: number) => {
    for (let index = from; index < to; index += 1, length += 1) at[length] = index;
  };
  for (const { index } of source.matchAll(silent)) {
    keepUpTo(index);
    from = index + 1;
  }
  if (from === 0) return null;
  keepUpTo(source.length);
  return at.slice(0, length);
}

/** Plain spaces, quotes, digits and no invisible characters; letters keep their case and accents. */
export function foldText(source: string): Folded {
  if (!anyOfThem.test(source)) return { source, text: source, at: null };
  const at = keptPositions(source);
  return { source, text: plainUnits(at ? source.replace(silent, '') : source), at };
}

const bases = new Map<string, string>();

/** The letter without its accents when that leaves one of a to z. */
function baseOf(letter: string): string {
  const known = bases.get(letter);
  if (known !== undefined) return known;
  const plain = letter.normalize('NFD');
  const base = plain.charCodeAt(0) < 0x80 ? (plain[0] as string) : letter;
  bases.set(letter, base);
  return base;
}

const accented = /[\u00c0-\u024f\u1e00-\u1eff]+/g;
/** Capitals whose small form has another length ("İ") stay as they are. */
const smallLetters = (text: string): string => {
  const small = text.toLowerCase();
  if (small.length === text.length) return small;
  return Array.from({ length: text.length }, (_, index) => {
    const unit = (text[index] as string).toLowerCase();
    return unit.length === 1 ? unit : (text[index] as string);
  }).join('');
};

/** As `foldText`, in small letters and without the accents of Latin letters: "Années" becomes "annees". */
export function foldWords(source: string): Folded {
  const folded = foldText(source);
  return {
    ...folded,
    text: smallLetters(folded.text).replace(accented, (run) =>
      run.length === 1 ? baseOf(run) : Array.from(run, baseOf).join(''),
    ),
  };
}

/** Words as a folded text has them: `has` takes a folded word. */
export const foldedSet = (words: readonly string[]): ReadonlySet<string> =>
  new Set(words.map((word) => foldWords(word).text));

/** A half-open range of the folded text, as a range of the source with its exact words. */
export function sourceRange(folded: Folded, start: number, end: number): { start: number; end: number; words: string } {
  if (end <= start) return { start: 0, end: 0, words: '' };
  const from = folded.at ? (folded.at[start] as number) : start;
  const to = folded.at ? (folded.at[end - 1] as number) + 1 : end;
  return { start: from, end: to, words: folded.source.slice(from, to) };
}

/** A value said in a text: the range is half-open and `words` is exactly that slice. */
export interface Said<T> {
  value: T;
  start: number;
  end: number;
  words: string;
}
