import type { Layout } from '../../maker/types';
import { capitals } from '../slot/cell';
import type { Reading } from '../types';

/** A letter of a cycle that codes show, with the years that their known dates leave it. */
interface Seen {
  letter: string;
  /** The year that the layout reads in it. */
  year: number;
  from: number;
  to: number;
}

/** Letters from one to the next of a cycle, both left out; it goes on with A after Z. */
function between(letter: string, next: string): string {
  const [from, to] = [capitals.indexOf(letter) + 1, capitals.indexOf(next)];
  return from <= to ? capitals.slice(from, to) : capitals.slice(from) + capitals.slice(0, to);
}

/**
 * Letters of a year cycle that a layout takes to be left out, or to be of a year, where the codes leave the choice: of
 * the letters between two known ones some are skipped, or a letter's own year is not told by its neighbours. Nothing is
 * taken for granted of which letters makers skip, because each house skipped in its own way.
 */
export function untoldLetters(layout: Layout, read: readonly { reading: Reading; years: readonly number[] }[]): string {
  const cycle = layout.flatMap((slot) => ('year' in slot && slot.year === 'cycle' ? [slot.letters] : []))[0];
  if (cycle === undefined) return '';
  const seen = narrowed(seenLetters(read));
  const untold = seen.flatMap((one, at) => {
    const next = seen[at + 1];
    const own = one.from === one.to ? [] : [one.letter];
    if (!next) return own;
    const letters = [...between(one.letter, next.letter)];
    const skipped = letters.length - (next.year - one.year - 1);
    const isChoice = skipped > 0 && skipped < letters.length;
    return isChoice ? [...own, ...letters.filter((letter) => !cycle.includes(letter))] : own;
  });
  return [...new Set(untold)].sort().join('');
}

/** The letters by year, each with the years that all of its codes allow. */
function seenLetters(read: readonly { reading: Reading; years: readonly number[] }[]): Seen[] {
  const seen = new Map<number, Seen>();
  for (const { reading, years } of read) {
    const part = reading.parts.find(({ tells }) => tells.kind === 'year');
    // It may stand in brackets.
    const letter = [...(part?.text ?? '')].find((sign) => capitals.includes(sign));
    const year = Number(reading.span?.from?.slice(0, 4));
    if (letter === undefined || years.length === 0 || Number.isNaN(year)) continue;
    const known = seen.get(year) ?? { letter, year, from: Number.NEGATIVE_INFINITY, to: Number.POSITIVE_INFINITY };
    const from = Math.max(known.from, Math.min(...years));
    const to = Math.min(known.to, Math.max(...years));
    seen.set(year, from <= to ? { ...known, from, to } : known);
  }
  return [...seen.values()].sort((a, b) => a.year - b.year);
}

/** Letters from one to another, which comes last: the years between them are no more. */
const steps = (one: Seen, other: Seen): number => between(one.letter, other.letter).length + 1;

/** What neighbours tell of a letter's year: it is later, and by no more years than there are letters between. */
function narrowed(seen: readonly Seen[]): Seen[] {
  const forward: Seen[] = [];
  for (const one of seen) {
    const before = forward.at(-1);
    forward.push(
      before
        ? { ...one, from: Math.max(one.from, before.from + 1), to: Math.min(one.to, before.to + steps(before, one)) }
        : one,
    );
  }
  const backward: Seen[] = [];
  for (const one of forward.reverse()) {
    const after = backward.at(-1);
    backward.push(
      after
        ? { ...one, from: Math.max(one.from, after.from - steps(one, after)), to: Math.min(one.to, after.to - 1) }
        : one,
    );
  }
  return backward.reverse();
}
