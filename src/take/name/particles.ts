/** What may stand inside a family's name, of two words: wherever capitals are around it, it is one name. */
const double = new Set(
  'de la|de las|de los|della|dello|degli|dalla|van der|van den|van de|von der|von dem|von den|ter|ten|zur|zum'.split(
    '|',
  ),
);
/** Those of one word stand between a thing and whose it is as well. */
const single = new Set('de|di|del|du|da|dal|dei|van'.split('|'));

/** A name that a particle of one word goes through, and its first word. */
export const throughParticle =
  /(?<![\p{L}’'-])(\p{Lu}[\p{L}-]{2,24}) (?:(?:de|di|del|du|da|dal|dei|van) |d['’])\p{Lu}[\p{L}-]{2,24}/gu;
export const elidedParticle = /^ d['’]$/u;

/** What an opening particle would be as a word of its own: "Von der Aue" says where something is from. */
const alsoFrom = /^(?:von|de|della|dello|degli|dalla|zur|zum|ter|ten)(?!\p{L})/iu;

const mostWords = 2;

export interface Particle {
  /** How many words it has. */
  words: number;
  /** Whether it says of itself that a name goes on. */
  sure: boolean;
}

/** The longest particle at the head of some words; null where there is none. */
export function particleOf(words: readonly string[]): Particle | null {
  for (let count = Math.min(mostWords, words.length); count > 0; count -= 1) {
    const said = words.slice(0, count).join(' ');
    if (double.has(said)) return { words: count, sure: true };
    if (single.has(said)) return { words: count, sure: false };
  }
  return null;
}

/** Whether a name begins with a particle that may say where something is from, and no name's beginning. */
export const mayBeFrom = (name: string): boolean => alsoFrom.test(name);
