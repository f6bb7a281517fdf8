import { tellingFinder, wholeWords, wordsFor } from '../words';
import { type Joined, joinedIn } from './joined';
import { articles, isFirm, namesIn, opensAt, particles, withoutLegalForm } from './shapes';
import {
  before,
  fold,
  gathering,
  isKindOfThing,
  makerLabels,
  makerNoun,
  perhaps,
  placesBefore,
  type Shape,
  siteNouns,
  things,
  workshops,
} from './words';

/** How a page's own text speaks of a name. */
export interface ToldOf {
  /** How often it stands there by itself. */
  count: number;
  /** As a maker is spoken of: "by X", "X stamped", "X’s bags". */
  asMaker: number;
  /** As may be of a maker or a place: "de X". */
  perhaps: number;
  /** As a place: "in X", "KT is X". */
  asPlace: number;
  /** With a capital where no sentence begins. */
  inside: number;
  /** Sizes behind it: a model. */
  asModel: number;
}
const nothing: ToldOf = { count: 0, asMaker: 0, perhaps: 0, asPlace: 0, inside: 0, asModel: 0 };

const does = wholeWords('maker-does');
const standsFor = wholeWords('stands-for');
// A short one ("è") is written like an "and" without its accent.
const places = new Set([...placesBefore, ...[...standsFor].filter((word) => word.length > 2)]);

