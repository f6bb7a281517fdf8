import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { parseHTML } from 'linkedom';
import { takeFromPage } from '../../src/take';
import type { Proposal } from '../../src/take/types';

/** A proposal as a page's truth writes it: only what the page tells, without words and places. */
export interface Told {
  kind: string;
  maker?: string;
  status?: 'contradicting' | 'withdrawn' | 'disputed';
  ticked?: boolean;
  examples?: [string, string][];
  [field: string]: unknown;
}
export interface Truth {
  form: 'table' | 'list' | 'definition-list' | 'prose' | 'thread' | 'none';
  maker?: string;
  proposals: Told[];
}

const here = new URL('.', import.meta.url);
const all = readdirSync(here)
  .filter((file) => file.endsWith('.html'))
  .map((file) => file.slice(0, -5));
/** Words of the names of pages that were written after the first ones. */
const writings = [
  'second',
  'last',
  'fresh',
  'latest',
  'newest',
  'voice',
  'guest',
  'stranger',
  'visitor',
  'traveller',
  'latecomer',
  'homecomer',
  'pilgrim',
  'wayfarer',
  'rambler',
  'lodger',
  'drifter',
] as const;
type Writing = (typeof writings)[number];
const writingOf = (name: string): Writing | undefined => writings.find((word) => name.split('-').includes(word));
const pagesOf = (...of: (Writing | undefined)[]): string[] => all.filter((name) => of.includes(writingOf(name))).sort();
/** Those of a writing that were seen, and those that were drawn to be set aside. */
const parted = (of: Writing, drawn: readonly string[]): { seen: readonly string[]; aside: readonly string[] } => ({
  seen: pagesOf(of).filter((name) => !drawn.includes(name)),
  aside: pagesOf(of).filter((name) => drawn.includes(name)),
});

/**
 * Pages written after the third set aside had been opened, and before any of them was read: `second` after that, `last`
 * when the readers were done. Each was opened once.
 */
export const laterPages: readonly string[] = pagesOf('second', 'last');
/** Written when the readers were mended by those, and opened once; their makers are named in other ways again. */
export const latestPages: readonly string[] = pagesOf('latest');
/** Written when the latest were mended by, and opened once. */
export const newestPages: readonly string[] = pagesOf('newest');
/** Written when the strangers set aside had been opened; all were opened at once, before anything was mended by them. */
export const visitorPages: readonly string[] = pagesOf('visitor');
/** Written when the travellers set aside had been opened and mended by; all were opened at once. */
export const latecomerPages: readonly string[] = pagesOf('latecomer');
/** Written last, and opened as the readers stood then. */
export const homecomerPages: readonly string[] = pagesOf('homecomer');

const names = pagesOf(undefined);
const hash = (name: string) => createHash('sha256').update(name).digest('hex');

/** A third of the pages, those whose names hash lowest: chosen before any reader was run, opened once when it was done. */
export const asidePages: readonly string[] = [...names]
  .sort((a, b) => (hash(a) < hash(b) ? -1 : 1))
  .slice(0, Math.floor(names.length / 3))
  .sort();
export const seenPages: readonly string[] = names.filter((name) => !asidePages.includes(name)).sort();

/** Drawn by lot (Python's `random.Random(20261129)`, 8 of the 24 that tell and 2 of the 6 that do not) from thirty written by a hand that knew no reader. */
const drawn = [
  'de-prose-fresh-hilfe',
  'de-prose-fresh-museum',
  'en-list-fresh-collector',
  'en-none-fresh-offer',
  'es-definitions-fresh-preguntas',
  'fr-prose-fresh-carnet',
  'fr-table-fresh-phrase',
  'ja-thread-fresh-shitsumon',
  'nl-list-fresh-br',
  'nl-none-fresh-winkel',
];
const fresh = parted('fresh', drawn);
export const freshSeenPages: readonly string[] = fresh.seen;
export const freshAsidePages: readonly string[] = fresh.aside;

