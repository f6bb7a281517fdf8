import { foldWords } from '../../text';
import type { OwnFields } from '../propose';
import { blanked } from '../said/blanked';
import { readExamples } from '../said/example';
import { onePeriod } from '../said/one-period';
import { readPeriods, type SaidPeriod, usedOf } from '../said/period';
import { readAmounts } from '../said/price';
import { readSizes, type SaidSize } from '../said/size';
import type { TakenPeriod } from '../types';
import { tellingFinder, wholeWords } from '../words';

/** "Im Laden": German writes every noun with a capital, and no model behind such a word. */
const capitals =
  /(?<![\p{L}\d])(?<!(?<!\p{L})(?:[Ii]m|[Bb]eim|[Aa]m|[Vv]om|[Zz]um|[Zz]ur|[Ii]ns)\s)\p{Lu}[\p{L}'’-]{2,30}(?: (?:\p{Lu}[\p{L}'’-]{1,30}|\d{1,3}(?!\d|[.,]\d|\s?(?:x|×|cm|mm|in\b(?!\s\d{4})|\p{Sc}|DM|Mark|EUR|Euro|Lire|Franken|francs?|lire|pesetas|pounds|gulden|円))))*/gu;
const produced = tellingFinder('produced');
const launched = tellingFinder('launched');
const priceWords = tellingFinder('new-price', 'cost');
const personal = tellingFinder('bought');
/** Words that begin a sentence and name nothing: articles, pronouns, and what kind of thing follows. */
const opening =
  /^(?:the|la|le|les|el|los|il|lo|die|der|das|de|het|a|an|an?|it|its|sie|er|es|elle|il|ella|in|from|since|until|at|modelo?|modell|modèle|modello)$/i;
/** "Neupreis 1972" is no model. */
const common: ReadonlySet<string> = new Set([
  ...wholeWords('heading'),
  ...wholeWords('column-price'),
  ...wholeWords('new-price'),
]);
const makerNouns = wholeWords('maker-noun');

/** The name of a model before a place in a sentence; the maker's own name is none. */
export function modelBefore(sentence: string, until: number, makers: readonly string[]): string | null {
  let name: string | null = null;
  for (const match of sentence.matchAll(capitals)) {
    if (match.index >= until) break;
    const words = match[0].split(' ');
    while (words.length > 0 && (opening.test(words[0]!) || common.has(foldWords(words[0]!).text))) words.shift();
    // A lone word at the start of a sentence has its capital from there.
    const lone = match.index === 0 && words.length === 1 && match[0] === words[0] && !/\d/.test(match[0]);
    const plain = lone ? '' : withoutMaker(words.join(' '), makers);
    if (plain !== '') name = plain;
  }
  return name;
}

const inJapanese =
  /[「『]([^」』]{2,20})[」』]|(?<![\p{Script=Katakana}ー])([\p{Script=Katakana}ー・]{3,16}\d{0,3})(?=[はのが、])/gu;
const nouns = wholeWords('heading-noun');

/** 「アサギ」は幅28cm: a model in katakana or quotation marks before a place; the maker and words for things are none. */
function japaneseBefore(sentence: string, until: number, makers: readonly string[]): string | null {
  const names = [...sentence.slice(0, until).matchAll(inJapanese)].map(({ 1: quoted, 2: bare }) => quoted ?? bare!);
  return names.findLast((name) => !nouns.has(name) && !makers.some((maker) => maker.includes(name))) ?? null;
}

