import type { MakerFile } from '../maker/types';
import type { Lattice } from '../stamp/types';
import { type Book, type BookSystem, openBook } from './book';
import { familyBook } from './families';
import { type Impossible, interpret } from './interpret';
import { type LaidLayout, longestCode } from './layout';
import { nearestCodes } from './nearest';
import { expectedShare, shapeShare, shares, typedShares } from './prior';
import { readingOf } from './reading';
import { freeSearch, type Step, searchLayout, stepsOf } from './search';
import { acceptanceLevel, dedupeNearest, settle, type Weighed, type WeighedMisfit } from './settle';
import { tidyCode, typedLattice } from './typed';
import type { Decoding } from './types';

/** Fillings kept while searching. Exact for typed text; for stamps wide enough for two doubtful characters in each group. */
const beamWidth = 64;
/** Longest lattice that is searched, in steps: far beyond any stamp. */
const longestLattice = 2000;

/** Texts so much less likely than the best are not looked at for impossible values. */
const doubtfulShare = 0.02;

export interface DecodeOptions {
  makers: readonly MakerFile[];
  /** Name of the maker as its file gives it, or of several; null tries every file and the families. */
  maker: string | readonly string[] | null;
  /** Day on which the code was seen (ISO): no piece is younger. Without it a system still in use lasts 100 years. */
  now?: string;
  /** Divides the recogniser's log probabilities: above 1 flattens an overconfident one. 1 when not given. */
  temperature?: number;
  id?: string;
  from?: Decoding['from'];
}

const speaksOf = (files: readonly MakerFile[], maker: DecodeOptions['maker']): Book[] => {
  if (maker === null) return [...files.map(openBook), familyBook];
  const names: readonly string[] = typeof maker === 'string' ? [maker] : maker;
  const own = files.filter((file) => names.includes(file.maker));
  return own.length > 0 ? own.map(openBook) : [familyBook];
};

/** Reads a code that was typed or found in a listing's words. Same way as a stamp, through a lattice. */
export function decodeText(code: string, options: DecodeOptions): Decoding {
  const from = options.from ?? { kind: 'typed' };
  const id = options.id ?? `decoding:${code.slice(0, longestCode)}`;
  const tooLong = code.length > longestCode * 2;
  const lattice = tooLong ? { steps: [] } : typedLattice(code);
  if (lattice.steps.length === 0) {
    return { id, code, from, accepted: tooLong, readings: [], misfits: [], nearest: [] };
  }
  const decoded = decodeSteps(stepsOf(lattice), options, tidyCode(code), typedShares);
  // What someone wrote counts as written, whether a system explains it or not.
  return { id, code, from, accepted: true, ...decoded.outcome };
}

/** Reads a stamp's lattice. `code` of the result is the best text without any system. */
export function decodeLattice(lattice: Lattice, options: DecodeOptions): Decoding {
  const steps = stepsOf(lattice, options.temperature).slice(0, longestLattice);
  const free = freeSearch(steps)[0] ?? { text: '', probability: 0 };
  const decoded = decodeSteps(steps, options, free.text, shares);
  return {
    id: options.id ?? `decoding:${free.text}`,
    code: free.text,
    from: options.from ?? { kind: 'typed' },
    accepted: decoded.outcome.readings.length > 0 || (free.text !== '' && free.probability >= acceptanceLevel),
    ...decoded.outcome,
  };
}

/** Best text of a lattice without any code system, and its probability. */
export function freeDecode(lattice: Lattice, temperature?: number): { text: string; probability: number } {
  const best = freeSearch(stepsOf(lattice, temperature).slice(0, longestLattice))[0];
  return best ? { text: best.text, probability: Math.min(1, best.probability) } : { text: '', probability: 0 };
}

/** Whether a lattice of these steps can be as short and as long as the layout. */
function lengthFits(steps: readonly Step[], laid: LaidLayout): boolean {
  let fewest = 0;
  let most = 0;
  let afterBlank = true;
  for (const { blank, characters } of steps) {
    if (characters.length > 0) most++;
    if (blank === 0 && afterBlank) fewest++;
    afterBlank = characters.length === 0;
  }
  return laid.shortest <= most && laid.cells.length >= fewest;
}

