import type { Part } from '../claim/types';
import { partWords } from '../text';
import { andWords } from './and-words';
import type { Inline } from './page/inline';
import { type Context, type Say, sayerOf } from './propose';
import { constructionIn } from './prose/construction';
import { blanked } from './said/blanked';
import { plainMaterial } from './said/material';
import { onePeriod, timeBeside } from './said/one-period';
import { partsIn } from './said/part';
import { readPeriods, type SaidPeriod, usedOf } from './said/period';
import type { Proposal, TakenPeriod } from './types';
import { tellingFinder } from './words';

const codeWords = tellingFinder('code');
const links = tellingFinder('afterwards', 'beforehand');
const since = tellingFinder('since');
const always = tellingFinder('always');

const shortUntil = /^(?:to|through|thru)\s/iu;

/** "Striped cotton to 1995": in an entry of what a part was, the small word is an end and no date of the piece. */
function toYear(piece: string, period: SaidPeriod): SaidPeriod {
  const ends = period.form === 'year' && shortUntil.test(piece.slice(period.start, period.end));
  return ends ? { ...period, used: [null, period.used[1]], form: 'until' } : period;
}

/** "Printed cotton lining": the part's own name behind its material. */
function withoutPart(is: string, part: Part): string {
  const last = partsIn(is).at(-1);
  return last && last.value === part && last.end === is.length && last.start > 2 ? is.slice(0, last.start).trim() : is;
}

/** "Always pigskin": at all times, in whatever words. */
function withoutAlways(text: string): string {
  const [said] = always(text);
  return plainMaterial(said ? text.slice(0, said.start) + text.slice(said.end).trimStart() : text);
}

/** "Later grey microfibre", or "grey microfibre since": a word for a time that another year tells. */
function linkIn(text: string): { value: 'afterwards' | 'beforehand'; start: number; end: number } | undefined {
  const [link] = links(text);
  const last = since(text).at(-1);
  const closes = last && /^[\s.]{0,4}$/.test(text.slice(last.end));
  return link ?? (closes ? { ...last, value: 'afterwards' } : undefined);
}

/** Under a heading that names a part, a line or entry that tells of what it was in a time: "until 1968 suede". */
export function readOfPart(item: Inline, context: Context): Proposal[] | null {
  const { text } = item;
  if (context.part === null || text.length > longestOfPart || codeWords(text).length > 0) return null;
  if (!readPeriods(text).some(({ form }) => form !== 'year')) return null;
  // "Buckles of steel until 1970", under a heading of trims: the line names a thing of its own.
  if (/^\p{Lu}[\p{L}’'-]+(?:\s\p{Ll}[\p{L}’'-]*){0,3}\s(?:en|aus|made of)\s\p{L}/u.test(text)) return null;
  const say = sayerOf(item, text, context);
  // "It was of linen until 1979 and of nylon since 1980": the part stands in the heading.
  const told = constructionIn(`${partWords[context.part][0]} ${text.replace(pronoun, '')}`);
  const found =
    told.length > 0
      ? told.map(({ own, backwards }) => say(own, [backwards && 'backwards']))
      : constructionOf(context.part, text, say);
  return found.length > 0 ? found : null;
}
const longestOfPart = 120;
const pronoun = /^(?:it|they|these|elles?|ils?|die|der|das|sie|es|er|deze|ze|hij|quest[aei])\s(?=\p{Ll})/iu;

const joints = new RegExp(`[;,、]\\s?|\\.\\s(?=\\p{Lu})|\\s(?:${andWords})\\s`, 'u');
/** "green cotton until 1992; later grey microfibre": one after the other; `above` is told of all before the colon. */
export function constructionOf(part: Part, body: string, say: Say, above: readonly SaidPeriod[] = []): Proposal[] {
  let last: TakenPeriod | undefined;
  let hedged = false;
  // A comma parts two facts where each has its own years, else it is part of one.
  const isTimed = (piece: string) => readPeriods(piece).length > 0 || linkIn(piece) !== undefined;
  const [byComma, byAnd] = [body.split(/[;,、]\s?|\.\s(?=\p{Lu})/u), body.split(joints)];
  const pieces = [byComma, byAnd].find((all) => all.length > 1 && all.every(isTimed));
  return (pieces ?? body.split(/;\s?|\.\s(?=\p{Lu})/u)).flatMap((piece) => {
    const periods = readPeriods(piece).map((period) => toYear(piece, period));
    const text = blanked(piece, periods);
    const { backwards, ...told } = usedOf(periods.length > 0 ? periods : above);
    // "Silk until 1980, cotton": two materials, of which one has no time.
    if (periods.length > 0 && /\S\s{3,80}(?:,\s?|(?=\p{L}))\p{L}{3}/u.test(text.trim())) return [];
    const link = linkIn(text);
    const linked = link && timeBeside(last, link.value);
    const used = told.used ?? linked;
    const bare = link ? text.slice(0, link.start) + text.slice(link.end) : text;
    const is = withoutPart(withoutAlways(bare.replace(/[([]\s{0,80}[)\]]/g, '').replace(/^[\s,:は]{1,80}/, '')), part);
    // "Tab: the strip on which the code stands" tells what a word means.
    const isLong = is.length >= 3 || /^\p{Script=Han}{1,2}$/u.test(is);
    if (!isLong || is.length > 80 || codeWords(is).length > 0) return [];
    last = onePeriod(used);
    // "Until about 1975 linen, afterwards rayon": the hedge is of both.
    const about = told.used
      ? told.about
      : linked && hedged
        ? [link.value === 'afterwards' ? ('from' as const) : ('to' as const)]
        : undefined;
    hedged = about?.includes(link?.value === 'beforehand' ? 'from' : 'to') ?? false;
    return [
      say({ kind: 'construction', part, is, ...(used && { used }), ...(about && { about }) }, [
        backwards && 'backwards',
      ]),
    ];
  });
}
