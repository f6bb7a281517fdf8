import { findPlaces } from '../text';
import { andWords } from './and-words';
import type { Say } from './propose';
import { plainCode, plantCodes } from './said/code';
import { readPeriods, type SaidPeriod, usedOf } from './said/period';
import { readPlace } from './said/place';
import { isPeriod, withoutPeriods } from './said/used-text';
import type { Proposal } from './types';
import { tellingFinder } from './words';

const anotherCode = /[,;]\s(?:\p{Ll}{1,12}\s|\d{4}\s){1,4}\p{Lu}\s\p{Lu}\p{Ll}/u;
/** A code and the place that an entry tells of it; `above` is the time that heads it, `ofPlants` whether it stands among workshops. */
export function plantOf(
  code: string,
  lookAlike: boolean,
  body: string,
  say: Say,
  above: readonly SaidPeriod[] = [],
  ofPlants = false,
): Proposal[] | null {
  // "KV = Belgium, HJ = France": several in one line are read as prose.
  if (
    /(?<![\p{L}\d])\p{Lu}{1,3}\d?\s?[=:：＝]/u.test(body) ||
    /^\p{Lu}\s\p{Lu}\p{Ll}.{1,60},\s\p{Lu}\s\p{Lu}\p{Ll}/u.test(body)
  )
    return null;
  // "Fürth, since 1988 also Z Zagreb": another code follows.
  if (anotherCode.test(body)) return null;
  const { text: told, periods } = withoutPeriods(body.replace(/(?<=\p{L}{4}|\d{4})\.\s\p{Lu}.{0,300}$/su, ''));
  // "Galashiels. The old mill by the river": what the next sentence says is no part of the name.
  const text = told.replace(/(?<=\p{L}{4})\.\s\p{Lu}.{0,300}$/su, '');
  // A name in kanji may be any word, but on a page of workshops.
  const inCell = ofPlants ? readPlace(text.replace(/[（(]\s{0,80}[）)]/gu, ' '), 'cell') : null;
  const inWords = readPlace(text);
  const place = inWords?.name === undefined ? (inCell ?? inWords) : inWords;
  if (!place) return null;
  const { backwards, ...used } = usedOf(periods.length > 0 ? periods : above);
  return [say({ kind: 'plant', code, ...place, ...used }, [backwards && 'backwards', lookAlike && 'look-alike'])];
}

const longestLabel = 30;
const ofPlants = tellingFinder('plant');
/** "Since 1988 also", before a code. */
const listJoint = /[;、]\s?|,\s(?=(?:\p{Ll}{2,8}\s\d{4}\s(?:\p{Ll}{2,6}\s)?)?\p{Lu}{1,3}\d?(?:\s?[=:：＝(–-]|\s))/u;
const codeOfPiece =
  /^(?:(?:and|und|et|e|y|en)\s)?(\p{Ll}{2,8}\s\d{4}\s(?:\p{Ll}{2,6}\s)?)?(\p{Lu}{1,3}\d?)(?:\s?[=:：＝–-]\s?|\s(?=\p{Lu}\p{Ll})|(?=[（(]))(.{2,80})$/u;
/** "Laboratori": "M Matera; P Potenza (fino al 1988)": a label that names workshops, and each code with its town. */
export function plantsOfLabel(head: string, body: string, say: Say): Proposal[] | null {
  if (head.length > longestLabel || ofPlants(head).length === 0) return null;
  const pieces = body.replace(/[.。\s]{1,4}$/u, '').split(listJoint);
  const told = pieces.map((piece) => {
    const [, time, code, rest] = codeOfPiece.exec(piece.trim()) ?? [];
    const plain = code === undefined ? null : plainCode(code);
    return (
      plain &&
      plantOf(
        plain.code,
        plain.lookAlike,
        `${rest!.replace(/^[（(](.*)[）)]$/u, '$1')}${time === undefined ? '' : ` (${time.trim()})`}`,
        say,
        [],
        true,
      )
    );
  });
  return pieces.length > 1 && told.every((one) => one !== null) ? told.flatMap((one) => one!) : null;
}

const rowJoint = new RegExp(`\\s?[,;、]\\s(?:(?:${andWords})[,\\s]\\s?)?|\\s(?:${andWords}),?\\s`, 'u');
/** What of a body lists names, behind what heads them ("The factories: Hitchin, Luton"). */
const rowOf = (body: string): string[] =>
  body
    .replace(/^[^:：]{3,30}[:：]\s/u, '')
    .replace(/(,\s)((?:from|since|until|ab|seit|bis|dès|depuis|dal|desde|vanaf|sinds)\s\d{4}),\s/giu, '$1$2 ')
    .split(rowJoint)
    .filter((piece) => piece.trim() !== '');
/** Whether a body lists several towns, and not one with its country. */
export const isRow = (body: string): boolean => {
  const pieces = rowOf(body);
  return pieces.length > 2 || (pieces.length === 2 && pieces.every((piece) => findPlaces(piece).length === 0));
};
/** "H, L and S": "Hitchin, Luton and, from 1984, Sligo": each code with the town in its place; null where they are not as many. */
export function plantsOfRow(
  codes: readonly { code: string; lookAlike: boolean }[],
  body: string,
  say: Say,
): Proposal[] | null {
  const pieces = rowOf(body);
  if (pieces.length !== codes.length) return null;
  const plants = codes.map(({ code, lookAlike }, at) => plantOf(code, lookAlike, pieces[at]!, say));
  return plants.every((one) => one !== null) ? plants.flatMap((one) => one!) : null;
}

/** "A (Aalen): 1954 to 1992": a code, its place in brackets, and its time. */
export function plantInBracket(head: string, body: string, say: Say): Proposal[] | null {
  const [one, ...more] = isPeriod(body) ? (plantCodes(head.normalize('NFKC')) ?? []) : [];
  const place = one?.behind && more.length === 0 ? readPlace(one.behind, 'cell') : null;
  if (!one || !place) return null;
  const { backwards, ...used } = usedOf(readPeriods(body));
  return [
    say({ kind: 'plant', code: one.code, ...place, ...used }, [
      backwards && 'backwards',
      one.lookAlike && 'look-alike',
    ]),
  ];
}

/** "France: AB, AC (until 1998)". */
export function plantsOfCountry(head: string, body: string, say: Say): Proposal[] | null {
  const [country] = findPlaces(head);
  if (country?.form !== 'name' || head.length - (country.end - country.start) > 2) return null;
  const codes = plantCodes(body);
  if (!codes) return null;
  return codes.map(({ code, lookAlike, behind }) => {
    const { backwards, ...used } = usedOf(readPeriods(behind ?? ''));
    const doubts = [backwards && ('backwards' as const), lookAlike && ('look-alike' as const)];
    return say({ kind: 'plant', code, place: country.place, ...used }, doubts);
  });
}
