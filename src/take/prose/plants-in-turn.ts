import { unknownPlace } from '../../place';
import { phraseFinder, tableWords } from '../../text';
import { andWords } from '../and-words';
import { namesMonth } from '../said/month';
import { readPlace, type SaidPlace } from '../said/place';
import { withoutPeriods } from '../said/used-text';
import { tellingFinder } from '../words';
import { plantBeside, type SaidPlant } from './said-plant';

const inTurn = tellingFinder('in-turn');
const strongly = tellingFinder('strong-stands-for');
const denied = tellingFinder('is-not');
/** In Japanese the denial closes the sentence: its particle alone denies nothing. */
const isDenied = (text: string): boolean => denied(text).some(({ words }) => /\p{Script=Latin}/u.test(words));
const ofPlants = tellingFinder('plant', 'letters');
const materials = phraseFinder(tableWords('material'));

/** What joins the members of a row: signs, "and", "or", "bzw.", "as well as" by its comma. */
const joint = `\\s?(?:[,、・/]\\s?(?:(?:${andWords}|bzw\\.)\\s)?|\\s(?:${andWords}|bzw\\.|beziehungsweise|resp\\.)\\s|と|および|及び)`;
const code = '(?:\\p{Lu}{1,3}\\d?|\\d{1,2})';
const codeRow = new RegExp(
  `(?<![\\p{Script=Latin}\\d.'’-])${code}(?:${joint}${code}){1,7}(?![\\p{Script=Latin}\\d'’-])`,
  'gu',
);
const articles = 'the|in|at|die|der|das|den|le|la|les|à|en|il|lo|gli|a|el|los|las|de|het|te';
const article = `(?:(?:${articles})\\s|[lL]['’]|all['’])?`;
const word = "\\p{Lu}[\\p{L}'’-]{1,30}";
const latin = `${article}${word}(?:[ -](?:(?:de|la|del|di|sur|am|an|der|upon|on|en)[ -]){0,2}${word}){0,3}(?:\\s?\\([^()]{3,30}\\))?`;
const japanese = '[\\p{Script=Han}\\p{Script=Katakana}ー]{1,12}';
const nameRow = new RegExp(
  `(?<!\\p{L})${latin}(?:${joint}${latin}){1,7}|(?<![\\p{Script=Han}\\p{Script=Katakana}])${japanese}(?:(?:、|・|と|および|及び)${japanese}){1,7}`,
  'gu',
);
const parts = new RegExp(joint, 'u');
const longest = 300;
/** Letters between the one row and the other: a verb, a word for workshops and an article. */
const farthest = 60;

interface Row {
  members: string[];
  start: number;
  end: number;
}

const rowsOf = (text: string, row: RegExp): Row[] =>
  [...text.matchAll(row)].map(({ 0: all, index }) => ({
    members: all.split(parts),
    start: index,
    end: index + all.length,
  }));

const opening = new RegExp(`^(?:(?:${articles})\\s|[ld]['’]|all['’])`, 'iu');
function placeOf(name: string): SaidPlace | null {
  const bare = name.replace(opening, '').replace(/(?:の)?(?:工場|工房)$/u, '');
  const place = readPlace(bare, /^\p{Script=Latin}/u.test(bare) ? 'words' : 'cell');
  return place && !namesMonth(place.name ?? '') && materials(bare).length === 0 ? place : null;
}

/**
 * "T, O and P stand for Truro, Oundle and Penrith respectively": as many codes as places, each in the other row's order. The
 * codes may come last where the sentence says that they are in turn. Null where the sentence has no two such rows; none where
 * it has them and they are not of one length, or a time is told of one knows not which.
 */
export function plantsInTurn(sentence: string): SaidPlant[] | null {
  if (sentence.length > longest) return null;
  const { text, periods } = withoutPeriods(sentence);
  const told = inTurn(text).length > 0;
  for (const codes of rowsOf(text, codeRow)) {
    const isOfFigures = codes.members.some((one) => /^\d/.test(one));
    if (isOfFigures && !told) continue;
    const names = rowsOf(text, nameRow).filter((row) => row.end <= codes.start || row.start >= codes.end);
    const behind = names.find((row) => row.start >= codes.end && row.start - codes.end <= farthest);
    const between = behind ? text.slice(codes.end, behind.start) : '';
    const said = behind !== undefined && (told || strongly(between).length > 0);
    const ahead = told
      ? names.findLast((row) => row.end <= codes.start && codes.start - row.end <= farthest)
      : undefined;
    const row = said ? behind : ahead;
    if (!row || isDenied(between)) continue;
    const own = row.members.length === codes.members.length ? row.members.map(placeOf) : undefined;
    const isList = own?.every((one) => one !== null) && new Set(codes.members).size === codes.members.length;
    const named = own?.some((one) => one && one.place !== unknownPlace) || ofPlants(text).length > 0 || told;
    if (!isList || !named || periods.some(({ form }) => form !== 'year')) return told ? [] : null;
    return codes.members.map((one, at) => plantBeside(one, own[at]!, [], codes.start + at));
  }
  return null;
}
