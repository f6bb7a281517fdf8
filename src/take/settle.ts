import { unknownPlace } from '../place';
import { meansModel } from './prose/models';
import { workshopDigits } from './said/layout';
import { onePeriod } from './said/one-period';
import { closedByNext, withoutLaterBeginnings, withTheirExamples, withTheirTimes } from './settle-systems';
import type { Doubt, Proposal, TakenPeriod } from './types';
import { tellingFinder } from './words';

const produced = tellingFinder('produced');

/** What an earlier statement of the page is taken back on: a plant's code, before so many proposals. */
export interface Retraction {
  code: string;
  before: number;
  /** The town that it is taken back of; of any where none is named. */
  name?: string;
}
const isTakenBack = (proposal: Proposal, at: number, retractions: readonly Retraction[]): boolean =>
  proposal.kind === 'plant' &&
  retractions.some(
    ({ code, before, name }) => code === proposal.code && at < before && (name === undefined || name === proposal.name),
  );

const common = new Set(['words', 'at', 'also', 'source', 'doubts', 'ticked']);
/** What a proposal says, apart from where and in which words. */
const saysKey = (proposal: Proposal): string =>
  JSON.stringify(Object.entries(proposal).filter(([name]) => !common.has(name)));

/** What two proposals would have to agree on; null where any number of them hold together. */
function subject(proposal: Proposal): string | null {
  switch (proposal.kind) {
    case 'plant':
      return `plant ${proposal.code}`;
    case 'model':
      return `model ${proposal.name.toLowerCase()}`;
    case 'price':
      return proposal.model
        ? `price ${proposal.model} ${proposal.condition} ${proposal.year} ${proposal.currency}`
        : null;
    case 'year-letter':
      return `letter ${proposal.year}`;
    case 'stamped':
      return 'stamped';
    default:
      return null;
  }
}

const withDoubt = (proposal: Proposal, doubt: Doubt): Proposal => ({
  ...proposal,
  doubts: [...new Set([...proposal.doubts, doubt])],
  ticked: false,
});

function withoutDoubt(proposal: Proposal, doubt: Doubt): Proposal {
  const doubts = proposal.doubts.filter((one) => one !== doubt);
  return { ...proposal, doubts, ticked: doubts.length === 0 };
}

/**
 * Joins what the page says twice, marks what it takes back, and marks rows that contradict each other. The work grows
 * with the number of proposals: they are compared by what they are of, and a thing has few.
 */
export function settle(
  found: readonly Proposal[],
  retractions: readonly Retraction[],
  beginnings: ReadonlySet<Proposal> = new Set(),
  conceded: ReadonlySet<Proposal> = new Set(),
): Proposal[] {
  const agreed = found.map((proposal) => (conceded.has(proposal) ? withoutDoubt(proposal, 'disputed') : proposal));
  const taken = agreed.map((proposal, at) =>
    isTakenBack(proposal, at, retractions) ? withDoubt(proposal, 'withdrawn') : proposal,
  );
  const bySaying = new Map<string, Proposal>();
  const numbered = taken.some(holdsWorkshopNumber);
  for (const proposal of withoutLaterBeginnings(taken, beginnings)) {
    if (proposal.kind === 'plant' && /^\d+$/.test(proposal.code) && !numbered) continue;
    const key = saysKey(proposal);
    const known = bySaying.get(key);
    bySaying.set(key, known ? joined(known, proposal) : proposal);
  }
  return contradicted(
    withoutPoorer(metByCodes(closedByNext(withTheirTimes(withTheirExamples([...bySaying.values()]))))),
  ).map(withStanding);
}

/** "No code until 1970 … From 1970 four digits": the first year of codes is the one that their own entry names. */
function metByCodes(proposals: readonly Proposal[]): Proposal[] {
  const starts = new Set(
    proposals.flatMap((one) => (one.kind === 'code-system' ? (onePeriod(one.used)?.[0] ?? []) : [])),
  );
  return proposals.map((one) => {
    if (one.kind !== 'stamped') return one;
    const [first, last] = onePeriod(one.used) ?? [null, null];
    if (!first || starts.has(first)) return one;
    const before = String(Number(first.slice(0, 4)) - 1);
    return starts.has(before) ? { ...one, used: [before, last] } : one;
  });
}

/** Whether a code's example has a workshop's number among its digits: without, "Workshop 2" is a building and no code. */
const holdsWorkshopNumber = (proposal: Proposal): boolean =>
  proposal.kind === 'code-system' &&
  proposal.examples.some(({ code }) => workshopDigits(proposal.layout, code) !== null);

/** What the page takes back or doubts, as a maker file says it of an entry. */
function withStanding(proposal: Proposal): Proposal {
  const is = (['withdrawn', 'disputed'] as const).find((one) => proposal.doubts.includes(one));
  return is ? { ...proposal, standing: { is } } : proposal;
}

/** One saying in two places: the second's place is kept, and what either takes back. */
function joined(known: Proposal, again: Proposal): Proposal {
  const also = [...(known.also ?? []), again.at];
  const doubts = [...new Set([...known.doubts, ...again.doubts])];
  return { ...known, also, doubts, ticked: doubts.length === 0 };
}

