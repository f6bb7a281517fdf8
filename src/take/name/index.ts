import { foldWords } from '../../text';
import { tellingFinder } from '../words';
import type { Head } from './heads';
import { articleFirst, isHouse, isHouseOf, isJoined, isParticled, withoutHouse, withoutLegalForm } from './shapes';
import { NamesInText } from './told-of';
import { type Weighed, weigh } from './weigh';
import { fold, things } from './words';

export { headsOf } from './heads';
export { makersIn, makersOfHeading } from './in-text';

export interface NamedMakers {
  /** Whom the page tells of, as far as it is more likely than not; several divide the page. */
  makers: string[];
  /** Whether nothing else is likely: then nobody needs to be asked. */
  sure: boolean;
  /** Names that come into question, likeliest first, each with how likely it is. */
  offers: { name: string; share: number }[];
}

/** More names than these are a list of all makers. */
const mostNames = 60;
const mostOffers = 5;
const leastShare = 0.04;
/** From here on nobody needs to be asked: of the pages at hand, those named so surely were named right. */
const leastSure = 0.8;

const eitherOr = tellingFinder('either-or');
const aroundWords = /[^\p{L}\d'’&.-]{1,8}/u;

/** A name as the page uses it: with its article, without a genitive, in small letters where the heading has capitals only. */
function asUsed(name: string, heads: readonly Head[], text: NamesInText): string {
  const stem = name.replace(/s$/u, '');
  const bare =
    stem !== name && (text.bare(stem) || heads.some(({ text: head }) => head.split(aroundWords).includes(stem)));
  const own = (bare && !text.bare(name)) || isGenitive(name, heads) ? stem : name;
  const capitals = own === own.toUpperCase() && own !== own.toLowerCase();
  const spelt = capitals ? (text.spelling(own) ?? own) : own;
  const small =
    spelt === spelt.toUpperCase()
      ? spelt.replace(/\p{L}{2,40}/gu, (word) => word[0] + word.slice(1).toLowerCase())
      : spelt;
  const article = text.article(small);
  const whole = withoutHouse(small, [...heads.map(({ text: head }) => head), text.text]);
  return withoutLegalForm(article === null ? whole : `${article} ${whole}`);
}

const word = /^\s(\p{L}{2,30})/u;
/** "Wandermanns Taschen" and "Wandermanns Codes": in every head what they made, or their codes, stands behind the name. */
function isGenitive(name: string, heads: readonly Head[]): boolean {
  const behind = heads.flatMap(({ text }) => {
    const at = name.endsWith('s') ? text.indexOf(name) : -1;
    return at < 0 ? [] : [fold(word.exec(text.slice(at + name.length))?.[1])];
  });
  return new Set(behind).size > 1 && behind.every((one) => things.has(one));
}

const namesOf = (heads: readonly Head[], text: NamesInText): string[] => {
  const inHeads = heads.flatMap(({ kind, text: head }) =>
    kind === 'brand' ? [head] : text.namesIn(head).map(({ name }) => name),
  );
  return [
    ...new Set([...inHeads.slice(0, mostNames), ...text.spokenOf(mostNames)].map((name) => asUsed(name, heads, text))),
  ];
};

const isWithin = (short: string, long: string): boolean =>
  short !== long && (long.startsWith(`${short} `) || long.endsWith(` ${short}`) || long.includes(` ${short} `));

/** Whether a name has more than capitals in a row to show that it is one. */
const isWholeName = (name: string): boolean => isJoined(name) || isParticled(name) || isHouse(name);

/** "Rönnebeck-Nummern" over a text that always, or twice and as of a maker, says "Rönnebeck & Thies": the heading has half the name. */
function isHalved(short: Weighed, long: Weighed, text: NamesInText): boolean {
  const times = text.alone(long.name);
  if (!isWholeName(long.name) || times === 0) return false;
  return text.alone(short.name) === 0 || (times > 1 && long.asMaker > 0);
}

/** Of a name and a longer one that holds it, the one that the page means: "Averlock & Sons", and "Ondrasse" of "Ondrasse Carryall". */
function whole(short: Weighed, long: Weighed, text: NamesInText): Weighed {
  // "Bags by Tollgate", formerly Tollgate & Marsh.
  if (short.kinds.has('heading') && !long.kinds.has('heading') && !articleFirst.test(long.name))
    return isHalved(short, long, text) ? long : short;
  // "Lederwarenfabrik Lohmühle", which is Lohmühle wherever the text goes on of it.
  const alone = text.of(short.name).count - text.of(long.name).count;
  if (isHouseOf(long.name, short.name) && alone > text.alone(long.name)) return short;
  if (isJoined(long.name) || articleFirst.test(long.name)) return long;
  if (isParticled(long.name)) {
    const alone = text.alone(short.name);
    return alone > 0 && alone >= text.alone(long.name) ? short : long;
  }
  // "Other Ondrasse bags": a word that only begins a sentence.
  if (long.kinds.size === 0 && short.kinds.size > 0) return short;
  const rest = long.name.replace(short.name, '').trim();
  if (text.alone(short.name) > 0 && (text.alone(rest) > 0 || text.alone(long.name) === 0)) return short;
  return text.alone(short.name) > text.alone(long.name) ? short : long;
}

const isAlias = (head: string, name: string, other: string) =>
  head.includes(`${name}（${other}`) || head.includes(`${name} (${other}`);

/** Of two spellings, the one in the main heading is before the one in the text. */
const used = ({ kinds, count }: Weighed): number => (kinds.has('heading') ? 100 : 0) + count;

/** Names that hold one another are one maker; so are a name and what stands in brackets behind it. */
function families(weighed: readonly Weighed[], heads: readonly Head[], text: NamesInText): Weighed[] {
  const left = new Set(weighed);
  const drop = (chosen: Weighed, other: Weighed) => {
    left.delete(other);
    if (chosen.name.length > other.name.length) chosen.weight = Math.max(chosen.weight, other.weight) + 0.2;
  };
  for (const long of weighed)
    for (const short of weighed)
      if (left.has(long) && left.has(short) && isWithin(short.name, long.name)) {
        const chosen = whole(short, long, text);
        drop(chosen, chosen === long ? short : long);
      }
  for (const one of [...left])
    for (const other of [...left])
      if (left.has(one) && left.has(other) && heads.some(({ text: head }) => isAlias(head, one.name, other.name))) {
        const second = used(other) > used(one);
        drop(second ? other : one, second ? one : other);
      }
  return [...left].sort((a, b) => b.weight - a.weight);
}

/** A name beside the likeliest one that the page is of as well: in the same heading, or in headings of their own. */
const alsoTold = (one: Weighed, first: Weighed): boolean =>
  one.weight >= 0.4 &&
  (one.spoken || one.count > 0) &&
  one.weight >= first.weight - 3 &&
  (['heading', 'section'] as const).some((kind) => one.kinds.has(kind) && first.kinds.has(kind));

const parting = /[:：|–—»]|\s-\s/u;
/** "Kranzberg: Stand der Kenntnisse", "Zettelkasten – Kranzberg": what a sign parts from the name, and nothing else has, is said of it. */
function isOfPhrase(one: Weighed, first: Weighed, heads: readonly Head[]): boolean {
  const having = heads.filter(({ text }) => text.includes(one.name));
  const parted = having.filter(({ text }) => {
    const [at, other] = [text.indexOf(one.name), text.indexOf(first.name)];
    const [from, to] = at < other ? [at + one.name.length, other] : [other + first.name.length, at];
    return other >= 0 && parting.test(text.slice(from, to));
  });
  // A title falls into its pieces.
  const rest = having.filter((head) => !parted.includes(head));
  return one.count === 0 && parted.length > 0 && rest.every(({ kind }) => kind === 'title');
}

/** Whether the text speaks of another name as of a maker, and of none of these. */
const isRivalled = (several: readonly Weighed[], all: readonly Weighed[]): boolean =>
  several.every(({ asMaker }) => asMaker === 0) && all.some(({ asMaker }) => asMaker > 0);

/** "Bench Card" over a text that names nobody, and beside no codes: a heading's first words have capitals for whatever they are. */
function isUnheard({ name, count, kinds }: Weighed, heads: readonly Head[]): boolean {
  if (count > 0 || !name.includes(' ') || isWholeName(name)) return false;
  if (![...kinds].every((kind) => kind === 'heading' || kind === 'title')) return false;
  return heads.every(({ text: head }) => {
    if (!head.includes(name)) return true;
    const next = /^\s(\p{L}{2,30})/u.exec(head.slice(name.length, name.length + 32))?.[1];
    return head.startsWith(name) && !things.has(fold(next));
  });
}

/** "Corbelin or Hauterieux?": whose it is stays open, unless the page has a part for each. */
const isEitherOr = (several: readonly Weighed[], heads: readonly Head[]): boolean =>
  several.length > 1 &&
  !several.every(({ kinds }) => kinds.has('section')) &&
  heads.some(
    ({ text: head }) => eitherOr(head).length > 0 && several.filter(({ name }) => head.includes(name)).length > 1,
  );

/**
 * The makers that a page tells of, by all that it says: its heads, and how its own text speaks of each name. `known` is the
 * maker of the listing that the buyer looks at: where the page has its name, it is of that one.
 */
export function makersNamed(heads: readonly Head[], body: string, known = ''): NamedMakers {
  const text = new NamesInText(
    body,
    heads.map(({ text: head }) => head),
  );
  const weighed = namesOf(heads, text).map((name) => weigh(name, heads, text));
  const found = families(weighed, heads, text);
  const whole = 1 + found.reduce((sum, { weight }) => sum + Math.exp(weight), 0);
  const offers = found
    .map(({ name, weight }) => ({ name, share: Math.exp(weight) / whole }))
    .filter(({ share }) => share >= leastShare)
    .slice(0, mostOffers);
  const [first, ...others] = found;
  const several = first
    ? [first, ...others.filter((one) => alsoTold(one, first) && !isOfPhrase(one, first, heads))]
    : [];
  const told = several.reduce((sum, { weight }) => sum + Math.exp(weight), 0) / whole;
  const makers = told > 0.5 ? several.map(({ name }) => name) : [];
  const decided =
    !isRivalled(several, found) &&
    !isEitherOr(several, heads) &&
    !several.some((one) => isUnheard(one, heads)) &&
    !several.some(({ name }) => text.isPair(name));
  if (known === '' || !isNamed(known, [...heads.map(({ text: head }) => head), body]))
    return { makers, sure: told >= leastSure && decided, offers };
  const own = makers.find((name) => alike(name, known));
  if (own !== undefined) return { makers, sure: true, offers };
  const rest = offers.filter(({ name }) => !alike(name, known));
  return { makers: [known], sure: false, offers: [{ name: known, share: 1 }, ...rest].slice(0, mostOffers) };
}

const plain = (name: string) => foldWords(name).text.trim();
const alike = (one: string, other: string) => plain(one) === plain(other);
const isNamed = (name: string, texts: readonly string[]): boolean => {
  const sought = ` ${plain(name)} `;
  return texts.some((text) => ` ${plain(text).replace(/[^\p{L}\p{N}&]{1,20}/gu, ' ')} `.includes(sought));
};
