import { housesOfBags } from './japanese';
import { throughParticle } from './particles';
import { ands, isParticled, namesIn } from './shapes';
import { isCountry, type Shape } from './words';

/** Names that a page joins to one: by a particle ("Lapo di Sorvigna"), or as a pair that it never parts ("Aldaraz y Quirobe"). */
export interface Joined {
  names: ReadonlySet<string>;
  /** Two makers beside each other are written like the two names of one: whose page it is, is to be asked. */
  pairs: ReadonlySet<string>;
}

/** A pair of names in a text, by the places in its list of names; one of a longer row ("A, B and C") is none. */
function pairsOf(text: string, shapes: readonly Shape[]): { name: string; of: [number, number] }[] {
  return shapes.slice(1).flatMap((second, at) => {
    const first = shapes[at]!;
    const between = text.slice(first.end, second.start);
    const isPair =
      ands.has(between.trim()) && between === ` ${between.trim()} ` && !text.slice(0, first.start).endsWith(', ');
    return isPair ? [{ name: text.slice(first.start, second.end), of: [at, at + 1] as [number, number] }] : [];
  });
}

/** Names that heads and body have alike: a heading's first word has its capital in any case, the text's then is its own. */
function throughout(heads: readonly string[], body: string): string[] {
  const inBody = new Set([...body.matchAll(throughParticle)].map(([name]) => name));
  return heads.flatMap((head) =>
    [...head.matchAll(throughParticle)]
      .filter(([name, first]) => inBody.has(name) && namesIn(first!).length > 0)
      .map(([name]) => name),
  );
}

/** The names that heads and body of a page join to one. */
export function joinedIn(heads: readonly string[], body: string): Joined {
  const texts = [...new Set([...heads, body])].map((text) => ({ text, shapes: namesIn(text) }));
  const particled = texts.flatMap(({ shapes }) => shapes.map(({ name }) => name).filter(isParticled));
  const alone = new Set<string>();
  const pairs = new Map<string, [string, string]>();
  for (const { text, shapes } of texts) {
    const found = pairsOf(text, shapes);
    const paired = new Set(found.flatMap(({ of }) => of));
    for (const { name, of } of text === body ? [] : found) pairs.set(name, [shapes[of[0]]!.name, shapes[of[1]]!.name]);
    for (const [at, { name }] of shapes.entries()) if (!paired.has(at)) alone.add(name);
  }
  const isAlone = (part: string) =>
    [...alone].some((name) => name === part || name === `${part}s` || name.startsWith(`${part} `));
  const never = [...pairs]
    .filter(([, parts]) => !parts.some((part) => isAlone(part) || isCountry(part)))
    .map(([name]) => name);
  return {
    names: new Set([...particled, ...throughout(heads, body), ...never, ...housesOfBags([...heads, body])]),
    pairs: new Set(never),
  };
}
