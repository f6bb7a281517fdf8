import { unknownPlace } from '../../place';
import { findPlaces, foldWords } from '../../text';
import { tellingFinder, wholeWords } from '../words';

/** A place as a page tells it: a country by its code, a town or workshop by its name alone. */
export interface SaidPlace {
  place: string;
  name?: string;
}

/** A town's or workshop's name: up to four words that begin with a capital, behind a few small ones. */
const town =
  /^(?:(?:\p{Ll}[\p{L}'’]{0,14}|\p{Lu}?\p{Ll}{0,12}(?:[Ww]erk|[Ww]erkstatt|[Ff]abrik)|Atelier)\s|[ld]['’]){0,4}(\p{Lu}[\p{L}'’.-]{1,30}(?:[ -](?:(?:de|la|sur|am|an|der|upon|on|di|del)[ -])?\p{Lu}[\p{L}'’.-]{1,30}){0,3})/u;

/** A town in katakana, and in a table's cell in kanji as well; what says that things are made there stands behind it. */
const inKatakana = /^([\p{Script=Katakana}ー・]{2,20})(?:製|工場|工房|市|です|[をの。]|$)/u;
const inKanji = /^([\p{Script=Han}\p{Script=Katakana}ー・]{1,10}?)(?:製|工場|工房|市)?$/u;

/** Words that stand where a name would: "unknown", "a workshop". */
const noName = new Set([...wholeWords('unknown'), ...wholeWords('plant'), ...wholeWords('article')]);

/** A cell or clause longer than this names more than a place. */
const longest = 300;

/** The country that a text names, also one whose name is a word of another meaning when it stands alone. */
function countryIn(text: string): { place: string; start: number; end: number } | null {
  // "Virgin Islands (British)" is one name.
  const joined = text.replace(/[()]/g, ' ').replace(/[\s.]{1,8}$/, '');
  const [first] = joined === text ? [] : findPlaces(joined);
  if (first && first.end - first.start === joined.length) return { place: first.place, start: 0, end: text.length };
  const [named] = findPlaces(text).filter(({ form }) => form !== 'adjective');
  if (named) return named;
  const lead = 'made in ';
  // A country by itself between commas, though its name alone may be any word: "Izmir, Turkey".
  for (const { 0: piece, index } of text.matchAll(/[^\s,;|()][^,;|()]{2,40}/gu)) {
    const alone = piece.replace(/[\s.]{1,80}$/, '');
    const [guarded] = findPlaces(lead + alone);
    if (guarded?.form === 'made-in' && guarded.end - guarded.start >= alone.length)
      return { place: guarded.place, start: index, end: index + alone.length };
  }
  return null;
}

const joints = tellingFinder('and-or');

/** "Walsall, England", "Ubrique in the south of Spain"; in "Cork and, later, a place in Portugal" the country is another's. */
function isNear(text: string, name: string, country: { start: number; end: number }): boolean {
  const at = text.indexOf(name);
  const [from, to] = at < country.start ? [at + name.length, country.start] : [country.end, at];
  const between = text.slice(from, Math.max(from, to));
  // "en" joins in Dutch, and in French and Spanish it says where.
  const joined = joints(between).some((hit) => between.slice(hit.start, hit.end).toLowerCase() !== 'en');
  return between.length <= 30 && !/[.;]|,[^,]{0,30},/.test(between) && !joined;
}

/** The place that opens or fills a short text; null when it names none. A town without its country is of an unknown one. */
export function readPlace(text: string, form: 'cell' | 'words' = 'words'): SaidPlace | null {
  const plain = text.slice(0, longest).normalize('NFKC').trim();
  const country = countryIn(plain);
  const rest = country ? `${plain.slice(0, country.start)}|${plain.slice(country.end)}` : plain;
  const names = rest
    .split(/[,;|()（）、]|\s[-–—]\s/u)
    .map((piece) => {
      const plain = piece.trim();
      // German writes every noun with a capital: "eine Näherei in Slowenien" has no name.
      if (/^(?:\p{L}{2,12}\s){0,2}ein(?:e[mnrs]?)?\s/u.test(plain)) return undefined;
      const japanese = inKatakana.exec(plain) ?? (form === 'cell' ? inKanji.exec(plain) : null);
      return (town.exec(plain) ?? japanese)?.[1]?.replace(/\.$/, '');
    })
    .filter((name): name is string => name !== undefined);
  const name = names.find(
    (one) => findPlaces(one).length === 0 && !noName.has(foldWords(one).text) && !/^\p{Lu}{1,3}\d?$/u.test(one),
  );
  if (!country || (form === 'words' && name !== undefined && !isNear(plain, name, country)))
    return name ? { place: unknownPlace, name } : null;
  return { place: country.place, ...(name && { name }) };
}

/** The country that a short text is, with nothing else beside it. */
export function countryAlone(text: string): string | null {
  const plain = text.slice(0, longest).replace(/[\s:.]{1,4}$/, '');
  const [found] = findPlaces(plain);
  return found && found.form === 'name' && found.end - found.start === plain.length ? found.place : null;
}

const ofPlants = tellingFinder('plant', 'code', 'letters');

/** "Italy", "Workshops in France": the one country that a heading is of; null where it says anything else. */
export function countryOfHeading(heading: string): string | null {
  const alone = countryAlone(heading);
  if (alone !== null) return alone;
  const [country, ...more] = findPlaces(heading);
  if (!country || more.length > 0 || country.form === 'made-in') return null;
  const rest = `${heading.slice(0, country.start)} ${heading.slice(country.end)}`;
  const plain = ofPlants(rest).reduceRight((text, { start, end }) => text.slice(0, start) + text.slice(end), rest);
  return plain.replace(/[^\p{L}\d]/gu, '').length <= 5 && plain.length < rest.length ? country.place : null;
}

const all = tellingFinder('all-of-them');
const longestOfAll = 160;
/** "All of them were in Scotland": the one country that a short paragraph says of all; null where it says that of none. */
export function countryOfAll(text: string): string | null {
  if (text.length > longestOfAll || all(text).length === 0) return null;
  const [country, ...more] = findPlaces(text);
  const isNear =
    country !== undefined &&
    all(text).some(({ end }) => country.start > end && !/[.;!?]/.test(text.slice(end, country.start)));
  return isNear && more.length === 0 && country.form !== 'adjective' ? country.place : null;
}
