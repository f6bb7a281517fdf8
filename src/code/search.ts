import type { Lattice } from '../stamp/types';
import { checkCharacters } from './check-character';
import type { LaidCheck, LaidLayout } from './layout';

/** A lattice made ready for searching: capitals only, per step its characters and the blank. */
export interface Step {
  blank: number;
  characters: [character: string, probability: number][];
}

/** Stands in a path for a cell that was left out. */
export const leftOut = '\0';

/** One way to fill a layout's cells: a character for each cell in order, and the probability of that text. */
export interface Filling {
  path: string;
  probability: number;
}

export interface SearchOptions {
  /** How many fillings are kept after each step. */
  width: number;
  /** `valid`: only what a sound code can hold. `shape`: any digits for digits, any letters for letters. */
  keep: 'valid' | 'shape';
  /** Share of the best under which a filling is not followed. */
  least?: number;
}

export const textOf = (path: string): string => path.replaceAll(leftOut, '');

/** Folds letters to capitals and sharpens or flattens each step by `temperature` (1 leaves it as it is). */
export function stepsOf(lattice: Lattice, temperature = 1): Step[] {
  return lattice.steps.map((step) => {
    const folded = new Map<string, number>();
    let before = 0;
    for (const [character, probability] of Object.entries(step)) {
      if (probability <= 0) continue;
      const capital = character.toUpperCase();
      const key = capital.length === character.length ? capital : character;
      folded.set(key, (folded.get(key) ?? 0) + probability ** (1 / temperature));
      before += probability;
    }
    const after = [...folded.values()].reduce((sum, probability) => sum + probability, 0);
    const scale = temperature === 1 || after === 0 ? 1 : before / after;
    const blank = (folded.get('') ?? 0) * scale;
    folded.delete('');
    return { blank, characters: [...folded].map(([character, probability]) => [character, probability * scale]) };
  });
}

/** Fillings so much less likely than the best are not followed. */
const negligible = 1e-7;

interface Entry {
  blank: number;
  character: number;
}

/**
 * Prefix beam search of a lattice held to a layout. The probability of a filling is that of its text under the
 * lattice (all alignments within the beam), not weighted. Work is bounded by steps × width × cells of one step.
 */
export function searchLayout(steps: readonly Step[], laid: LaidLayout, options: SearchOptions): Filling[] {
  let beam = startingBeam();
  for (const step of steps) {
    if (isPause(step)) {
      pause(beam);
      continue;
    }
    const next = new Map<string, Entry>();
    const least = bestRank(beam) * (options.least ?? negligible);
    for (const [path, entry] of beam) extend(next, path, entry, step, laid, options, least);
    beam = next.size > options.width ? prune(next, options.width) : next;
    if (beam.size === 0) return [];
  }
  const whole: Filling[] = [];
  for (const [path, entry] of beam) {
    if (!reachesEnd(path, laid)) continue;
    const complete = path.padEnd(laid.cells.length, leftOut);
    if (options.keep === 'valid' && !laid.checks.every((check) => wrongCheck(check, complete, laid) === null)) continue;
    whole.push({ path: complete, probability: entry.blank + entry.character });
  }
  return whole.sort((a, b) => b.probability - a.probability);
}

const startingBeam = () => new Map<string, Entry>([['', { blank: 1, character: 0 }]]);
const rank = ({ blank, character }: Entry) => blank + character;

function bestRank(entries: Map<string, Entry>): number {
  let best = 0;
  for (const entry of entries.values()) best = Math.max(best, rank(entry));
  return best;
}

/** A step that is nothing but the blank between two characters, as whole-character recognisers and typed text have. */
const isPause = ({ blank, characters }: Step) => blank === 1 && characters.length === 0;

function pause(entries: Map<string, Entry>): void {
  for (const entry of entries.values()) {
    entry.blank += entry.character;
    entry.character = 0;
  }
}

/** Keeps the best, and of each place in the layout at least one: where slots may be left out, many ways rank alike. */
function prune(entries: Map<string, Entry>, width: number): Map<string, Entry> {
  const ranked = [...entries].map(([path, entry]) => ({ path, entry, rank: rank(entry) }));
  ranked.sort((a, b) => b.rank - a.rank);
  const kept = new Map<string, Entry>();
  const reached = new Set<number>();
  for (const [place, { path, entry }] of ranked.entries()) {
    if (place >= width && reached.has(path.length)) continue;
    reached.add(path.length);
    kept.set(path, entry);
  }
  return kept;
}