const bySubject = (proposals: readonly Proposal[]): Map<string, Proposal[]> => {
  const groups = new Map<string, Proposal[]>();
  for (const proposal of proposals) {
    const about = subject(proposal);
    if (about === null) continue;
    const key = `${proposal.maker} ${about}`;
    const group = groups.get(key);
    if (group) group.push(proposal);
    else groups.set(key, [proposal]);
  }
  return groups;
};

/** More sayings of one thing than this are a muddle and no list: each is held against the first ones only. */
const mostCompared = 12;

/** "KV is Belgium" beside "KV, Belgium, 1982–2003": the poorer one says nothing more. Models told in two sentences are one. */
function withoutPoorer(proposals: readonly Proposal[]): Proposal[] {
  const dropped = new Map<Proposal, Proposal>();
  for (const group of bySubject(proposals).values())
    for (const poor of group.slice(0, mostCompared)) {
      const rich = group
        .slice(0, mostCompared)
        .find((other) => other !== poor && !dropped.has(other) && holds(other, poor));
      if (rich) dropped.set(poor, rich);
    }
  const whole = joinModels(proposals.filter((proposal) => !dropped.has(proposal)));
  return whole;
}

const isTaken = ({ doubts }: Proposal) => doubts.includes('withdrawn') || doubts.includes('disputed');

/** Whether one proposal says all that another does, and more. */
function holds(rich: Proposal, poor: Proposal): boolean {
  if (rich.kind !== 'plant' || poor.kind !== 'plant' || isTaken(rich) !== isTaken(poor)) return false;
  const placed = rich.place === poor.place && (poor.name === undefined || rich.name === poor.name);
  const more =
    (rich.used !== undefined && poor.used === undefined) || (rich.name !== undefined && poor.name === undefined);
  return placed && more && (poor.used === undefined || JSON.stringify(rich.used) === JSON.stringify(poor.used));
}

/** A size in one sentence and the years in another are of one model. */
function joinModels(proposals: readonly Proposal[]): Proposal[] {
  const whole: Proposal[] = [];
  const open = new Map<string, number>();
  for (const proposal of proposals) {
    if (proposal.kind !== 'model' || proposal.at.form !== 'prose') {
      whole.push(proposal);
      continue;
    }
    const key = `${proposal.maker} ${proposal.name.toLowerCase()}`;
    const at = open.get(key);
    const known = at === undefined ? undefined : whole[at];
    if (known?.kind === 'model' && (known.size === undefined) !== (proposal.size === undefined)) {
      const words = `${known.words} … ${proposal.words}`;
      const made = known.made ?? proposal.made;
      const doubts = [...new Set([...known.doubts, ...proposal.doubts])];
      whole[at!] = { ...proposal, ...known, ...(made && { made }), words, doubts, ticked: doubts.length === 0 };
      continue;
    }
    open.set(key, whole.length);
    whole.push(proposal);
  }
  return whole.filter(
    (one) =>
      one.kind !== 'model' ||
      one.at.form !== 'prose' ||
      one.size !== undefined ||
      (produced(one.words).length > 0 && !meansModel(one.words)),
  );
}

function contradicted(proposals: readonly Proposal[]): Proposal[] {
  const against = new Set<Proposal>();
  for (const group of bySubject(proposals).values()) {
    const near = group.slice(0, mostCompared);
    for (const [at, one] of near.entries())
      for (const other of near.slice(at + 1))
        if (disagree(one, other)) {
          against.add(one);
          against.add(other);
        }
    for (const one of group.slice(mostCompared)) against.add(one);
  }
  return proposals.map((proposal) => (against.has(proposal) ? withDoubt(proposal, 'contradicted') : proposal));
}

/** Whether two sayings of one thing cannot both hold; what the page has taken back contradicts nothing. */
function disagree(one: Proposal, other: Proposal): boolean {
  if (one.doubts.includes('withdrawn') || other.doubts.includes('withdrawn')) return false;
  if (one.kind === 'plant' && other.kind === 'plant') {
    const placed = one.place === unknownPlace || other.place === unknownPlace || one.place === other.place;
    const named =
      one.name === undefined || other.name === undefined || one.name === other.name || one.place !== other.place;
    // "A was Alnwick until 1979, and Amble since 1980."
    const [first, second] = [onePeriod(one.used), onePeriod(other.used)];
    if (first && second && !meet(first, second)) return false;
    const dated = !one.used || !other.used || JSON.stringify(one.used) === JSON.stringify(other.used);
    return !placed || (placed && !dated) || (!named && one.place === unknownPlace);
  }
  if (one.kind === 'model' && other.kind === 'model')
    return JSON.stringify(one.size) !== JSON.stringify(other.size) && meet(one.made, other.made);
  return true;
}

/** Whether two periods share a year; one that is not told may be any. */
const meet = (one: TakenPeriod | undefined, other: TakenPeriod | undefined): boolean =>
  !one || !other || ((one[0] ?? '0') <= (other[1] ?? '9999') && (other[0] ?? '0') <= (one[1] ?? '9999'));
