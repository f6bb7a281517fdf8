import type { KnownCode } from '../../../src/code';
import { pick } from '../../reference/number-systems';
import { drawPiece, drawSystem, type Piece, type Truth } from './systems';

/** A list of known codes as a person may have it, with what is true of it. */
export interface DrawnList {
  seed: number;
  eras: Truth[];
  rows: (KnownCode & { era: number; wrong: boolean; piece: Piece; stated: [string | null, string | null] })[];
}

type Chance = () => number;
const whole = (chance: Chance, least: number, most: number) => least + Math.floor(chance() * (most - least + 1));
const names = 'January February March April May June July August September October November December'.split(' ');

type Said = [words: string, from: string | null, to: string | null];

/** A date as people know it and write it: by month, by year, by what they bought when, or roughly. */
function sayDate(chance: Chance, day: string): Said {
  const year = Number(day.slice(0, 4));
  const month = day.slice(0, 7);
  const ends = (first: number | null, last: number | null): [string | null, string | null] => [
    first === null ? null : `${first}-01-01`,
    last === null ? null : `${last}-12-31`,
  ];
  const dice = chance();
  if (dice < 0.45) {
    const words = chance() < 0.5 ? month : `${names[Number(day.slice(5, 7)) - 1]} ${year}`;
    return [words, `${month}-01`, `${month}-31`];
  }
  if (dice < 0.52) return [day, day, day];
  if (dice < 0.76) return [String(year), ...ends(year, year)];
  if (dice < 0.82) {
    const about = year + whole(chance, -2, 2);
    return [pick(chance, [`about ${about}`, `c. ${about}`, `um ${about}`]), ...ends(about - 5, about + 5)];
  }
  if (dice < 0.87)
    return [`${Math.floor(year / 10)}0s`, ...ends(Math.floor(year / 10) * 10, Math.floor(year / 10) * 10 + 9)];
  if (dice < 0.93) {
    const sold = year + whole(chance, 0, 3);
    return [pick(chance, [`bought ${sold}`, `gekauft ${sold}`]), ...ends(null, sold)];
  }
  if (dice < 0.96) {
    const first = year - whole(chance, 0, 3);
    return [`not before ${first}`, ...ends(first, null)];
  }
  const first = year - whole(chance, 0, 1);
  return [`${first} to ${first + 1}`, ...ends(first, first + 1)];
}

/** A wrong date: one that what the code says and what is said cannot both be. */
function slip(chance: Chance, piece: Piece & { day: string }): Said {
  for (;;) {
    const years = whole(chance, 1, 6) * (chance() < 0.5 ? -1 : 1);
    const said = sayDate(chance, `${Number(piece.day.slice(0, 4)) + years}${piece.day.slice(4)}`);
    const [, from, to] = said;
    if ((from !== null && piece.span.to! < from) || (to !== null && piece.span.from! > to)) return said;
  }
}

/** The system that came after another, built otherwise. */
function drawOther(chance: Chance, first: Truth): Truth {
  for (;;) {
    const other = drawSystem(chance, first.to + 1);
    if (JSON.stringify(other.layout) !== JSON.stringify(first.layout)) return other;
  }
}

const mostTries = 1000;

/** A list of 6 to 12 codes: one in three with one wrong date, one in five with two eras. */
export function drawList(seed: number, chance: Chance): DrawnList {
  const first = drawSystem(chance, 1965 + whole(chance, 0, 20));
  const eras = chance() < 0.2 ? [first, drawOther(chance, first)] : [first];
  const count = whole(chance, 6, 12);
  const border = eras.length === 1 ? count : whole(chance, 2, count - 2);
  const wrong = chance() < 1 / 3 ? whole(chance, 0, count - 1) : -1;
  const placed = chance() < 0.5;
  const seen = new Set<string>();
  const rows: DrawnList['rows'] = [];
  // A system of few codes has not always as many as are wanted.
  for (let tries = 0; rows.length < count && tries < mostTries; tries++) {
    const era = rows.length < border ? 0 : 1;
    const piece = drawPiece(eras[era]!, chance);
    if (seen.has(piece.code)) continue;
    seen.add(piece.code);
    const isWrong = rows.length === wrong;
    const [words, from, to] = isWrong ? slip(chance, piece) : sayDate(chance, piece.day);
    const reads = placed && piece.place && chance() < 0.8 ? `${words}, ${piece.place}` : words;
    rows.push({ code: piece.code, reads, era, wrong: isWrong, piece, stated: [from, to] });
  }
  // People put their codes down in no order.
  return { seed, eras, rows: rows.sort(() => chance() - 0.5) };
}
