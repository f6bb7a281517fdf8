import type { MakerFile } from '../maker/types';
import { anyOf, findItemCodes, isAboutAnother, phrasePattern, withoutEnd, wordsOf } from '../text';
import { codesByLayout } from './code-by-layout';
import { type ClaimDraft, type Passage, saidIn } from './passage';
import { hasUnitBehind } from './unit-behind';

/** Words that announce a code. Common practice, no source. */
const cue = phrasePattern(wordsOf('code-cue'));
/** "Colour code", "code postal": no code of the maker's. */
const otherCode = phrasePattern(wordsOf('other-code'));
/** Between cue and code; the code itself is in capitals or digits, at least two of them digits. */
const between = new RegExp(
  `^\\s{0,2}(?:(?:${anyOf(wordsOf('announces-code'))}|n[or]?\\.)\\s{0,2}){0,7}[:=\\-–#"'(「\\s]{0,4}$`,
  'iu',
);
/** "K V 0 9 1 5", a letter in brackets for one in a frame, or up to four groups. */
const codeShape =
  /(?:[A-Z0-9] ){3,15}[A-Z0-9](?![.\-/]?[A-Z0-9])|(?:\([A-Z0-9]\)|\[[A-Z0-9]\]|[A-Z0-9])(?:[.\-/]?[A-Z0-9]){0,15}(?: [A-Z0-9](?:[.\-/]?[A-Z0-9]){0,7}){0,3}/gy;
const longestGap = 48;
/** Two codes that begin closer than this are one. */
const leastApart = 12;

const looksLikeCode = (text: string) =>
  (text.match(/\d/g) ?? []).length >= 2 && text.replace(/[^A-Z0-9]/g, '').length >= 3;

/** The code at a position, cut at the first word that cannot belong to it. */
function codeAt(text: string, start: number): string | null {
  codeShape.lastIndex = start;
  const match = codeShape.exec(text);
  if (!match) return null;
  const words = match[0].split(' ');
  while (words.length > 0) {
    const code = withoutEnd(words.join(' '), /[.\-/]/);
    const end = start + code.length;
    // A code in quotes is closed by one that is no inch.
    const behind = text[start - 1] === '"' && text[end] === '"' ? end + 1 : end;
    if (
      looksLikeCode(code) &&
      !/^[\p{Script=Latin}\p{N}]/u.test(text.slice(behind, behind + 1)) &&
      !hasUnitBehind(text, behind)
    )
      return code;
    words.pop();
  }
  return null;
}

/** Whether a code may begin here: with a capital, a digit, or one of these in brackets. */
const opensCode = (text: string, at: number) =>
  /^(?:[A-Z0-9]|\([A-Z0-9]\)[A-Z0-9 ]|\[[A-Z0-9]\][A-Z0-9 ])/.test(text.slice(at, at + 4));

/** Codes quoted after a word that announces them ("date code KV0915", "stamped 854"). */
function announced(from: Passage): { start: number; code: string }[] {
  const found: { start: number; code: string }[] = [];
  const others = [...from.folded.text.matchAll(otherCode)].map(({ index, 0: words }) => [index, index + words.length]);
  for (const match of from.folded.text.matchAll(cue)) {
    const end = match.index + match[0].length;
    if (others.some(([first, last]) => first! < end && match.index < last!)) continue;
    const limit = Math.min(from.folded.text.length, end + longestGap);
    for (let start = end; start < limit; start += 1) {
      if (!opensCode(originalCase(from), start) || /[\p{Script=Latin}\p{N}]/u.test(upper(from, start - 1))) continue;
      if (!between.test(from.folded.text.slice(end, start))) break;
      const code = codeAt(originalCase(from), start);
      if (code) {
        found.push({ start, code });
        break;
      }
    }
  }
  return found;
}

const plain = (unit: string) => unit.normalize('NFKC');
const caseCache = new WeakMap<Passage, string>();

/** The folded text with the source's own case; both have the same length. */
function originalCase(from: Passage): string {
  const known = caseCache.get(from);
  if (known !== undefined) return known;
  const { at, source, text } = from.folded;
  // Full-width letters are capitals too.
  const own = (unit: string, index: number) =>
    /[a-z]/.test(unit) ? plain(source[at?.[index] ?? index] ?? unit) : unit;
  const kept = Array.from({ length: text.length }, (_, index) => own(text[index] as string, index)).join('');
  caseCache.set(from, kept);
  return kept;
}
const upper = (from: Passage, index: number) => originalCase(from)[index] ?? '';

/** Codes that the seller quotes, as written. */
export function codeClaims(passages: Passage[], makers: MakerFile[]): ClaimDraft[] {
  return passages.flatMap((from) => {
    const said = announced(from);
    const near = new Set(
      said.flatMap(({ start }) => Array.from({ length: leastApart * 2 - 1 }, (_, at) => start - leastApart + 1 + at)),
    );
    const shops = findItemCodes(from.text);
    const others = codesByLayout(from.folded.text, originalCase(from), makers).filter(({ start }) => {
      const at = from.folded.at?.[start] ?? start;
      return !near.has(start) && !shops.some((number) => number.start <= at && at < number.end);
    });
    const { at } = from.folded;
    const place = (item: { start: number; code: string }) => {
      const start = at ? (at[item.start] as number) : item.start;
      const end = at ? (at[item.start + item.code.length - 1] as number) + 1 : item.start + item.code.length;
      return { start, end, words: from.text.slice(start, end) };
    };
    const seen = new Set<number>();
    return [...said.map((item) => ({ ...item, confidence: 0.85 })), ...others]
      .sort((a, b) => a.start - b.start)
      .filter((item) => !seen.has(item.start) && seen.add(item.start))
      .filter((item) => !isAboutAnother(from.folded.text, item.start, item.start + item.code.length))
      .map(
        (item): ClaimDraft => ({
          kind: 'code',
          code: item.code,
          ...saidIn(from, place(item), item.confidence),
        }),
      );
  });
}
