import { readsExamples } from './said/layout';
import { onePeriod, timeBeside } from './said/one-period';
import type { Proposal } from './types';

/** Whether the page tells of no codes before those that began then; a year that it tells otherwise is the one that it means. */
export function isFirst(beginning: Proposal, found: readonly Proposal[]): boolean {
  if (beginning.kind !== 'stamped') return true;
  const start = onePeriod(beginning.used)?.[0] ?? '';
  return !found.some((one) => {
    if (one === beginning || one.maker !== beginning.maker) return false;
    if (one.kind === 'example') return one.reads.slice(0, 4) < start;
    if (one.kind === 'stamped') return (onePeriod(one.used)?.[0] ?? start) !== start;
    if (one.kind !== 'code-system') return false;
    const years = [onePeriod(one.used)?.[0], ...one.examples.map(({ reads }) => reads.slice(0, 4))];
    return years.some((year) => year != null && year < start);
  });
}

type System = Extract<Proposal, { kind: 'code-system' }>;
type Example = Extract<Proposal, { kind: 'example' }>;

/** Whether a dated code was made while a system was in use, and reads under it as the page says. */
function explains({ maker, layout, used, doubts }: System, { code, reads, ...example }: Example): boolean {
  const year = reads.slice(0, 4);
  const [from, to] = onePeriod(used) ?? [null, null];
  if (maker !== example.maker || doubts.includes('examples-disagree')) return false;
  return year >= (from ?? '0') && year <= (to ?? '9999') && readsExamples(layout, [{ code, reads }]);
}

/** Dated codes told elsewhere on the page are examples of the one system that explains them. */
export function withTheirExamples(proposals: readonly Proposal[]): Proposal[] {
  const systems = proposals.filter((one): one is System => one.kind === 'code-system');
  if (systems.length === 0) return [...proposals];
  const examples = new Map<System, Example[]>();
  const rest = proposals.filter((one) => {
    if (one.kind !== 'example' || one.doubts.length > 0) return true;
    const [system, ...more] = systems.filter((system) => explains(system, one));
    if (!system || more.length > 0) return true;
    examples.set(system, [...(examples.get(system) ?? []), one]);
    return false;
  });
  return rest.map((one) => {
    const own = one.kind === 'code-system' ? examples.get(one) : undefined;
    if (!own || one.kind !== 'code-system') return one;
    const known = new Set(one.examples.map(({ code }) => code));
    const added = own.filter(({ code }) => !known.has(code)).map(({ code, reads }) => ({ code, reads }));
    return { ...one, examples: [...one.examples, ...added], also: [...(one.also ?? []), ...own.map(({ at }) => at)] };
  });
}

const withoutPlant = ({ layout }: System): string =>
  JSON.stringify(layout.filter((slot) => !('plant' in slot || 'separator' in slot)));
const hasPlant = ({ layout }: System): boolean => layout.some((slot) => 'plant' in slot);

/** "From 1972 four digits … since 1988 a letter stands before them": the same digits alone ended when the letter came. */
export function closedByNext(proposals: readonly Proposal[]): Proposal[] {
  const systems = proposals.filter((one): one is System => one.kind === 'code-system');
  return proposals.map((one) => {
    const [from, to] = (one.kind === 'code-system' && onePeriod(one.used)) || [null, null];
    if (one.kind !== 'code-system' || from === null || to !== null || hasPlant(one)) return one;
    const next = systems.flatMap((other) => {
      const [start] = onePeriod(other.used) ?? [null];
      const follows = other.maker === one.maker && hasPlant(other) && withoutPlant(other) === withoutPlant(one);
      return follows && start !== null && start > from ? [start] : [];
    });
    const end = next.length === 1 ? timeBeside([next[0]!, null], 'beforehand')?.[1] : undefined;
    const reaches = end && one.examples.every(({ reads }) => reads.slice(0, 4) <= end);
    return reaches ? { ...one, used: [from, end] } : one;
  });
}
