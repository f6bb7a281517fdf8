import { namesMonth } from '../said/month';
import { allWords, tellingFinder, wholeWords } from '../words';
import type { Head, HeadKind } from './heads';
import { articleFirst, isHouse, isJoined } from './shapes';
import type { NamesInText } from './told-of';
import {
  authored,
  authoredGuides,
  before,
  fold,
  gathering,
  isCountry,
  isKindOfThing,
  perhaps,
  placesBefore,
  siteNouns,
  things,
  workshops,
} from './words';

export interface Weighed {
  name: string;
  weight: number;
  kinds: Set<HeadKind>;
  count: number;
  /** How often the text speaks of it as a maker is spoken of. */
  asMaker: number;
  /** Whether a head speaks of it as a maker's name, or sections are headed with it. */
  spoken: boolean;
}

const articles = wholeWords('article');
const owners = wholeWords('owner-of-piece');
const makersMeant = tellingFinder('makers-meant');

const headWeight: Record<HeadKind, number> = {
  heading: 2.1,
  title: 0.6,
  site: 0.3,
  crumb: 0.8,
  brand: 2.5,
  section: 0.4,
  opening: 0.8,
  summary: 0.6,
  picture: 0.4,
  // Who wrote the page seldom makes bags.
  author: -1,
};

const topHeads: ReadonlySet<HeadKind> = new Set(['heading', 'title']);
const siteKinds: ReadonlySet<HeadKind> = new Set(['site', 'author']);

/** "Hebammentaschen", "ボストンバッグ": a word for a kind of thing, made with that of things as such. */
const kindOfThing =
  /\p{L}(?:taschen?|mappen|koffer|börsen?|tassen|waren|バッグ|かばん|カバン|鞄|財布|ケース|ポーチ)$/iu;

/** "Stavering A to Z". */
const fromAToZ = /^,?\s(?:\p{Ll}{2,5}\s)?A(?:\s(?:to|bis|à|alla|a la|tot)\s|[–-])Z(?!\p{L})/u;
/** A word for a kind of bag before one for bags as such, or any other word that is no name: "ビジネス鞄". */
const kindOfBag =
  /^(?:ビジネス|ショルダー|トート|ボストン|リュック|メンズ|レディース|レザー|ブランド|スクール|クラッチ|ハンド|ドクターズ|ダレス|セカンド|ミニ|トラベル)鞄$/u;
const houseOfBags = /^[\p{Script=Katakana}ー・]{2,20}鞄$/u;

const longWord = /(?<!\p{L})\p{L}{4,40}(?!\p{L})/gu;

/** "How Date Codes Work": a heading whose longer words all have capitals. */
function isTitleCase(head: string): boolean {
  const words = head.match(longWord) ?? [];
  return words.length >= 3 && words.every((word) => /^\p{Lu}/u.test(word));
}

/** "Spickzettel Wendelgard-Taschen": German joins a name so to what it made, and writes every noun with a capital. */
const isCompounded = (head: string, end: number): boolean =>
  things.has(fold(/^-(\p{L}{3,30})/u.exec(head.slice(end, end + 32))?.[1]));

const aloneIn = (head: string, name: string): boolean => {
  const pieces = head
    .split(/\s[–—|»-]\s|:\s|\s\/\s|\/(?=\p{Lu})|[[\]()（）【】]|のコード/u)
    .map((piece) => piece.trim());
  return pieces.includes(name);
};

/** Where a head names a maker as a word of its own; -1 where it does not. */
function placeIn(head: string, name: string): number {
  const [text, sought] = [head.toLowerCase(), name.toLowerCase()];
  for (let at = text.indexOf(sought); at >= 0; at = text.indexOf(sought, at + 1)) {
    const [one, next] = [text[at - 1] ?? ' ', text.slice(at + sought.length, at + sought.length + 2)];
    if (
      !/[\p{Script=Latin}\p{Script=Katakana}ー]/u.test(one) &&
      !/^(?!s(?!\p{L}))[\p{Script=Latin}\p{Script=Katakana}ー]/u.test(next)
    )
      return at;
  }
  return -1;
}

/** "The Corvenna Society": a site of those who gather one maker's pieces is of that maker. */
function gathersFor(head: string, start: number, name: string): number {
  const before = /(\p{L}{2,30})\s(?:(?:de|of|der|des|di|van)\s)?$/u.exec(
    head.slice(Math.max(0, start - 32), start),
  )?.[1];
  const behind = /^[\s-](\p{L}{2,30})/u.exec(head.slice(start + name.length, start + name.length + 32))?.[1];
  return [before, behind].some((word) => gathering.has(fold(word))) ? 2.2 : 0;
}

