import type { MakerFile } from '../maker/types';
import { bare, weighRuns } from '../stamp';
import type { Lattice } from '../stamp/types';
import { withoutMarks } from './beside';
import { type Book, openBook } from './book';
import { alikeCharacters, isClear, withoutOverruling } from './clear';
import { familyBook } from './families';
import { longestCode } from './layout';
import { nearestCodes } from './nearest';
import { shapeShare, shares, typedShares } from './prior';
import { lengthFits, misfitLayout, readLayout, unnamedMisfits } from './read-layout';
import { freeSearch, type Step, stepsOf } from './search';
import { dedupeNearest, type Settled, settle, type Weighed, type WeighedMisfit } from './settle';
import { tidyCode, typedLattice } from './typed';
import type { Decoding, Nearest, Reading } from './types';

/** Longest lattice that is searched, in steps: far beyond any stamp. */
const longestLattice = 2000;

export interface DecodeOptions {
  makers: readonly MakerFile[];
  /** Name of the maker as its file gives it, or of several; null tries every file and the families. */
  maker: string | readonly string[] | null;
  /** Day on which the code was seen (ISO): no piece is younger. Without it a system still in use lasts to 2050 or sixty years. */
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

/**
 * Reads a code that was typed or found in a listing's words. Same way as a stamp, through a lattice; what fits nothing as
 * it stands is read without the marks that the maker's file knows beside codes.
 */
export const decodeText = (code: string, options: DecodeOptions): Decoding =>
  withoutMarks(decodeWritten(code, options), options, (rest, file) => underFile(rest, file, options));

function decodeWritten(code: string, options: DecodeOptions): Decoding {
  const from = options.from ?? { kind: 'typed' };
  const id = options.id ?? `decoding:${code.slice(0, longestCode)}`;
  const tooLong = code.length > longestCode * 2;
  const lattice = tooLong ? { steps: [] } : typedLattice(code);
  if (lattice.steps.length === 0) {
    return { id, code, from, accepted: tooLong, readings: [], misfits: [], nearest: [] };
  }
  const steps = stepsOf(lattice);
  const written = tidyCode(code);
  const outcome = asWritten(decodeSteps(steps, freeSearch(steps), options, written, typedShares).outcome, written);
  // What someone wrote counts as written, whether a system explains it or not.
  return { id, code, from, accepted: true, ...outcome };
}

/** A text under one file alone, just as it stands. */
export const underFile = (code: string, file: MakerFile, { now }: Pick<DecodeOptions, 'now'>): Decoding =>
  decodeWritten(code, { makers: [file], maker: file.maker, ...(now === undefined ? {} : { now }) });

/**
 * A typed text that fits a system or a family just as it stands is a reading of it, however likely another text would
 * be: nobody has to be told that it is near to itself, or what else a family would make of a slip of the pen.
 */
function asWritten(outcome: Settled, written: string): Settled {
  if (outcome.readings.length > 0) return { ...outcome, readings: withoutSlips(outcome.readings, written) };
  const isItself = ({ how }: Nearest) => how === 'as-written';
  const readings = outcome.nearest
    .filter(isItself)
    .map(({ reading, likelihood }) => ({ ...reading, probability: likelihood }));
  if (readings.length === 0) return outcome;
  const others = outcome.nearest.filter((near) => !isItself(near) && near.system.maker !== null);
  return { ...outcome, readings, nearest: others };
}

/** Nearly every text is by one character another that fits some family; only one of a maker is worth naming beside it. */
function withoutSlips(readings: Reading[], written: string): Reading[] {
  const isItself = ({ text }: Reading) => bare(text) === bare(written);
  return readings.some(isItself) ? readings.filter((one) => isItself(one) || one.system.maker !== null) : readings;
}

/** Reads a stamp's lattice. `code` of the result is the best text without any system. */
export function decodeLattice(lattice: Lattice, options: DecodeOptions): Decoding {
  const steps = stepsOf(lattice, options.temperature).slice(0, longestLattice);
  const seen = freeSearch(steps);
  const weighed = weighRuns(seen);
  const free = weighed[0] ?? { text: '', probability: 0 };
  const texts = { seen, weighed };
  const outcome = withoutOverruling(texts, decodeSteps(steps, seen, options, free.text, shares).outcome);
  const decoding: Decoding = {
    id: options.id ?? `decoding:${free.text}`,
    code: free.text,
    from: options.from ?? { kind: 'typed' },
    accepted: outcome.readings.length > 0,
    ...outcome,
  };
  if (decoding.accepted || !isClear(texts, outcome.nearest)) return decoding;
  const open = alikeCharacters(texts);
  return { ...decoding, accepted: true, ...(open.length > 0 ? { open } : {}) };
}

/**
 * Best text of a lattice without any code system, and its probability.
 * @internal
 */
export function freeDecode(lattice: Lattice, temperature?: number): { text: string; probability: number } {
  const best = weighRuns(freeSearch(stepsOf(lattice, temperature).slice(0, longestLattice)))[0];
  return best ? { text: best.text, probability: Math.min(1, best.probability) } : { text: '', probability: 0 };
}

function decodeSteps(
  steps: Step[],
  free: ReturnType<typeof freeSearch>,
  options: DecodeOptions,
  written: string,
  share: typeof shares,
) {
  const books = speaksOf(options.makers, options.maker);
  const latestYear = options.now === undefined ? undefined : Number(options.now.slice(0, 4));
  const backwards = [...steps].reverse();
  let nothing = share.free * otherText(free);
  const weighed: Weighed[] = [];
  const misfits: WeighedMisfit[] = [];
  for (const book of books) {
    const systemsWeight = book.systems.reduce((sum, { weight, layouts }) => sum + weight * layouts.length, 0);
    for (const system of book.systems) {
      for (const laid of system.layouts) {
        const towards = system.reversed ? backwards : steps;
        const known = system.weight / systemsWeight / books.length;
        if (!lengthFits(towards, laid)) continue;
        const named = options.maker !== null && book.maker !== null;
        const read = readLayout(towards, { system, laid, known: known * share.sound, named, latestYear });
        const wrong = misfitLayout(free, { system, laid, known: known * share.misfit, named, latestYear });
        const told = read.mass + wrong.reduce((sum, { mass }) => sum + mass, 0);
        weighed.push(...read.weighed);
        misfits.push(...wrong);
        nothing += known * share.misfit * unnamedMisfits(towards, laid, told);
      }
    }
  }
  const outcome = settle(weighed, misfits, { nothing, written, legible: share.legible });
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

/** Share of other texts that look like this lattice: those found, and the rest as texts of the same length. */
function otherText(free: { text: string; probability: number }[]): number {
  const found = free.reduce((sum, { probability }) => sum + probability, 0);
  const known = free.reduce((sum, { text, probability }) => sum + probability * shapeShare(text), 0);
  return known + Math.max(0, 1 - found) * shapeShare('A'.repeat(free[0]?.text.length ?? 0));
}
