import type * as z from 'zod';
import type { Span } from '../../span';
import type { GroupShape, SlotContext, SlotShape } from './cell';

/** Words that a setting's field or choice is labelled with; each language has them. */
export type SlotWord =
  | 'characters'
  | 'anyOf'
  | 'optional'
  | 'length'
  | 'written'
  | 'both'
  | 'tens'
  | 'units'
  | 'fourDigits'
  | 'twoDigits'
  | 'oneDigit'
  | 'letter'
  | 'lettersUsed'
  | 'firstYear'
  | 'enclosed'
  | 'reversed'
  | 'monthLetters'
  | 'weekCount'
  | 'iso'
  | 'fromSunday'
  | 'quarterDigit'
  | 'quarterLetters'
  | 'rule'
  | 'over'
  | 'overAll'
  | 'overBefore'
  | 'weights'
  | 'kind'
  | 'digit'
  | 'letters'
  | 'either'
  | 'only';

/** A choice's value, and the word that says it; a literal label where it is the same in every language. */
export type SlotChoice = readonly [value: string | number, label: SlotWord | { as: string }];

/** A setting of a slot as an editor shows it. `when` says for which slots it is shown. */
export type SlotField<S> = {
  name: string;
  label: SlotWord;
  when?: (slot: Record<string, unknown>) => boolean;
} & (
  | { as: 'text'; required?: boolean; example?: string; skipped?: boolean }
  | { as: 'number' | 'tick' }
  | { as: 'numbers'; example: string }
  /** `none` labels the empty choice; `remake` gives the slot anew where another choice needs other settings. */
  | {
      as: 'choice';
      choices: readonly SlotChoice[] | ((slot: Record<string, unknown>) => readonly SlotChoice[]);
      none?: SlotWord;
      remake?: (value: string | number, slot: Record<string, unknown>) => S;
    }
  | { as: 'rules' }
  | { as: 'serial' }
);

/** What the other groups of the code say as numbers; null where the code has none. */
export interface OtherParts {
  month: number | null;
}

/** A date to be written: its span, the year it is counted in and, where weeks are counted, the week. */
export interface DateToWrite {
  span: Span & { from: string };
  year: number;
  week: number | null;
}

/** One kind of slot: its form in a maker file, its cells, what it means, how it is written, and how it is edited. */
export interface SlotKind<S extends object = object> {
  /** The key by which a slot of a maker file is of this kind. */
  kind: string;
  schemas: readonly [z.ZodType<S>, ...z.ZodType<S>[]];
  /** The slot as an editor adds it. */
  fresh: S;
  fields: readonly SlotField<S>[];
  shape: (slot: S, context: SlotContext) => SlotShape;
  /** The days of `year` that the group's number means; null when the year has none, undefined when it says nothing. */
  dates?: (number: number, year: number, group: GroupShape, other: OtherParts) => Span | null | undefined;
  /** What the group writes for a date. */
  write?: (date: DateToWrite, group: GroupShape) => string | null;
  /** Not every year has each of its values: it is named when no year fits. The lowest is named first. */
  blamed?: number;
}

type SlotOf<Z> = Z extends readonly z.ZodType[] ? z.infer<Z[number]> : never;

/** Makes a kind of slot; the slot's type is that of its schemas. */
export const defineSlot = <
  const K extends string,
  const Z extends readonly [z.ZodType<object>, ...z.ZodType<object>[]],
>(
  kind: Omit<SlotKind<SlotOf<Z>>, 'kind' | 'schemas'> & { kind: K; schemas: Z },
) => kind;

export const hasHalves =
  ({ name }: { name: string }) =>
  (slot: Record<string, unknown>) =>
    slot[name] === 2 || slot[name] === 'tens' || slot[name] === 'units';

export const halves = [
  [2, 'both'],
  ['tens', 'tens'],
  ['units', 'units'],
] as const satisfies readonly SlotChoice[];
