import { bare } from '../stamp';
import type { BookSystem } from './book';
import type { Difference } from './difference';
import { interpret } from './interpret';
import type { LaidLayout } from './layout';
import { readingOf } from './reading';
import { searchLayout, stepsOf, textOf } from './search';
import { looseLattice, mistakeShare, slipShare, tidyCode, unlikeShare } from './typed';
import type { Nearest } from './types';

/** Changes beyond this many make another code, not a misread one. */
const mostChanges = 2;
/** Layouts looked at, those of the same length first: bounds the work when a thousand files are on hand. */
const mostLayouts = 60;
const longest = 24;
/** Two characters that look nothing alike, of a beginning that is otherwise right. */
const leastShare = 1e-6;

interface Change {
  difference: Difference;
  share: number;
}

const lengthApart = ({ shortest, cells }: LaidLayout, length: number): number =>
  Math.max(0, shortest - length, length - cells.length);

/** Valid codes at most two characters away, most likely misreading first. */
export function nearestCodes(written: string, systems: readonly BookSystem[], latestYear?: number): Nearest[] {
  const code = tidyCode(written);
  const signs = bare(code).length;
  if (signs === 0 || code.length > longest) return [];
  const forwards = stepsOf(looseLattice(code));
  const backwards = [...forwards].reverse();
  const layouts = systems
    .flatMap((system) => system.layouts.map((laid) => ({ system, laid })))
    .filter(({ laid }) => laid.shortest <= code.length + mostChanges && laid.cells.length >= signs - mostChanges)
    .sort((a, b) => lengthApart(a.laid, signs) - lengthApart(b.laid, signs))
    .slice(0, mostLayouts);
  const found: Nearest[] = [];
  for (const { system, laid } of layouts) {
    const steps = system.reversed ? backwards : forwards;
    for (const { path } of searchLayout(steps, laid, { width: 32, keep: 'valid', least: leastShare }).slice(0, 12)) {
      const meanings = interpret(system, laid, path, latestYear);
      if (!Array.isArray(meanings)) continue;
      const meaning = meanings.find(({ inPeriod, plantInUse }) => inPeriod && plantInUse);
      if (!meaning) continue;
      const text = system.reversed ? [...textOf(path)].reverse().join('') : textOf(path);
      const changes = changesBetween(code, text);
      if (changes.length > mostChanges || changes.length === 0) continue;
      const likelihood = changes.reduce((product, { share }) => product * share, 1);
      const reading = { ...readingOf(system, laid, path, meaning), probability: likelihood };
      found.push({ text, system: reading.system, how: 'differs', likelihood, reading });
    }
  }
  return found.sort((a, b) => b.likelihood - a.likelihood).slice(0, 5);
}

/** The cheapest changes that turn what was written into `meant`; edit distance with the likeness of characters. */
export function changesBetween(written: string, meant: string): Change[] {
  const cost = (share: number) => -Math.log(share);
  const rows: { cost: number; step: 'same' | 'other' | 'drop' | 'add' | null }[][] = [];
  const drop = (at: number) => (/[A-Z0-9]/.test(written[at - 1]!) ? slipShare : 0.9);
  for (let i = 0; i <= written.length; i++) {
    rows.push([]);
    for (let j = 0; j <= meant.length; j++) {
      if (i === 0 && j === 0) {
        rows[i]!.push({ cost: 0, step: null });
        continue;
      }
      const ways: { cost: number; step: 'same' | 'other' | 'drop' | 'add' }[] = [];
      if (i > 0 && j > 0) {
        const before = rows[i - 1]![j - 1]!.cost;
        const [was, is] = [written[i - 1]!, meant[j - 1]!];
        ways.push(
          was === is ? { cost: before, step: 'same' } : { cost: before + cost(mistakeShare(was, is)), step: 'other' },
        );
      }
      if (i > 0) ways.push({ cost: rows[i - 1]![j]!.cost + cost(drop(i)), step: 'drop' });
      if (j > 0) ways.push({ cost: rows[i]![j - 1]!.cost + cost(slipShare / 2), step: 'add' });
      rows[i]!.push(ways.reduce((best, way) => (way.cost < best.cost ? way : best)));
    }
  }
  const changes: Change[] = [];
  for (let i = written.length, j = meant.length; i > 0 || j > 0; ) {
    const { step } = rows[i]![j]!;
    const [was, is] = [written[i - 1], meant[j - 1]];
    if (step === 'other') {
      const share = mistakeShare(was!, is!);
      const difference = { kind: 'other', was: was!, is: is!, place: i, alike: share > unlikeShare } as const;
      changes.push({ difference, share });
    }
    if (step === 'drop') changes.push({ difference: { kind: 'left-out', was: was!, place: i }, share: drop(i) });
    if (step === 'add') changes.push({ difference: { kind: 'added', is: is!, place: i }, share: slipShare / 2 });
    if (step !== 'add') i--;
    if (step !== 'drop') j--;
  }
  return changes.reverse();
}

/** More changes than this are no longer told one by one. */
const mostTold = 2;

/**
 * What tells a near code from the one that was read. Null when it is the same text, which reads under a system and is
 * only not certain enough; empty where too much differs to say it.
 */
export function differencesBetween(read: string, text: string): Difference[] | null {
  if (bare(tidyCode(read)) === bare(tidyCode(text))) return null;
  const changes = changesBetween(tidyCode(read), text);
  return changes.length > mostTold ? [] : changes.map(({ difference }) => difference);
}