function decodeSteps(steps: Step[], options: DecodeOptions, written: string, share: typeof shares) {
  const books = speaksOf(options.makers, options.maker);
  const latestYear = options.now === undefined ? undefined : Number(options.now.slice(0, 4));
  const backwards = [...steps].reverse();
  const free = freeSearch(steps);
  const weighed: Weighed[] = [];
  const misfits: WeighedMisfit[] = [];
  for (const book of books) {
    const systemsWeight = book.systems.reduce((sum, { weight, layouts }) => sum + weight * layouts.length, 0);
    for (const system of book.systems) {
      for (const laid of system.layouts) {
        const towards = system.reversed ? backwards : steps;
        const known = system.weight / systemsWeight / books.length;
        if (!lengthFits(towards, laid)) continue;
        weighed.push(
          ...readLayout(
            towards,
            system,
            laid,
            known * share.sound,
            options.maker !== null && book.maker !== null,
            latestYear,
          ),
        );
        misfits.push(...misfitLayout(free, system, laid, known * share.misfit, latestYear));
      }
    }
  }
  const nothing = free.reduce((sum, { text, probability }) => sum + share.free * probability * shapeShare(text), 0);
  const outcome = settle(weighed, misfits, nothing, written);
  if (outcome.readings.length > 0 || written === '') return { outcome };
  const nearest = [
    ...outcome.nearest,
    ...nearestCodes(
      written,
      books.flatMap(({ systems }) => systems),
      latestYear,
    ),
  ];
  return { outcome: { ...outcome, nearest: dedupeNearest(nearest).slice(0, 5) } };
}

function readLayout(
  steps: readonly Step[],
  system: BookSystem,
  laid: LaidLayout,
  known: number,
  named: boolean,
  latestYear?: number,
): Weighed[] {
  const fillings = searchLayout(steps, laid, { width: beamWidth, keep: 'valid' });
  return fillings.flatMap(({ path, probability }) => {
    const meanings = interpret(system, laid, path, latestYear);
    if (!Array.isArray(meanings)) return [];
    // Without a maker's name a date outside a system's period says no more than that another system fits better.
    const kept = named ? meanings : meanings.filter(({ inPeriod }) => inPeriod);
    return kept.map((meaning) => ({
      reading: readingOf(system, laid, path, meaning),
      inPeriod: meaning.inPeriod,
      weight: (known * probability * expectedShare(system, laid, path, meaning, latestYear)) / meanings.length,
    }));
  });
}

function misfitLayout(
  free: { text: string; probability: number }[],
  system: BookSystem,
  laid: LaidLayout,
  known: number,
  latestYear?: number,
): WeighedMisfit[] {
  const likely = free.filter(({ probability }) => probability >= doubtfulShare * (free[0]?.probability ?? 0));
  return likely.flatMap(({ text, probability }) => {
    const plain = system.reversed ? [...text].reverse().join('') : text;
    const wrong = impossibleIn(plain, system, laid, latestYear);
    if (!wrong) return [];
    const weight = known * probability * wrong.share;
    const { maker, id } = system;
    const misfit = {
      text,
      probability: 0,
      system: { maker, id },
      slot: wrong.slot,
      value: wrong.value,
      expected: wrong.expected,
    };
    return [{ misfit, weight }];
  });
}

/** The first impossible value of a text that has the layout's shape; null when it has not, or nothing is impossible. */
function impossibleIn(
  text: string,
  system: BookSystem,
  laid: LaidLayout,
  latestYear?: number,
): (Impossible & { share: number }) | null {
  if (text.length > longestCode || text.length < laid.shortest) return null;
  const steps = [...text].flatMap((character) => [
    { blank: 1, characters: [] },
    { blank: /[A-Z0-9]/.test(character) ? 0 : 0.5, characters: [[character, 0.5] as [string, number]] },
  ]);
  let first: (Impossible & { share: number }) | null = null;
  for (const { path } of searchLayout(steps, laid, { width: 16, keep: 'shape' })) {
    const meaning = interpret(system, laid, path, latestYear);
    if (Array.isArray(meaning)) return null;
    first ??= {
      ...meaning,
      share: 1 / laid.cells.reduce((n, { wide }, cell) => (path[cell] === '\0' ? n : n * wide.length), 1),
    };
  }
  return first;
}
