import { anyOf, colourWords, type Hit, materialWords, partWords, phraseFinder, textPattern, wordsOf } from '../text';
import { rememberForMakers } from './by-makers';
import { isOfCompanion } from './goods';
import { isLikened } from './look';
import type { Group } from './material-of-piece';
import type { Passage } from './passage';
import { isOfAccessory } from './subject';
import { isUnsaid } from './unsaid';

/** Joints inside one description: "red and black", "gold-tone", "brown grained calf", "di pelle rossa". */
const within = textPattern(
  `^(?:の|色の|系の)?(?:型押し|編み込み|シボ|シュリンク)?の?$|^[\\s-]{0,2}(?:(?:${anyOf([...wordsOf('joint-in-material'), '&', '/'])})[\\s-]{1,2}){0,2}$`,
);
interface Vocabulary {
  find: (from: Passage) => Hit<string>[];
  materials: Set<string>;
}

/** The words that a material claim is looked up by: the general ones and those of the maker files, which win. */
export const vocabularyOf = rememberForMakers((makers): Vocabulary => {
  const own = new Set<string>();
  for (const { construction } of makers)
    for (const fact of construction)
      for (const words of [fact.is, ...(fact.also ?? []), ...(fact.not ?? [])]) own.add(words.toLowerCase());
  const table: Record<string, readonly string[]> = { ...colourWords, ...materialWords };
  for (const words of own) table[words] = [...(table[words] ?? []), words];
  const materials = new Set([...Object.keys(materialWords), ...own]);
  const find = phraseFinder(table);
  return { find: (from) => find(from.folded), materials };
});

/** "Cotton lining and nickel fittings": a word for a material may end with the part, and with it the description. */
const endsWithPart = (text: string, { start, end }: Group): boolean => {
  const [, part] = /\s([a-z]{1,20})$/.exec(text.slice(start, end)) ?? [];
  return part !== undefined && part in partWords;
};

/** Neighbouring colour and material words as one description: "dark" + "red" + "suede". */
export function groupsIn(from: Passage, { find, materials }: Vocabulary): Group[] {
  const found: Group[] = [];
  for (const hit of find(from)) {
    const last = found[found.length - 1];
    const gap = last ? from.folded.text.slice(last.end, hit.foldedStart) : '';
    if (last && within.test(gap) && !endsWithPart(from.folded.text, last)) {
      last.words.push(hit.value);
      last.end = hit.foldedEnd;
      last.sourceEnd = hit.end;
      last.hasMaterial ||= materials.has(hit.value);
    } else
      found.push({
        words: [hit.value],
        start: hit.foldedStart,
        end: hit.foldedEnd,
        sourceStart: hit.start,
        sourceEnd: hit.end,
        hasMaterial: materials.has(hit.value),
      });
  }
  const { text } = from.folded;
  return found.filter(
    ({ start, end }) =>
      !isUnsaid(text, start, end) &&
      !isLikened(text, start, end) &&
      !isOfAccessory(text, start, from.title) &&
      !isOfCompanion(text, start, end),
  );
}

/** Colours first, as English has them: "daim rouge" is "red suede". */
export const materialOf = ({ words }: Group, materials: Set<string>) =>
  [...words.filter((word) => !materials.has(word)), ...words.filter((word) => materials.has(word))].join(' ');
