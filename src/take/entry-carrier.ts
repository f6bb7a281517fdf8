import { andWords } from './and-words';
import type { Say } from './propose';
import { onePeriod, timeBeside } from './said/one-period';
import { readPeriods, type SaidPeriod, usedOf } from './said/period';
import { withoutPeriods } from './said/used-text';
import { isOnPiece, opensPlaceOnPiece } from './said/where';
import type { Proposal, TakenPeriod } from './types';
import { tellingFinder } from './words';

const links = tellingFinder('afterwards');

/** Whether words begin with a place on a piece, or with a time and then such a place: "until 1968 under the flap". */
export const opensInTime = (text: string): boolean =>
  opensPlaceOnPiece(text) || opensPlaceOnPiece(plain(withoutPeriods(text).text));

/** "Then on a leather tab": a word for the time after the one before, and a place. */
function linkedPlace(piece: string): string | null {
  const [link] = links(piece);
  const rest = link && link.start <= 2 ? plain(piece.slice(link.end)) : null;
  return rest !== null && opensPlaceOnPiece(rest) ? rest : null;
}

const stamped = tellingFinder('sits');
/** What stands before a place and is none of it: a colon, "stamped". */
function plain(text: string): string {
  const rest = text.replace(/^[\s,:;–-]{1,80}/u, '').replace(/^は/u, '');
  const verb = stamped(rest)[0];
  const behind = verb?.start === 0 ? rest.slice(verb.end).trimStart() : rest;
  return behind !== rest && opensPlaceOnPiece(behind) ? behind : rest;
}

const relative = /,\s(?:die|der|das|welche[rs]?|which|that|who|qui|où|che|dove|que|donde|dat|waar)\s.{1,200}$/u;
const mostly = tellingFinder('mostly');
/** "Mostly under the flap", "under the flap, mostly", "…, mostly hidden by the lining": without how often it sits there. */
function withoutMostly(text: string): string {
  const hits = mostly(text);
  const own = hits[0]?.start === 0 ? text.slice(hits[0].end).trimStart() : text;
  const behind = mostly(own).find(({ start }) => /[,、]\s?$/.test(own.slice(0, start)));
  return behind ? own.slice(0, Math.max(own.lastIndexOf(',', behind.start), own.lastIndexOf('、', behind.start))) : own;
}
/** "…, on small bags at the base": what is said of other pieces. */
const onOthers =
  /,\s(?:bei|on|for|with|pour|chez|sur les|sui|nei|per|en los|en las|para|bij|voor)\s(?:\p{L}{1,20}\s){0,2}(?:taschen|bags|models|pieces|sacs|modèles|borse|modelli|bolsos|modelos|tassen)(?!\p{L}).{0,200}$/iu;
/** "底の内側に刻印されています": the verb closes the sentence. */
const verbLast = /に(?:刻印|あり|押|入|付|記|打|縫|貼)[^、。]{0,12}[。\s]{0,2}$/u;
const bare = (text: string): string =>
  withoutMostly(text.replace(verbLast, '').replace(onOthers, '').replace(relative, ''))
    .replace(/\s?[([]\s{0,80}[)\]]/g, '')
    .replace(/^[\s,:]{1,80}|[\s,.;]{1,80}$/g, '')
    .trim();

/** Where the code sits, of one time or of several after each other: "until 1968 under the flap, then in the pocket". */
export function carriersOf(
  model: string | null,
  body: string,
  say: Say,
  above: readonly SaidPeriod[] = [],
): Proposal[] {
  const one = (text: string, periods: readonly SaidPeriod[]): Proposal => {
    const { backwards, ...used } = usedOf(periods);
    return say({ kind: 'carrier', ...(model !== null && { model }), where: bare(text), ...used }, [
      backwards && 'backwards',
    ]);
  };
  const pieces = inTurn(body, above);
  if (pieces.length > 1)
    return pieces.map(({ text, used }) =>
      say({ kind: 'carrier', ...(model !== null && { model }), where: bare(text), ...(used && { used }) }),
    );
  const { text, periods } = withoutPeriods(body);
  // Several times that are not told one after the other.
  if (periods.length + (periods.length > 0 ? above.length : 0) > 1) return [];
  return [one(text, periods.length > 0 ? periods : above)];
}

/** "After that, on a sticker": the comma parts no piece. */
const withoutCommas = (text: string): string =>
  links(text).reduceRight((all, { end }) => (all[end] === ',' ? all.slice(0, end) + all.slice(end + 1) : all), text);

/** "内ポケットの革タグ": in Japanese a place has no word before it. */
const isJapanesePlace = (text: string): boolean =>
  /^[\p{Script=Han}\p{Script=Katakana}ーの]{2,30}$/u.test(text) && isOnPiece(text);

const joints = new RegExp(`[;,.]\\s(?:(?:${andWords})\\s)?|、`, 'u');
/** "Under the flap, from 1972 on a tab": what sits somewhere until then, behind which the next piece begins. */
function firstInTurn(
  body: string,
  above: readonly SaidPeriod[],
): { text: string; used: TakenPeriod | undefined; end: number } | null {
  const [, head] = above.length > 0 ? [] : (/^([^,;]{4,60})[,;]\s/u.exec(body) ?? []);
  if (head === undefined || readPeriods(head).length > 0 || !opensPlaceOnPiece(head)) return null;
  const end = head.length + 2;
  const [period] = readPeriods(body.slice(end));
  const isNext =
    period?.form === 'since' && period.start === 0 && opensPlaceOnPiece(plain(body.slice(end + period.end)));
  return isNext ? { text: head, used: timeBeside(onePeriod(period.used), 'beforehand'), end } : null;
}

/** The pieces of a text that each tell a place and its time; none where one of them tells neither. */
function inTurn(body: string, above: readonly SaidPeriod[]): { text: string; used: TakenPeriod | undefined }[] {
  const found: { text: string; used: TakenPeriod | undefined }[] = [];
  const first = firstInTurn(body, above);
  if (first) found.push(first);
  for (const piece of withoutCommas(first ? body.slice(first.end) : body).split(joints)) {
    const own = readPeriods(piece);
    // What heads the whole is the time of its first piece.
    const periods: readonly SaidPeriod[] = found.length === 0 && own.length === 0 ? above : own;
    const text = plain(withoutPeriods(piece).text);
    const linked = linkedPlace(piece);
    const last = found.at(-1);
    const after = linked !== null ? timeBeside(last?.used, 'afterwards') : undefined;
    if (periods.length === 1 && periods[0]!.about.length === 0 && (opensPlaceOnPiece(text) || isJapanesePlace(text)))
      found.push({ text, used: onePeriod(periods[0]!.used) });
    else if (after && periods.length === 0) found.push({ text: linked!, used: after });
    // "Under the flap, beside the seam".
    else if (last && periods.length === 0 && linked === null) last.text += `, ${piece}`;
    else return [];
  }
  return found;
}
