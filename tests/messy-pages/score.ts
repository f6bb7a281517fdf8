import { readFileSync } from 'node:fs';
import { parseHTML } from 'linkedom';
import { buildCase, type Case, findingsOf } from '../../src/case';
import type { Claim } from '../../src/claim';
import { type Listing, readListing } from '../../src/listing';
import { builtInMakers } from '../../src/maker';
import { givenFor, type ScoredField, type Truth, trueFor } from '../listing-pages/score';
import { shortClaim } from '../unit/claim/listing-of';

/*
 * Second-hand pages as people write them, each with all that it says: of the piece ("made 1995"), of other things ("pouch:
 * made 2014"), and what may be taken either way ("? made 1980-1989"). The table was drawn up before any reader ran on
 * the pages. A third of each language, drawn with a seed, is set aside; the pages of `later.json` were written, with
 * their truth, when the readers were done, and opened once. Those of `strangers.json` came after both, and those of
 * `passers-by.json` after these, of `neighbours.json` after those, and of `guests.json` last; a third of each (Python's
 * `random.Random(20261129).sample` over the sorted names, 20261130, 20261201 and 20261202 for the last three) is set
 * aside too. Of `callers.json` only doubts are told: four of its 36 sellers were made to say what founds one, before any
 * reader ran; twelve (`Random(20261203)`) are set aside. `townsfolk.json` has both: all that its 48 pages say, and into
 * twelve of them one thing was written that founds a doubt; sixteen (`Random(20261204)`) are set aside. `lodgers.json`
 * came after that, of the same make: something in six of its 36, and twelve (`Random(20261205)`) set aside; so did
 * `wayfarers.json` (`Random(20261206)`) and `pilgrims.json` (`Random(20261207)`). The 27 of `settlers.json` are plain ads
 * and small shops; into three of them something was written, and nine (`Random(20261208)`) are set aside. The 36 of
 * `villagers.json` came last, by two hands: six of the first hand's 18 (`Random(20261209)`) and all of the other's are set aside.
 */

const read = (name: string) => readFileSync(new URL(name, import.meta.url), 'utf8');

export interface MessyTruth {
  url: string;
  offer: 'piece' | 'lot' | 'accessory' | 'part' | 'packaging' | 'remade' | 'many';
  fields: Omit<Truth, 'url'>;
  /** What is said, in short. */
  says: string[];
  /** Something that founds a doubt was written in: one of `doubts` has to be raised. */
  planted?: true;
  /** Checks that may raise a doubt: the seller is honest, and so every other doubt is unfounded. */
  doubts: string[];
}

type Truths = Record<string, MessyTruth>;
const tableOf = (name: string) => JSON.parse(read(name)) as Truths;
const [first, later] = [tableOf('truth.json'), tableOf('later.json')];
const [strangers, passersBy] = [tableOf('strangers.json'), tableOf('passers-by.json')];
const [neighbours, guests] = [tableOf('neighbours.json'), tableOf('guests.json')];
const [townsfolk, lodgers] = [tableOf('townsfolk.json'), tableOf('lodgers.json')];
const [wayfarers, pilgrims] = [tableOf('wayfarers.json'), tableOf('pilgrims.json')];
const [settlers, villagers] = [tableOf('settlers.json'), tableOf('villagers.json')];
const messyTruths: Truths = {
  ...first,
  ...later,
  ...strangers,
  ...passersBy,
  ...neighbours,
  ...guests,
  ...townsfolk,
  ...lodgers,
  ...wayfarers,
  ...pilgrims,
  ...settlers,
  ...villagers,
};

