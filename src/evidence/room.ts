import type { Claim, ClaimOf } from '../claim/types';
import { aboutYears, reachOfAbout, type Span, spansMeet, widenSpan } from '../span';
import type { Dating, Evidence, OwnTime } from './types';

/** Days by which a date is given room before its start and after its end. */
interface Days {
  before: number;
  after: number;
}

/**
 * `reach`: what lies within it is no conflict. `hard`: what lies beyond it cannot be, if what is said is true; between
 * the two it is unlikely. Null: never more than unlikely.
 */
interface Room {
  reach: Days;
  hard: Days | null;
}

/** The longest year, so that "a year apart" holds from any day to the same one. */
const yearDays = 366;

const none: Days = { before: 0, after: 0 };
const years = (count: number): Days => ({ before: count * yearDays, after: count * yearDays });

/** The one table of room: how far what is said or written of a date may be off. Own rule, common practice, no source. */
const room = {
  /** A seller's year is often that of the first sale: a making in the year before is unlikely, not impossible. */
  exact: { reach: none, hard: { before: yearDays, after: 0 } },
  /** A decade or a range, as a title says it of this piece. */
  wideInTitle: { reach: years(1), hard: years(1.5) },
  /** A description also tells of the decades of the house, of fashions and of other pieces. */
  wide: { reach: years(1), hard: null },
  /** "About", "circa". */
  hedged: { reach: years(aboutYears), hard: null },
  /** Bounds the making from above only. */
  purchase: { reach: none, hard: none },
  /** The years of a system, a plant or a material in a maker file: old stock and early pieces lie just outside. */
  makerPeriod: { reach: none, hard: years(1) },
  /** A file does not list every piece that was made before or after the years of a model. */
  model: { reach: years(1), hard: null },
  /** Stocks of labels outlive a country by some years, and its old name longer. */
  country: { reach: none, hard: years(3) },
} as const satisfies Record<string, Room>;

/** Days that pairs of statements are allowed to be apart, beyond what each is given above. Same table, same standing. */
export const roomDays = {
  /** What lies outside a period of a maker file by more than this is no longer old stock or an early piece. */
  makerPeriod: room.makerPeriod.hard.after,
  /** Labels of a country are sewn in for so long after its end; what a mark dates then is no news. */
  labelStock: room.country.hard.after,
  /** Two that are compared over something else only: no date stands against another. */
  anyTime: 10_000 * yearDays,
  /** Two dates of one listing of which one is loose. */
  looseDates: room.hedged.reach.after,
  /** Bought this soon after an exact date, a piece was bought new. */
  boughtNew: 2 * yearDays,
} as const;

/** Years of age from which a word or a look is believed. Same table, same standing. */
export const roomYears = {
  /** Under this age marketplaces do not call a piece so. */
  vintage: 20,
  antique: 100,
  /** From this age on untreated leather has darkened and bright metal has dulled. */
  darkened: 10,
} as const;

/** Millimetres on either side of a length. Same table, same standing. */
export const roomMm = {
  /** Sellers measure a soft body with a loose tape. */
  tape: 5,
  /** The number in a model's name is its width rounded, or that of another side. */
  named: 25,
} as const;
/** Sizes of one model differ in shape by this share at most. */
export const familyShare = 0.2;

/** The least share that one sum may be of another. Same table, same standing. */
export const shares = {
  /** A price cut to less than this is more lure than sale. */
  afterCut: 0.3,
  /** Of the maker's smallest new price, what is asked for a piece called new. */
  ofNew: 1 / 3,
  /** The same for a used piece in order. */
  ofUsed: 1 / 15,
  /** Of what a piece of this model in this condition costs at least. */
  ofLike: 1 / 3,
} as const;

const dayMs = 86_400_000;

/** Whether the span names a year or less and is not hedged. Only both ends closed can be exact. */
export const isExact = ({ from, to, about }: Span): boolean =>
  !about && from !== null && to !== null && Date.parse(to) - Date.parse(from) < yearDays * dayMs;

/** Whether a claim was read surely enough to stand against anything. */
export const isSure = ({ confidence }: Pick<Claim, 'confidence'>): boolean => confidence >= 0.5;

type DatedClaim = Pick<ClaimOf<'made' | 'bought'>, 'kind' | 'span' | 'at' | 'confidence'>;

