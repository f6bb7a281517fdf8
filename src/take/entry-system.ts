import { foldWords } from '../text';
import type { Say } from './propose';
import { deniesCode } from './prose/told-sentence';
import { plainExamples, readExamples } from './said/example';
import { doubtsOfForm } from './said/form-doubts';
import { rolesNamed } from './said/label';
import { yearsShown } from './said/layout-added';
import { layoutTold } from './said/layout-referred';
import type { SaidLayout } from './said/layout-words';
import { readCounts } from './said/number';
import { onePeriod, timeFrom } from './said/one-period';
import { readPeriods, usedOf } from './said/period';
import { withoutPeriods } from './said/used-text';
import type { Proposal } from './types';
import { tellingFinder, wholeWords } from './words';

const noCode = tellingFinder('no-code');
const noneAtAll = wholeWords('none-at-all');
const codeWords = tellingFinder('code');
const units = tellingFinder('year', 'month', 'week', 'day', 'plant', 'serial');

/** What is denied before a form is told: "no date; …". */
const denial = /^(?:no|sans|kein[e]?|ohne|senza|nessuna?|sin|geen|zonder)\s[^;,.]{2,24}[;,.]\s/iu;

/** A period at the head, and behind it how codes were built, or that there were none. */
export function systemOf(
  head: string,
  body: string,
  day: string,
  say: Say,
  earlier: SaidLayout | null,
): Proposal[] | null {
  const { backwards, ...used } = usedOf(readPeriods(head));
  const isDenied = readExamples(body, day).length === 0 && readCounts(body).length === 0 && deniesCode(body);
  // "No date; a serial number of eight figures" tells a form.
  const tellsForm = readCounts(body).length > 0;
  if (
    (noCode(body).length > 0 && !tellsForm) ||
    isDenied ||
    noneAtAll.has(foldWords(body.replace(/[\s.!]{1,4}$/, '')).text)
  ) {
    const stamped = timeFrom(onePeriod(used.used), used.about);
    return stamped ? [say({ kind: 'stamped', ...stamped })] : null;
  }
  const examples = readExamples(body, day);
  const told = tellsForm ? body.replace(denial, '') : body;
  const settled = layoutTold(told, examples, earlier);
  const plain = plainExamples(examples);
  if (!settled) return plain.length > 0 ? plain.map((one) => say({ kind: 'example', ...one })) : null;
  const shown = plain.length > 0 ? plain : yearsShown(settled.layout, body);
  const doubts = doubtsOfForm(settled, examples, backwards);
  return [say({ kind: 'code-system', ...used, layout: settled.layout, examples: shown }, doubts)];
}

const asksSince = tellingFinder('asks-since');

/** "Since when do the bags carry a code?" "Since 1962." */
export function beginningOf(head: string, body: string, say: Say): Proposal[] | null {
  if (asksSince(head).length === 0 || codeWords(head).length === 0) return null;
  const [period] = readPeriods(body);
  const opens = period?.start === 0 && /^[\s.。!]{0,3}(?:$|\p{Lu})/u.test(body.slice(period.end));
  if (!opens || period.used[0] === null) return null;
  const about = period.about.includes('from') ? { about: ['from' as const] } : {};
  return [say({ kind: 'stamped', used: [period.used[0], null], ...about })];
}

/** "Five-figure code (1969 to 1993)": a head that tells of a code and its period; what it counts belongs to the body. */
export function systemOfHead(
  head: string,
  body: string,
  day: string,
  say: Say,
  earlier: SaidLayout | null,
): Proposal[] | null {
  const { text, periods } = withoutPeriods(head);
  if (periods.length !== 1 || periods[0]!.form === 'year') return null;
  const names = codeWords(text).length > 0 || rolesNamed(text).includes('format');
  if (!names && readCounts(body).length === 0) return null;
  const counts = readCounts(text);
  const inBody = new Set(units(body).map(({ value }) => value));
  // "Two-figure code": "Only the year: 61 is 1961".
  if (
    counts.length === 1 &&
    counts[0]!.of === 'digits' &&
    counts[0]!.count === 2 &&
    inBody.size === 1 &&
    inBody.has('year')
  ) {
    const { backwards, ...used } = usedOf(periods);
    const layout = [{ year: 2 as const }];
    const own = { kind: 'code-system' as const, ...used, layout, examples: yearsShown(layout, body) };
    return [say(own, [backwards && 'backwards'])];
  }
  const told = counts.length > 0 ? `${text.replace(/[()[\]]/g, ' ')}. ${body}` : body;
  const found = systemOf(head, told, day, say, readExamples(told, day).length > 0 ? earlier : null);
  return found?.every(({ kind }) => kind === 'code-system') ? found : null;
}
