import * as z from 'zod';
import type { Measure } from '../listing/types';
import type { Model } from '../maker/types';

const mmPer = { cm: 10, mm: 1, in: 25.4 } as const;
export const sideSchema = z.enum(['width', 'height', 'depth']);
export type Side = z.infer<typeof sideSchema>;
export const sides: readonly Side[] = sideSchema.options;

/** A side's length as it is stated. */
export const sidedSchema = z.strictObject({ side: sideSchema, mm: z.number() });
/** The same with the words that state it. */
export const statedSchema = z.strictObject({ words: z.string(), mm: z.number() });

/** A model's stated size in millimetres, sides that the file leaves out missing. */
export function modelMm(size: NonNullable<Model['size']>): { mm: Partial<Record<Side, number>>; toleranceMm: number } {
  const per = mmPer[size.unit];
  const mm: Partial<Record<Side, number>> = { width: size.width * per };
  if (size.height !== undefined) mm.height = size.height * per;
  if (size.depth !== undefined) mm.depth = size.depth * per;
  return { mm, toleranceMm: size.tolerance * per };
}

const orders: readonly (readonly Side[])[] = [
  ['width', 'height', 'depth'],
  ['width', 'depth', 'height'],
  ['height', 'width', 'depth'],
  ['height', 'depth', 'width'],
  ['depth', 'width', 'height'],
  ['depth', 'height', 'width'],
];

/**
 * The measures of a listing with their sides named. A row such as "30 x 21 x 17 cm" names none: it is taken as width,
 * height, depth, or, where a model's size is known, in the order that fits it best, so that an order of the seller's
 * own raises no doubt. `read` and `claimed` may repeat each other; the row is taken from one of them.
 */
export function namedSides(
  read: Measure[],
  claimed: Measure[],
  expected: Partial<Record<Side, number>> = {},
): Measure[] {
  const named = [...read, ...claimed].filter(({ dimension }) => dimension !== 'unknown');
  if (sides.some((side) => statedSide(named, side))) return named;
  const row = [read, claimed]
    .map((measures) => measures.filter(({ dimension }) => dimension === 'unknown').slice(0, 3))
    .find((measures) => measures.length > 1);
  if (!row) return named;
  const inOrder = (order: readonly Side[]) =>
    row.map((measure, index) => ({ ...measure, dimension: order[index] ?? 'depth' }));
  const off = (order: readonly Side[]) =>
    inOrder(order).reduce((sum, { dimension, mm }) => sum + Math.abs(mm - (expected[dimension] ?? mm)), 0);
  const best = orders.reduce((kept, order) => (off(order) < off(kept) ? order : kept));
  return [...named, ...inOrder(best)];
}

/** The stated measure of a side with the finest step, null when the listing states none. */
export function statedSide(measures: Measure[], side: Side): Measure | null {
  return (
    measures.filter(({ dimension }) => dimension === side).sort((a, b) => a.precisionMm - b.precisionMm)[0] ?? null
  );
}

/** The number in a model's name that is likely its width in centimetres (10 to 90), null without one. */
export function namedWidthCm(name: string): number | null {
  const match = /(?:^|\s)(\d{2})(?=\s|$)/.exec(name);
  const value = match ? Number(match[1]) : 0;
  return value >= 10 && value <= 90 ? value : null;
}