/** A page of which only doubts are told. */
interface CallerTruth {
  url: string;
  /** Whether something that founds a doubt was written in. */
  planted: boolean;
  /** Checks that may raise a doubt then; a planted page is right when one of them does. */
  doubts: string[];
}
const callers = JSON.parse(read('callers.json')) as Record<string, CallerTruth>;
const aside = new Set(JSON.parse(read('aside.json')) as string[]);
const seenOf = (table: Truths) => Object.keys(table).filter((name) => !aside.has(name));
const asideOf = (table: Truths) => Object.keys(table).filter((name) => aside.has(name));
const parts = {
  seen: () => seenOf(first),
  'set aside': () => asideOf(first),
  'written later': () => Object.keys(later),
  strangers: () => seenOf(strangers),
  'strangers set aside': () => asideOf(strangers),
  'passers-by': () => seenOf(passersBy),
  'passers-by set aside': () => asideOf(passersBy),
  neighbours: () => seenOf(neighbours),
  'neighbours set aside': () => asideOf(neighbours),
  guests: () => seenOf(guests),
  'guests set aside': () => asideOf(guests),
  townsfolk: () => seenOf(townsfolk),
  'townsfolk set aside': () => asideOf(townsfolk),
  lodgers: () => seenOf(lodgers),
  'lodgers set aside': () => asideOf(lodgers),
  wayfarers: () => seenOf(wayfarers),
  'wayfarers set aside': () => asideOf(wayfarers),
  pilgrims: () => seenOf(pilgrims),
  'pilgrims set aside': () => asideOf(pilgrims),
  settlers: () => seenOf(settlers),
  'settlers set aside': () => asideOf(settlers),
  villagers: () => seenOf(villagers),
  'villagers set aside': () => asideOf(villagers),
};
export type MessyPart = keyof typeof parts;
export const messyPages = (which: MessyPart): string[] => parts[which]();

const fields = [
  'kind',
  'title',
  'maker',
  'price',
  'condition',
  'availability',
  'colour',
  'descriptionStarts',
  'posted',
  'returns',
  'shipping',
  'place',
  'bids',
  'sellerName',
  'trader',
  'measures',
  'photos',
] as const satisfies readonly ScoredField[];

const now = '2026-03-01T12:00:00Z';

export async function messyCase(name: string): Promise<Case> {
  const { document } = parseHTML(read(`${name}.html`));
  const url = (messyTruths[name] ?? callers[name])?.url ?? '';
  const listing = await readListing(document as unknown as Document, { url, now });
  return buildCase({ listing, photos: [], corrections: [], makers: builtInMakers, now });
}

export interface Tally {
  right: number;
  /** Given, and not so. */
  wrong: number;
  /** There, and not given. */
  missed: number;
}
const none = (): Tally => ({ right: 0, wrong: 0, missed: 0 });
export const precisionOf = ({ right, wrong }: Tally) => right / Math.max(1, right + wrong);
export const recallOf = ({ right, missed }: Tally) => right / Math.max(1, right + missed);

/** Lengths of straps and handles are no sides of the piece. */
const hanging = new Set(['strap', 'handle']);

/** The fields of a page against its truth. What the page only says in its text counts where the seller's words have it. */
function scoreFields(listing: Listing, truth: MessyTruth): { tally: Tally; faults: string[] } {
  const tally = none();
  const faults: string[] = [];
  const wanted = { ...truth.fields, url: truth.url };
  const ofBody = { ...listing, measures: listing.measures.filter(({ value }) => !hanging.has(value.dimension ?? '')) };
  const said = new Set(truth.says.filter((one) => one.startsWith('condition ')).map((one) => one.slice(10)));
  for (const field of fields) {
    const [given, there] = [givenFor(field, ofBody, wanted), trueFor(field, wanted)];
    if (given === there) tally.right += there === null ? 0 : 1;
    else if (field === 'condition' && given !== null && said.has(given)) tally.right += 1;
    // A statement on shipping or size may stand in the running text, and a belt has one length.
    else if (there === null && (field === 'shipping' || field === 'measures')) continue;
    else {
      if (given !== null) tally.wrong += 1;
      if (there !== null) tally.missed += 1;
      faults.push(`${field}: ${given} (true: ${there})`);
    }
  }
  return { tally, faults };
}