function roomOfClaim({ kind, span, at }: DatedClaim): Room {
  if (span.about) return room.hedged;
  if (isExact(span)) return kind === 'bought' ? room.purchase : room.exact;
  return kind === 'made' && at.field === 'title' ? room.wideInTitle : room.wide;
}

type Roomy = Pick<Dating, 'spans' | 'strength' | 'reach' | 'hardReach'>;

/** `spans` with its room, as far as that says more than the strength alone. */
function roomy(spans: Span[], strength: Evidence['strength'], { reach, hard }: Room): Roomy {
  const by = (days: Days) => spans.map((span) => widenSpan(span, days));
  const isNone = ({ before, after }: Days) => before === 0 && after === 0;
  return {
    spans,
    strength,
    ...(isNone(reach) ? {} : { reach: by(reach) }),
    ...(hard && !isNone(hard) ? { hardReach: by(hard) } : {}),
  };
}

/** The dates that a claim of making or purchase allows, with its room. */
export function claimedDates(claim: DatedClaim): Roomy {
  const { reach, hard } = roomOfClaim(claim);
  const said: Span = claim.kind === 'bought' ? { ...claim.span, from: null, precision: 'range' } : claim.span;
  const strength = isSure(claim) && isExact(claim.span) ? 'hard' : 'soft';
  return roomy([said], strength, { reach, hard: isSure(claim) ? hard : null });
}

/** The same of the years in a maker file; what it hedges itself is never hard. */
export function makerDates(spans: Span[], strength: Evidence['strength']): Roomy {
  if (spans.some(({ about }) => about)) return hedgedDates(spans);
  return roomy(spans, strength, { ...room.makerPeriod, hard: strength === 'hard' ? room.makerPeriod.hard : null });
}

/** Spans of which some are hedged: those have their room, the others none. */
const hedgedDates = (spans: Span[]): Roomy => ({ spans, strength: 'soft', reach: spans.map(reachOfAbout) });

/** How dates stand to the years of a maker file that belong to them: the best of them counts. */
export function ownTime(dated: readonly { span: Span; used: readonly Span[] }[]): OwnTime {
  const meets = (days: Days) =>
    dated.some(({ span, used }) => used.some((one) => spansMeet(span, widenSpan(reachOfAbout(one), days))));
  return meets(none) ? 'within' : meets(room.makerPeriod.hard) ? 'near' : 'beyond';
}

/** The same of the years of a model; those that the file takes for a rule without exception are as those of a part. */
export function modelDates(spans: Span[], strength: Evidence['strength']): Roomy {
  if (strength === 'hard') return makerDates(spans, strength);
  const { before, after } = room.model.reach;
  return {
    ...roomy(spans, 'soft', room.model),
    reach: spans.map((span) => widenSpan(reachOfAbout(span), { before, after })),
  };
}

/** The same of the days in which a country existed; `sure`: it has ended, its days are verified and it is surely claimed. */
export const countryDates = (span: Span, sure: boolean): Roomy =>
  roomy([span], 'soft', { ...room.country, hard: sure ? room.country.hard : null });

/** The dates within which nothing conflicts with it. */
export const reachOf = ({ spans, reach }: Pick<Roomy, 'spans' | 'reach'>): Span[] => reach ?? spans;

/** Each piece with the dates within which nothing conflicts with it. */
export const withReach = <E extends Evidence>(evidence: readonly E[]): E[] =>
  evidence.map((piece) => ({ ...piece, spans: reachOf(piece) }));

/** The dates beyond which a conflict is hard; null where it never is. */
export const hardReachOf = (piece: Roomy): Span[] | null =>
  piece.hardReach !== undefined ? piece.hardReach : piece.strength === 'hard' ? reachOf(piece) : null;

/** Whether anything that is said here of a date, or of a place, can stand in a hard conflict. */
export const canBeHard = (piece: Evidence): boolean => piece.strength === 'hard' || hardReachOf(piece) !== null;

/** Each piece with the dates beyond which a conflict is hard; one that never is hard says nothing of date. */
export const withHardReach = <E extends Evidence>(evidence: readonly E[]): E[] =>
  evidence.map((piece) => ({ ...piece, spans: hardReachOf(piece) ?? [] }));

/** Each piece with its places if they are hard; one that is soft says nothing of place. */
export const onlyHardPlaces = <E extends Evidence>(evidence: readonly E[]): E[] =>
  evidence.map((piece) => (piece.strength === 'hard' ? piece : { ...piece, places: [] }));
