import { readsExamples } from './said/layout';
import { onePeriod, timeBeside } from './said/one-period';
import type { Proposal, TakenPeriod } from './types';

type System = Extract<Proposal, { kind: 'code-system' }>;
type Example = Extract<Proposal, { kind: 'example' }>;

const isSystem = (one: Proposal): one is System => one.kind === 'code-system';

/** The years that a page tells of a maker's codes: the first of any, and those in which they are said to begin. */
interface Known {
  first: string;
  beginnings: Set<string>;
}

function yearsByMaker(found: readonly Proposal[]): Map<string | null, Known> {
  const byMaker = new Map<string | null, Known>();
  for (const one of found) {
    const known = byMaker.get(one.maker) ?? { first: '9999', beginnings: new Set() };
    byMaker.set(one.maker, known);
    const years: (string | null | undefined)[] = [];
    if (one.kind === 'example') years.push(one.reads.slice(0, 4));
    if (isSystem(one)) years.push(onePeriod(one.used)?.[0], ...one.examples.map(({ reads }) => reads.slice(0, 4)));
    for (const year of years) if (year != null && year < known.first) known.first = year;
    const start = one.kind === 'stamped' ? onePeriod(one.used)?.[0] : null;
    if (start != null) known.beginnings.add(start);
  }
  return byMaker;
}

/** Without beginnings of codes before which the page tells of some, or that it tells otherwise: such a year is of a change. */
export function withoutLaterBeginnings(found: readonly Proposal[], beginnings: ReadonlySet<Proposal>): Proposal[] {
  if (beginnings.size === 0) return [...found];
  const byMaker = yearsByMaker(found);
  return found.filter((one) => {
    if (!beginnings.has(one) || one.kind !== 'stamped') return true;
    const known = byMaker.get(one.maker)!;
    return known.beginnings.size === 1 && known.first >= (onePeriod(one.used)?.[0] ?? '');
  });
}

/** Whether a dated code is of the years of a period. */
const isWithin = ({ reads }: Pick<Example, 'reads'>, [from, to]: TakenPeriod): boolean =>
  reads.slice(0, 4) >= (from ?? '0') && reads.slice(0, 4) <= (to ?? '9999');

/** Whether a dated code was made while a system was in use, and reads under it as the page says. */
function explains({ maker, layout, used, doubts }: System, { code, reads, ...example }: Example): boolean {
  if (maker !== example.maker || doubts.includes('examples-disagree')) return false;
  return isWithin({ reads }, onePeriod(used) ?? [null, null]) && readsExamples(layout, [{ code, reads }]);
}

/** More forms, or more dated codes, than a page tells of makers: of such a one each stays as it stands. */
const mostSystems = 20;
const mostExamples = 200;

/** Dated codes told elsewhere on the page are examples of the one system that explains them. */
export function withTheirExamples(proposals: readonly Proposal[]): Proposal[] {
  const systems = proposals.filter(isSystem);
  const loose = proposals.filter(({ kind }) => kind === 'example').length;
  if (systems.length === 0 || systems.length > mostSystems || loose > mostExamples) return [...proposals];
  const examples = new Map<System, Example[]>();
  const rest = proposals.filter((one) => {
    if (one.kind !== 'example' || one.doubts.length > 0) return true;
    const [system, ...more] = systems.filter((system) => explains(system, one));
    if (!system || more.length > 0) return true;
    examples.set(system, [...(examples.get(system) ?? []), one]);
    return false;
  });
  return rest.map((one) => {
    const own = isSystem(one) ? examples.get(one) : undefined;
    if (!own || !isSystem(one)) return one;
    const known = new Set(one.examples.map(({ code }) => code));
    const added = own.filter(({ code }) => !known.has(code)).map(({ code, reads }) => ({ code, reads }));
    return { ...one, examples: [...one.examples, ...added], also: [...(one.also ?? []), ...own.map(({ at }) => at)] };
  });
}

const startOf = (one: System): string | null => onePeriod(one.used)?.[0] ?? null;

/**
 * "From 1972 four digits … since 1988 a letter stands before them": a maker's codes are of one form at a time, and one that is
 * told without its end ended when the next began. Kept open where an example of it is of later years.
 */
export function closedByNext(proposals: readonly Proposal[]): Proposal[] {
  const systems = proposals.filter(isSystem);
  if (systems.length > mostSystems) return [...proposals];
  const starts = new Map<string | null, string[]>();
  for (const one of systems) {
    const start = one.doubts.length === 0 ? startOf(one) : null;
    if (start !== null) starts.set(one.maker, [...(starts.get(one.maker) ?? []), start].sort());
  }
  return proposals.map((one) => {
    const [from, to] = (isSystem(one) && onePeriod(one.used)) || [null, null];
    if (!isSystem(one) || from === null || to !== null) return one;
    const next = starts.get(one.maker)?.find((start) => start > from);
    const end = next === undefined ? undefined : timeBeside([next, null], 'beforehand')?.[1];
    const reaches = end && end >= from && one.examples.every(({ reads }) => reads.slice(0, 4) <= end);
    return reaches ? { ...one, used: [from, end] } : one;
  });
}

const formOf = ({ maker, layout }: System): string =>
  JSON.stringify([maker, layout.filter((slot) => !('separator' in slot))]);

/** A form told twice, once with an example and once with its time, is one; where several times are told, it stays open whose it is. */
export function withTheirTimes(proposals: readonly Proposal[]): Proposal[] {
  const dated = new Map<string, System[]>();
  const plain = proposals.filter((one): one is System => isSystem(one) && one.doubts.length === 0);
  for (const one of plain)
    if (one.used && one.examples.length === 0)
      dated.set(formOf(one), [...(dated.get(formOf(one)) ?? []).slice(0, 1), one]);
  const joined = new Map<System, System>();
  for (const one of plain) {
    const [time, ...more] = one.used || one.examples.length === 0 ? [] : (dated.get(formOf(one)) ?? []);
    if (!time || more.length > 0 || joined.has(time)) continue;
    const period = onePeriod(time.used);
    if (period && one.examples.every((example) => isWithin(example, period))) joined.set(time, one);
  }
  const taken = new Set<Proposal>(joined.values());
  return proposals.flatMap((one) => {
    const other = isSystem(one) ? joined.get(one) : undefined;
    if (!other) return taken.has(one) ? [] : [one];
    const { used, about } = one as System;
    return [{ ...other, used, ...(about && { about }), also: [...(other.also ?? []), one.at] }];
  });
}