/** The noun of which a name is: "notebook" of "the notebook of Maruja". */
const nounOf = (head: string, start: number): string | undefined =>
  /(\p{L}{3,30})\s(?:de|di|du|van|von|of)\s(?:\p{L}{2,3}\s)?$/u.exec(head.slice(Math.max(0, start - 44), start))?.[1];

/** That noun, and the one that a word for how it is stands behind: "apuntes sueltos de Maruja". */
function nounsOf(head: string, start: number): string[] {
  const of = nounOf(head, start);
  if (of === undefined || things.has(fold(of))) return of === undefined ? [] : [of];
  const noun = /(\p{L}{3,30})\s$/u.exec(head.slice(0, head.lastIndexOf(of, start)).slice(-32))?.[1];
  return noun === undefined ? [of] : [of, noun];
}

/** "Hartley's guide", "el cuaderno de Maruja": who wrote the page is no maker. */
function isAuthor(head: string, start: number, end: number): boolean {
  // "Wilmas": a genitive without its sign may stand in the name as it was found.
  const possessor = head[end - 1] === 's' ? /^['’]?\s(\p{L}{2,30})/u : /^(?:['’]s?|s)\s(\p{L}{2,30})/u;
  const possessed = possessor.exec(head.slice(end, end + 36))?.[1];
  const written = /^の([^のとは：:|｜\s]{2,6})/u.exec(head.slice(end, end + 8))?.[1];
  return (
    [possessed, written, ...nounsOf(head, start)].some((word) => word !== undefined && authored.has(fold(word))) ||
    (possessed !== undefined && authoredGuides.has(fold(possessed)))
  );
}

