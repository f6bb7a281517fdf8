import type { OwnFields } from '../propose';
import { partsIn } from '../said/part';
import { usedOf } from '../said/period';
import { withoutPeriods } from '../said/used-text';
import type { TakenPeriod } from '../types';
import { tellingFinder } from '../words';

const verbs = tellingFinder('is-of');
const links = tellingFinder('beforehand', 'afterwards');
const personal = tellingFinder('bought');
const leading = /^\s{0,80}(?:has had|made of|gemaakt van|van|aus|di|de|en|of|had|in)\s/u;

type Own = Extract<OwnFields, { kind: 'construction' }>;

/** What a sentence says that a part was made of in a period: "Until 1995 the lining was dark red cotton". */
export function constructionIn(sentence: string): { own: Own; backwards: boolean }[] {
  if (personal(sentence).length > 0) return [];
  const found: { own: Own; backwards: boolean }[] = [];
  for (const clause of sentence.split(/;\s?/)) {
    const { text, periods } = withoutPeriods(clause);
    const [part] = partsIn(text);
    const told = periods.filter(({ form }) => form !== 'year');
    const last = found.at(-1);
    const [link] = links(text);
    const both =
      part && link && told.length === 1 && link.start > part.end ? textsAround(text, part.end, link.start) : null;
    if (part && link && told.length === 1) {
      // "brass from 1970 to 1992 and nickel after that"
      const { backwards, ...used } = usedOf(told);
      const next = linked(used.used, link.value);
      if (!both || !next) continue;
      found.push({ own: { kind: 'construction', part: part.value, is: both[0], ...used }, backwards });
      found.push({ own: { kind: 'construction', part: part.value, is: both[1], used: next }, backwards: false });
    } else if (last && link && told.length === 0) {
      const used = linked(last.own.used, link.value);
      const is = used && materialBehind(text, link.end);
      if (is) found.push({ own: { ...last.own, is, used }, backwards: false });
    } else if (part && told.length === 1) {
      const is = materialBehind(text, part.end);
      const { backwards, ...used } = usedOf(told);
      if (is) found.push({ own: { kind: 'construction', part: part.value, is, ...used }, backwards });
    }
  }
  return found;
}

/** What was before and after: the words behind the verb, around their "and". */
function textsAround(text: string, from: number, to: number): [string, string] | null {
  const is = materialBehind(text.slice(0, to), from);
  const pieces = is?.split(/\s(?:and|und|et|e|y|en)\s/) ?? [];
  return pieces.length === 2 && pieces.every((piece) => piece.trim().length >= 3)
    ? [pieces[0]!.trim(), pieces[1]!.trim()]
    : null;
}

function linked(used: Own['used'], link: 'beforehand' | 'afterwards'): TakenPeriod | undefined {
  const [from, to] = (used ?? [null, null]) as TakenPeriod;
  if (link === 'beforehand') return from ? [null, String(Number(from) - 1)] : undefined;
  return to ? [String(Number(to) + 1), null] : undefined;
}

/** The words behind "was", "était en", "war … aus": what the part was. */
function materialBehind(text: string, from: number): string | null {
  const verb = verbs(text).find(({ start }) => start >= from && start - from <= 10);
  if (!verb) return null;
  let is = text.slice(verb.end).split(/[,.(:。]/)[0]!;
  for (let step = 0; step < 3 && leading.test(is); step += 1) is = is.replace(leading, '');
  is = is.trim().replace(/\s{2,80}/g, ' ');
  return is.length >= 3 && is.length <= 60 && !/\d/.test(is) ? is : null;
}
