import { type Doubted, type Explanation, type KnownCode, type Learned, writeLearned } from '../../code';
import type { CodeSystem, MakerFile, Plant } from '../../maker';
import { strings } from '../../words';

const words = strings.makers.learn;

/** What was asked of the teacher; the rows stay with it, because the answer counts by their places. */
export interface Asked {
  text: string;
  rows: number[];
  examples: KnownCode[];
}

/** A number that a person can keep: two digits, the rest noughts. */
const rounded = (number: number): number => Number(number.toPrecision(2));

/** How many of the layouts tried would be expected to fit as well by chance, in words. */
export function chanceWords(byChance: number): string {
  if (byChance >= 0.5) return words.chance.likely(Math.max(1, Math.round(rounded(byChance))));
  const once = rounded(1 / byChance);
  return once >= 1_000_000 ? words.chance.hardly : words.chance.once(once);
}

/** What is known after a search, in a sentence. */
export function outcomeWords({ open, remaining }: Learned, examples: readonly KnownCode[]): string {
  const [best] = remaining;
  switch (open) {
    case 'codes':
      return words.outcome.codes;
    case 'none':
      return words.outcome.none(examples.length);
    case 'rivals':
      return words.outcome.several(remaining.length);
    case 'letters':
      return words.outcome.letters([...(best?.eras ?? [])].map(({ guessed }) => guessed).join(''));
    case 'day':
      return words.outcome.day;
    case 'days':
      return words.outcome.days;
    case 'two':
      return words.outcome.unexplained;
    case 'chance':
      return words.outcome.chance;
    case null:
      return best && best.eras.length > 1 ? words.outcome.two : words.outcome.one;
  }
}

/** What an example that does not fit reads, and what would tell whether it or the layout is wrong. */
export const doubtWords = ({ reads }: Doubted, example: string): string =>
  reads === null ? words.doubted.misfit(example) : words.doubted.reads(example, reads);

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

/** The systems of a draft that have just these layouts, by name; null unless each of them is there. */
export function systemsOf(value: DraftValue, { eras }: Pick<Explanation, 'eras'>): string[] | null {
  const systems = listOf(value, 'codeSystems').filter(isGroup);
  const found = eras.flatMap(({ layout }) => {
    const wanted = JSON.stringify(layout);
    const system = systems.find((one) => JSON.stringify(one.layout) === wanted);
    return system ? [String((system as CodeSystem & Record<string, unknown>).id)] : [];
  });
  return found.length === eras.length ? found : null;
}

/**
 * A draft's value with what was learned as new code systems, their examples, and the plants they need. What a draft
 * has already stays as it is, finished or not.
 */
export function withLearned(
  value: DraftValue,
  explanation: Pick<Explanation, 'eras'>,
  examples: readonly KnownCode[],
): DraftValue {
  const systems = listOf(value, 'codeSystems');
  const plants = listOf(value, 'plants');
  // The writer trusts its file, and an unfinished draft is none: it is handed only the entries that are whole.
  const whole = plants.filter((entry): entry is Plant & Record<string, unknown> => isGroup(entry) && 'code' in entry);
  const blank = { plants: whole as Plant[], codeSystems: [] as CodeSystem[] } as unknown as MakerFile;
  const written = writeLearned(blank, explanation, examples, freeId(systems));
  const added = written.plants.slice(whole.length);
  return {
    ...value,
    codeSystems: [...systems, ...written.codeSystems],
    ...(added.length > 0 ? { plants: [...plants, ...added] } : {}),
  };
}