const quoted = /[„“«"]\s?(\p{Lu}[^”“"»„«]{1,30}?)\s?[”“"»]/gu;
/** Die „Elster“ der Firma … misst: what stands in quotation marks, and is no maker. */
function quotedBefore(sentence: string, until: number, makers: readonly string[]): string | null {
  const names = [...sentence.slice(0, until).matchAll(quoted)].map(([, name]) => name!);
  const [name, ...more] = names.filter((one) => !makers.includes(one));
  return more.length === 0 && name !== undefined && name.split(' ').length <= 4 ? name : null;
}

const withoutMaker = (name: string, makers: readonly string[]): string => {
  const maker = makers.find((one) => name === one || name.startsWith(`${one} `));
  if (maker) return name.slice(maker.length).trim();
  // "Firma Grevenroth"
  if (makers.some((one) => name.endsWith(` ${one}`)) && makerNouns.has(foldWords(name.split(' ')[0]!).text)) return '';
  return makers.some((one) => one.split(' ').includes(name)) ? '' : name;
};

/** "It was made from 1958 to 1983.": of the model that was named before; true only where its size is told as well. */
export const meansModel = (sentence: string): boolean =>
  /^(?:it|il|elle|sie|er|es|fu|è|fue|se|hij|zij|het|het model|the model|le modèle|das modell|il modello|el modelo)\s/iu.test(
    sentence,
  );

/** A day by which no code is read. */
const anyDay = '2000-01-01';

export interface SaidModel {
  name: string;
  size?: Extract<OwnFields, { kind: 'model' }>['size'];
  made?: TakenPeriod;
  about?: ('from' | 'to')[];
  backwards: boolean;
}

/** Models that a sentence tells the size or the first year of. `known` is the one spoken of before. */
export function modelsIn(sentence: string, known: string | null, makers: readonly string[]): SaidModel[] {
  const all = readSizes(sentence);
  const clauses = all.length > 1 ? sentence.split(/;\s/) : [];
  if (clauses.length > 1) return clauses.flatMap((clause) => modelsIn(clause, null, makers));
  if (all.length > 1)
    return all.flatMap(({ size, start, end }, at): SaidModel[] => {
      const from = all[at - 1]?.end ?? 0;
      const name = modelBefore(sentence.slice(from, start + 1), start - from, makers);
      const told = sentence.slice(end, all[at + 1]?.start ?? sentence.length);
      const { made, about, backwards } = timeOf(readPeriods(told).filter(({ form }) => form !== 'year'));
      return name === null ? [] : [{ name, size, ...(made && { made }), ...(about && { about }), backwards }];
    });
  const one = modelIn(sentence, all[0], known, makers);
  // What tells how a code reads tells no model's time.
  const ofCode = one !== null && all.length === 0 && readExamples(sentence, anyDay).length > 0;
  return one && !ofCode ? [one] : [];
}

/** The one time that is told of a model. */
function timeOf(periods: readonly SaidPeriod[]): Pick<SaidModel, 'made' | 'about' | 'backwards'> {
  const { used, about, backwards } = usedOf(periods.length === 1 ? periods : []);
  const made = onePeriod(used);
  return { ...(made && { made }), ...(about && { about }), backwards };
}

function modelIn(
  sentence: string,
  sides: SaidSize | undefined,
  known: string | null,
  makers: readonly string[],
): SaidModel | null {
  const [verb] = launched(sentence);
  const [made] = sides ? [] : produced(sentence);
  if (!sides && !verb && !made) return null;
  const periods = readPeriods(sides ? blanked(sentence, [sides]) : sentence);
  const { backwards, used, about } = usedOf(periods.slice(0, 1));
  const [year] = periods;
  const years: TakenPeriod | undefined =
    year?.form === 'year' ? (verb ? [year.used[0], null] : undefined) : onePeriod(used);
  const until = sides?.start ?? made?.start ?? year?.start ?? sentence.length;
  const name =
    quotedBefore(sentence, until, makers) ??
    modelBefore(sentence, until, makers) ??
    (sides ? (japaneseBefore(sentence, until, makers) ?? known) : meansModel(sentence) ? known : null);
  if (name === null || (!sides && !years)) return null;
  return {
    name,
    backwards,
    ...(sides && { size: sides.size }),
    ...(years && { made: years }),
    ...(about && years && { about }),
  };
}

/**
 * What models cost new in a year, by a sentence; what its writer paid is no such price, nor what an auction fetched. As many
 * amounts as years are one each, in their order, and tell of prices whatever their verb.
 */
export function pricesIn(sentence: string, known: string | null, makers: readonly string[], francs: string | null) {
  if (personal(sentence).length > 0) return [];
  const years = readPeriods(sentence).filter(({ form }) => form === 'year');
  const amounts = readAmounts(sentence, francs);
  const isSeries = amounts.length > 1 && amounts.length === years.length;
  if (priceWords(sentence).length === 0 && !(isSeries && auctioned(sentence).length === 0)) return [];
  return amounts.flatMap(({ amount, currency, start, end }, at) => {
    // "£34 in 1975", behind another year.
    const behind = years.find(
      (one) => one.start >= end && one.start - end <= nearestYear && yearBehind.test(sentence.slice(end, one.start)),
    );
    const near = behind ?? years.findLast((one) => one.end <= start) ?? years.find((one) => one.start >= start);
    const year = isSeries ? years[at] : near;
    if (!year) return [];
    const quoted = sentence.length <= longestQuoted ? quotedBefore(sentence, start, makers) : null;
    const model = quoted ?? modelBefore(sentence, start, makers) ?? known;
    return [{ kind: 'price' as const, ...(model && { model }), amount, currency, year: Number(year.used[0]) }];
  });
}
const auctioned = tellingFinder('auctioned');
const nearestYear = 14;
/** A longer sentence is a muddle, of which nothing is looked for in quotation marks. */
const longestQuoted = 400;
const yearBehind = /^\s?(?:\(|(?:in|en|nel|im Jahr|im Jahre)\s)$/iu;
