import type { OwnFields } from '../propose';
import { plainCode } from '../said/code';
import { doubtedBy } from '../said/doubted';
import { usedOf } from '../said/period';
import { readPlace } from '../said/place';
import { withoutPeriods } from '../said/used-text';
import type { Doubt } from '../types';
import { tellingFinder } from '../words';

export interface SaidPlant {
  own: Extract<OwnFields, { kind: 'plant' }>;
  doubts: Doubt[];
  /** Place of the code in the sentence. */
  at: number;
}

const codes = /(?<![\p{Script=Latin}\d'’-])\p{Lu}{2,3}\d?(?![\p{Script=Latin}\d'’-])(?!\s\d)/gu;
/** One letter is a code where the text calls it a letter, or says at once what it stands for. */
const lone =
  /(?<![\p{L}\d'’])\p{Lu}(?=\s(?:stands|stand|steht|staat|désigne|signifie|bedeutet|betekent|sta per|significa|indica)\s)|(?<=(?:[Ll]etter|[Ll]ettre|[Ll]ettera|[Ll]etra|Buchstabe)\s)\p{Lu}(?![\p{L}\d'’])/gu;
/** "A letter goes before it: F for Florence, N for Naples", in a sentence that speaks of letters. */
const listed = /(?<![\p{L}\d'’])\p{Lu}(?=\s(?:for|für|per|pour|para|voor)\s(?:\p{L}{1,12}\s){0,4}\p{Lu})/gu;
const letterWords = tellingFinder('letters');
/** "Walsall (BA)": the place before its code. */
const placeBefore = /((?:\p{Lu}[\p{L}'’-]{1,30}[ -]){0,3}\p{Lu}[\p{L}'’-]{1,30})\s?\($/u;
const verbs = tellingFinder('stands-for', 'strong-stands-for');
const plantWords = tellingFinder('plant');
const produced = tellingFinder('produced');
const withdrawn = tellingFinder('withdrawn');
const denied = tellingFinder('is-not');
const instead = tellingFinder('but-this');
const deniedPlace = /^[^.;]{2,44}$/u;
/** "HJ for France", behind a code that a verb explained. */
const elliptical = /^\s?,?\s?(?:for|für|fuer|per|para|voor|pour|à|a la|la)?\s?(?=\p{Lu})|^\s?は/u;
const longest = 120;

/** What a sentence says of plants' codes, and the codes of which it takes an earlier statement back. */
export function plantsIn(sentence: string): { plants: SaidPlant[]; retracted: string[] } {
  const tokens = tokensIn(sentence);
  const ofPlants = plantWords(sentence).length > 0;
  const plants: SaidPlant[] = [];
  const retracted: string[] = [];
  if (tokens.length === 0) return { plants, retracted };
  const taken = withdrawn(sentence);
  const disputed = doubtedBy(sentence).includes('disputed');
  for (const [index, token] of tokens.entries()) {
    const start = token.index + token.text.length;
    const next = tokens[index + 1]?.index ?? sentence.length;
    const segment = sentence.slice(start, Math.min(next, start + longest)).replace(/[;。].{0,200}$/su, '');
    const { code, lookAlike } = plainCode(token.text);
    // "I was wrong about BC": what was said before is taken back, not what follows.
    const before = taken.find(({ end }) => end <= token.index && token.index - end <= 12);
    if (before) retracted.push(code);
    const other = insteadIn(segment);
    if (other !== null) {
      retracted.push(code);
      const place = readPlace(other);
      if (place) plants.push({ own: { kind: 'plant', code, ...place }, doubts: ['disputed'], at: token.index });
      continue;
    }
    const around = placeAround(sentence, token.index, segment, ofPlants || produced(sentence).length > 0);
    const follows = token.isListed || (plants.length > 0 && plants.at(-1)!.at === tokens[index - 1]?.index);
    const plant = around ?? readSegment(segment, follows, { corrected: Boolean(before), ofPlants });
    if (!plant) continue;
    const untrue = taken.some((hit) => hit !== before && hit.start > start);
    const doubts: Doubt[] = [
      ...(lookAlike ? (['look-alike'] as const) : []),
      ...(untrue ? (['withdrawn'] as const) : []),
      ...(disputed ? (['disputed'] as const) : []),
      ...(plant.backwards ? (['backwards'] as const) : []),
    ];
    plants.push({ own: { kind: 'plant', code, ...plant.fields }, doubts, at: token.index });
  }
  return { plants, retracted };
}

/** What may be a code of a plant, in order; one that is listed among letters needs no verb behind it. */
function tokensIn(sentence: string): { text: string; index: number; isListed: boolean }[] {
  const letters = letterWords(sentence).length > 0 ? [...sentence.matchAll(listed)] : [];
  const found = [...sentence.matchAll(codes), ...sentence.matchAll(lone), ...letters];
  const isListed = new Set(letters.map(({ index }) => index));
  const texts = new Map(found.map(({ 0: text, index }) => [index, text]));
  return [...texts].sort(([a], [b]) => a - b).map(([index, text]) => ({ text, index, isListed: isListed.has(index) }));
}

/** "AB is not Aubagne but Abbeville": what the place is instead, for one writer contradicts another; null where none does. */
function insteadIn(segment: string): string | null {
  const not = denied(segment).find(({ start }) => start <= 1);
  const but = not && instead(segment).find(({ start }) => deniedPlace.test(segment.slice(not.end, start)));
  if (!but || !/^\s?\p{L}/u.test(segment.slice(but.end))) return null;
  const { text } = withoutPeriods(segment.slice(but.end));
  return text.slice(0, 90).replace(/[.,;].{0,90}$/su, '');
}

function placeAround(sentence: string, at: number, segment: string, ofPlants: boolean) {
  const named = segment.startsWith(')') ? placeBefore.exec(sentence.slice(Math.max(0, at - 80), at)) : null;
  const place = named && readPlace(named[1]!);
  if (!place || (place.place === 'ZZ' && !ofPlants)) return null;
  const told = withoutPeriods(segment).periods.filter(({ form, start }) => form !== 'year' && start <= 12);
  const { backwards, ...used } = usedOf(told.slice(0, 1));
  return { fields: { ...place, ...used }, backwards };
}

function readSegment(
  segment: string,
  follows: boolean,
  { corrected, ofPlants }: { corrected: boolean; ofPlants: boolean },
) {
  const hits = verbs(segment);
  // "KV (Belgium)": the bracket alone says it, for countries.
  const bracket = /^\s?\(([^()]{3,60})\)/.exec(segment);
  const inBracket = bracket ? readPlace(withoutPeriods(bracket[1]!).text) : null;
  if (bracket && inBracket && inBracket.place !== 'ZZ') {
    const { backwards, ...used } = usedOf(withoutPeriods(bracket[1]!).periods.slice(0, 1));
    return { fields: { ...inBracket, ...used }, backwards };
  }
  const verb = hits.find(({ start }) => start <= (corrected ? 8 : 2));
  const strong =
    verb !== undefined && hits.some(({ start, value }) => start === verb.start && value === 'strong-stands-for');
  const joined = verb ? null : follows ? elliptical.exec(segment) : null;
  if (!verb && !joined) return null;
  const { text, periods } = withoutPeriods(segment.slice(verb ? verb.end : joined![0].length));
  const place = readPlace(text.slice(0, 90).replace(/\.\s.{0,90}$/su, ''));
  if (!place) return null;
  // "TV is Verona" may be anything; "TV stands for Verona" is not, nor is it where workshops are spoken of.
  if (place.place === 'ZZ' && !strong && !joined && plantWords(text).length === 0 && !(ofPlants && verb)) return null;
  const told = periods.filter(({ form }) => form !== 'year');
  const { backwards, ...used } = usedOf(told.slice(0, 1));
  return { fields: { ...place, ...used }, backwards };
}
