import type { Span } from '../span/types';
import countries from './countries.json';
import existedTable from './existed.json';

const former = new Map(countries.former.map((row) => [row.code, row]));
const currentNames = new Map(countries.current.map(([code = '', name = '']) => [code, name]));

/** Every ISO 3166-1 alpha-2 code in force. Source: ISO 3166-1:2020. */
export const currentPlaces: readonly string[] = [...currentNames.keys()];

/**
 * Every ISO 3166-3 alpha-4 code of a former country. Source: ISO 3166-3:2020.
 * @internal
 */
export const formerPlaces: readonly string[] = [...former.keys()];

/** The ISO table's own names by code, as they stand ("Bolivia, Plurinational State of"). */
export const isoNames: ReadonlyMap<string, string> = currentNames;

/**
 * Stands for a place that is not known. ISO 3166-1 leaves ZZ to its users, and Unicode's CLDR names it so.
 * Source: ISO 3166-1:2020 clause 8.1.3; Unicode CLDR, territory ZZ, "Unknown Region".
 */
export const unknownPlace = 'ZZ';

export const isPlaceCode = (code: string): boolean => currentNames.has(code) || former.has(code);

/**
 * Short names as they are said; the ISO table's own are kept where nothing shorter is clearer.
 * Own wording, no source needed.
 */
const spokenNames: Record<string, string> = {
  GB: 'United Kingdom',
  US: 'United States',
  NL: 'Netherlands',
  RU: 'Russia',
  KR: 'South Korea',
  KP: 'North Korea',
  TW: 'Taiwan',
  VN: 'Vietnam',
  IR: 'Iran',
  SY: 'Syria',
  LA: 'Laos',
  MD: 'Moldova',
  BO: 'Bolivia',
  VE: 'Venezuela',
  TZ: 'Tanzania',
  PS: 'Palestine',
  BN: 'Brunei',
  FM: 'Micronesia',
  CD: 'Democratic Republic of the Congo',
  DDDE: 'East Germany',
  SUHH: 'Soviet Union',
  YUCS: 'Yugoslavia',
  VDVN: 'North Vietnam',
  YDYE: 'South Yemen',
};

/** The English name of an ISO 3166-1 alpha-2 or ISO 3166-3 alpha-4 code; the code itself when there is no such code. */
export const placeName = (code: string): string =>
  spokenNames[code] ?? currentNames.get(code) ?? former.get(code)?.name ?? code;

/**
 * ISO 3166-3 gives Yugoslavia's code one heir, because the two-letter code was kept by the smaller federation of
 * 1992; the country of before had six, and goods of all six say "Yugoslavia" (history, from memory).
 */
const furtherHeirs: Record<string, string[]> = { YUCS: ['SI', 'HR', 'BA', 'MK'] };

/**
 * The present countries (ISO 3166-1 codes) whose ground a code stands for: itself when it is in force, the heirs of a
 * former country. Sorted; empty for an unknown code.
 */
export function presentPlaces(code: string): string[] {
  if (currentNames.has(code)) return [code];
  const heirs = [...(former.get(code)?.successors ?? []), ...(furtherHeirs[code] ?? [])];
  return [...new Set(heirs.flatMap(presentPlaces))].sort();
}

/**
 * Whether two codes can name the same ground: the same code, or a former country and one of its heirs.
 * An unknown code agrees with itself only.
 */
export function placesAgree(a: string, b: string): boolean {
  if (a === b) return true;
  const ground = new Set(presentPlaces(a));
  return presentPlaces(b).some((place) => ground.has(place));
}

export interface CountryPeriod {
  span: Span;
  /** False when the days are from memory and were not held against a document. */
  verified: boolean;
  source: string;
}

const existedRows = new Map(existedTable.rows.map((row) => [row.place, row]));

/**
 * The days in which a country existed under its name, with the source. Countries that are not dated, because their
 * name is older than any piece, have both ends open. A former country that is not dated ends no later than its code.
 */
export function countryPeriod(code: string): CountryPeriod {
  const row = existedRows.get(code);
  if (row) {
    return {
      span: { from: row.from, to: row.to, precision: 'range' },
      verified: row.verified === 'stored',
      source: row.source,
    };
  }
  const withdrawn = former.get(code)?.codeWithdrawn;
  const to = withdrawn ? (withdrawn.length === 4 ? `${withdrawn}-12-31` : withdrawn) : null;
  const source = withdrawn ? 'ISO 3166-3:2020, day the code was withdrawn' : 'not dated';
  return { span: { from: null, to, precision: 'range' }, verified: withdrawn !== undefined, source };
}

/**
 * The days in which a country existed under its name; an open end where the table does not say.
 * @internal
 */
export const countryExisted = (code: string): Span => countryPeriod(code).span;
