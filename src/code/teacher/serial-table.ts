import type { Period, Slot } from '../../maker/types';
import type { Built } from './candidates';
import type { Frame } from './frame';

interface Dated {
  index: number;
  number: number;
  from: string;
  to: string;
}

/**
 * Codes that are one running number: if numbers rise with their dates, a table of ranges explains them. Between two
 * known numbers of different date the numbers may be of either, and are given the whole time between.
 */
export function serialTable(frame: Frame, wrong: number): Built | null {
  if (!frame.facts.every(({ bare }) => /^[0-9]+$/.test(bare))) return null;
  const dated = frame.facts.flatMap(({ index, bare, stated, loose }): Dated[] => {
    const [span] = stated.spans;
    return span?.from && span.to && !loose ? [{ index, number: Number(bare), from: span.from, to: span.to }] : [];
  });
  if (dated.length < 3) return null;
  const kept = longestRise(dated.sort((a, b) => a.number - b.number));
  if (dated.length - kept.length > wrong) return null;
  const widths = frame.facts.map(({ bare }) => bare.length);
  const [min, max] = [Math.min(...widths), Math.max(...widths)];
  const slot: Slot = { serial: min === max ? min : { min, max }, table: tableOf(kept) };
  const used: Period = [kept[0]!.from, kept.at(-1)!.to];
  // That so many numbers rise with their dates by chance: one over the orders that they could have.
  const orders = kept.reduce((sum, _, place) => sum + Math.log2(place + 1), 0);
  const explains = [...kept.map(({ index }) => index), ...vagueOnes(frame, kept)].sort((a, b) => a - b);
  return {
    candidate: { layout: [slot], used, plants: [], explains, guessed: '', says: [{ kind: 'serial-table' }] },
    bits: orders,
    score: orders - 5,
  };
}

/** Codes with vague dates that stand where their number does among the others. */
function vagueOnes({ facts }: Frame, kept: readonly Dated[]): number[] {
  return facts.flatMap(({ index, bare, stated, loose }) => {
    if (!loose) return [];
    const before = kept.filter(({ number }) => number <= Number(bare)).at(-1);
    const behind = kept.find(({ number }) => number >= Number(bare));
    const met = stated.spans.every(
      ({ from, to }) =>
        (to === null || !before || before.from <= to) && (from === null || !behind || from <= behind.to),
    );
    return met ? [index] : [];
  });
}

/** The longest series of numbers in order whose dates never fall back. */
function longestRise(dated: readonly Dated[]): Dated[] {
  const best: { length: number; before: number | null }[] = [];
  for (const [place, { from }] of dated.entries()) {
    best.push({ length: 1, before: null });
    for (let earlier = 0; earlier < place; earlier++) {
      const rises = dated[earlier]!.from <= from && dated[earlier]!.number < dated[place]!.number;
      if (rises && best[earlier]!.length >= best[place]!.length) {
        best[place] = { length: best[earlier]!.length + 1, before: earlier };
      }
    }
  }
  const longest = best.reduce((top, { length }, place) => (length > best[top]!.length ? place : top), 0);
  const series: Dated[] = [];
  for (let place: number | null = longest; place !== null; place = best[place]!.before) series.push(dated[place]!);
  return series.reverse();
}

function tableOf(series: readonly Dated[]) {
  const rows: { first: number; last: number; made: Period }[] = [];
  for (const { number, from, to } of series) {
    const last = rows.at(-1);
    if (last && last.made[0] === from && last.made[1] === to) {
      last.last = number;
      continue;
    }
    if (last && number > last.last + 1) {
      rows.push({ first: last.last + 1, last: number - 1, made: [last.made[0], to] });
    }
    rows.push({ first: number, last: number, made: [from, to] });
  }
  return rows;
}
