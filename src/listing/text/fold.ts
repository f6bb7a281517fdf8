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
  '。': '.',
  '、': ',',
  '￡': '£',
  '￥': '¥',
};

/** Soft hyphen, zero-width characters, bidi marks and isolates, the byte order mark, combining accents. */
const silent = (code: number) =>
  code === 0xad ||
  code === 0x61c ||
  (code >= 0x200b && code <= 0x200f) ||
  (code >= 0x202a && code <= 0x202e) ||
  (code >= 0x2060 && code <= 0x2069) ||
  code === 0xfeff ||
  (code >= 0x300 && code <= 0x36f);

const digitZeros = [0x660, 0x6f0, 0x966, 0x2080, 0xff10];

/** One UTF-16 unit folded to one unit; the silent ones are dealt with before. */
function foldUnit(unit: string, code: number): string {
  if (code === 0xa0 || (code >= 0x2000 && code <= 0x200a) || code === 0x202f || code === 0x205f || code === 0x3000)
    return ' ';
  const zero = digitZeros.find((first) => code >= first && code <= first + 9);
  if (zero !== undefined) return String(code - zero);
  const plain = single[unit];
  if (plain) return plain;
  return code >= 0xff01 && code <= 0xff5e ? String.fromCharCode(code - 0xfee0) : unit;
}

const needsFolding = /[^\n\r\t -~]|`/;

/** Plain spaces, quotes, digits and no invisible characters; letters keep their case and accents. */
export function foldText(source: string): Folded {
  if (!needsFolding.test(source)) return { source, text: source, at: null };
  const at = new Uint32Array(source.length);
  const pieces: string[] = [];
  let length = 0;
  for (let index = 0; index < source.length; index += 1) {
    const code = source.charCodeAt(index);
    if (code < 0x80 && code !== 0x60) pieces.push(source[index] as string);
    else if (silent(code)) continue;
    else pieces.push(foldUnit(source[index] as string, code));
    at[length] = index;
    length += 1;
  }
  return { source, text: pieces.join(''), at: length === source.length ? null : at.slice(0, length) };
}

const lowered = new Map<string, string>();

/** Small letter without accent, one unit long; letters whose small form is longer stay as they are. */
function lowerUnit(unit: string): string {
  const known = lowered.get(unit);
  if (known !== undefined) return known;
  let small = unit.toLowerCase();
  if (small.length !== 1) small = unit;
  const code = small.charCodeAt(0);
  if ((code >= 0xc0 && code < 0x250) || (code >= 0x1e00 && code < 0x1f00)) {
    const base = small.normalize('NFD');
    if (base.charCodeAt(0) < 0x80) small = base[0] as string;
  }
  lowered.set(unit, small);
  return small;
}

/** As `foldText`, in small letters and without the accents of Latin letters: "Années" becomes "annees". */
export function foldWords(source: string): Folded {
  const folded = foldText(source);
  const text = folded.text.replace(/[A-Z]+|[^\0-\x7f]/g, (found) =>
    found.charCodeAt(0) < 0x80 ? found.toLowerCase() : lowerUnit(found),
  );
  return { ...folded, text };
}

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
