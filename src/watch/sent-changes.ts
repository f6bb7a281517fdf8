import type { SentChange } from './types';

/*
 * A photo that is sent may be taken out on one machine while the other still has it. Each photo's last change decides, as
 * in a last-writer-wins element set (Shapiro et al., "A comprehensive study of Convergent and Commutative Replicated Data
 * Types", 2011, section 3.3.3; from memory); a state that says nothing of a photo is older than any change.
 */

/** As many as a record's form holds. */
const mostChanges = 200;

/** Photos that are brought or taken out, by their ids. */
export interface SentNow {
  brought?: readonly string[];
  removed?: readonly string[];
}

/** What is known of a piece's photos after these changes. */
export const withChanges = (known: readonly SentChange[], { brought = [], removed = [] }: SentNow, at: string) =>
  joinChanges(known, [
    ...removed.map((photoId) => ({ photoId, at, isRemoved: true })),
    ...brought.map((photoId) => ({ photoId, at, isRemoved: false })),
  ]);

/** Each photo's last change of two lists; of two at one moment that of the second. The oldest of too many are left out. */
export function joinChanges(first: readonly SentChange[], second: readonly SentChange[]): SentChange[] {
  const last = new Map(first.map((one) => [one.photoId, one]));
  for (const one of second) {
    const known = last.get(one.photoId);
    if (!known || known.at <= one.at) last.set(one.photoId, one);
  }
  return [...last.values()].sort((a, b) => Date.parse(a.at) - Date.parse(b.at)).slice(-mostChanges);
}

/** The photos that were taken out last, and not brought again. */
export const removedOf = (changes: readonly SentChange[]): ReadonlySet<string> =>
  new Set(changes.flatMap(({ photoId, isRemoved }) => (isRemoved ? [photoId] : [])));