/** Drawn by the same lot from twenty whose makers stand in headings, breadcrumbs, sites' names or the prose only, written before any reader was seen. */
const drawnVoices = [
  'de-list-voice-sammlerkreis',
  'de-prose-voice-ratgeber',
  'de-table-voice-vergleich',
  'en-definitions-voice-society',
  'en-list-voice-welcome',
  'en-prose-voice-buckle',
  'en-prose-voice-diaries',
  'en-table-voice-sons',
  'es-prose-voice-todo',
  'fr-prose-voice-maison',
];
const voices = parted('voice', drawnVoices);
export const voiceSeenPages: readonly string[] = voices.seen;
export const voiceAsidePages: readonly string[] = voices.aside;

/** Drawn by lot (`random.Random(20261130)`, 6 of the 16) from pages of other structures again, written with their truth before the readers were looked at. */
const drawnGuests = [
  'de-list-guest-kaufberatung',
  'en-prose-guest-helpdesk',
  'en-table-guest-infobox',
  'fr-prose-guest-objet',
  'it-thread-guest-aiuto',
  'nl-table-guest-maten',
];
const guests = parted('guest', drawnGuests);
export const guestSeenPages: readonly string[] = guests.seen;
export const guestAsidePages: readonly string[] = guests.aside;

/** Drawn by lot (`random.Random(20261130)`, 8 of the 24 that tell and 1 of the 3 that do not) from pages whose tables stand in other elements. */
const drawnStrangers = [
  'de-prose-stranger-rundbrief',
  'de-table-stranger-verbunden',
  'en-list-stranger-nested',
  'en-none-stranger-travel',
  'en-prose-stranger-translated',
  'en-thread-stranger-quotes',
  'es-definitions-stranger-faq',
  'es-table-stranger-modelos',
  'it-table-stranger-lettere',
];
const strangers = parted('stranger', drawnStrangers);
export const strangerSeenPages: readonly string[] = strangers.seen;
export const strangerAsidePages: readonly string[] = strangers.aside;

/** Drawn by lot (`random.Random(20261201)`, 7 of the 21 that tell and 1 of the 3 that do not) from pages in the manner of wikis, crib sheets, leaflets and forums. */
const drawnTravellers = [
  'de-none-traveller-auktion',
  'de-prose-traveller-blog',
  'en-list-traveller-dealer',
  'en-prose-traveller-museum',
  'en-prose-traveller-newsletter',
  'en-table-traveller-inches',
  'nl-list-traveller-vragen',
  'nl-prose-traveller-boekje',
];
const travellers = parted('traveller', drawnTravellers);
export const travellerSeenPages: readonly string[] = travellers.seen;
export const travellerAsidePages: readonly string[] = travellers.aside;

/** Drawn by lot (`random.Random(20261203)`, 3 of the 10 tables and lists, 4 of the 10 of prose and 1 of the 4 that do not tell) from pages in forms again others. */
const drawnPilgrims = [
  'de-list-pilgrim-zettel',
  'de-prose-pilgrim-nachlass',
  'en-table-pilgrim-crib',
  'en-thread-pilgrim-marketday',
  'fr-none-pilgrim-vide-grenier',
  'ja-prose-pilgrim-nikki',
  'nl-prose-pilgrim-nieuwsbrief',
  'nl-table-pilgrim-kladblok',
];
const pilgrims = parted('pilgrim', drawnPilgrims);
export const pilgrimSeenPages: readonly string[] = pilgrims.seen;
export const pilgrimAsidePages: readonly string[] = pilgrims.aside;

