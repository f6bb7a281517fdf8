import { type Candidate, type KnownCode, type Learned, writeLearned } from '../../code';
import type { CodeSystem, MakerFile, Plant } from '../../maker';
import { strings } from '../../words';

const words = strings.makers.learn;

/** What was asked of the teacher; the rows stay with it, because the answer counts by their places. */
export interface Asked {
  text: string;
  rows: number[];
  examples: KnownCode[];
  wrong: number;
}
/** A number that a person can keep: two digits, the rest noughts. */
const rounded = (number: number): number => Number(number.toPrecision(2));

/** How many layouts as simple as this one would be expected to fit by chance, in words. */
export function chanceWords(byChance: number): string {
  if (byChance >= 0.5) return words.chance.likely(Math.max(1, Math.round(rounded(byChance))));
  const once = rounded(1 / byChance);
  return once >= 1_000_000 ? words.chance.hardly : words.chance.once(once);
}

/** What is known after a search, in a sentence or two. */
export function outcomeWords(learned: Learned, examples: readonly KnownCode[], wrong: number): string {
  const [best] = learned.remaining;
  if (!best && learned.ambiguous) return learned.words;
  if (!best) return words.outcome.none(examples.length, wrong);
  if (learned.remaining.length > 1) return words.outcome.several(learned.remaining.length);
  return learned.ambiguous ? words.outcome.weak : words.outcome.one;
}

/** The example that would settle it, in words; null when none is needed or none was found. */
export function tellingWords({ remaining, ambiguous, tellingCode }: Learned): string | null {
  if (tellingCode) return words.telling(tellingCode.code);
  if (remaining.length > 1) return words.noTelling;
  return ambiguous && remaining.length > 0 ? words.moreExamples : null;
}

type DraftValue = Record<string, unknown>;

const listOf = (value: DraftValue, key: string): unknown[] => {
  const list = value[key];
  return Array.isArray(list) ? list : [];
};
const isGroup = (entry: unknown): entry is Record<string, unknown> => typeof entry === 'object' && entry !== null;

/** A short name that no system of the draft has: learned, learned-2 and so on. */
function freeId(systems: readonly unknown[]): string {
  const taken = new Set(systems.map((system) => (isGroup(system) ? system.id : undefined)));
  for (let number = 1; ; number++) {
    const id = number === 1 ? 'learned' : `learned-${number}`;
    if (!taken.has(id)) return id;
  }
}

/** The system of a draft that has just this layout, and its place in the list; null when there is none. */
export function systemOf(value: DraftValue, { layout }: Candidate): { id: string; at: number } | null {
  const wanted = JSON.stringify(layout);
  const systems = listOf(value, 'codeSystems');
  const at = systems.findIndex((system) => isGroup(system) && JSON.stringify(system.layout) === wanted);
  return at < 0 ? null : { id: String((systems[at] as CodeSystem).id), at };
}

/**
 * A draft's value with a learned layout as a new code system, its examples, and the plants it needs. What a draft
 * has already stays as it is, finished or not.
 */
export function withLearned(value: DraftValue, candidate: Candidate, examples: readonly KnownCode[]): DraftValue {
  const systems = listOf(value, 'codeSystems');
  const plants = listOf(value, 'plants');
  // The writer trusts its file, and an unfinished draft is none: it is handed only the entries that are whole.
  const whole = plants.filter((entry): entry is Plant & Record<string, unknown> => isGroup(entry) && 'code' in entry);
  const blank = { plants: whole as Plant[], codeSystems: [] as CodeSystem[] } as unknown as MakerFile;
  const written = writeLearned(blank, candidate, examples, freeId(systems));
  const added = written.plants.slice(whole.length);
  return {
    ...value,
    codeSystems: [...systems, ...written.codeSystems],
    ...(added.length > 0 ? { plants: [...plants, ...added] } : {}),
  };
}