/** A claim in the short form of the table; null for kinds that the table does not hold. */
function inShort(claim: Claim): string | string[] | null {
  switch (claim.kind) {
    case 'model':
      return `model ${claim.model}`;
    case 'made':
    case 'bought':
    case 'condition':
    case 'material':
    case 'maker':
    case 'origin':
    case 'sale-channel':
    case 'returns':
      return shortClaim(claim);
    case 'replaced':
      // What was dyed again or mended is an event by its day; the table does not hold every part of it.
      if (claim.how === 're-dyed' || claim.how === 'repaired')
        return claim.span ? `event: ${claim.how} ${claim.span.from?.slice(0, 4)}` : null;
      return claim.parts.length > 0 ? claim.parts.map((part) => `replaced ${part}`) : 'replaced somewhere';
    case 'code':
      return `code ${claim.code.replace(/\s/g, '')}`;
    case 'payment-outside':
      return 'pay outside';
    case 'leather':
      return claim.real || claim.polarity === 'is-not' ? null : 'imitation leather';
    case 'no-code':
      return 'no-code';
    case 'wear':
    case 'stored':
    case 'remade':
    case 'not-vouched':
    case 'packaging-only':
    case 'not-this-piece':
      return claim.polarity === 'is' ? claim.kind : claim.kind === 'wear' ? 'not wear' : null;
    default:
      return null;
  }
}

/** Whether what was given is what the table says: a colour may be left out, an early or late decade is three years wide. */
function isSame(given: string, said: string): boolean {
  if (given === said) return true;
  const [kind = '', ...rest] = said.split(' ');
  const date = /^(~?)(\d{4})(?:-(\d{4}))?$/.exec(rest.join(' '));
  if (date && /^(?:made|bought|gifted)$/.test(kind)) {
    const own = /^(\w+) (\d{4})-(\d{4})$/.exec(given);
    if (!own || own[1] !== (kind === 'gifted' ? 'bought' : kind)) return false;
    const room = date[1] ? 5 : 0;
    const [from, to] = [Number(date[2]), Number(date[3] ?? date[2])];
    return Math.abs(Number(own[2]) - from) <= room && Math.abs(Number(own[3]) - to) <= room;
  }
  if (kind === 'code') return given.replace(/[-.\s/]/g, '') === said.replace(/[-.\s/]/g, '');
  const [part, material] = said.split(' = ');
  const [ownPart, ownMaterial] = given.split(' = ');
  if (material === undefined || ownMaterial === undefined || part !== ownPart) return false;
  const shares = (a: string, b: string) => a.split(' ').every((word) => b.split(' ').includes(word));
  return shares(material, ownMaterial) || shares(ownMaterial, material);
}

/** An event of a known day is said of the piece. */
const ofThing = /^(?!event: (?:re-dyed|repaired) \d)[\w-]+: /;