/** Drawn by lot (Python's `random.Random(20261205)`, 4 of the 12 tables and lists and 4 of the 12 of prose) from pages with menus, notices, captions and answers around what they tell. */
const drawnWayfarers = [
  'de-list-wayfarer-steckbriefe',
  'de-prose-wayfarer-auktionsratgeber',
  'es-prose-wayfarer-guia',
  'fr-list-wayfarer-puces',
  'fr-prose-wayfarer-bulletin',
  'it-table-wayfarer-listini',
  'ja-prose-wayfarer-kuranikki',
  'nl-definitions-wayfarer-werkplaatsen',
];
const wayfarers = parted('wayfarer', drawnWayfarers);
export const wayfarerSeenPages: readonly string[] = wayfarers.seen;
export const wayfarerAsidePages: readonly string[] = wayfarers.aside;

/** Drawn by lot (Python's `random.Random(20261208)`, 5 of the 15 tables and lists, 5 of the 15 of prose and 2 of the 6 that do not tell) from published sheets, scans, wikis, questions answered and circulars. */
const drawnRamblers = [
  'de-list-rambler-werkstaetten',
  'de-thread-rambler-mail',
  'en-list-rambler-circular',
  'es-prose-rambler-revista',
  'fr-table-rambler-wiki',
  'it-none-rambler-annuncio',
  'it-table-rambler-quaderno',
  'it-thread-rambler-gruppo',
  'ja-none-rambler-shuppin',
  'ja-thread-rambler-chiebukuro',
  'nl-prose-rambler-clubblad',
  'nl-table-rambler-jaren',
];
const ramblers = parted('rambler', drawnRamblers);
export const ramblerSeenPages: readonly string[] = ramblers.seen;
export const ramblerAsidePages: readonly string[] = ramblers.aside;

/** Drawn by lot (Python's `random.Random(20261211)`, 5 of the 15 tables and lists, 4 of the 12 of prose and 1 of the 3 that do not tell) from pages that explain a house's codes as a careful writer would. */
const drawnLodgers = [
  'de-table-lodger-jahrzehnte',
  'de-table-lodger-uebersicht',
  'en-prose-lodger-explained',
  'en-table-lodger-factories',
  'fr-list-lodger-modeles',
  'fr-thread-lodger-avis',
  'ja-list-lodger-miwakekata',
  'ja-thread-lodger-soudan',
  'nl-none-lodger-fiets',
  'nl-prose-lodger-uitleg',
];
const lodgers = parted('lodger', drawnLodgers);
export const lodgerSeenPages: readonly string[] = lodgers.seen;
export const lodgerAsidePages: readonly string[] = lodgers.aside;

/** Drawn by lot (Python's `random.Random(20261208)`, 8 of the 25 that tell and 1 of the 3 that do not) from pages of hands that knew no reader: columns of codes alone, sheets of prices, glossaries, letters and circulars. */
const drawnDrifters = [
  'de-prose-drifter-leserfrage',
  'en-definitions-drifter-counter',
  'en-prose-drifter-accession',
  'en-thread-drifter-loft',
  'es-list-drifter-chuleta',
  'fr-table-drifter-depliant',
  'it-prose-drifter-bollettino',
  'ja-prose-drifter-natsuyasumi',
  'nl-none-drifter-braderie',
];
const drifters = parted('drifter', drawnDrifters);
export const drifterSeenPages: readonly string[] = drifters.seen;
export const drifterAsidePages: readonly string[] = drifters.aside;

export const pageHtml = (name: string): string => readFileSync(new URL(`${name}.html`, here), 'utf8');
export const truthOf = (name: string): Truth =>
  JSON.parse(readFileSync(new URL(`${name}.json`, here), 'utf8')) as Truth;

export const source = { address: 'https://leather-notes.example/codes', day: '2026-11-29' };
export const takeHtml = (html: string): Proposal[] =>
  takeFromPage(parseHTML(html).document as unknown as Document, source);

const plain = (text: unknown): string => String(text).normalize('NFKC').toLowerCase().replace(/\s+/g, ' ').trim();

/** Separators are left out: a code is read with them and without. */
const slotsOf = (layout: unknown): unknown[] => (layout as object[]).filter((slot) => !('separator' in slot));

