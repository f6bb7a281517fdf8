import type { Telling } from '../case';
import type { Dating, Explanation, Known, Stated, Stretch, Weight } from '../evidence';
import { yearSpan } from '../span';
import { evidence as german } from './de/evidence';
import { evidence as english } from './en/evidence';
import type { EvidenceWords, FactName } from './evidence-words';
import { type Kit, kitFor } from './kit';
import type { Language } from './language';
import { pseudo } from './pseudo';

const catalogues: Record<Language, EvidenceWords> = {
  en: english,
  de: german,
  get 'en-XA'() {
    return pseudo(english);
  },
};

/** "January 1995 or week 2 of 1995"; of more than two dates the years alone: "1978 or 1998". */
export function sayDates(spans: Stated['spans'], kit: Kit): string {
  const years = spans.map(({ from, to }) =>
    from && to && from.slice(0, 4) === to.slice(0, 4) ? from.slice(0, 4) : null,
  );
  if (spans.length <= mostDates || years.includes(null)) return kit.either(spans.map((one) => kit.span(one)));
  return kit.either([...new Set(years)].map((year) => kit.span(yearSpan(Number(year)))));
}
const mostDates = 2;

const sayPlaces = (places: readonly string[], kit: Kit): string => kit.either(places.map(kit.place));

/** What one piece of evidence states, without a full stop. */
export function sayStated({ says, spans, places }: Stated, language: Language): string {
  const kit = kitFor(language);
  const say = catalogues[language].stated[says.kind] as (said: unknown, ...more: [string, string, Kit]) => string;
  return say(says, sayDates(spans, kit), sayPlaces(places, kit), kit);
}

const clauseOf = (stated: Stated, language: Language): string =>
  catalogues[language].clause(sayStated(stated, language));

/** "1993 to 1996, Belgium"; any date and place when nothing was said. */
export function sayStretch({ spans, places }: Stretch, language: Language): string {
  const kit = kitFor(language);
  const said = [sayDates(spans, kit), sayPlaces(places, kit)].filter(Boolean);
  return said.length > 0 ? said.join(', ') : catalogues[language].anyDateAndPlace;
}

/** Several facts that cannot all hold, or hardly. */
export const sayConflict = (
  { over, hard, facts }: { over: 'date' | 'place'; hard: boolean; facts: readonly Stated[] },
  language: Language,
): string =>
  catalogues[language].conflict(
    over,
    hard,
    facts.map((one) => clauseOf(one, language)),
  );

/** The same where a code among them is read by its shape alone. */
export const sayApartByShape = ({ facts }: { facts: readonly Stated[] }, language: Language): string =>
  catalogues[language].apartByShape(facts.map((one) => clauseOf(one, language)));

/** A statement in as few words as tell which it is: the code, or the words quoted. */
function shortly({ says }: Stated, kit: Kit): string {
  if ('words' in says) return kit.quote(says.words);
  return 'code' in says ? kit.code(says.code) : kit.either(says.plants);
}

/** What was read, seen and said that agrees on a stretch; each fact is named, and nothing is counted. */
export function sayAgreeing(
  { read, seen, said, stretch }: Record<Known, readonly Stated[]> & { stretch: Stretch },
  language: Language,
): string {
  const kit = kitFor(language);
  const short = (some: readonly Stated[]) => [...new Set(some.map((one) => shortly(one, kit)))];
  const told = { read: short(read), seen: short(seen), said: short(said) };
  return catalogues[language].agreeing(told, sayStretch(stretch, language), kit);
}

const factNames = {
  code: 'code',
  system: 'code',
  plant: 'code',
  mark: 'mark',
  material: 'material',
  'other-material': 'material',
  model: 'model',
  origin: 'origin',
  country: 'origin',
  bought: 'purchase',
} as const;
const factName = ({ says, spans }: Stated): FactName =>
  says.kind === 'made' ? (spans[0]?.precision === 'year' ? 'year' : 'date') : factNames[says.kind];

/** Which single fact, if it is wrong, leaves everything else in agreement; `first` is its plainest statement. */
export function sayExplanation(
  { rest, spans, places }: Pick<Explanation, 'rest' | 'spans' | 'places'>,
  first: Stated,
  language: Language,
): string {
  const { explanation, facts } = catalogues[language];
  const stretch = sayStretch({ spans, places }, language);
  return explanation(facts[factName(first)], clauseOf(first, language), rest, stretch);
}

/** What a finding's weight comes from, one sentence a line. */
export function sayWeight({ derivation }: Pick<Weight, 'derivation'>, language: Language): string[] {
  const words = catalogues[language].weight;
  const { statements, facts, soft, backing, source } = derivation;
  const clause = (piece: Dating) => clauseOf(piece, language);
  const backed = backing.against ? words.against(backing.facts, clause(backing.against)) : words.agree(backing.facts);
  const rests =
    statements === 0
      ? [words.bare]
      : [
          soft ? words.soft(soft.source.kind === 'memory', clause(soft)) : words.hard,
          words.counted(facts, statements > facts),
        ];
  return [...rests, ...(backing.facts > 0 ? [backed] : []), words.source[source]];
}

/** Why an agreement tells something, and how much of it counts: a line for each way in which it could have come out otherwise. */
export function sayTellings(tells: readonly Telling[], language: Language): string[] {
  const { informs, narrows } = catalogues[language];
  return tells.map(({ informs: why, narrows: counts }) =>
    counts === null ? informs[why] : `${informs[why]} ${counts ? narrows.counts : narrows.little}`,
  );
}