/** The word right before a place in a text, and the two. */
function wordsBefore(text: string, at: number): string[] {
  const [, two, one] =
    /(?:(\p{L}[\p{L}’']{0,20})[ \u00a0])?(\p{L}[\p{L}’']{0,20})[ \u00a0]?["“„«]?$/u.exec(
      text.slice(Math.max(0, at - 46), at),
    ) ?? [];
  const elision = /(?<!\p{L})(\p{L}{1,4}['’])$/u.exec(text.slice(Math.max(0, at - 6), at))?.[1];
  const words = elision !== undefined ? [elision] : one === undefined ? [] : [one];
  return [...words, ...(two !== undefined && elision === undefined ? [`${two} ${one}`] : [])].map(fold);
}

const townsMakers = wholeWords('town-of');
/** "Walsall makers", "les fabricants de Graulhet": a town's, which has several. */
function isOfMakers(words: readonly string[], next: string): boolean {
  const [noun, of] = (words[1] ?? '').split(' ');
  return townsMakers.has(next) || (of !== undefined && townsMakers.has(noun!) && perhaps.has(of));
}

/** "una borsa di Ghirlanza", "un sac de Lussandre". */
function isOfThing(words: string): boolean {
  const [thing, of] = words.split(' ');
  return of !== undefined && things.has(thing!) && perhaps.has(of);
}

const owners = wholeWords('owner-of-piece');
const qualities = new Set([...wholeWords('ordinal-1'), ...wholeWords('heading-adjective')]);
/** "My first Pennyquick". */
function isOwnersOne(words: string): boolean {
  const [owner, quality] = words.split(' ');
  return quality !== undefined && owners.has(owner!) && qualities.has(quality);
}

const code = /(?<![\p{L}\d])\p{Lu}{1,3}\d{0,2}(?:\s?[=:：＝]\s?|は|\s[–—-]\s|\s\p{L}{1,12}(?:\s\p{L}{1,8})?\s)$/u;
/** "A bag by", "È una": a letter that is a word of its own, unless something says what it stands for. */
const wordOfLetter = /(?<![\p{L}\d])[AEIOYÀÈÉÔ]\s(\p{L}{1,12})(?:\s\p{L}{1,8})?\s$/u;
const isAfterCode = (head: string): boolean => {
  const word = wordOfLetter.exec(head)?.[1];
  return code.test(head) && (word === undefined || standsFor.has(fold(word)));
};
/** "the Pardoe of my aunt’s": whose piece it is stands behind the name. */
const ownedBy = tellingFinder('owned-by');
const longestOwner = 24;
const madeBy = tellingFinder('made-by');
/** "Hersteller: Sattlerei Grevenroth": a label that says who made it, and at most one word before the name. */
const labelled = /(?<!\p{L})(\p{L}{3,20})\s?[:：]\s?(?:\p{L}{3,24}\s)?["“„«「]?$/u;
const isLabelled = (head: string): boolean => makerLabels.has(fold(labelled.exec(head)?.[1]));

const japaneseBefore = wordsFor('owner-before').filter((word) => word.endsWith('の'));
const behind = /^['’]?s?["”“»]?[ \u00a0-](\p{L}[\p{L}’']{0,20})/u;
const japanese = wordsFor('maker-does').filter((word) =>
  /[\p{Script=Han}\p{Script=Hiragana}\p{Script=Katakana}]/u.test(word),
);
/** "の" before a thing of the maker's, and words of more than one sign; a particle alone may stand behind anything. */
const japaneseBehind = [
  ...japanese.filter((word) => word.length > 1 || word === '社' || word === '製'),
  ...wordsFor('heading-thing').map((thing) => `の${thing}`),
  'の製造',
  'の番号',
  'のシリアル',
  'のもの',
  'の品',
  'の製品',
  'の作品',
];
/** "のハンドバッグ": any thing whose word ends with that of bags. */
const itsThing = /^の[\p{Script=Katakana}\p{Script=Han}ー]{1,8}(?:バッグ|鞄|かばん|カバン|ケース|財布|トランク)/u;
const isJapanese = (name: string) => /[\p{Script=Han}\p{Script=Katakana}]/u.test(name);
const sizes = /^["”]?\s?(?:\d{1,3}\s)?[^.;\n]{0,24}?\d{1,3}\s?[x×]\s?\d/u;

const writes = tellingFinder('author-does');
/** "Marrick of Richmond marked every bag": what stands behind a name and such a word is its town. */
const townOf = /(?<!\p{L})(\p{Lu}\p{Ll}[\p{L}’'-]{1,24})\s(?:of|from|aus|te|à)\s$/u;
function isTownOfName(head: string): boolean {
  const [, name] = townOf.exec(head) ?? [];
  return (
    name !== undefined &&
    !things.has(fold(name)) &&
    !makerNoun.has(fold(name)) &&
    !gathering.has(fold(name)) &&
    !workshops.has(fold(name))
  );
}

const byline = /(?:^|\n)\s{0,3}(?:by|von|par|di|por|door|text|texte|testo)[:\s]\s?$/iu;
const endsByline = /^\s?(?:,|\||[-–—·]|\n|$|(?:on|am|le|il|el|op|\d{1,2}\.?)\s)/u;
const postedBy = tellingFinder('posted-by');
/** "Last edit: January 9, 18:40 by Ludo": whoever keeps a forum tidy. */
const editedBy =
  /(?<!\p{L})(?:edit|edited|modified|bearbeitet|geändert|modifié|édité|modificato|editado|bewerkt)(?!\p{L})[^.;\n]{0,40}\s(?:by|von|par|da|por|door)\s$/iu;
const longestEdit = 64;
/** "Posted by Dulcie on 14 May", "By Phil Tranter, 2 October", "Maud says": who writes on the page. */
function isWriter(text: string, start: number, end: number): boolean {
  const [head, tail] = [text.slice(Math.max(0, start - 28), start), text.slice(end, end + 24)];
  return (
    writes(tail).some(({ start }) => start <= 1) ||
    postedBy(head).some(({ end }) => head.length - end <= 1) ||
    (byline.test(head) && endsByline.test(tail)) ||
    editedBy.test(text.slice(Math.max(0, start - longestEdit), start))
  );
}

/** German writes every noun with a capital: behind its article a word is a maker's name only where the page has it at its head. */
const germanArticle = /^(?:eine?[mnr]?|jede[mnrs]?)$/u;
const tellsMaker = (word: string, isInHeads: boolean): boolean =>
  before.has(word) && (isInHeads || !germanArticle.test(word));

/** What the words around one place of a name say of it. */
function speaksOf(text: string, start: number, end: number, name: string, isInHeads: boolean): ToldOf {
  const [head, tail] = [text.slice(Math.max(0, start - 24), start), text.slice(end, end + 48)];
  const words = wordsBefore(text, start);
  const next = fold(behind.exec(tail)?.[1]);
  const owns = /^['’]s\s/u.test(tail);
  const isBag = things.has(next) || isKindOfThing(tail);
  // "The Penhallow Journal" is no maker's.
  if (siteNouns.has(next)) return nothing;
  if (isWriter(text, start, end)) return { ...nothing, asPlace: 1 };
  const opens = opensAt(text, start);
  const isTown = isOfMakers(words, next);
  const isPlace =
    isTown ||
    isTownOfName(text.slice(Math.max(0, start - 40), start)) ||
    isAfterCode(head) ||
    // "A Mossop Vane bag" is no town's, though "a" is that word elsewhere.
    words.some((word) => places.has(word) && !(word === 'a' && isBag));
  // "The Carraway was made by Dunsley & Hart": the one is the other's model.
  const isMade = madeBy(tail).some(({ start }) => start === 1);
  // "der Firma Grevenroth"
  const isCalledMaker =
    ((makerNoun.has(words[0] ?? '') || isFirm(name)) && !isPlace) ||
    isLabelled(text.slice(Math.max(0, start - 52), start));
  const inJapanese = isJapanese(name) || /[\p{Script=Hiragana}\p{Script=Katakana}]/u.test(tail.slice(0, 2));
  const isMaker =
    words.some((word) => tellsMaker(word, isInHeads) || isOfThing(word) || isOwnersOne(word)) ||
    does.has(next) ||
    gathering.has(next) ||
    gathering.has(words[0] ?? '') ||
    (isBag && !opens) ||
    things.has(words[0] ?? '') ||
    owns ||
    (ownedBy(tail.slice(0, longestOwner))[0]?.start ?? 2) <= 1 ||
    (inJapanese && japaneseBefore.some((word) => head.endsWith(word))) ||
    (inJapanese && (japaneseBehind.some((word) => tail.startsWith(word)) || itsThing.test(tail)));
  const mayBe =
    words.some((word) => perhaps.has(word)) || (inJapanese && japanese.some((word) => tail.startsWith(word)));
  return {
    count: 1,
    asMaker: isCalledMaker ? 2 : isMaker && !isPlace && !isMade ? 1 : 0,
    perhaps: !isMaker && mayBe ? 1 : 0,
    // What has several makers is none, whatever else is said.
    asPlace: isTown ? 2 : isPlace ? 1 : 0,
    inside: opens ? 0 : 1,
    asModel: isCalledMaker ? 0 : isMade || sizes.test(tail) || /^\s\d{1,3}(?![\d.,:])/.test(tail) ? 1 : 0,
  };
}

const sum = (one: ToldOf, other: ToldOf): ToldOf => ({
  count: one.count + other.count,
  asMaker: one.asMaker + other.asMaker,
  perhaps: one.perhaps + other.perhaps,
  asPlace: one.asPlace + other.asPlace,
  inside: one.inside + other.inside,
  asModel: one.asModel + other.asModel,
});

const ours = tellingFinder('ours');
const lowercase = /(?<![\p{L}’'-])\p{Ll}[\p{L}’-]{2,40}/gu;

/** A page's own text by the names in it. Its work grows with the text. */
export class NamesInText {
  private readonly own = new Map<string, ToldOf>();
  private readonly written: ReadonlySet<string>;
  /** Names that stand as the first or last words of longer ones: "Greyfell" in "Greyfell Tourist". */
  private readonly longer = new Map<string, Set<string>>();
  private readonly spelt = new Map<string, string>();
  /** How often a name stands in quotation marks. */
  private readonly quoted = new Map<string, number>();

  private readonly joined: Joined;

  /** Whether the page is the maker's own. */
  readonly isOwn: boolean;
  /** How often the text speaks of one name as of a maker, at most. */
  readonly mostSpoken: number;
  /** The one name of which the text speaks as of a maker. */
  readonly onlyMaker: string | null;

  constructor(
    readonly text: string,
    private readonly heads: readonly string[] = [],
  ) {
    this.joined = joinedIn(heads, text);
    this.isOwn = ours(text).length > 0;
    // "harrowgill dating v7", the name of the sheet: what opens a line may be typed small, whatever it is.
    const within = [...text.matchAll(lowercase)].filter(({ index }) => index > 0 && text[index - 1] !== '\n');
    this.written = new Set(within.map(([word]) => word));
    for (const { name: written, start, end } of this.namesIn(text)) {
      const name = withoutLegalForm(written);
      const isInHeads = heads.some((head) => head.includes(name));
      this.own.set(name, sum(this.own.get(name) ?? nothing, speaksOf(text, start, end, written, isInHeads)));
      if (/[“„«"]\s?$/u.test(text.slice(Math.max(0, start - 2), start)) && /^\s?["”“»]/u.test(text.slice(end, end + 2)))
        this.quoted.set(name, (this.quoted.get(name) ?? 0) + 1);
      const known = this.spelt.get(name.toLowerCase());
      if (known === undefined || known === known.toUpperCase()) this.spelt.set(name.toLowerCase(), name);
      const words = name.split(' ');
      for (let length = 1; length < words.length; length += 1)
        for (const part of [words.slice(0, length).join(' '), words.slice(length).join(' ')]) {
          const longer = this.longer.get(part) ?? new Set();
          this.longer.set(part, longer.add(name));
        }
    }
    const spoken = [...this.own].filter(([, { asMaker }]) => asMaker > 0);
    this.mostSpoken = spoken.reduce((most, [, { asMaker }]) => Math.max(most, asMaker), 0);
    this.onlyMaker = spoken.length === 1 ? spoken[0]![0] : null;
  }

  /** The names in a part of the page, joined as the page joins them. */
  namesIn(part: string): Shape[] {
    return namesIn(part, this.joined.names);
  }

  /** Whether a name is two that the page never parts. */
  isPair(name: string): boolean {
    return this.joined.pairs.has(name);
  }

  /** All names of the text that are spoken of as makers are. */
  spokenOf(most: number): string[] {
    return [...this.own]
      .filter(([, { asMaker, perhaps: may, inside }]) => asMaker > 0 || may > 0 || inside > 1)
      .sort(([, a], [, b]) => b.asMaker * 2 + b.count - (a.asMaker * 2 + a.count))
      .slice(0, most)
      .map(([name]) => name);
  }

  /** A name as the text spells it, where a heading has capitals only. */
  spelling(name: string): string | null {
    return this.spelt.get(name.toLowerCase()) ?? null;
  }

  /** How the text speaks of a name: by itself, in the genitive, and as part of longer ones. */
  of(name: string): ToldOf {
    const direct = [...new Set([name, `${name}s`, name.toUpperCase()])].flatMap((form) => this.own.get(form) ?? []);
    const within = [...(this.longer.get(name) ?? [])].flatMap((form) => this.own.get(form) ?? []);
    return [...direct, ...within].reduce(sum, nothing);
  }

  /** Whether the text has a name in just this form. */
  bare(name: string): boolean {
    return this.own.has(name);
  }

  /** How often a name stands alone, in no longer one. */
  alone(name: string): number {
    return (this.own.get(name)?.count ?? 0) + (this.own.get(`${name}s`)?.count ?? 0);
  }

  /** Whether the text writes the word small as well: then it is no name. */
  writesSmall(name: string): boolean {
    return this.written.has(name.toLowerCase());
  }

  /** Whether the text has a name in quotation marks only, more than once. */
  isQuoted(name: string): boolean {
    return (this.quoted.get(name) ?? 0) > 1 && this.quoted.get(name) === this.alone(name);
  }

  /** "from 1950 The Saddle Room", "un sac La Rochevine": an article written large inside a sentence is part of the name. */
  article(name: string): string | null {
    const isInside = (text: string, article: string) => {
      const at = text.indexOf(` ${article} ${name}`);
      return at > 0 && /[^.!?:\n]/.test(text[at - 1]!);
    };
    const found = articles.find((article) => isInside(this.text, article));
    return found ?? particles.find((one) => this.heads.some((head) => isInside(head, one))) ?? null;
  }
}