/** Claims of a case against what is said of the piece. */
function scoreClaims(built: Case, truth: MessyTruth): { all: Tally; made: Tally; codes: Tally; faults: string[] } {
  const open = truth.says.filter((one) => one.startsWith('? ')).map((one) => one.slice(2));
  // Of a lot every piece is offered.
  const says = truth.says
    .filter((one) => !/^(?:\?|not channel) /.test(one))
    .filter((one) => truth.offer === 'lot' || !ofThing.test(one))
    .map((one) => one.replace(ofThing, ''))
    .flatMap((one) =>
      one.startsWith('replaced ')
        ? (one.slice(9).split(' ')[0] as string).split('+').map((part) => `replaced ${part}`)
        : [one],
    );
  const sizes = built.claims.flatMap((one) =>
    one.kind === 'measure' && !hanging.has(one.measure.dimension ?? '') ? [one.measure] : [],
  );
  const given = [...new Set(built.claims.flatMap((one) => inShort(one) ?? []))];
  if (sizes.length > 1)
    given.push(
      `size ${[...new Map(sizes.map(({ dimension, mm }, at) => [dimension === 'unknown' ? at : dimension, Math.round(mm)])).values()].sort((a, b) => b - a).join('x')}`,
    );
  const normal = (one: string) =>
    one.startsWith('size ')
      ? `size ${one
          .slice(5)
          .split('x')
          .map(Number)
          .sort((a, b) => b - a)
          .join('x')}`
      : one;
  const wanted = says.map(normal);
  const [all, made, codes] = [none(), none(), none()];
  const faults: string[] = [];
  const count = (one: string, mark: keyof Tally) => {
    all[mark] += 1;
    if (one.startsWith('made ')) made[mark] += 1;
    if (one.startsWith('code ')) codes[mark] += 1;
    if (mark !== 'right') faults.push(`${mark}: ${one}`);
  };
  for (const one of given) {
    if (wanted.some((said) => isSame(one, said))) count(one, 'right');
    else if (!open.some((said) => isSame(one, said) || said.split(' ')[0] === one.split(' ')[0])) {
      // What is the same but for a box of its own is no claim on the piece, and wrong where it is given.
      if (one.startsWith('size ') && !wanted.some((said) => said.startsWith('size '))) continue;
      count(one, 'wrong');
    }
  }
  for (const one of wanted) if (!given.some((own) => isSame(own, one))) count(one, 'missed');
  return { all, made, codes, faults };
}

export interface MessyScore {
  page: string;
  fields: Tally;
  claims: Tally;
  made: Tally;
  codes: Tally;
  unfounded: string[];
  contradictions: number;
  planted: boolean;
  /** A doubt was planted, and none of those that it founds is shown. */
  missed: boolean;
  faults: string[];
}

export async function scoreMessy(page: string): Promise<MessyScore> {
  const truth = messyTruths[page] as MessyTruth;
  const built = await messyCase(page);
  const field = scoreFields(built.listing, truth);
  const claim = scoreClaims(built, truth);
  const doubts = findingsOf(built).filter(({ kind }) => kind === 'doubt' || kind === 'contradiction');
  const unfounded = doubts.filter(({ check }) => !truth.doubts.includes(check)).map(({ check }) => check);
  const planted = truth.planted ?? false;
  const missed = planted && doubts.length === unfounded.length;
  return {
    page,
    fields: field.tally,
    claims: claim.all,
    made: claim.made,
    codes: claim.codes,
    unfounded,
    contradictions: doubts.filter(({ kind }) => kind === 'contradiction').length,
    planted,
    missed,
    faults: [
      ...field.faults,
      ...claim.faults,
      ...unfounded.map((check) => `unfounded: ${check}`),
      ...(missed ? ['planted doubt missed'] : []),
    ],
  };
}

export const sumOf = (scores: readonly MessyScore[], of: 'fields' | 'claims' | 'made' | 'codes'): Tally =>
  scores.reduce((sum, one) => {
    const own = one[of];
    return { right: sum.right + own.right, wrong: sum.wrong + own.wrong, missed: sum.missed + own.missed };
  }, none());

export type CallersPart = 'callers' | 'callers set aside';

export const callerPages = (which: CallersPart): string[] =>
  Object.keys(callers).filter((name) => aside.has(name) === (which === 'callers set aside'));

export interface CallerScore {
  page: string;
  /** Doubts and contradictions that nothing founds, by check. */
  unfounded: string[];
  contradictions: number;
  planted: boolean;
  /** A doubt was planted, and none of those that it founds is shown. */
  missed: boolean;
}

export async function scoreCaller(page: string): Promise<CallerScore> {
  const { planted, doubts } = callers[page] as CallerTruth;
  const shown = findingsOf(await messyCase(page)).filter(({ kind }) => kind === 'doubt' || kind === 'contradiction');
  const checks = shown.map(({ check }) => check);
  return {
    page,
    unfounded: checks.filter((check) => !doubts.includes(check)),
    contradictions: shown.filter(({ kind }) => kind === 'contradiction').length,
    planted,
    missed: planted && !checks.some((check) => doubts.includes(check)),
  };
}