const statusOf = ({ doubts }: Proposal): Told['status'] | null => {
  if (doubts.includes('withdrawn')) return 'withdrawn';
  if (doubts.includes('disputed')) return 'disputed';
  return doubts.includes('contradicted') ? 'contradicting' : null;
};

/** Whether two texts of where a code sits are the same place: the truth's words, at most half as much around them. */
const sameWhere = (told: string, given: string): boolean =>
  plain(given).includes(plain(told)) && given.length <= told.length * 1.5;

const fields = [
  'code',
  'place',
  'used',
  'about',
  'letter',
  'year',
  'first',
  'last',
  'made',
  'model',
  'name',
  'size',
  'part',
  'models',
  'amount',
  'on',
  'condition',
  'currency',
  'reads',
];
/** Named where the truth names it: a town that the page gives with its country. */
const onlyWhenTold = new Set(['name']);

/** Whether a proposal is what the truth says, in every field. */
export function isSame(told: Told, given: Proposal, maker: string | undefined): boolean {
  if (told.kind !== given.kind || plain(told.maker ?? maker ?? '') !== plain(given.maker ?? '')) return false;
  const own = given as unknown as Record<string, unknown>;
  const alike = fields.every((field) => {
    if (told[field] === undefined)
      return own[field] === undefined || (onlyWhenTold.has(field) && given.kind === 'plant');
    if (typeof told[field] === 'string') return plain(told[field]) === plain(own[field]);
    return JSON.stringify(sorted(told[field])) === JSON.stringify(sorted(own[field]));
  });
  if (!alike || (told.status ?? null) !== statusOf(given)) return false;
  const stands = told.status === 'withdrawn' || told.status === 'disputed' ? told.status : undefined;
  if (given.standing?.is !== stands) return false;
  if (told.ticked === false && given.ticked) return false;
  if (told.status === undefined && told.ticked === undefined && !given.ticked) return false;
  if (given.kind === 'construction') return plain(told.is) === plain(given.is);
  if (given.kind === 'carrier') return sameWhere(told.where as string, given.where);
  if (given.kind !== 'code-system') return true;
  const examples = given.examples.map(({ code, reads }) => [code, reads]);
  return (
    JSON.stringify(slotsOf(told.layout)) === JSON.stringify(slotsOf(given.layout)) &&
    JSON.stringify(told.examples) === JSON.stringify(examples)
  );
}

const sorted = (value: unknown): unknown =>
  value !== null && typeof value === 'object' && !Array.isArray(value)
    ? Object.fromEntries(Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1)))
    : value;

export interface PageScore {
  page: string;
  form: Truth['form'];
  right: number;
  given: number;
  there: number;
  wrong: Proposal[];
  missing: Told[];
}

/** A page held against its truth; each told thing is met by one proposal at most. */
export function scorePage(page: string): PageScore {
  const truth = truthOf(page);
  const open = [...truth.proposals];
  const wrong: Proposal[] = [];
  const given = takeHtml(pageHtml(page));
  for (const proposal of given) {
    const at = open.findIndex((told) => isSame(told, proposal, truth.maker));
    if (at < 0) wrong.push(proposal);
    else open.splice(at, 1);
  }
  const right = given.length - wrong.length;
  return { page, form: truth.form, right, given: given.length, there: truth.proposals.length, wrong, missing: open };
}

export const inTables = ({ form }: PageScore): boolean =>
  form === 'table' || form === 'list' || form === 'definition-list';
export const inProse = ({ form }: PageScore): boolean => form === 'prose' || form === 'thread';

/** Share of the proposals that are right, and of what stands there that is proposed. */
export function sharesOf(scores: readonly PageScore[]): {
  right: number;
  given: number;
  there: number;
  precision: number;
  recall: number;
} {
  const sum = (of: (score: PageScore) => number) => scores.reduce((total, score) => total + of(score), 0);
  const [right, given, there] = [sum((one) => one.right), sum((one) => one.given), sum((one) => one.there)];
  return { right, given, there, precision: given === 0 ? 1 : right / given, recall: there === 0 ? 1 : right / there };
}
