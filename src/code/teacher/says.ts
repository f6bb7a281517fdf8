/** What one part of a worked-out layout does; places count from 1. Its sentence stands with the languages. */
export type LayoutSays =
  /** `skipped`: the letters that a cycle of its own leaves out; null for a usual set of letters. */
  | { kind: 'year-letter'; first: number; place: number; letters: string; skipped: string | null }
  | { kind: 'year-digit'; place: number }
  | { kind: 'two-digits'; of: 'year' | 'month' | 'week' | 'day'; places: readonly [tens: number, units: number] }
  | { kind: 'four-digits'; place: number; reversed: boolean }
  | { kind: 'day-of-year'; place: number; reversed: boolean }
  | { kind: 'one-of'; of: 'month' | 'quarter'; characters: string; place: number }
  | { kind: 'check'; rule: string }
  | { kind: 'plant'; from: number; to: number }
  /** Letters that may be a plant's, of places that are not known. */
  | { kind: 'plant-letters' }
  | { kind: 'literal'; text: string }
  | { kind: 'serial'; digits: number }
  /** A running number that rises with the date, by the known codes alone. */
  | { kind: 'serial-table' }
  | { kind: 'unexplained'; characters: number };