function entryOf(next: Map<string, Entry>, path: string): Entry {
  const known = next.get(path);
  if (known) return known;
  const fresh = { blank: 0, character: 0 };
  next.set(path, fresh);
  return fresh;
}

function extend(
  next: Map<string, Entry>,
  path: string,
  entry: Entry,
  step: Step,
  laid: LaidLayout,
  options: SearchOptions,
  least: number,
): void {
  const total = entry.blank + entry.character;
  if (total === 0) return;
  const last = path[path.length - 1];
  if (step.blank > 0) entryOf(next, path).blank += total * step.blank;
  for (const [character, probability] of step.characters) {
    // Without a blank between, the same character again is still the one before.
    if (character === last && entry.character > 0) {
      entryOf(next, path).character += entry.character * probability;
    }
    const gain = (character === last ? entry.blank : total) * probability;
    if (gain === 0 || gain < least) continue;
    for (let cell = path.length; cell < laid.cells.length; ) {
      const here = laid.cells[cell]!;
      if (allows(laid, path, cell, character, options.keep)) {
        const longer = path.padEnd(cell, leftOut) + character;
        entryOf(next, longer).character += gain;
      }
      if (!here.optional) break;
      cell = here.skipTo;
    }
  }
}

function allows(laid: LaidLayout, path: string, cell: number, character: string, keep: 'valid' | 'shape'): boolean {
  const here = laid.cells[cell]!;
  if (keep === 'shape') return here.wide.includes(character);
  if (!here.tight.includes(character)) return false;
  const group = here.group ? laid.groups.get(here.group) : undefined;
  if (group?.next) {
    let before = '';
    for (const earlier of group.cells) if (earlier < cell) before += path[earlier] ?? '';
    return group.next.get(before)?.includes(character) ?? false;
  }
  const check = laid.checks.find(({ cells, over }) => over === 'before' && cells.includes(cell));
  if (!check) return true;
  const place = cell - check.cells[0]!;
  return rightCheck(check, path.padEnd(cell, leftOut), laid)?.[place] === character;
}

/** Whether everything after the path may be left out. */
function reachesEnd(path: string, laid: LaidLayout): boolean {
  let cell = path.length;
  while (cell < laid.cells.length) {
    const here = laid.cells[cell]!;
    if (!here.optional) return false;
    cell = here.skipTo;
  }
  return true;
}

/** The check characters that the rest of a code asks for; null when a covered character has no value. */
export function rightCheck(check: LaidCheck, path: string, laid: LaidLayout): string | null {
  const end = check.over === 'all' ? path.length : check.cells[0]!;
  const body: string[] = [];
  let at = 0;
  for (let cell = 0; cell < end; cell++) {
    const character = path[cell]!;
    if (check.cells.includes(cell) || !/^[A-Z0-9]$/.test(character)) continue;
    const laidCell = laid.cells[cell]!;
    if ('separator' in laid.slots[laidCell.slot]!.slot) continue;
    if (cell < check.cells[0]!) at++;
    body.push(character);
  }
  return checkCharacters(check.rule, body, at, check.weights);
}

/** What a check of a complete path should be when it is not; null when it is right. */
export function wrongCheck(
  check: LaidCheck,
  path: string,
  laid: LaidLayout,
): { is: string; fits: string | null } | null {
  const is = check.cells.map((cell) => path[cell]).join('');
  const fits = rightCheck(check, path, laid);
  return fits === is ? null : { is, fits };
}

/** Best text without any layout, and its probability: prefix beam search over all characters of the lattice. */
export function freeSearch(steps: readonly Step[], width = 24): { text: string; probability: number }[] {
  let beam = startingBeam();
  for (const step of steps) {
    if (isPause(step)) {
      pause(beam);
      continue;
    }
    const next = new Map<string, Entry>();
    for (const [text, entry] of beam) {
      const total = entry.blank + entry.character;
      const last = text[text.length - 1];
      if (step.blank > 0 && total > 0) entryOf(next, text).blank += total * step.blank;
      for (const [character, probability] of step.characters) {
        if (character === last && entry.character > 0) {
          entryOf(next, text).character += entry.character * probability;
        }
        const gain = (character === last ? entry.blank : total) * probability;
        if (gain > 0) entryOf(next, text + character).character += gain;
      }
    }
    beam = next.size > width ? prune(next, width) : next;
  }
  return [...beam]
    .map(([text, { blank, character }]) => ({ text, probability: blank + character }))
    .sort((a, b) => b.probability - a.probability);
}