/** How surely a head speaks of a name as its maker's: right beside what it made, behind "by", alone between strokes, as a possessor. */
function speaksOfMaker(head: string, start: number, name: string): number {
  const end = start + name.length;
  const [, one] = /(\p{L}[\p{L}’']{0,20}|d’)\s?["“„«"]?$/u.exec(head.slice(Math.max(0, start - 24), start)) ?? [];
  const [, next] = /^(?:['’]s|s)?["”“»"]?[\s-](\p{L}{2,30})/u.exec(head.slice(end, end + 36)) ?? [];
  if (siteNouns.has(fold(next)) || siteNouns.has(fold(one))) return -1;
  if (isAuthor(head, start, end)) return -2.5;
  // "The workshops of Scandicci" are a town's as soon as a maker's.
  if (workshops.has(fold(nounOf(head, start)))) return -0.8;
  const sure =
    isKindOfThing(head.slice(end, end + 48)) ||
    [next, one].some((word) => (things.has(fold(word)) && !workshops.has(fold(word))) || gathering.has(fold(word))) ||
    before.has(fold(one)) ||
    /['’]s$/u.test(one ?? '') ||
    /^['’]s?(?!\p{L})|^(?:の|（|とは)/u.test(head.slice(end)) ||
    aloneIn(head, name);
  // "How old is my Pennyquick?": what asks of one piece names whose it is.
  if (!sure && owners.has(fold(one)) && /^["”“»]?\s?[?？]/u.test(head.slice(end))) return 1.6;
  // "Forty years at Garrod & Wale": what is joined is no town.
  if (!sure && placesBefore.has(fold(one))) return isJoined(name) ? 0.6 : -1;
  if (sure) return 1.6;
  if (fromAToZ.test(head.slice(end))) return 1.3;
  if (workshops.has(fold(next))) return 1.3;
  return perhaps.has(fold(one)) ? 0.9 : 0;
}

/** What two heads say of a name: one that says nothing leaves the other's word standing. */
const either = (one: number, other: number): number => (one === 0 || other === 0 ? one + other : Math.max(one, other));

/** What a head says of a name by its kind: a part's or a picture's tells of one among several. */
function saidBy(kind: HeadKind, head: string, start: number, name: string): number {
  if (kind === 'author') return 0;
  if (kind === 'site') return gathersFor(head, start, name);
  const said = speaksOfMaker(head, start, name);
  // "Tillhorsts Werke".
  return kind === 'section' || kind === 'picture' ? (said > 0 ? 0.8 : 0) : said;
}

/** All that the page says for and against one name. */
export function weigh(name: string, heads: readonly Head[], text: NamesInText): Weighed {
  const kinds = new Set<HeadKind>();
  let weight = -1.2;
  let spoken = 0;
  let sections = 0;
  let pictures = 0;
  let ownSections = 0;
  let opens = true;
  let governs = false;
  let capitals = 0;
  for (const { kind, text: head } of heads) {
    const at = placeIn(head, name);
    if (at < 0) continue;
    if (!kinds.has(kind)) weight += headWeight[kind];
    if (isTitleCase(head) && !isCompounded(head, at + name.length)) capitals += 1;
    kinds.add(kind);
    if (at > 0) opens = false;
    // "Comprendre les codes": a verb has an article behind it.
    else if (articles.has(fold(/^\s(\p{Ll}{1,8})\s/u.exec(head.slice(name.length, name.length + 12))?.[1])))
      governs = true;
    if (kind === 'section') {
      sections += 1;
      if (head.trim() === name) ownSections += 1;
    }
    if (kind === 'picture') pictures += 1;
    spoken = either(spoken, saidBy(kind, head, at, name));
  }
  // A maker's own page calls the bags "ours", and seldom says its name.
  if (text.isOwn && (kinds.has('site') || kinds.has('title')) && !kinds.has('heading')) weight += 2;
  weight += spoken + (sections > 1 ? 0.6 : 0) + (pictures > 1 ? 0.6 : 0);
  // The main heading and a part's speak of it as of a maker: "Wandermanns Taschen", "Wandermanns Codes".
  if (kinds.has('heading') && sections > ownSections && spoken > 0) weight += 1.2;
  // "Two houses, two ways of dating": what its parts are headed with alone are houses.
  if (ownSections > 0 && heads.some(({ kind, text: head }) => topHeads.has(kind) && makersMeant(head).length > 0))
    weight += 1.4;
  else if (ownSections > 0 && isJoined(name)) weight += 0.8;
  const told = text.of(text.bare(name) ? name : name.replace(articleFirst, ''));
  // A site's own name is seldom whose bags it tells of.
  const isOnlySite = kinds.size > 0 && [...kinds].every((kind) => siteKinds.has(kind));
  // "Marroquinería Trespalacio": a site that says what it makes is the maker's, where nobody else is spoken of.
  const isAbove = kinds.has('site') && !kinds.has('author') && !kinds.has('section');
  const isOfHouse = isAbove && isHouse(name) && text.mostSpoken <= told.asMaker;
  if (isOfHouse) weight += 1.6;
  const isSite = heads.some(({ kind, text: head }) => kind === 'site' && head.replace(articleFirst, '') === name);
  // Nor where its heading has it before what the page is of, and the text never.
  if (isSite && !text.isOwn && told.count === 0 && kinds.has('heading')) weight -= 2;
  if (isOnlySite && !isOfHouse && spoken <= 0 && !text.isOwn && told.asMaker === 0) weight -= 1.2;
  weight +=
    Math.min(told.count, 6) * 0.4 +
    Math.min(told.asMaker, 4) * 0.9 +
    (told.asMaker > 0 ? 0.5 : 0) +
    Math.min(told.perhaps, 2) * 0.4;
  weight += Math.min(told.inside, 3) * 0.15 - Math.min(told.asPlace, 3) * 1.4 - Math.min(told.asModel, 2) * 1.5;
  if (told.asPlace > told.asMaker) weight -= 1.5;
  if (told.asModel > told.asMaker) weight -= 1.2;
  // Where all words have capitals, they make no name.
  if (capitals > 0 && !isJoined(name) && told.count < 2 && told.inside === 0 && told.asMaker === 0) weight -= 1.8;
  // "Gladstone bag", of which the text says who made it.
  if (told.count === 0 && text.mostSpoken > 1) weight -= 1.5;
  // The first word of a heading has a capital in any case.
  if (opens && !isOfHouse && kinds.size > 0 && sections === 0 && spoken === 0 && told.count === 0) {
    weight -= governs ? 2.5 : 0.8;
    // "Garantía y códigos" on the site of a house.
    if (heads.some(({ kind, text: head }) => kind === 'site' && isHouse(head))) weight -= 1.5;
  }
  const words = name.split(' ').map(fold);
  if (words.every((word) => allWords.has(word))) weight -= 4;
  if (namesMonth(name)) weight -= 5;
  if (kindOfThing.test(name) && (!houseOfBags.test(name) || kindOfBag.test(name))) weight -= 3;
  if (isCountry(name)) weight -= 5;
  // "Bench Card – Dray & Hollis": what an "and" joins is a firm.
  if (isJoined(name) && kinds.has('heading')) weight += 0.8;
  if (text.writesSmall(name)) weight -= 2.5;
  // "Die „Elster“ der Firma Grevenroth": models stand in quotation marks, and makers seldom do.
  if (text.isQuoted(name) && text.mostSpoken > told.asMaker) weight -= 5;
  if (kinds.size === 0) weight -= 0.6;
  // "They" and "these bags" are of the one maker that the text names.
  if (text.onlyMaker === name && told.inside > 0) weight += 0.4;
  return { name, weight, kinds, count: told.count, asMaker: told.asMaker, spoken: spoken > 0 || sections > 0 };
}
