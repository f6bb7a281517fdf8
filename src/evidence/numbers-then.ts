import type { FileNumber, MakerFile } from '../maker/types';
import { periodSpans, reachOfAbout, type Span, spanHolds, spansMeet, unionOf } from '../span';
import { exceptedSpans, isExcepted, isOfModel } from './exceptions';

/** What is known of the piece: what it is called, and every date that it is said or read to be of. */
export interface KnownPiece {
  named: readonly string[];
  dates: readonly Span[];
}

/** A number of a file, and its place there. */
export interface PlacedNumber {
  number: FileNumber;
  at: number;
}

/**
 * The numbers of one kind and part that may hold for the piece, of which one has to: those of its model where there are
 * any, and of its time. None where a time of the piece is one of which the file does not tell, or an exception may be meant.
 */
export function numbersThen(
  { numbers }: Pick<MakerFile, 'numbers'>,
  { of, part }: Pick<FileNumber, 'of' | 'part'>,
  { named, dates }: KnownPiece,
): PlacedNumber[] {
  const all = numbers
    .map((number, at) => ({ number, at }))
    .filter(({ number }) => number.of === of && number.part === part && isOfModel(number, named));
  const own = all.filter(({ number }) => number.models?.length);
  const those = own.length > 0 ? own : all;
  if (those.some(({ number }) => mayBeExcepted(number, { named, dates }))) return [];
  const then = those.filter(({ number }) => {
    const spans = spansOf(number);
    return spans === null || dates.some((date) => spans.some((span) => meets(date, span)));
  });
  if (then.length < those.length && dates.length === 0) return [];
  const told = then.map(({ number }) => spansOf(number));
  if (told.includes(null)) return then;
  const spans = unionOf(told.flatMap((one) => one ?? []));
  return dates.every((date) => spans.some((span) => spanHolds(span, reachOfAbout(date)))) ? then : [];
}

const spansOf = ({ used }: FileNumber): Span[] | null => (used ? periodSpans(used) : null);
const meets = (one: Span, other: Span): boolean => spansMeet(reachOfAbout(one), reachOfAbout(other));

/** An exception of a model counts where none is named, one of years where no date is known: a doubt needs to know better. */
function mayBeExcepted(number: FileNumber, { named, dates }: KnownPiece): boolean {
  if (isExcepted(number, named)) return true;
  const ofModels = (number.exceptions ?? []).some(({ models, used }) => models !== undefined && !used);
  if (ofModels && named.length === 0) return true;
  const spans = exceptedSpans(number, named.length > 0 ? named : null);
  return spans.some((span) => dates.length === 0 || dates.some((date) => meets(date, span)));
}
