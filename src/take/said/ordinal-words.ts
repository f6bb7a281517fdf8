import { foldWords } from '../../text';
import languages from './ordinals.json' with { type: 'json' };

/** The ordinals of a language, folded, by what it composes them of. */
interface Ordinals {
  /** From the first to the nineteenth. */
  small: string[];
  /** The twentieth, thirtieth, fortieth and fiftieth. */
  tens: string[];
  /** What stands before a ten, from one to nine: "einund". */
  before?: string[];
  /** The tens that units stand behind, what joins them, and the units as they end: "twenty-first". */
  lead?: string[];
  joint?: string;
  units?: string[];
}

function ordinalsOf({ small, tens, before, lead, joint = '', units }: Ordinals): [string, number][] {
  const composed = tens.flatMap((ten, at): [string, number][] => {
    const value = 20 + at * 10;
    const ahead = (before ?? []).map((unit, index): [string, number] => [`${unit}${ten}`, value + index + 1]);
    const behind = (units ?? []).map((unit, index): [string, number] => {
      // "Ventiduesima", but "trentaduesima": the vowel is of the ten.
      const joined = at > 0 ? unit.replace(/^i/, 'a') : unit;
      return [`${lead![at]}${joint}${joined}`, value + index + 1];
    });
    return [[ten, value], ...ahead, ...behind];
  });
  return [...small.map((word, at): [string, number] => [word, at + 1]), ...composed];
}

const ordinals = new Map(Object.values<Ordinals>(languages).flatMap(ordinalsOf));
/** German ordinals end as adjectives do. */
const endings = /(?<=t)(?:e|en|er|es|em)$/u;

/** The number of an ordinal in words, "nineteenth", "einundzwanzigsten", "dix-neuvième"; null where it is none. */
export function ordinalOf(word: string): number | null {
  const plain = foldWords(word).text.trim().replace(/ß/g, 'ss').replace(/\s/g, '-');
  return ordinals.get(plain) ?? ordinals.get(plain.replace(endings, '')) ?? null;
}
