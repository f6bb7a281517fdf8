import type { CodeSystem, MakerFile, Plant } from '../../maker/types';
import { type TellingCode, tellApart } from './apart';
import { type Candidate, candidatesOf } from './candidates';
import { type KnownCode, readFacts } from './facts';
import { framesOf } from './frame';
import { serialCandidate } from './serial-table';

export type { TellingCode } from './apart';
export type { Candidate } from './candidates';
export type { KnownCode } from './facts';

export interface LearnOptions {
  /** How many examples may be wrong; 0 when not given. */
  wrong?: number;
}

export interface Learned {
  /** Layouts that remain, best first; none of them is clearly better than the others. */
  remaining: Candidate[];
  /** Layouts that explain the codes as well and are much less likely. */
  others: Candidate[];
  /** More than one layout remains. */
  ambiguous: boolean;
  /** A further example that would tell the remaining layouts apart. */
  tellingCode: TellingCode | null;
  /** Examples that could not be used, and why. */
  unusable: { index: number; why: string }[];
  /** One sentence for the screen. */
  words: string;
}

/** A layout so many bits behind the best (about one in two hundred) no longer counts as open. */
const openBits = 7.5;
const mostRemaining = 12;
/** Below this many bits the best layout is no better than chance would give. */
const leastBits = 4;

/**
 * Works out a code system from known codes: searches the layouts of the language that explain all of them but
 * `wrong`, ranks them by simplicity and by how likely chance would make them fit, and says what is still open.
 * Examples are `{ code, reads }` as in a maker file; `reads` is "1995-01, BE", "1996-W14", "1998" and so on.
 * Separators between letters and digits are learned as they stand; codes of changing length are taken as a fixed
 * part with a running number before or after it. At most 24 letters and digits.
 */
export function learnSystem(examples: readonly KnownCode[], options: LearnOptions = {}): Learned {
  const { facts, unusable } = readFacts(examples);
  const wrong = Math.min(options.wrong ?? 0, Math.max(0, facts.length - 1));
  const codes = new Set(facts.map(({ bare }) => bare)).size;
  if (facts.length > 0 && codes - wrong < 2) return oneCodeOnly(codes, wrong, unusable);
  const found = framesOf(facts, wrong).flatMap((frame) => {
    const serial = serialCandidate(frame, wrong);
    return [...candidatesOf(frame, wrong), ...(serial ? [serial] : [])];
  });
  const ranked = distinct(found.sort((a, b) => b.score - a.score));
  const best = ranked[0];
  const open = best ? ranked.filter(({ score }) => best.score - score < openBits) : [];
  const remaining = differing(open).slice(0, mostRemaining);
  const others = ranked.filter((candidate) => !remaining.includes(candidate)).slice(0, mostRemaining);
  const ambiguous = remaining.length > 1 || (best !== undefined && best.score < leastBits);
  const tellingCode = remaining.length > 1 ? tellApart(remaining) : null;
  return {
    remaining,
    others,
    ambiguous,
    tellingCode,
    unusable,
    words: wordsOf(remaining, facts.length, ambiguous, tellingCode),
  };
}

/** A layout that was made to fit one code explains nothing: any code fits some of them. */
function oneCodeOnly(codes: number, wrong: number, unusable: Learned['unusable']): Learned {
  const left = codes === 1 ? 'One code' : `One code of ${codes}, when ${wrong} may be wrong,`;
  const words = `${left} cannot tell how a maker's codes are written: give more known codes, of different dates.`;
  return { remaining: [], others: [], ambiguous: true, tellingCode: null, unusable, words };
}

function distinct(ranked: readonly Candidate[]): Candidate[] {
  const seen = new Set<string>();
  return ranked.filter(({ layout }) => {
    const key = JSON.stringify(layout);
    return seen.has(key) ? false : seen.add(key);
  });
}

/** Leaves out layouts that no code would tell from a better one (a month of one digit written in two ways, say). */
function differing(open: readonly Candidate[]): Candidate[] {
  return open.filter((candidate, place) =>
    open.slice(0, place).every((better) => tellApart([better, candidate]) !== null),
  );
}

function wordsOf(remaining: Candidate[], count: number, ambiguous: boolean, telling: TellingCode | null): string {
  const best = remaining[0];
  if (!best) return `No layout explains these ${count} codes.`;
  const wrong =
    best.wrong.length > 0 ? ` Taken to be wrong: example ${best.wrong.map((index) => index + 1).join(', ')}.` : '';
  const explained = `${best.words.join('; ')}: explains ${best.explains.length} of ${count} codes.${wrong}`;
  if (!ambiguous) return `One layout remains. ${explained}`;
  if (remaining.length === 1) return `${explained} So few codes would fit by chance too: give more examples.`;
  return `${remaining.length} layouts remain; the likeliest: ${explained} ${telling?.words ?? ''}`.trim();
}

/**
 * Writes a learned layout into a maker file: the system with the examples that it explains, and its plants. Plants
 * already on file keep their entry. The file given is not changed.
 */
export function writeLearned(
  file: MakerFile,
  candidate: Candidate,
  examples: readonly KnownCode[],
  id: string,
): MakerFile {
  const explained = examples.filter((_, index) => candidate.explains.includes(index));
  const system: CodeSystem = {
    id,
    used: candidate.used,
    layout: candidate.layout,
    examples: explained.map(({ code, reads }) => ({ code, reads })),
    source: `learned from ${explained.length} known codes`,
  };
  const onFile = (plant: Plant) => file.plants.some(({ code, place }) => code === plant.code && place === plant.place);
  const plants = [...file.plants, ...candidate.plants.filter((plant) => !onFile(plant))];
  const codeSystems = [...file.codeSystems.filter((known) => known.id !== id), system];
  return { ...file, plants, codeSystems };
}
