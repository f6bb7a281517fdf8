import type { Entry } from './entry';
import { systemOf } from './entry-system';
import { type Context, sayerOf } from './propose';
import { readExamples } from './said/example';
import { rolesNamed } from './said/label';
import { readPeriods } from './said/period';
import { isPeriod } from './said/used-text';
import type { Proposal } from './types';
import { tellingFinder } from './words';

const ofCode = tellingFinder('code', 'letters', 'digits', 'system-word');
const units = tellingFinder('year', 'month', 'week', 'quarter', 'letters', 'digits', 'plant');

/** Whether an entry tells a part of how a code is built: "Letters: the workshop". */
const tellsPart = ({ head, body }: Entry): boolean =>
  (ofCode(head).length > 0 || rolesNamed(head).includes('format')) && units(body).length > 0;

/**
 * Entries that tell one code between them: "Code: two letters and four digits", "Letters: workshop", "Digits: week and year",
 * "Example: VI1287 (week 12 of 1987)". Null where they do not; `rest` are the entries that tell something else.
 */
export function codeOfEntries(
  entries: readonly (Entry | null)[],
  context: Context,
  day: string,
): { found: Proposal[]; rest: Set<number> } | null {
  const all = entries.flatMap((entry, at) => (entry && readPeriods(entry.head).length === 0 ? [{ entry, at }] : []));
  const isShown = ({ entry: { head, body } }: (typeof all)[number]) =>
    (rolesNamed(head).includes('example') || ofCode(head).length > 0) && readExamples(body, day).length > 0;
  const shown = all.filter(isShown);
  const parts = all.filter((one) => !shown.includes(one) && tellsPart(one.entry));
  if (shown.length !== 1 || parts.length === 0) return null;
  const time = all.find(({ entry: { head, body } }) => rolesNamed(head).includes('period') && isPeriod(body));
  const own = [...parts, ...shown];
  const text = own.map(({ entry: { head, body } }) => `${head}: ${body.replace(/[.;,\s]{1,4}$/, '')}`).join('. ');
  const { whole } = shown[0]!.entry;
  const say = sayerOf({ ...whole, text: own.map(({ entry }) => entry.whole.text).join(' … ') }, text, context);
  // "Week and year, used 1955–1989": the time within what tells how it was built.
  const within = parts.flatMap(({ entry: { body } }) =>
    readPeriods(body).flatMap(({ form, start, end }) => (form === 'year' ? [] : [body.slice(start, end)])),
  );
  const inParts = within.length === 1 ? within[0] : undefined;
  const found = systemOf(time?.entry.body ?? inParts ?? '', text, day, say, context.earlier);
  if (!found?.every(({ kind, doubts }) => kind === 'code-system' && doubts.length === 0)) return null;
  const used = new Set([...own, ...(time ? [time] : [])].map(({ at }) => at));
  return { found, rest: new Set(entries.flatMap((_, at) => (used.has(at) ? [] : [at]))) };
}
