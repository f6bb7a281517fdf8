import type { ClaimOf } from '../claim/types';
import { kit, strings } from '../words';

type Size = ClaimOf<'measure'>;

/** Characters between two numbers of one row: "30 x 21", "30 cm × 21". */
const mostBetween = 6;
const rowSides = ['width', 'height', 'depth'] as const;

/** Sizes as they are shown: each with its side, and a row that names none with the order that is usual. */
export function sizeStatements(claims: readonly Size[]): [statement: string, claims: Size[]][] {
  const statements = new Map<string, Size[]>();
  for (const row of rowsOf(claims)) {
    const said = rowWords(row);
    statements.set(said, [...(statements.get(said) ?? []), ...row]);
  }
  return [...statements];
}

/** Sizes without a side that stand one after the other, as in "30 x 21 x 17 cm"; each other one by itself. */
function rowsOf(claims: readonly Size[]): Size[][] {
  const rows: Size[][] = [];
  for (const claim of claims) {
    const row = rows.at(-1);
    if (row && row.length < rowSides.length && goesOn(row.at(-1) as Size, claim)) row.push(claim);
    else rows.push([claim]);
  }
  return rows;
}

function goesOn(before: Size, next: Size): boolean {
  if (before.measure.dimension !== 'unknown' || next.measure.dimension !== 'unknown') return false;
  if (before.at.field !== next.at.field) return false;
  // Data give one value after the other, each with places of its own.
  if (before.at.field === 'data') return true;
  const between = next.at.start - before.at.end;
  return between >= 0 && between <= mostBetween;
}

function rowWords(row: readonly Size[]): string {
  const [first] = row;
  if (!first) return '';
  const { dimension, mm } = first.measure;
  const words = strings.claims.sizes;
  if (dimension !== 'unknown') return words.named(words.sides[dimension], kit.length(mm));
  if (row.length === 1) return words.alone(kit.length(mm));
  const lengths = row.map(({ measure }) => kit.length(measure.mm).replace(/ cm$/, '')).join(' × ');
  const sides = rowSides.slice(0, row.length).map((side) => words.sides[side]);
  return words.row(`${lengths} cm`, sides.join(' × '));
}
